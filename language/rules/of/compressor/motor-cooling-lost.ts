import { defineRule } from '../../define.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'motor-cooling-lost',
    family: 'compressor',
    severity: 'warning',
    summary: 'A closed compressor runs without the cooling that it was made for, and no fan blows on it.',
    why: 'Such a motor is cooled by the stream of cold refrigerant that it moves. The little hydrogen of a small stack carries off next to nothing, and the winding cooks in its shell.',
    source: 'heat capacity of the gas; the shell below 90 °C: common practice, no source',
    on: 'compressor',
    check(v, tell) {
        if (!(v.word('sort') ?? '').startsWith('hermetic') || v.yes('fan') || v.yes('listed-for-hydrogen') || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const taken = v.maybeQ('gas-cooling');
        const power = v.maybe('power');
        const stops = v.controls.stoppers(v.name);
        const trip = ['temperature', 'discharge-temperature'].flatMap(q => v.controls.limits(stops, `${v.name}.${q}`, 'above'))[0];
        const said = v.said('fan');
        tell({
            at: v.at('fan'), severity: missing(tell, said && !trip ? 'warning' : 'hint'),
            message: `${said ? 'No fan blows' : 'No fan is said to blow'} on ${v.name}${power === power ? `, which takes ${show(power, 'W')}` : ''}${taken === taken ? `; the hydrogen carries off ${show(taken, 'W/K', 1)}` : ', and hydrogen carries off very little'}: its shell gets too hot.${trip ? ` ${trip.name} will stop it then.` : ''}`,
        });
    },
});

import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { isIndoors } from '../../place.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'relay-box-in-gas-area',
    family: 'compressor',
    severity: 'error',
    summary: 'The start gear of the compressor sits close to gas joints.',
    why: 'Its relay makes a spark at every start, next to where a leak begins.',
    source: 'zones of IEC 60079-10-1, from memory; 0.5 m: common practice, no source',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        const away = v.maybe('start-gear-distance');
        if (!v.paths.mediaOf(v.name).has('hydrogen')) return;
        if (away < 0.4999) tell({ at: v.at('start-gear-distance'), severity: isIndoors(v) === false ? 'warning' : 'error', message: `The start gear of ${v.name} sits ${show(away, 'm')} from gas joints; it sparks at every start, and 0.5 m is the least.`, fixes: defined(setValue(v, 'start-gear-distance', '1.5 m', 'Move it 1.5 m away')) });
        else if (away !== away && !v.yes('listed-for-hydrogen')) tell.cannotCheck(v, 'start-gear-distance', `whether the start gear of ${v.name} sparks near gas`);
    },
});

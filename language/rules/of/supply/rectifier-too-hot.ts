import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'rectifier-too-hot',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'The diodes get hotter than their sink can keep them.',
    why: 'Two diodes conduct at a time in a bridge; what they lose is heat beside hoses. A diode that fails short puts ' +
        'alternating current on the winding or the stack.',
    source: 'data sheet relation, T = ambient + loss x thermal resistance; 25 K margin: common practice, no source',
    under: ['supply-far-above-stack'],
    on: 'rectifier',
    check(v, tell) {
        const junction = v.q('junction-temperature');
        const most = v.num('max-junction');
        if (!tell.exceeds(junction, most - 25, '°C', v, 'sink')) return;
        const loss = v.q('loss');
        const ambient = v.the('site')?.maybe('hottest') ?? NaN;
        const allowed = (most - 25 - ambient) / loss - v.maybe('junction-to-sink', 1.1);
        const buy = [3, 2, 1.5, 1, 0.7, 0.5, 0.3, 0.2, 0.1].find(r => r <= allowed);
        tell({
            at: v.at('sink'),
            message: `The diodes lose ${show(loss, 'W')} and reach ${show(junction, '°C')} on the hottest day; ${show(most - 25, '°C')} ` +
                'is the limit with a margin of 25 K.',
            fixes: defined(buy ? setValue(v, 'sink', `${buy} K/W`, `Use a sink of ${buy} K/W`) : undefined),
        });
    },
});

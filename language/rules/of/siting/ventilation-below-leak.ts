import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'ventilation-below-leak',
    family: 'siting',
    severity: 'error',
    summary: 'If all that is made leaks, the room gets burnable.',
    why: 'A hose that slips lets out all of it for as long as nobody notices.',
    source: 'dilution; a quarter of the lower flammable limit is the usual aim, IEC 60079-10-1, from memory',
    guardsLife: true,
    on: 'site',
    check(v, tell) {
        if (['outdoors', 'open-shelter'].includes(v.word('place') ?? '')) return;
        const share = v.maybeQ('leak-share');
        if (!(share > 0.01)) return;
        tell({ at: v.at('openings'), severity: share > 0.04 ? 'error' : 'warning', message: `With all the hydrogen escaping, ${show(v.q('ventilation'), 'm3/h')} of fresh air leave ${digits(100 * share, 2)} % in the room, and more under the ceiling; 1 % is the aim, 4 % burns.` });
    },
});

import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'bag-inventory-vs-room',
    family: 'buffer',
    severity: 'error',
    summary: 'A full bag, let go at once, makes the room burnable.',
    why: 'Hydrogen gathers under the ceiling, so the upper part burns long before the mean does.',
    source: 'lower flammable limit of hydrogen in air, 4 %: ISO/TR 15916',
    guardsLife: true,
    on: ['bag', 'gasometer'],
    check(v, tell) {
        if (['outdoors', 'open-shelter'].includes(v.the('site')?.word('place') ?? '')) return;
        if (/outside|outdoors/i.test(v.given('place').facts.get('')?.text ?? '')) return;
        const share = v.maybeQ('inventory-share');
        if (share > 0.01) tell({ at: v.at('volume'), severity: share >= 0.04 ? 'error' : 'warning', message: `A torn ${v.name} makes ${digits(100 * share, 2)} % hydrogen of the room, and several times that under the ceiling; 4 % burns.` });
        else if (share !== share && v.says('volume') === 'stated') tell.cannotCheck(v.the('site') ?? v, 'volume', `what a torn ${v.name} makes of the room`);
    },
});

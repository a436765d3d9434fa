import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'cylinder-inventory-vs-room',
    family: 'storage',
    severity: 'error',
    summary: 'The contents of the cylinder, let into the room, can burn or explode.',
    why: 'A hose that slips empties a cylinder in minutes.',
    source: 'lower flammable limit of hydrogen in air, 4 %: ISO/TR 15916',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const place = v.given('place').facts.get('')?.text ?? '';
        if (/outside|outdoors|open air/i.test(place)) return;
        const site = v.the('site');
        if (['outdoors', 'open-shelter'].includes(site?.word('place') ?? '')) return;
        const share = v.maybeQ('inventory-share');
        if (!(share > 0.01)) return;
        tell({ at: v.at('volume'), severity: share > 0.04 ? 'error' : 'warning', message: `Its ${show(v.q('stored-gas'), 'NL')} make ${digits(100 * share, 2)} % hydrogen of the room when they get out; 4 % burns. Stand it outside.` });
    },
});

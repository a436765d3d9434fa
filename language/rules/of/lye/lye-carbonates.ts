import { monthsBetween } from '../../records.js';
import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** Share of the hydroxide turned into carbonate from which the lye is renewed, and months after which it is looked at. Common practice, no source. */
const MOST = 0.1;
const MONTHS = 12;

export default defineRule({
    name: 'lye-carbonates',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'The air has turned much of the lye into carbonate, or the lye has stood so long that it may have.',
    why: 'Carbonate conducts several times worse than hydroxide, foams, and in the end settles as crystals in narrow ports.',
    source: '10 % of the hydroxide, 12 months: common practice, no source',
    on: 'lye',
    check(v, tell) {
        const share = v.maybe('carbonate');
        if (v.said('carbonate') && tell.exceeds(share, MOST, '%', v, 'carbonate')) {
            tell({ at: v.at('carbonate'), message: `${show(share, '%')} of the hydroxide is carbonate; from ${show(MOST, '%')} on the stack needs more volts and the lye foams. Renew it.` });
            return;
        }
        const changed = v.word('changed');
        if (!changed || !tell.today || v.said('carbonate')) return;
        const months = monthsBetween(changed, tell.today);
        if (!(months > MONTHS)) return;
        tell({
            at: v.at('changed'), severity: 'hint',
            message: `This lye is ${digits(months, 2)} months old; after ${MONTHS} the air has often turned several per cent of it into carbonate. Titrate a sample, or renew it.`,
        });
    },
});

import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';
import { how, lastPassed, monthsBetween } from '../../records.js';

export default defineRule({
    name: 'check-valve-not-tested',
    family: 'compressor',
    severity: 'warning',
    summary: 'Nothing shows that the check valve before the store holds.',
    why: 'When the unloader opens, that valve is all that stands between the store and the bag; a grain of dust keeps it open, and nobody sees it.',
    source: '6 months: common practice, no source',
    guardsLife: true,
    from: 'built',
    on: 'check-valve',
    check(v, tell) {
        const store = v.all('cylinder').find(c => v.paths.route(v.name, c.name, 'hydrogen'));
        const compressor = v.all('compressor').find(c => v.paths.before(v.name, 'hydrogen').includes(c.name));
        if (!store || !compressor || v.paths.between(v.name, store.name, 'hydrogen').some(n => v.other(n)?.kind === 'regulator')) return;
        // A line that was found tight tells nothing of a valve in it: that it holds is seen with the pressure behind it.
        const last = lastPassed(v, t => /\b(behind|back|backwards|reverse|holds?)\b/i.test(`${t.name.replace(/-/g, ' ')} ${how(t)}`) || t.names('covers').every(n => v.other(n)?.kind === 'check-valve'));
        if (last === undefined) {
            tell({ at: v.at(), message: `Nothing on record shows that ${v.name} holds ${store.name} back. Test it with its inlet led outdoors, not to the bag.`, related: [{ span: compressor.at(), message: 'what it should keep the gas from' }] });
            return;
        }
        const months = monthsBetween(last, tell.today);
        if (months > 6) tell({ at: v.at(), severity: 'hint', message: `${v.name} was last seen to hold on ${last}, ${digits(months, 2)} months ago; 6 are usual.` });
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'trickle-gas-kept',
    family: 'stack',
    severity: 'error',
    summary: 'The small current that spares the plates makes impure gas, and that gas goes where gas is kept.',
    why: 'What leaks through the separators stays, and hardly any gas dilutes it: after some hours of standing by, bag or cylinder hold a mixture that can burn.',
    source: 'impurity as worked out for low load; explosive from about 4 % hydrogen in oxygen and 5 % oxygen in hydrogen (lower and upper limit, Coward & Jones 1952)',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        const trickle = v.maybe('trickle');
        if (!(trickle > 0)) return;
        const after = v.paths.after(v.name, 'hydrogen');
        const store = after.map(n => v.other(n)).find(p => p && ['bag', 'gasometer', 'cylinder', 'compressor'].includes(p.kind));
        if (!store) return;
        // A valve that opens without current leads the gas of standing by to the air.
        if (after.some(n => { const p = v.other(n); return p?.kind === 'valve' && p.word('if-unpowered') === 'opens' && v.paths.after(n, 'hydrogen').includes('outdoors'); })) return;
        const clean = v.maybeQ('lowest-clean-current');
        tell({
            at: v.at('trickle'),
            message: `${show(trickle, 'A', 2)} goes on while the rig stands by, and its gas goes to ${store.name}; ` +
                `${clean > 0 ? `below about ${show(clean, 'A', 2)} the two gases spoil each other` : 'at so little current the two gases spoil each other'}. It must go outdoors by a valve that opens when the rig stops.`,
        });
    },
});

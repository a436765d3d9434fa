import { defineRule } from '../../define.js';
import { isIndoors, stores } from '../../place.js';
import { notGiven } from '../../stage.js';

export default defineRule({
    name: 'box-traps-hydrogen',
    family: 'wiring',
    severity: 'warning',
    summary: 'A closed box or cover stands over gas parts.',
    why: 'Hydrogen that leaks below rises into it and stays, around the very contacts that spark.',
    source: 'no inverted pockets: hydrogen best-practice pages (h2tools.org)',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        if (notGiven(v, 'boxes-over-gas') && isIndoors(v) === true && v.the('stack') && stores(v).length) tell.cannotCheck(v, 'boxes-over-gas', 'whether a box over the gas traps it');
        const entry = v.part.entries.get('boxes-over-gas');
        for (const row of v.rows('boxes-over-gas')) {
            const vents = row.get('vents');
            if (vents?.word === 'vented' || !entry) continue;
            const what = row.get('')?.text ?? 'box';
            const facts = [...row.values()];
            const at = { ...entry.span, start: entry.span.start + Math.min(...facts.map(f => f.start)), end: entry.span.start + Math.max(...facts.map(f => f.end)) };
            tell({
                at, severity: vents ? 'warning' : 'hint',
                message: vents ? `A closed ${what} stands over gas parts: what leaks gathers in it.` : `Can the ${what} over gas parts let hydrogen out at its top? Say closed or vented.`,
                fixes: vents ? [{ title: 'Plan openings at its top and bottom', edits: [{ span: { ...entry.span, start: entry.span.start + vents.start, end: entry.span.start + vents.end }, text: 'vented' }], preferred: true }] : [],
            });
        }
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'low-load-impurity',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'At the lowest current allowed, what leaks through the separators spoils the gas.',
    why: 'The leak stays as it is while the gas that dilutes it shrinks. Running far under load was part of a fatal tank burst.',
    source: '2 % hydrogen in oxygen as a trip: customary, from memory; told from half of the trips on, since the model is within a factor of three (Trinke 2018, Schalenbach 2016)',
    under: ['mixed-lye-return'],
    on: 'stack',
    check(v, tell) {
        const h = v.q('hydrogen-in-oxygen-low');
        const o = v.q('oxygen-in-hydrogen-low');
        const routine = v.the('routine');
        const said = routine?.said('lowest-current');
        const place = said ? routine! : v;
        const key = said ? 'lowest-current' : undefined;
        const foul = [tell.exceeds(h, 0.01, '%', place, key), tell.exceeds(o, 0.005, '%', place, key)];
        if (!foul.includes(true)) return;
        const kept = ['bag', 'gasometer', 'compressor', 'cylinder'].some(kind => v.all(kind).length);
        const clean = v.result('lowest-clean-current');
        const from = clean && clean.value > 0 ? ` From about ${show(clean.value, 'A', 2)} on the oxygen stays below 2 %.` : clean?.remarks.length ? ` ${clean.remarks[0]}` : '';
        tell({
            at: said ? routine!.at('lowest-current') : v.at(), severity: kept && (said || tell.reached('built')) ? 'warning' : 'hint',
            message: `At ${said ? show(routine!.num('lowest-current'), 'A') : 'a quarter of the current'} about ${show(h, '%', 2)} hydrogen is in the oxygen and ${show(o, '%', 2)} oxygen in the hydrogen (within a factor of three); trips stand at 2 % and 1 %.${from}`,
        });
    },
});

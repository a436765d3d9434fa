import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'leak-test-missing',
    family: 'operation',
    severity: 'error',
    summary: 'Nothing on record shows that the gas lines are tight.',
    why: 'What is not tested with air or nitrogen is found by hydrogen.',
    source: '1 % for the reading of the gauge: common practice, no source; proved tight at the highest working pressure: 29 CFR 1910.103, from memory; soap and an inert gas first: hydrogen best-practice pages (h2tools.org)',
    guardsLife: true,
    from: 'built',
    under: ['cut-off-above-rating'],
    on: 'rig',
    check(v, tell) {
        const stack = v.the('stack');
        const line = v.paths.on('hydrogen');
        if (!stack || line.length < 2) return;
        const compressor = v.all('compressor').find(c => line.includes(c.name));
        const high = new Set(compressor ? v.paths.after(compressor.name, 'hydrogen') : []);
        const before = compressor ? v.paths.before(compressor.name, 'hydrogen') : [];
        const tests = v.all('test').filter(t => t.word('result') === 'passed' && t.maybe('pressure') > 0);
        const coveredBy = new Map(tests.map(t => [t, t.rows('covers').flatMap(r => [...r.values()].flatMap(f => f.text === 'section' && f.names?.length === 2 ? v.paths.route(f.names[0], f.names[1], 'hydrogen') ?? f.names : f.names ? [f.names[0]] : []))]));
        const low = tests.filter(t => coveredBy.get(t)!.some(n => line.includes(n) && (!high.has(n) || before.includes(n)) || n === stack.name));
        if (!low.length) tell({ at: stack.at(), message: `No test on record shows that the low side is tight. Before hydrogen: nitrogen or air on both sides at once, bag and seals blanked off, at ${show(Math.max(1.5 * stack.maybeQ('hydrogen-head', 0), 500), 'kPa', 2)} or more.` });
        else {
            const best = Math.max(...low.map(t => t.num('pressure')));
            const head = stack.maybeQ('hydrogen-head');
            if (best < 0.99 * head) tell({ at: low[0].at('pressure'), severity: 'warning', message: `The low side was tested at ${show(best, 'kPa')} and works at ${show(head, 'kPa')}.` });
        }
        const cylinder = v.all('cylinder').find(c => high.has(c.name));
        if (!cylinder || !compressor) return;
        const cut = cylinder.maybeQ('cut-off');
        const pressed = tests.filter(t => coveredBy.get(t)!.some(n => high.has(n) && !before.includes(n)) && t.num('pressure') > 20000);
        if (!pressed.length) tell({ at: cylinder.at(), message: `No test on record shows that the high side is tight${cut > 0 ? ` up to its ${show(cut, 'bar')}` : ''}.` });
        else {
            const best = Math.max(...pressed.map(t => t.num('pressure')));
            if (best < 0.99 * cut) tell({ at: pressed[0].at('pressure'), severity: 'warning', message: `The high side was tested at ${show(best, 'bar')} and works up to ${show(cut, 'bar')}.` });
        }
    },
});

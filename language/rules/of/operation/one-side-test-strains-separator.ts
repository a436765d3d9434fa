import { how } from '../../records.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

/** Share of the bubble point that a separator is asked to hold: a margin of two. Common practice, no source. */
const HALF = 0.5;

export default defineRule({
    name: 'one-side-test-strains-separator',
    family: 'operation',
    severity: 'warning',
    summary: 'A test pressed on one gas side alone with more than the separators should hold.',
    why: 'The wet separator is all that stands between the two sides: above its bubble point gas blows through it, and sheets stretch or tear.',
    source: 'bubble point by Young-Laplace; a margin of two: common practice, no source',
    guardsLife: true,
    from: 'built',
    on: 'test',
    check(v, tell) {
        const pressure = v.maybe('pressure');
        const stack = v.the('stack');
        if (!(pressure > 0) || !stack || stack.says('separator') === 'none') return;
        const words = how(v);
        if (/\b(both|linked|joined)\b/i.test(words)) return;
        const covers = v.names('covers');
        const separators = v.all('separator').map(s => s.name);
        const open = new Set([stack.name, ...v.paths.on('lye')]);
        if (!covers.some(n => open.has(n) || v.other(n)?.kind === 'column') || covers.some(n => separators.includes(n))) return;
        const point = stack.maybeQ('bubble-point');
        if (point !== point && separators.length) tell.cannotCheck(v.the('separator')!, 'bubble-pressure', `whether ${v.name} strained the separators`);
        if (!(pressure > HALF * point)) return;
        const alone = /\b(alone|one side|only)\b/i.test(words);
        tell({
            at: v.at('pressure'), severity: pressure >= point ? 'error' : 'warning',
            message: `${show(pressure, 'kPa')} ${alone ? 'stood on one side alone' : 'were put on, and nothing says that both sides were linked'}; the separators let gas through at ${show(point, 'kPa', 2)}. ` +
                `Half of that is the most for one side: test the separators again.`,
        });
    },
});

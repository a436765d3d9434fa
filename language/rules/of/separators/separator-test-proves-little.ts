import { how } from '../../records.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'separator-test-proves-little',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'A test of the separators was done in a way that cannot show a hole.',
    why: 'Pressed on both sides alike, a torn separator passes. Below the head of the work a small hole stays shut; above half of the bubble point gas goes through sound pores, and can tear or dry them.',
    source: 'common practice, no source; pores by Young-Laplace',
    on: 'test',
    check(v, tell) {
        const separator = v.the('separator');
        const stack = v.the('stack');
        if (!separator || !stack || !v.names('covers').includes(separator.name) || v.word('result') === 'failed') return;
        const words = how(v);
        if (/\bboth sides\b/i.test(words) && !/\b(alone|in turn)\b/i.test(words)) {
            tell({ at: v.at('with'), message: `With both sides linked nothing presses on the separators: ${v.name} shows whether joints are tight, not whether the sheets are whole. Press one side alone, the other open.` });
            return;
        }
        if (/\bdry\b/i.test(words)) {
            tell({ at: v.at('with'), message: 'Dry pores let gas through wherever they are: only a wet separator can be tested.' });
            return;
        }
        if (/\b(running|under current|with current|current on|while it runs)\b/i.test(words) && !(v.maybe('oxygen') >= 0 || v.maybe('hydrogen') >= 0)) {
            tell({ at: v.at('with'), message: 'While current flows, what goes through a hole is the other gas: press on a side only with the current off. What an analyser shows while it runs tells more, and is not on record here.' });
            return;
        }
        const pressure = v.maybe('pressure');
        if (v.said('level-change') && !(pressure > 0 && v.maybe('lasted') > 0)) {
            tell({ at: v.at('level-change'), severity: 'hint', message: 'How hard it was pressed and how long is not said: this change of level cannot be compared with the next one.' });
        }
        const head = stack.maybeQ('separator-head');
        const holds = separator.maybeQ('bubble-point');
        if (tell.exceeds(pressure, 0.5 * holds, 'kPa', v, 'pressure')) {
            tell({ at: v.at('pressure'), message: `At ${show(pressure, 'kPa')} gas may go through sound pores: they hold ${show(holds, 'kPa')} at best, and half of it is the most for a test. Above it the sheet can tear.` });
        } else if (tell.fallsShort(pressure, 2 * head, 'kPa', v, 'pressure')) {
            tell({ at: v.at('pressure'), message: `${show(pressure, 'kPa')} is less than twice the ${show(head, 'kPa', 2)} that stand across the separators in the work: a small hole stays shut. ${show(2 * head, 'kPa', 2)} or more shows it.` });
        }
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'low-faraday-efficiency',
    family: 'stack',
    severity: 'warning',
    summary: 'Less hydrogen was read than the current should make, and bypass does not explain it.',
    why: 'What is missing leaks into the room, or goes through a separator into the oxygen.',
    source: 'Faraday\'s law, CODATA 2018; a tenth: common practice, no source',
    under: ['hydrogen-oxygen-ratio-off'],
    on: 'reading',
    check(v, tell) {
        const stack = v.the('stack');
        const entry = stack && v.part.entries.get(`${stack.name}.hydrogen-rate`);
        const said = stack && v.part.entries.get(`${stack.name}.current`);
        if (!stack || !entry || !said) return;
        const value = tell.workings.amountOf(entry);
        const current = tell.workings.amountOf(said)?.si ?? NaN;
        const working = stack.maybeQ('current');
        // Bypass is worked out for the working current; far from it the share is another one.
        if (!value || !(Math.abs(current - working) <= 0.3 * working)) return;
        const rate = tell.workings.asGas(value);
        const share = stack.maybeQ('faraday-efficiency');
        const expected = stack.q('hydrogen-rate') * current / working;
        if (!(rate < 0.9 * expected)) return;
        tell({
            at: entry.span,
            message: `${show(rate, 'NL/h')} was read; ${show(expected, 'NL/h')} is expected at ${show(current, 'A')}, bypass and crossing counted (${show(share, '%', 2)} to gas). ` +
                'The rest leaks or goes through a separator: look for it with soap before the next run.',
        });
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'low-faraday-efficiency',
    family: 'stack',
    severity: 'warning',
    summary: 'Less hydrogen was read than the current should make, and bypass does not explain it.',
    why: 'What is missing leaks into the room, or goes through a separator into the oxygen.',
    source: 'Faraday\'s law, CODATA 2018; ± of the meters and of what is expected',
    under: ['hydrogen-oxygen-ratio-off'],
    on: 'reading',
    check(v, tell) {
        const stack = v.the('stack');
        const entry = stack && v.part.entries.get(`${stack.name}.hydrogen-rate`);
        const off = entry && v.result('hydrogen-off');
        if (!stack || !entry || !off || !(off.high < 0)) return;
        const [rate, expected, current] = [v.seen(`${stack.name}.hydrogen-rate`, 'gas-flow'), v.maybeQ('hydrogen-expected'), v.seen(`${stack.name}.current`)];
        const share = expected / v.maybeQ('hydrogen-most');
        tell({
            at: entry.span,
            message: `${show(rate, 'NL/h')} was read; ${show(expected, 'NL/h')} is expected at ${show(current, 'A')}, bypass and crossing counted (${show(share, '%', 2)} to gas). ` +
                'The rest leaks or goes through a separator: look for it with soap before the next run.',
        });
    },
});

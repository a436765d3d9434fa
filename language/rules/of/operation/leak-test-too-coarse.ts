import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** Share of what the stack makes that a tightness test should be able to show. Common practice, no source. */
const SHOWN = 0.01;

export default defineRule({
    name: 'leak-test-too-coarse',
    family: 'operation',
    severity: 'warning',
    summary: 'A tightness test was too short, or allowed too much, to show a leak that matters.',
    why: 'One kelvin moves the pressure by a third of a per cent of what there is above vacuum: on a short test of a large space that looks like a leak, or hides one.',
    source: 'ideal gas; 1 % of what is made: common practice, no source',
    // What is made is no measure while the source drives next to nothing.
    under: ['supply-below-reversible', 'supply-below-useful-voltage'],
    on: 'test',
    check(v, tell) {
        if (v.word('result') !== 'passed' || !v.said('lasted') || !v.said('drop') && !v.said('limit')) return;
        const hidden = v.maybeQ('may-hide');
        const made = v.the('stack')?.maybeQ('hydrogen-rate-room') ?? NaN;
        if (!(hidden > SHOWN * made)) return;
        tell({
            at: v.at('lasted'), severity: v.said('temperature') ? 'warning' : 'hint',
            message: `${show(hidden, 'L/h', 2)} could leak and the test would look the same, ${digits(100 * hidden / made, 2)} % of what is made; ${100 * SHOWN} % should show. Hold it longer` +
                `${v.said('temperature') ? ', at an even temperature.' : ', and write the temperature down: 1 K is taken here.'}`,
        });
    },
});

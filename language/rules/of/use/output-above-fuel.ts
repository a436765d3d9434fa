import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** Shares of the lower heating value that the best small ones reach. Common practice, no source. */
const BEST: Readonly<Record<string, number>> = { engine: 0.4, 'fuel-cell': 0.65 };

export default defineRule({
    name: 'output-above-fuel',
    family: 'use',
    severity: 'warning',
    summary: 'An engine or fuel cell is to give more than the gas it takes allows.',
    why: 'Either it takes more gas than planned, and the store is empty sooner, or it gives less.',
    source: 'lower heating value: CODATA Key Values; 40 % for engines, 65 % for fuel cells: common practice, no source',
    on: ['engine', 'fuel-cell'],
    check(v, tell) {
        const key = v.kind === 'engine' ? 'output' : 'power';
        const output = v.maybe(key);
        const fuel = v.maybeQ('fuel-power');
        const best = BEST[v.kind];
        if (!(output > 1.02 * best * fuel)) return;
        tell({
            at: v.at(key), severity: output > fuel ? 'error' : 'warning',
            message: `${show(v.num('flow'), 'NL/h')} hold ${show(fuel, 'W')}, of which ${digits(100 * best)} % can come out at best, ${show(best * fuel, 'W')}; ${show(output, 'W')} is stated.`,
            related: [{ span: v.at('flow'), message: 'what it takes' }],
        });
    },
});

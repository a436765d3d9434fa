import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'use-exceeds-supply',
    family: 'use',
    severity: 'warning',
    summary: 'A user without a store before it takes more gas than the stack makes.',
    why: 'The pressure falls until the flame goes out or strikes back, and where the line is drawn below the air outside, air comes in.',
    source: 'mass balance; 5 %: common practice, no source',
    on: ['burner', 'engine', 'fuel-cell'],
    check(v, tell) {
        const flow = v.maybe('flow');
        const stack = v.the('stack');
        const before = v.paths.before(v.name, 'hydrogen');
        if (!(flow > 0) || !stack || !before.includes(stack.name)) return;
        if (before.some(n => ['cylinder', 'bag', 'gasometer'].includes(v.other(n)?.kind ?? ''))) return;
        const made = stack.maybeQ('hydrogen-rate');
        if (!(flow > 1.05 * made)) return;
        const least = show(made, 'NL/h', 2);
        tell({ at: v.at('flow'), message: `${v.name} takes ${show(flow, 'NL/h')} and no store stands before it; the stack makes ${show(made, 'NL/h')}.`, fixes: defined(setValue(v, 'flow', least, `Plan ${least}`)) });
    },
});

import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'cooler-on-riser',
    family: 'heat',
    severity: 'warning',
    summary: 'The cooler sits in the riser.',
    why: 'Bubbles lift the lye there. A long narrow cooler takes that lift away, and the lye stands still in the stack.',
    source: 'common practice, no source',
    on: 'cooler',
    check(v, tell) {
        if (v.word('position') !== 'riser' || v.all('circulation-pump').length) return;
        tell({
            at: v.at('position'),
            message: `${v.name} sits in the riser and takes the lift of the bubbles away.`,
            fixes: defined(setValue(v, 'position', 'return', 'Put it into the return')),
        });
    },
});

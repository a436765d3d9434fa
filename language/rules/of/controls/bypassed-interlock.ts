import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'bypassed-interlock',
    family: 'controls',
    severity: 'warning',
    summary: 'A jumper or test mode puts a guard out of action and has no end of its own.',
    why: 'It gets left in. The guard is gone then, and nobody sees it.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'override',
    check(v, tell) {
        const says = v.says('ends-after');
        if (says !== 'none' && says !== 'silent' && says !== 'unknown') return;
        const what = v.names('bypasses');
        tell({ at: v.at(v.part.entries.has('ends-after') ? 'ends-after' : undefined), message: `${v.name} puts ${what.join(', ') || 'a guard'} out of action and has no end of its own.`, fixes: defined(setValue(v, 'ends-after', '5 min', 'Let it end after 5 min')) });
    },
});

import { defineRule } from '../../define.js';

export default defineRule({
    name: 'circular-reference',
    family: 'reading the text',
    severity: 'error',
    summary: 'Values refer to each other in a circle, or a part is like itself.',
    why: 'A value that is worked out from itself has no value.',
    source: 'the language',
});

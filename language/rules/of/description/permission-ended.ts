import { defineRule } from '../../define.js';

export default defineRule({
    name: 'permission-ended',
    family: 'the description',
    severity: 'warning',
    summary: 'The last day of a permission is past: the rule is told again.',
    why: 'It was meant for a while. Look again whether the reason still holds before giving it more time.',
    source: 'the language',
});

import { defineRule } from '../../define.js';

export default defineRule({
    name: 'permission-incomplete',
    family: 'the description',
    severity: 'hint',
    summary: 'A permission does not say why it stands, or until when.',
    why: 'In a year nobody remembers the reason, and a permission without an end is never looked at again.',
    source: 'the language',
});

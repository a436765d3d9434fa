import { defineRule } from '../../define.js';

export default defineRule({
    name: 'permission-unused',
    family: 'the description',
    severity: 'hint',
    summary: 'A permission turns down a rule that does not speak, or that cannot be turned down.',
    why: 'Left standing, it would keep the rule quiet on the day when it has something to say.',
    source: 'the language',
});

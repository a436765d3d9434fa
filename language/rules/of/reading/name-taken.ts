import { defineRule } from '../../define.js';

export default defineRule({
    name: 'name-taken',
    family: 'reading the text',
    severity: 'error',
    summary: 'Two parts, or a part and a named value, have one name.',
    why: 'Whoever names it means one of them, and nobody knows which. The later one counts for nothing.',
    source: 'the language',
});

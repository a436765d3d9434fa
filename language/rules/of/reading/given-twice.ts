import { defineRule } from '../../define.js';

export default defineRule({
    name: 'given-twice',
    family: 'reading the text',
    severity: 'error',
    summary: 'The same property, or the title, is given twice.',
    why: 'Two values for one thing contradict each other; only the first one counts.',
    source: 'the language',
});

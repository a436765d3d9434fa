import { defineRule } from '../../define.js';

export default defineRule({
    name: 'unfinished-line',
    family: 'reading the text',
    severity: 'error',
    summary: 'A line is not finished: a value, a name or a sign is still missing.',
    why: 'What is not finished cannot be read; that line counts for nothing until it is.',
    source: 'the language',
});

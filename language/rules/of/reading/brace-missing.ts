import { defineRule } from '../../define.js';

export default defineRule({
    name: 'brace-missing',
    family: 'reading the text',
    severity: 'error',
    summary: 'A { or a } is missing, or there is one too many.',
    why: 'Without it nobody can say where a part begins or ends. What follows is read as well as can be.',
    source: 'the language',
});

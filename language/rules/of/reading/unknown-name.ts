import { defineRule } from '../../define.js';

export default defineRule({
    name: 'unknown-name',
    family: 'reading the text',
    severity: 'error',
    summary: 'A name stands for no part, no named value and no quantity of this rig.',
    why: 'What is joined to, stopped by or compared with something that does not exist is not joined, stopped or compared.',
    source: 'the language',
});

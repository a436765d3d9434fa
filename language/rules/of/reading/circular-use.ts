import { defineRule } from '../../define.js';

export default defineRule({
    name: 'circular-use',
    family: 'reading the text',
    severity: 'error',
    summary: 'Files use each other in a circle, or a file uses itself.',
    why: 'The line adds nothing; each file is read once.',
    source: 'the language',
});

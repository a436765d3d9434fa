import { defineRule } from '../../define.js';

export default defineRule({
    name: 'file-not-found',
    family: 'reading the text',
    severity: 'error',
    summary: 'A file or a library that the text uses is not there.',
    why: 'Its parts are missing from the rig, and everything that is like one of them.',
    source: 'the language',
});

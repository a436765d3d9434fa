import { defineRule } from '../../define.js';

export default defineRule({
    name: 'value-not-understood',
    family: 'reading the text',
    severity: 'error',
    summary: 'A value does not have the form that its property asks for.',
    why: 'A value that cannot be read counts as not given, and what rests on it is not worked out.',
    source: 'the language',
});

import { defineRule } from '../../define.js';

export default defineRule({
    name: 'unknown-word',
    family: 'reading the text',
    severity: 'error',
    summary: 'A kind of part, a property, a word or a unit that the language does not know.',
    why: 'An unknown word is treated as if it were not there. A safeguard that is not understood protects nothing.',
    source: 'the language',
});

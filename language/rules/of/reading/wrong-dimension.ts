import { defineRule } from '../../define.js';

export default defineRule({
    name: 'wrong-dimension',
    family: 'reading the text',
    severity: 'error',
    summary: 'A value has a unit of another sort than the property measures.',
    why: 'A voltage where a current is meant is not nearly right; it is something else.',
    source: 'the language; SI',
});

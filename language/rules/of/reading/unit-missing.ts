import { defineRule } from '../../define.js';

export default defineRule({
    name: 'unit-missing',
    family: 'reading the text',
    severity: 'error',
    summary: 'A number that needs a unit has none.',
    why: '3 can be millimetres or inches, bar or kilopascal. A guess would turn into a wrong number that looks right.',
    source: 'the language',
});

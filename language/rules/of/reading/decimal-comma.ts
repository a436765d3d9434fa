import { defineRule } from '../../define.js';

export default defineRule({
    name: 'decimal-comma',
    family: 'reading the text',
    severity: 'error',
    summary: 'A number is written with a decimal comma.',
    why: 'A comma separates the items of a list, so 1,5 V would be read as 1 and 5 V. It is the likeliest silent mistake of half the world.',
    source: 'the language; ISO 80000-1 allows point and comma, a list needs one of them',
});

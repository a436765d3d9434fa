import { defineRule } from '../../define.js';

export default defineRule({
    name: 'belongs-to-nothing',
    family: 'reading the text',
    severity: 'error',
    summary: 'Properties stand outside of any part.',
    why: 'Nobody can say what they are about, so they count for nothing. Usually the line with the kind of part was lost.',
    source: 'the language',
});

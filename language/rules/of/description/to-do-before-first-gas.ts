import { defineRule } from '../../define.js';

export default defineRule({
    name: 'to-do-before-first-gas',
    family: 'the description',
    severity: 'hint',
    summary: 'Some things need not be there yet, but must be before the rig makes its first gas.',
    why: 'A drawing need not have its tests behind it. The first gas must, so they are kept in one list until then.',
    source: 'the language',
});

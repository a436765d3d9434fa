import { defineRule } from '../../define.js';

export default defineRule({
    name: 'cannot-check-a-hazard',
    family: 'the description',
    severity: 'warning',
    summary: 'A check that guards life cannot be made, because something that it needs is not given.',
    why: 'Silence would look like a good result. A danger that nobody could check is told as one that nobody has checked.',
    source: 'the language',
});

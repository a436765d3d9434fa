import { defineRule } from '../../define.js';

export default defineRule({
    name: 'error-muted',
    family: 'the description',
    severity: 'warning',
    summary: 'A permission turns down an error or a check that guards life; this reminder stays in its place.',
    why: 'The danger is as large as before; only the message is gone. Whoever reads the rig next must still see it.',
    source: 'the language',
});

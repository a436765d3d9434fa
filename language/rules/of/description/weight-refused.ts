import { defineRule } from '../../define.js';

export default defineRule({
    name: 'weight-refused',
    family: 'the description',
    severity: 'warning',
    summary: 'A rule is to weigh less than it may.',
    why: 'What is made lighter for a whole workshop is soon forgotten. A danger is turned down in one place, by name, with a reason and an end, or not at all.',
    source: 'the language',
});

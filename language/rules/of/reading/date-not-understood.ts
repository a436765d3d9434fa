import { defineRule } from '../../define.js';

export default defineRule({
    name: 'date-not-understood',
    family: 'reading the text',
    severity: 'error',
    summary: 'A date or a time of day cannot be read.',
    why: 'Rules about tests and intervals compare dates; one that cannot be read is no date.',
    source: 'ISO 8601',
});

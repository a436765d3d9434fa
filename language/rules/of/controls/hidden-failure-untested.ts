import { defineRule } from '../../define.js';

export default defineRule({
    name: 'hidden-failure-untested',
    family: 'controls',
    severity: 'hint',
    summary: 'A part can fail without a sign, the next failure then reaches a hazard, and no test of it is on record.',
    why: 'What fails without a sign stays failed. Some day the second thing fails, and what should have caught it has been gone for months.',
    source: 'common practice, no source; the runs that show it rest on the laws of the rig at rest',
    from: 'built',
    fromRuns: true,
});

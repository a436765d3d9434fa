import { defineRule } from '../../define.js';

export default defineRule({
    name: 'single-fault-reaches-hazard',
    family: 'controls',
    severity: 'warning',
    summary: 'One part fails, and nothing acts before somebody can be hurt.',
    why: 'A rig that runs unwatched must bear any one failure: a switch that sticks, a vent that freezes, a relay that welds. Each of them happens one day.',
    source: 'common practice, no source; the run that shows it rests on the laws of the rig at rest',
    from: 'drawn',
    fromRuns: true,
});

import { notInRuns } from '../../../reference/run-pages.js';
import { defineSection, heading, list } from '../define.js';

export default defineSection({
    name: 'not-checked', title: 'Not checked here', order: 170, lead: 'What this page cannot know, and what somebody else has to look at.',
    make: ({ analysis, faults }) => {
        const cannot = analysis.findings.filter(f => f.rule === 'cannot-check-a-hazard').map(f => f.message);
        return [
            ...(cannot.length ? [heading('For want of what is not described'), ...list(cannot)] : []),
            heading('By any page'),
            ...list([
                'Whether the rig is built as it is described, and whether its parts are what their labels say.',
                'Workmanship: joints, welds, threads, cleanliness, what was in a vessel before.',
                'Law, permission, insurance and the electrical installation: those who are licensed for them decide.',
                'The people: whether they know what to do, and are awake.',
                'Ways to go wrong that nobody has written a rule for.',
            ]),
            heading('In what is followed by the clock'),
            ...list([...(typeof faults === 'string' ? [] : faults.notes), ...notInRuns]),
        ];
    },
});

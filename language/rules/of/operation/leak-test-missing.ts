import { defineRule } from '../../define.js';

export default defineRule({
    name: 'leak-test-missing',
    family: 'operation',
    severity: 'warning',
    summary: 'No test of tightness is on record.',
    why: 'Hydrogen leaks where water and air do not; a rig that was never tested leaks.',
    source: 'common practice, no source',
    guardsLife: true,
    from: 'built',
    on: 'stack',
    check(v, tell) {
        const tests = v.all('test').filter(t => t.word('result') === 'passed' && t.maybe('pressure') > 0 && t.names('covers').some(n => n !== 'separator'));
        if (tests.length) return;
        tell({ at: v.at(), message: 'No test of tightness is on record: press it with nitrogen or air, blanked, and write down how far the pressure falls.' });
    },
});

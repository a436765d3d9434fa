import { defineRule } from '../../define.js';

export default defineRule({
    name: 'program-is-only-guard',
    family: 'controls',
    severity: 'warning',
    summary: 'Every guard passes through a program, and nothing drops the rig when it hangs.',
    why: 'A program that hangs keeps its outputs as they were: the rig runs on with all its guards asleep.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'controller',
    check(v, tell) {
        const stops = v.controls.stackStoppers();
        const decided = v.names('decides').filter(n => ['switch', 'trip', 'analyser', 'detector'].includes(v.other(n)?.kind ?? '') && (stops.has(n) || v.controls.stops(n).length));
        if (!decided.length || v.names('watchdog').length || v.word('watchdog') || v.word('if-frozen') === 'drops') return;
        tell({ at: v.at(v.said('watchdog') ? 'watchdog' : 'decides'), message: `${decided.slice(0, 3).join(', ')} ${decided.length > 1 ? 'exist' : 'exists'} only in the program of ${v.name}; when it hangs nothing stops the rig.` });
    },
});

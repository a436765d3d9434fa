import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'check-valve-cracks-too-high',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'The spring of a check valve on the low side presses on the separators.',
    why: 'What it takes to open stands across every separator, all the time.',
    source: 'hydrostatics; ordinary spring valves open at 2 kPa to 7 kPa, half of the bubble point as the limit: common practice, no source',
    on: 'check-valve',
    check(v, tell) {
        const stack = v.the('stack');
        const media = v.paths.mediaOf(v.name);
        const gas = media.has('hydrogen') ? 'hydrogen' as const : 'oxygen' as const;
        if (!stack || !media.has(gas)) return;
        const before = v.paths.before(v.name, gas);
        if (!before.includes(stack.name) || before.some(n => ['bag', 'gasometer', 'compressor'].includes(v.other(n)?.kind ?? ''))) return;
        const cracks = v.maybe('cracks-at');
        const across = stack.maybeQ(`${gas}-head`) - stack.maybeQ(`${gas === 'hydrogen' ? 'oxygen' : 'hydrogen'}-head`);
        const point = stack.maybeQ('bubble-point');
        if (!(cracks > 300) || !tell.exceeds(across, 0.5 * point, 'kPa', v, 'cracks-at')) return;
        tell({
            at: v.at('cracks-at'), severity: across >= point ? 'error' : 'warning',
            message: `${v.name} opens at ${show(cracks, 'kPa')}, so that ${show(across, 'kPa')} stand across the separators; they let gas through at ${show(point, 'kPa')}, half of it is the limit.`,
            fixes: defined(setValue(v, 'cracks-at', '0.2 kPa', 'Use a flap of 0.2 kPa')),
        });
    },
});

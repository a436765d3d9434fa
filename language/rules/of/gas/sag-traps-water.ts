import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import type { View } from '../../../quantities/view.js';

/** Least fall of a hose with wet gas. Common practice, no source. */
const LEAST = 0.02;

export default defineRule({
    name: 'sag-traps-water',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'Water gathers in a hose with wet gas.',
    why: 'Each millimetre of water in a sag is ten pascal more on that side, it comes and goes in surges, and in frost it is a plug.',
    source: 'hydrostatics; 1 in 50: common practice, no source',
    on: 'tube',
    check(v, tell) {
        const low = v.word('slope.low') === 'low-point';
        const slope = v.maybe('slope');
        if (!low && !(slope < LEAST)) return;
        const media = v.paths.mediaOf(v.name);
        for (const gas of ['hydrogen', 'oxygen'] as const) {
            if (!media.has(gas) || !wetAt(v, gas)) continue;
            // A drain at its end takes the water.
            if ([...v.paths.from(v.name, gas).map(l => l.to.name), ...v.paths.to(v.name, gas).map(l => l.from.name)].some(n => v.other(n)?.kind === 'trap' && v.other(n)!.word('sort') === 'drain')) continue;
            tell({
                at: v.at('slope'), severity: low ? 'warning' : 'hint',
                message: low
                    ? `Water from the wet ${gas} gathers in the low point of ${v.name}: 100 mm of it hold back the gas by 1 kPa.`
                    : `${v.name} falls by ${show(slope, '%')}; water from the wet ${gas} runs off from ${show(LEAST, '%')} on.`,
                fixes: defined(setValue(v, 'slope', '4 %, no-low-point', 'Let it fall by 4 %')),
            });
            return;
        }
    },
});

/** The gas of the stack comes here before anything dries or presses it. */
function wetAt(v: View, gas: 'hydrogen' | 'oxygen'): boolean {
    const stack = v.the('stack');
    const way = stack && v.paths.route(stack.name, v.name, gas);
    return !!way && !way.some(n => ['dryer', 'compressor', 'cylinder'].includes(v.other(n)?.kind ?? ''));
}

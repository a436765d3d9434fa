/** The pressure that a gas must push against on its way out, part by part: heads of liquid, weights, springs, friction. */
import { GRAVITY } from '../physics/constants.js';
import { tubeDrop } from '../physics/flow.js';
import { gasViscosity, idealGasDensity } from '../physics/gases.js';
import { MOLAR_MASS } from '../physics/constants.js';
import type { Medium } from '../vocabulary/define.js';
import { pathEnds } from '../rig/assemble.js';
import type { View } from './view.js';

/** kg/m³ of what stands in a bubbler or seal. */
export function sealLiquidDensity(v: View): number {
    const fluid = v.word('fluid') ?? 'water';
    return fluid.startsWith('glycol') ? 1030 : fluid === 'weak-lye' ? 1040 : 998;
}
/** Pa that one part adds on the way of a gas that flows; 0 for what does not resist; NaN if it must be known and is not. */
export function headOfPart(v: View, medium: 'hydrogen' | 'oxygen'): number {
    switch (v.kind) {
        case 'bubbler':
        case 'scrubber':
            return v.word('enters') === 'top' ? 0 : v.num('immersion') * sealLiquidDensity(v) * GRAVITY;
        case 'seal':
            return v.num('depth') * sealLiquidDensity(v) * GRAVITY;
        case 'check-valve':
            return v.num('cracks-at');
        case 'bag':
            return v.num('own-pressure');
        case 'gasometer':
            return v.q('head');
        case 'tube':
            return tubeLoss(v, medium);
        case 'arrestor':
            return v.maybe('drop.drop', 0);
        default:
            return 0;
    }
}
/** Pa that gas loses in a tube at the rate of the stack, at 25 °C. */
export function tubeLoss(v: View, medium: 'hydrogen' | 'oxygen'): number {
    const rate = (v.the('stack')?.maybeQ('hydrogen-rate', 0) ?? 0) * (medium === 'hydrogen' ? 1 : 0.5);
    const flow = rate * 0.024465;
    return tubeDrop(flow, tubeBore(v), v.maybe('length', 1), idealGasDensity(MOLAR_MASS[medium], 298.15, 101325), gasViscosity(medium, 298.15), 1.5);
}
/** Inner width of a tube: said as `bore`, or as outside x wall. */
export function tubeBore(v: View): number {
    const size = v.sizes('size');
    return size && size.length >= 2 ? size[0] - 2 * size[1] : v.num('bore');
}

export interface Way {
    /** Parts passed, in order, the end or the vessel that takes the gas last. */
    readonly parts: readonly string[];
    readonly head: number;
}
/**
 * The way that a gas takes from a part: of all ways to a vessel or an end the one with the least head. Valves that power
 * keeps shut are shut; what stands behind a bag or bell does not push back. Ways through the part `without` do not count.
 */
export function easiestWay(q: View, from: string, medium: 'hydrogen' | 'oxygen', without?: string): Way | undefined {
    let best: Way | undefined;
    for (const route of q.paths.routes(from, medium as Medium)) {
        if (route.length < 2) continue; // No path of this gas is drawn.
        if (without !== undefined && route.includes(without)) continue;
        const parts: string[] = [];
        let head = 0;
        let open = true;
        for (const name of route.slice(1)) {
            const v = q.other(name);
            parts.push(name);
            if (!v) {
                // A name that stands for nothing: who knows how far it presses back.
                if (!pathEnds.has(name)) head = NaN;
                break;
            }
            if (v.kind === 'valve' && v.names('shut-while').length) open = false;
            if (v.kind === 'compressor' || v.kind === 'relief-valve' || v.kind === 'unloader') {
                open = false;
                break;
            }
            head += headOfPart(v, medium);
            if (v.kind === 'bag' || v.kind === 'gasometer') break;
        }
        if (open && (!best || head < best.head || best.head !== best.head)) best = { parts, head };
    }
    return best;
}
/** Pa against which one side of the stack works; NaN if a part on its way is not known well enough, 0 where it simply ends. */
export function sideHead(q: View, medium: 'hydrogen' | 'oxygen'): number {
    const stack = q.the('stack');
    if (!stack) return NaN;
    return easiestWay(q, stack.name, medium)?.head ?? NaN;
}

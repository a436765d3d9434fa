/** The pressure that a gas must push against on its way out, part by part: heads of liquid, weights, springs, friction. */
import { GRAVITY, MOLAR_MASS } from '../physics/constants.js';
import { tubeDrop } from '../physics/flow.js';
import { gasVolume } from '../physics/gas-volume.js';
import { gasViscosity, idealGasDensity } from '../physics/gases.js';
import type { Medium } from '../vocabulary/define.js';
import { pathEnds } from '../rig/assemble.js';
import { airPressureOf, IN_THE_HOSE, WATER_DENSITY } from './surroundings.js';
import type { View } from './view.js';

/** kg/m³ at 20 °C of what keeps a seal from freezing: a quarter of glycol, lye of 5 wt%. Handbook values, from memory. */
const GLYCOL_DENSITY = 1030;
const WEAK_LYE_DENSITY = 1040;
/** Loss factors of one sharp entry and one exit of a pipe, in velocity heads: 0.5 and 1. Textbook. */
export const ENTRY_AND_EXIT = 1.5;
/** m, a hose whose length is not stated. */
const USUAL_HOSE = 1;

/** The gas that passes a part; undefined if none does, hydrogen where both do. */
export function gasOf(v: View): 'hydrogen' | 'oxygen' | undefined {
    const media = v.paths.mediaOf(v.name);
    return media.has('hydrogen') ? 'hydrogen' : media.has('oxygen') ? 'oxygen' : undefined;
}
/** kg/m³ of what stands in a bubbler or seal; water where the text does not say. */
export function sealLiquidDensity(v: View): number {
    const fluid = v.word('fluid') ?? 'water';
    return fluid.startsWith('glycol') ? GLYCOL_DENSITY : fluid === 'weak-lye' ? WEAK_LYE_DENSITY : WATER_DENSITY;
}
/**
 * Pa that one part adds on the way of a gas that flows; 0 for what does not resist; NaN if it must be known and is not.
 * Hydrostatics of its liquid, what its maker states (valves, bags, arrestors), or friction of the stack's gas (tubes).
 */
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
/**
 * Pa that the gas of the stack loses in a tube: dry, at 25 °C and the air's pressure, smooth and clean, entry and exit counted.
 * 0 where the stack's rate is not known, NaN where the bore is not. Source: [hagen-poiseuille], [blasius-1913]
 */
export function tubeLoss(v: View, medium: 'hydrogen' | 'oxygen'): number {
    const rate = (v.the('stack')?.maybeQ('hydrogen-rate', 0) ?? 0) * (medium === 'hydrogen' ? 1 : 0.5);
    const air = airPressureOf(v);
    return tubeDrop(
        gasVolume(rate, IN_THE_HOSE, air), tubeBore(v), v.maybe('length', USUAL_HOSE),
        idealGasDensity(MOLAR_MASS[medium], IN_THE_HOSE, air), gasViscosity(medium, IN_THE_HOSE), ENTRY_AND_EXIT,
    );
}
/** m, inner width of a tube: said as `bore`, or as outside x wall. */
export function tubeBore(v: View): number {
    const size = v.sizes('size');
    return size && size.length >= 2 ? size[0] - 2 * size[1] : v.num('bore');
}

/** A way that a gas can take, and the pressure that it costs. */
export interface Way {
    /** Parts passed, in order, the end or the vessel that takes the gas last. */
    readonly parts: readonly string[];
    /** Pa above the air outside; NaN if a part on it is not known well enough. */
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

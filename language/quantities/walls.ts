/** Hydrogen through films and hose walls: what lets it through, and how much surface there is. */
import { materials } from '../vocabulary/materials.js';
import { permeabilityDoubt } from './doubts.js';
import type { View } from './view.js';

/**
 * mol/(m·s·Pa) of hydrogen in the wall of a part, by its material, within a factor of two; NaN where it is not told or not known.
 * Source: table of materials.
 */
export function hydrogenThrough(v: View): number {
    const word = v.word('material');
    return word === undefined ? v.num('material') : (materials.get(word)?.hydrogenPermeability ?? NaN) * Math.exp(v.doubt(permeabilityDoubt));
}
/** m², the least that encloses a volume of so many m³: a ball. A flat bag has more. */
export function leastSurface(volume: number): number {
    return (36 * Math.PI * volume ** 2) ** (1 / 3);
}

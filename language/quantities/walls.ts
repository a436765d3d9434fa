/** Hydrogen through films and hose walls: what lets it through, and how much surface there is. */
import { permeationFlow } from '../physics/permeation.js';
import { materials } from '../vocabulary/materials.js';
import { cushionDoubt, permeabilityDoubt } from './doubts.js';
import { airPressureOf } from './surroundings.js';
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
/** Film of a bag over the surface of a ball of its volume: a ball has 1, a cushion of two square sheets 1.25, one four times as long as wide 1.52. */
const CUSHION = 1.3;
/** m² of film around a bag: both layers as it lies flat, else between a ball and a long cushion of its volume. */
export function filmArea(bag: View): number {
    const sides = bag.sizes('size');
    if (!sides) return CUSHION * (1 + bag.doubt(cushionDoubt)) * leastSurface(bag.num('volume'));
    const area = 2 * sides[0] * sides[1];
    bag.workingsNote('size', area);
    return area;
}
/** mol/s of hydrogen that a bag loses through its film while it stands full of it. */
export function lostByFilm(bag: View): number {
    return permeationFlow(hydrogenThrough(bag), bag.q('film-area'), bag.num('thickness'), airPressureOf(bag));
}

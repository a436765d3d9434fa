/** Pieces of a material hung in lye to see what becomes of them, and where that material is wetted in the rig. */
import type { View } from '../quantities/view.js';
import type { Span } from '../rig/rig.js';
import { wettedParts } from './wetted-parts.js';

/** Places at which lye wets a material of this name: walls, gaskets, tubes, cloth and plates. */
export function wettedOf(v: View, material: string): { readonly at: Span; readonly told: string }[] {
    const found = wettedParts(v).filter(w => w.name === material).map(w => ({ at: w.at, told: `${w.what} of ${w.part.name}` }));
    for (const s of v.all('separator')) if (s.said('material') && s.word('material') === material) found.push({ at: s.at('material'), told: s.name });
    for (const s of v.all('stack')) if (s.said('plate') && s.word('plate.material') === material) found.push({ at: s.atSlot('plate.material'), told: `a plate of ${s.name}` });
    return found;
}

/** Which parts lye wets, and what they are made of: read by the rules on materials. */
import type { View } from '../quantities/view.js';
import type { Span } from '../rig/rig.js';
import { materials, type Material } from '../vocabulary/materials.js';

export interface WettedPart {
    readonly part: View;
    /** What of it: 'the wall', 'the channel'. */
    readonly what: string;
    readonly name: string;
    readonly material: Material | undefined;
    /** Where the material is written. */
    readonly at: Span;
    /** Written in this part, so that a fix can change it there. */
    readonly own: boolean;
    /** It holds lye by itself: when it gives way, lye runs out at once. */
    readonly vessel: boolean;
}

/** Every wetted part whose material is said, plates and separators left out: they have rules of their own. */
export function wettedParts(v: View): readonly WettedPart[] {
    const found: WettedPart[] = [];
    const add = (part: View, key: string, what: string, vessel = false) => {
        const { status, from } = part.given(key.split('.')[0]);
        const name = part.word(key);
        // Where one part is like another of the rig, the other is told.
        if (!name || (status !== 'stated' && status !== 'like') || (from && v.other(from.name))) return;
        found.push({ part, what, name, material: materials.get(name), at: part.atSlot(key), own: status === 'stated', vessel });
    };
    for (const s of v.all('stack')) {
        add(s, 'manifold.material', 'the channel');
        add(s, 'gasket.material', 'the gasket');
    }
    for (const c of v.all('column')) add(c, 'material', 'the wall', true);
    for (const c of v.all('cooler')) if (c.word('sort') !== 'fan' && c.word('sort') !== 'none') add(c, 'material', 'the tube');
    const wet = new Set(v.paths.on('lye'));
    for (const t of v.all('tube')) if (wet.has(t.name)) add(t, 'material', 'the tube');
    return found;
}

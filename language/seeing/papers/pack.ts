/** How many of what lies between the end boards, and how high it stands when it is pressed; as far as the text tells. */
import { GASKETS_PER_CELL } from '../../quantities/of/mechanics.js';
import type { View } from '../../quantities/view.js';
import type { Bench } from './bench.js';

/** Of every ten pieces that tear, swell or are cut wrong, one more is cut; two at least. Common practice, no source. */
export const spare = (n: number): number => (n === n ? Math.max(2, Math.ceil(n / 10)) : NaN);

export interface Pack {
    readonly stack: View;
    readonly groups: number;
    /** In one group. */
    readonly cells: number;
    readonly plates: number;
    readonly gaskets: number;
    readonly separators: number;
    /** Fed at a plate in the middle: both groups lie in one pack, mirrored. */
    readonly mirrored: boolean;
    /** m between the end boards when pressed, without and with the clamped edges of the separators. NaN if not told in full. */
    readonly height: { readonly least: number; readonly most: number };
}
export function packOf(b: Bench): Pack | undefined {
    const stack = b.the('stack');
    if (!stack) return undefined;
    const groups = stack.maybe('groups', 1);
    const cells = b.num(stack, 'cells');
    const mirrored = stack.word('feed') === 'middle' && groups === 2;
    const plates = groups * (cells + 1) - (stack.word('feed') === 'middle' ? groups - 1 : 0);
    const split = stack.says('separator') !== 'none' && b.the('separator') !== undefined;
    const thickness = plateThickness(b, stack);
    const pressed = b.num(stack, 'gasket.pressed');
    const gaskets = split ? GASKETS_PER_CELL * groups * cells : NaN;
    const separators = split ? groups * cells : NaN;
    const least = groups === 1 || mirrored ? plates * thickness + gaskets * pressed : NaN;
    return { stack, mirrored, groups, cells, plates, gaskets, separators, height: { least, most: least + separators * b.num(b.the('separator'), 'thickness') } };
}
/** m; from the size, or by itself. */
export function plateThickness(b: Bench, stack: View): number {
    return b.sizes(stack, 'plate.size')?.[2] ?? b.num(stack, 'plate.thickness');
}
/** Width and height of the gaskets, m: as told, else as the plates, between which they lie. */
export function outlineOf(b: Bench, stack: View): readonly [number, number] | undefined {
    const sizes = b.sizes(stack, 'gasket.outline') ?? b.sizes(stack, 'plate.size');
    return sizes && [sizes[0], sizes[1]];
}
/** A pressed gasket this near to the gap, as a share of it, fills it. Own choice. */
const FILLS = 0.25;
/** Whether the text tells that nothing but a gasket lies between plate and separator. */
export function gasketsAreFrames(b: Bench, stack: View): boolean {
    const [gap, pressed] = [b.num(stack, 'gap'), b.num(stack, 'gasket.pressed')];
    return gap > 0 && Math.abs(pressed - gap) <= FILLS * gap;
}
/** Width and height of a separator sheet, m: as told, or its window and clamped edge. */
export function separatorSheet(b: Bench, stack: View): { readonly size: readonly [number, number]; readonly by: string } | undefined {
    const separator = b.the('separator');
    const told = b.sizes(separator, 'size');
    if (told) return { size: [told[0], told[1]], by: 'told' };
    const window = b.sizes(stack, 'wetted');
    const edge = b.num(separator, 'clamped');
    return window && edge > 0 ? { size: [window[0] + 2 * edge, window[1] + 2 * edge], by: 'window and clamped edge on all sides' } : undefined;
}
/** Where a window stands in its plate, m from the left and lower edge; undefined unless the text tells it for both directions. */
export function windowPlace(b: Bench, stack: View): readonly [number, number] | undefined {
    const told = b.sizes(stack, 'window-at');
    if (told) return [told[0], told[1]];
    const plate = b.sizes(stack, 'plate.size');
    const window = b.sizes(stack, 'wetted');
    const cover = b.num(stack, 'edge-cover');
    if (!plate || !window) return undefined;
    const margins = [0, 1].map(i => (plate[i] - window[i]) / 2);
    // A cover that fits on all four sides leaves one place only.
    return margins.every(m => m > 0 && Math.abs(m - cover) < 0.25e-3) ? [margins[0], margins[1]] : undefined;
}
export interface Hole {
    readonly what: string;
    /** m */
    readonly bore: number;
    readonly at: readonly [number, number];
}
/** Holes whose place the text tells, from the lower left corner of the plate as seen from the front. */
export function holesOf(stack: View): Hole[] {
    return stack.rows('holes').flatMap(row => {
        const [what, bore, place] = ['what', 'bore', 'place'].map(s => row.get(s));
        return place?.sizes && bore && bore.number > 0 ? [{ what: what?.word ?? 'hole', bore: bore.number, at: [place.sizes[0], place.sizes[1]] as const }] : [];
    });
}
/** m of material that stays between a hole and what is next to it. Common practice, no source. */
const LEAST_RIM = 2e-3;
/** Holes that leave less than a rim of plate, in words for whoever drills. */
export function thinRims(b: Bench, stack: View): string[] {
    const holes = holesOf(stack);
    const plate = b.sizes(stack, 'plate.size');
    const window = b.sizes(stack, 'wetted');
    const place = windowPlace(b, stack);
    const mm = (m: number) => Math.round(m * 1e4) / 10;
    const name = (h: Hole) => `${h.what} hole at ${mm(h.at[0])}, ${mm(h.at[1])} mm`;
    const found: string[] = [];
    holes.forEach((h, i) => {
        const tell = (rim: number, what: string) => {
            if (rim < LEAST_RIM - 1e-9) found.push(`${name(h)}: ${rim < 0 ? `reaches over ${what} by ${mm(-rim)} mm` : `${mm(rim)} mm to ${what}`}`);
        };
        if (plate) tell(Math.min(h.at[0], h.at[1], plate[0] - h.at[0], plate[1] - h.at[1]) - h.bore / 2, 'the edge of the plate');
        if (window && place) {
            const away = [0, 1].map(k => Math.max(place[k] - h.at[k], h.at[k] - place[k] - window[k]));
            tell((away.every(d => d > 0) ? Math.hypot(...away) : Math.max(...away)) - h.bore / 2, 'the window');
        }
        for (const o of holes.slice(i + 1)) tell(Math.hypot(h.at[0] - o.at[0], h.at[1] - o.at[1]) - (h.bore + o.bore) / 2, `the ${name(o)}`);
    });
    return found;
}
/** mm, clearance holes for metric screws, middle row: ISO 273, from memory. */
const CLEARANCE: Readonly<Record<string, number>> = { M3: 3.4, M4: 4.5, M5: 5.5, M6: 6.6, M8: 9, M10: 11, M12: 13.5, M16: 17.5, M20: 22 };
/** m; NaN for threads that are not in that table. */
export const clearanceOf = (thread: string | undefined): number => (CLEARANCE[(thread ?? '').replace(/\s/g, '')] ?? NaN) / 1000;
/** mm: height of a plain nut (ISO 4032), thickness of a washer (ISO 7089), pitch of the thread (ISO 261). All from memory. */
const NUT: Readonly<Record<string, readonly [number, number, number]>> = { M5: [4.7, 1, 0.8], M6: [5.2, 1.6, 1], M8: [6.8, 1.6, 1.25], M10: [8.4, 2, 1.5], M12: [10.8, 2.5, 1.75], M16: [14.8, 3, 2] };
/** Turns of thread that stand out of a nut. Common practice, no source. */
const TURNS = 2;
/** m; NaN unless pack, boards and thread are told. */
export function leastRodLength(b: Bench, pack: Pack): number {
    const nut = NUT[(b.told(pack.stack, 'tie-rods.thread') ?? '').replace(/\s/g, '')];
    if (!nut) return NaN;
    const [height, washer, pitch] = nut;
    return pack.height.most + 2 * b.num(pack.stack, 'end-board.thickness') + (2 * (height + washer + TURNS * pitch)) / 1000;
}

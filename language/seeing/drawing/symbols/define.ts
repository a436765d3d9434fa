/**
 * How the symbol of a kind of part is declared. One entry per kind, one file per group; layout and drawing read nothing else. The
 * figures are our own drawings of what ISO 10628-2, ISO 14617 and IEC 60617 describe (from memory: neither was at hand); where they
 * have nothing, as for a bag or a liquid seal, a figure in the same manner.
 *
 * Places count from the main line: x = 0 is the middle, y = 0 the height at which the line comes in on the left and leaves on the
 * right. A line may also come or go at the bottom (`S`) or the top (`N`).
 */
export type Side = 'N' | 'E' | 'S' | 'W';
export interface Port {
    readonly side: Side;
    /** Off the middle, for `N` and `S`. Steps of 12 at the bottom, odd steps of 6 at the top, so that no line from above meets one from below. */
    readonly x?: number;
}
export interface Symbol {
    /** How far it reaches from its middle and from its main line. */
    readonly half: number;
    readonly up: number;
    readonly down: number;
    /** Outlined and filled, so that nothing behind shows through. */
    readonly body?: string;
    /** Thin lines. */
    readonly thin?: string;
    readonly dashed?: string;
    /** Filled with ink. */
    readonly solid?: string;
    /** A letter or two inside. */
    readonly letters?: string;
    /** Where a medium comes in or goes out, if not left and right: 'oxygen out', 'lye in'. */
    readonly ports?: Readonly<Record<string, Port>>;
    /** The standard whose figure it is, or 'our own'. */
    readonly after: 'ISO 10628-2' | 'ISO 14617' | 'IEC 60617' | 'our own';
}
/** By kind, or kind/sort where the sort has a figure of its own. */
export type Symbols = Readonly<Record<string, Symbol>>;

export const circle = (x: number, y: number, r: number): string => `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
export const box = (half: number, up: number, down = up): string => `M${-half} ${-up}H${half}V${down}H${-half}Z`;
/** Upright vessel with domed ends. */
export const domed = (half: number, up: number, down: number, dome = 8): string =>
    `M${-half} ${dome - up}C${-half} ${-up - dome / 3} ${half} ${-up - dome / 3} ${half} ${dome - up}V${down - dome}C${half} ${down + dome / 3} ${-half} ${down + dome / 3} ${-half} ${down - dome}Z`;
/** Surface of a liquid, with its mark. */
export const surface = (half: number, y: number, at = 0): string => `M${-half} ${y}H${half}M${at} ${y}l-3.5-5.5h7zM${at - 4.5} ${y + 3.5}h9M${at - 2.5} ${y + 6.5}h5`;
export const bubbles = (x: number, y: number): string => circle(x, y, 1.8) + circle(x + 5, y + 5, 2.2) + circle(x + 1, y + 10, 1.8);
/** The two triangles of a valve. */
export const bowTie = (half: number, h: number): string => `M${-half} ${-h}V${h}L${half} ${-h}V${h}Z`;
export const arrow = (x: number, y: number, dx: number, dy: number): string => `M${x} ${y}l${-7 * dx - 3 * dy} ${-7 * dy - 3 * dx}l${6 * dy} ${6 * dx}Z`;

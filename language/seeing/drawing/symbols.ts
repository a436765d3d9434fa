/**
 * Symbols of parts, drawn by us after what ISO 10628-2, ISO 14617 and IEC 60617 describe (from memory); where the standards have none, as for
 * a bag, in their manner. Coordinates from the top left corner of the symbol, 1 = 1 px; the symbol of a new kind is one entry in `symbolOf`.
 */

export type Edge = 'N' | 'S' | 'E' | 'W';
export interface Port {
    readonly x: number;
    readonly y: number;
    readonly side: Edge;
    /** A line that ends here closes a loop, and does not say what comes after what. */
    readonly returns?: boolean;
}
export interface Symbol {
    readonly width: number;
    readonly height: number;
    readonly ports: Readonly<Record<string, Port>>;
    /** Outlined and filled. */
    readonly path: string;
    /** Details: thin lines. */
    readonly thin?: string;
    readonly dashed?: string;
    /** No inside to fill. */
    readonly open?: boolean;
    /** On which side its name stands: one without lines. */
    readonly label?: Edge;
    /** Where instruments sit: the tapping point and its side. */
    readonly tap?: { readonly x: number; readonly y: number; readonly side: 'E' | 'N' };
}

const circle = (x: number, y: number, r: number) => `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
const domed = (w: number, h: number, d = 10) => `M0 ${d}C0 ${-d / 3} ${w} ${-d / 3} ${w} ${d}V${h - d}C${w} ${h + d / 3} 0 ${h + d / 3} 0 ${h - d}Z`;
const port = (x: number, y: number, side: Edge, returns?: boolean): Port => ({ x, y, side, returns });
const through = (w: number, y: number) => ({ in: port(0, y, 'W'), out: port(w, y, 'E') });
const surface = (x: number, y: number) => `M${x} ${y}l-4 -6h8zM${x - 5} ${y + 4}h10M${x - 3} ${y + 7}h6`;
const coil = (w: number, y: number) => `M0 ${y}H${w / 2 - 12}l6 -11l12 22l6 -11H${w}`;
const plates = (from: number, to: number, step: number, at: (x: number) => string) => Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => at(from + i * step)).join('');

const shapes = {
    stack: { width: 96, height: 84, ports: { plus: port(0, 22, 'W'), minus: port(0, 62, 'W', true), oxygen: port(96, 22, 'E'), hydrogen: port(96, 62, 'E'), lye: port(48, 84, 'S', true) }, path: 'M0 0H96V84H0Z', thin: `${plates(12, 87, 15, x => `M${x - 3} 8V76`)}M4 18V26M0 22H8M2 62H8`, dashed: plates(17, 77, 15, x => `M${x} 8V76`), label: 'N' },
    column: { width: 34, height: 90, ports: { in: port(0, 40, 'W'), gas: port(17, 0, 'N'), lye: port(12, 90, 'S'), link: port(24, 90, 'S', true) }, path: domed(34, 90), thin: `M1 34H33${surface(17, 34)}`, label: 'W', tap: { x: 34, y: 52, side: 'E' } },
    dipped: { width: 40, height: 60, ports: through(40, 10), path: domed(40, 60), thin: 'M0 10H20V46M1 28H39M26 38a2 2 0 1 0 .1 0M31 45a2.5 2.5 0 1 0 .1 0M25 51a2 2 0 1 0 .1 0' },
    washed: { width: 40, height: 60, ports: through(40, 14), path: domed(40, 60), thin: 'M1 40H39M6 24l4 4m4 -4l4 4m4 -4l4 4m4 -4l4 4M6 30l4 4m4 -4l4 4m4 -4l4 4m4 -4l4 4' },
    bag: { width: 64, height: 50, ports: through(64, 25), path: 'M0 25C0 -8 64 -8 64 25C64 58 0 58 0 25Z', dashed: 'M4 25C17 10 47 10 60 25', tap: { x: 32, y: 1, side: 'N' } },
    bell: { width: 64, height: 60, ports: through(64, 40), path: 'M0 20V60H64V20M10 46V10Q32 -4 54 10V46', thin: 'M0 32H10M54 32H64', open: true, tap: { x: 32, y: 3, side: 'N' } },
    dryer: { width: 30, height: 60, ports: through(30, 30), path: domed(30, 60, 8), thin: 'M0 14H30M0 46H30M0 14L30 46M30 14L0 46' },
    arrestor: { width: 40, height: 30, ports: through(40, 15), path: 'M0 0H40V30H0Z', thin: plates(8, 32, 6, x => `M${x} 0V30`) },
    compressor: { width: 40, height: 40, ports: through(40, 20), path: circle(20, 20, 20), thin: 'M4 8L38 14M4 32L38 26', tap: { x: 20, y: 0, side: 'N' } },
    pump: { width: 40, height: 40, ports: through(40, 20), path: circle(20, 20, 20), thin: 'M20 0L40 20L20 40' },
    fan: { width: 40, height: 40, ports: through(40, 20), path: circle(20, 20, 20), thin: 'M20 20Q10 4 20 4Q28 10 20 20Q36 26 30 34Q20 34 20 20Q4 28 4 18Q12 10 20 20' },
    exchanger: { width: 40, height: 40, ports: { ...through(40, 20), coldIn: port(8, 36, 'S'), coldOut: port(32, 36, 'S') }, path: circle(20, 20, 20), thin: coil(40, 20), label: 'N' },
    valve: { width: 30, height: 20, ports: through(30, 10), path: 'M0 1V19L30 1V19Z' },
    driven: { width: 30, height: 34, ports: through(30, 24), path: 'M0 15V33L30 15V33ZM8 0H22V12H8Z', thin: 'M15 24V12' },
    regulator: { width: 30, height: 40, ports: through(30, 30), path: 'M0 21V39L30 21V39ZM5 14C5 1 25 1 25 14Z', thin: 'M15 30V14M25 10H38V30' },
    check: { width: 30, height: 20, ports: through(30, 10), path: 'M0 1V19M30 1V19M0 1L30 19', thin: 'M22 8l8 11l-12 -4', open: true },
    relief: { width: 32, height: 42, ports: { in: port(10, 42, 'S'), out: port(32, 26, 'E') }, path: 'M10 26L2 42H18ZM10 26L32 18V34Z', thin: 'M10 26V18l6 -2l-12 -3.5l12 -3.5l-12 -3.5l6 -2V0', label: 'N' },
    cylinder: { width: 40, height: 100, ports: { in: port(0, 44, 'W'), relief: port(20, 0, 'N'), out: port(40, 44, 'E') }, path: 'M15 0H25V10C38 13 40 20 40 28V94Q40 100 34 100H6Q0 100 0 94V28C0 20 2 13 15 10Z', tap: { x: 40, y: 78, side: 'E' } },
    filter: { width: 40, height: 30, ports: through(40, 15), path: 'M0 0H40V30H0Z', dashed: 'M20 0V30' },
    trap: { width: 26, height: 50, ports: through(26, 12), path: 'M0 0H26V34L13 50L0 34Z', thin: 'M1 30H25' },
    catalyst: { width: 40, height: 30, ports: through(40, 15), path: 'M0 0H40V30H0Z', thin: 'M0 0L40 30M40 0L0 30' },
    vent: { width: 16, height: 26, ports: { in: port(0, 26, 'W') }, path: 'M0 26H10V0M5 8L10 0L15 8', label: 'E', open: true },
    flame: { width: 26, height: 34, ports: { in: port(0, 28, 'W') }, path: 'M0 28H10V22H16V28H26', thin: 'M13 22C4 14 13 10 12 2C20 8 21 16 13 22Z', label: 'E', open: true },
    end: { width: 16, height: 18, ports: { in: port(0, 9, 'W'), out: port(16, 9, 'E') }, path: 'M0 0L16 9L0 18Z', label: 'S' },
    balloon: { width: 40, height: 44, ports: { in: port(0, 22, 'W') }, path: 'M0 22C0 -8 40 -8 40 22C40 34 26 40 20 42C14 40 0 34 0 22Z' },
    engine: { width: 44, height: 36, ports: through(44, 18), path: 'M0 0H44V36H0Z', thin: 'M14 26V10L22 20L30 10V26' },
    // What carries current.
    mains: { width: 30, height: 30, ports: through(30, 15), path: circle(15, 15, 15), thin: 'M6 15q4.500 -9 9 0t9 0' },
    source: { width: 50, height: 50, ports: { in: port(0, 25, 'W'), out: port(50, 15, 'E'), minus: port(50, 35, 'E') }, path: 'M0 0H50V50H0Z', thin: 'M50 0L0 50M7 14q4 -8 8 0t8 0M29 36H43M29 42H33.500M36 42H43', label: 'N' },
    converter: { width: 50, height: 50, ports: { in: port(0, 25, 'W'), out: port(50, 15, 'E'), minus: port(50, 35, 'E') }, path: 'M0 0H50V50H0Z', thin: 'M50 0L0 50M7 12H21M7 18H11.500M14 18H21M29 36H43M29 42H33.500M36 42H43', label: 'N' },
    winding: { width: 50, height: 44, ports: through(50, 22), path: `${circle(18, 22, 15)}${circle(32, 22, 15)}`, open: true, label: 'N' },
    rectifier: { width: 44, height: 44, ports: through(44, 22), path: 'M0 0H44V44H0Z', thin: 'M12 22H32M16 14L28 22L16 30ZM28 14V30' },
    battery: { width: 46, height: 36, ports: through(46, 18), path: 'M0 18H12M12 2V34M18 10V26M26 2V34M32 10V26M32 18H46', thin: '', open: true },
    panels: { width: 50, height: 36, ports: through(50, 18), path: 'M0 0H50V36H0Z', thin: 'M0 18H12M12 6V30M18 11V25M18 18H50M30 -8l5 6m-1 -4l1 4l-4 -1M38 -8l5 6m-1 -4l1 4l-4 -1', label: 'S' },
    fuse: { width: 50, height: 20, ports: through(50, 10), path: 'M5 3H45V17H5Z', thin: 'M0 10H50', label: 'N' },
    diode: { width: 40, height: 20, ports: through(40, 10), path: 'M12 1L28 10L12 19Z', thin: 'M0 10H12M28 1V19M28 10H40', label: 'N' },
    contact: { width: 50, height: 24, ports: through(50, 20), path: 'M0 20H13L35 5M37 20H50M37 15V24', open: true, label: 'N' },
    capacitor: { width: 40, height: 24, ports: through(40, 12), path: 'M0 12H17M17 1V23M23 1V23M23 12H40', open: true, label: 'N' },
    meter: { width: 30, height: 30, ports: through(30, 15), path: circle(15, 15, 15), thin: 'M8 20L21 9m-4 0h4v4' },
    plain: { width: 44, height: 30, ports: through(44, 15), path: 'M0 0H44V30H0Z' },
} as const satisfies Record<string, Symbol>;
export type Shape = keyof typeof shapes;
export const symbols: Readonly<Record<Shape, Symbol>> = shapes;

/** The symbol of each kind of part that can stand on a path; what is a line or a joint of lines itself has none. */
export const symbolOf: Readonly<Record<string, Shape>> = {
    stack: 'stack', column: 'column', bubbler: 'dipped', seal: 'dipped', scrubber: 'washed', bag: 'bag', gasometer: 'bell', balloon: 'balloon', dryer: 'dryer', arrestor: 'arrestor', recombiner: 'catalyst', filter: 'filter', trap: 'trap', tray: 'trap',
    compressor: 'compressor', 'circulation-pump': 'pump', fan: 'fan', 'top-up': 'pump', cooler: 'exchanger', valve: 'valve', unloader: 'driven', bleed: 'valve', 'purge-point': 'valve', regulator: 'regulator', 'check-valve': 'check', 'relief-valve': 'relief',
    cylinder: 'cylinder', vent: 'vent', burner: 'flame', 'fuel-cell': 'plain', engine: 'engine', supply: 'source', transformer: 'winding', rectifier: 'rectifier', battery: 'battery', panels: 'panels', charger: 'converter', fuse: 'fuse', diode: 'diode', isolator: 'contact',
    contactor: 'contact', relay: 'contact', 'solid-state-relay': 'contact', capacitor: 'capacitor', meter: 'meter', sensor: 'meter', gauge: 'meter', analyser: 'meter', switch: 'meter', trip: 'meter', detector: 'meter', controller: 'plain',
};
/** Kinds that are lines or joints of lines. */
export const lineKinds: ReadonlySet<string> = new Set(['tube', 'leads', 'tee', 'link']);

/** Sources and what stands between them and the stack, after IEC 60617. */
import { box, circle, type Symbols } from './define.js';

const sine = (x: number, y: number, r = 6) => `M${x - r} ${y}q${r / 2} ${-r} ${r} 0t${r} 0`;
const direct = (x: number, y: number, r = 6) => `M${x - r} ${y - 2}h${2 * r}M${x - r} ${y + 2.5}h${r * 0.7}M${x + r * 0.3} ${y + 2.5}h${r * 0.7}`;
/** A converter: what goes in, what comes out, a slash between. */
const converter = (from: string, to: string) => ({ half: 22, up: 22, down: 22, body: box(22, 22), thin: `M22-22L-22 22${from}${to}`, after: 'IEC 60617' } as const);

export const electrical: Symbols = {
    supply: converter(sine(-9, -11), direct(9, 12)),
    'supply/direct-mains': converter(sine(-9, -11), sine(9, 12)),
    'supply/converter': converter(direct(-9, -11), direct(9, 12)),
    charger: converter(direct(-9, -11), direct(9, 12)),
    'charger/mains': converter(sine(-9, -11), direct(9, 12)),
    rectifier: { half: 20, up: 20, down: 20, body: box(20, 20), thin: 'M-20 0H-7M7 0H20M7-7V7', solid: 'M-7-7L7 0L-7 7Z', after: 'IEC 60617' },
    transformer: { half: 24, up: 15, down: 15, body: circle(-8, 0, 14), thin: circle(8, 0, 14) + 'M-24 0H-22M22 0H24', after: 'IEC 60617' },
    battery: { half: 22, up: 14, down: 14, thin: 'M-22 0H-11M-11-13V13M-4-6V6M4-13V13M11-6V6M11 0H22', dashed: 'M-4 0H4', after: 'IEC 60617' },
    panels: { half: 24, up: 30, down: 18, body: box(24, 18), thin: 'M-24-18L-10 0L-24 18M4-7V7M10-12V12M10 0H24M-8-30l8 8M0-22l-5.5-1M0-22l-1-5.5M4-30l8 8M12-22l-5.5-1M12-22l-1-5.5', after: 'IEC 60617' },
    fuse: { half: 22, up: 7, down: 7, body: box(17, 7), thin: 'M-22 0H22', after: 'IEC 60617' },
    isolator: { half: 22, up: 15, down: 6, thin: 'M-22 0H-10L9-14M11 0H22M11-5V5', solid: circle(-10, 0, 1.8), after: 'IEC 60617' },
    diode: { half: 20, up: 9, down: 9, thin: 'M-20 0H20M7-8V8', body: 'M-7-8L7 0L-7 8Z', after: 'IEC 60617' },
    capacitor: { half: 18, up: 12, down: 12, thin: 'M-18 0H-3M3 0H18M-3-11V11M3-11V11', after: 'IEC 60617' },
    leads: { half: 22, up: 6, down: 6, thin: 'M-22 0H22M-4 6L4-6M2 6L10-6', solid: circle(-20, 0, 2) + circle(20, 0, 2), after: 'IEC 60617' },
    meter: { half: 14, up: 14, down: 14, body: circle(0, 0, 14), letters: 'M', after: 'IEC 60617' },
    'fuel-cell': { half: 30, up: 26, down: 26, body: box(30, 26), thin: 'M-4-20V20M4-20V20M-30 0H-4M4 0H30', letters: '', ports: { 'oxygen in': { side: 'S' }, 'current out': { side: 'E' } }, after: 'our own' },
};

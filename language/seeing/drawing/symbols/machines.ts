/** What moves, heats, cools and uses, after ISO 10628-2; burner, engine and vent in its manner. */
import { arrow, box, circle, type Symbols } from './define.js';

const zigzag = (half: number) => `M${-half} 0H-10l5-9l10 18l5-9H${half}`;

export const machines: Symbols = {
    compressor: { half: 20, up: 20, down: 20, body: circle(0, 0, 20), thin: 'M-16-12L18-7M-16 12L18 7', after: 'ISO 10628-2' },
    'circulation-pump': { half: 17, up: 17, down: 17, body: circle(0, 0, 17), thin: 'M0-17L17 0L0 17', after: 'ISO 10628-2' },
    cooler: { half: 20, up: 20, down: 20, body: circle(0, 0, 20), thin: zigzag(20), after: 'ISO 10628-2' },
    'cooler/fan': { half: 22, up: 16, down: 26, body: 'M-22-16H22V26H-22Z', thin: `${zigzag(22)}M0 19q-12-6-12 0t12 0q12-6 12 0t-12 0`, after: 'ISO 10628-2' },
    'cooler/fins': { half: 22, up: 16, down: 16, body: box(22, 16), thin: 'M-22 0H22M-14-12V12M-7-12V12M0-12V12M7-12V12M14-12V12', after: 'our own' },
    burner: { half: 16, up: 26, down: 8, body: 'M-16-6H4L10 8H-16Z', thin: 'M8-6C2-12 6-16 7-26C14-20 20-12 12-6', ports: { 'oxygen in': { side: 'S' } }, after: 'our own' },
    engine: { half: 22, up: 26, down: 24, body: `M-10-26H10V8H-10Z${circle(0, 10, 14)}`, thin: 'M-22 0H-10M10 0H22M-10-12H10M-10-17H10M0-12L6 4', solid: circle(6, 4, 2), ports: { 'oxygen in': { side: 'S' } }, after: 'our own' },
    vent: { half: 10, up: 24, down: 5, thin: 'M-10 0H0V-14M6 0H10', solid: `${arrow(0, -24, 0, -1)}M-1-15h2v-4h-2z`, body: 'M-6-5H6V5H-6Z', after: 'our own' },
};
/** Where a path leaves the rig. */
export const ends: Symbols = {
    outdoors: { half: 9, up: 12, down: 6, thin: 'M-9 0H0V-8', solid: arrow(0, -12, 0, -1), after: 'our own' },
    room: { half: 9, up: 6, down: 6, body: 'M-9-6L9 0L-9 6Z', after: 'ISO 10628-2' },
    plugged: { half: 6, up: 8, down: 8, thin: 'M-6 0H2M2-8V8M6-8V8', after: 'ISO 14617' },
    tap: { half: 9, up: 6, down: 6, body: 'M-9-6L9 0L-9 6Z', after: 'ISO 10628-2' },
    drain: { half: 9, up: 6, down: 12, thin: 'M-9 0H0V6', solid: arrow(0, 12, 0, 1), after: 'our own' },
    mains: { half: 12, up: 12, down: 12, body: circle(0, 0, 12), thin: 'M-7 0q3.5-7 7 0t7 0', after: 'IEC 60617' },
    user: { half: 9, up: 6, down: 6, body: 'M-9-6L9 0L-9 6Z', after: 'ISO 10628-2' },
};

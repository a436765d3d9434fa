/** Cells and vessels. ISO 10628-2 has the vessels and the gas cylinder; stack, liquid seal, bag, bell and column are our own in its manner. */
import { box, bubbles, circle, domed, surface, type Symbols } from './define.js';

const plates = [-36, -24, -12, 0, 12, 24, 36];
/** A tube that dips under a liquid: the gas comes in on the left and has to bubble through. */
const dipped = (half: number, up: number, down: number) => ({
    half, up, down, body: domed(half, up, down, 7), thin: `M${-half} 0H${-half / 3}V${down - 13}M${1 - half} ${down - 26}H${half - 1}`,
});

export const vessels: Symbols = {
    stack: {
        half: 48, up: 40, down: 40, body: box(48, 40), thin: plates.map(x => `M${x}-33V33`).join(''), dashed: plates.slice(1).map(x => `M${x - 6}-33V33`).join(''),
        ports: { 'current in': { side: 'W' }, 'hydrogen out': { side: 'E' }, 'oxygen out': { side: 'N', x: -18 }, 'lye in': { side: 'S', x: -12 }, 'lye in hydrogen': { side: 'S', x: -12 }, 'lye in oxygen': { side: 'N', x: 18 }, 'lye out': { side: 'S', x: 24 } },
        after: 'our own',
    },
    column: {
        half: 15, up: 34, down: 44, body: domed(15, 34, 44), thin: surface(14, 2),
        ports: { 'lye in': { side: 'S', x: 12 }, 'lye out': { side: 'S', x: -12 } }, after: 'ISO 10628-2',
    },
    bubbler: { ...dipped(18, 12, 40), thin: `${dipped(18, 12, 40).thin}${bubbles(2, 20)}`, after: 'our own' },
    seal: { ...dipped(15, 12, 46), thin: `${dipped(15, 12, 46).thin}M-5 33l-3-5M-5 33l3-5`, after: 'our own' },
    scrubber: { ...dipped(20, 18, 40), thin: `${dipped(20, 18, 40).thin}M-20-7H20M-20-7l8-8M-4-7l8-10M12-7l6-8${bubbles(4, 20)}`, after: 'our own' },
    trap: { half: 16, up: 12, down: 30, body: domed(16, 12, 30, 7), thin: 'M-16 0H-7V14M16 0H7V-4', dashed: 'M-15 22H15', after: 'our own' },
    'trap/drain': { half: 16, up: 12, down: 32, body: 'M-16-6C-16-14 16-14 16-6V16L0 27L-16 16Z', thin: 'M-13 16H13M0 27V32M-4 32H4', after: 'ISO 10628-2' },
    bag: { half: 32, up: 24, down: 24, body: 'M-32 0C-32-32 32-32 32 0C32 32-32 32-32 0Z', dashed: 'M-28 3C-16-12 16-12 28 3', after: 'our own' },
    gasometer: { half: 28, up: 34, down: 26, body: 'M-22 10V-26C-22-36 22-36 22-26V10', thin: 'M-28-8V26H28V-8M-28 4H-22M22 4H28M-22 4H22', after: 'our own' },
    cylinder: { half: 17, up: 36, down: 54, body: 'M-6-36H6V-28C15-25 17-19 17-12V48Q17 54 11 54H-11Q-17 54-17 48V-12C-17-19-15-25-6-28Z', thin: 'M-6-28H6', after: 'ISO 10628-2' },
    dryer: { half: 14, up: 26, down: 26, body: domed(14, 26, 26, 7), thin: 'M-14-14H14M-14 14H14M-14-14L14 14M14-14L-14 14', after: 'ISO 10628-2' },
    recombiner: { half: 14, up: 22, down: 22, body: domed(14, 22, 22, 7), thin: `M-14-12H14M-14 12H14${[-7, 0, 7].map(x => circle(x, -5, 2) + circle(x, 5, 2)).join('')}`, after: 'ISO 10628-2' },
    balloon: { half: 18, up: 24, down: 18, body: 'M-18-4C-18-30 18-30 18-4C18 8 6 12 0 15C-6 12-18 8-18-4Z', thin: 'M-3 18L0 15L3 18', after: 'our own' },
};

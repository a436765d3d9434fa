/** Valves and what stands in a pipe, after ISO 10628-2 and ISO 14617. */
import { arrow, bowTie, box, circle, type Symbols } from './define.js';

export const fittings: Symbols = {
    valve: { half: 15, up: 9, down: 9, body: bowTie(15, 9), after: 'ISO 10628-2' },
    'valve/hand': { half: 15, up: 18, down: 9, body: bowTie(15, 9), thin: 'M0 0V-17M-8-17H8', after: 'ISO 10628-2' },
    'valve/solenoid': { half: 15, up: 28, down: 9, body: `${bowTie(15, 9)}M-8-28H8V-14H-8Z`, thin: 'M0 0V-14M-8-14L8-28', after: 'ISO 10628-2' },
    'valve/motor': { half: 15, up: 30, down: 9, body: `${bowTie(15, 9)}${circle(0, -21, 8)}`, thin: 'M0 0V-13M-3-18V-24L0-20L3-24V-18', after: 'ISO 10628-2' },
    unloader: { half: 15, up: 28, down: 19, body: `${bowTie(15, 9)}M-8-28H8V-14H-8Z`, thin: 'M0 0V-14M-8-14L8-28M-15 15H9', solid: arrow(15, 15, 1, 0), after: 'ISO 10628-2' },
    regulator: { half: 15, up: 28, down: 10, body: `${bowTie(15, 9)}M-9-17C-9-30 9-30 9-17Z`, thin: 'M0 0V-17M4-17V-12H15V0', after: 'ISO 10628-2' },
    'check-valve': { half: 15, up: 12, down: 9, thin: 'M-15 0H-12M-12-9V9M12-9V9M-12-9L12 9M12 0H15', solid: circle(-12, -9, 2.6), after: 'ISO 10628-2' },
    'relief-valve': { half: 15, up: 30, down: 9, body: bowTie(15, 9), thin: 'M0 0V-9l5-2.5l-10-4l10-4l-10-4l5-2.5V-30', after: 'ISO 10628-2' },
    arrestor: { half: 18, up: 13, down: 13, body: box(18, 13), thin: 'M-9-13V13M-4.5-13V13M0-13V13M4.5-13V13M9-13V13', after: 'ISO 10628-2' },
    filter: { half: 16, up: 13, down: 13, body: box(16, 13), dashed: 'M0-13V13', after: 'ISO 10628-2' },
    'filter/oil': { half: 16, up: 13, down: 17, body: 'M-16-13H16V13H4L0 17L-4 13H-16Z', dashed: 'M0-13V13', after: 'ISO 10628-2' },
    tee: { half: 4, up: 4, down: 4, solid: circle(0, 0, 3.6), after: 'ISO 14617' },
    tube: { half: 20, up: 5, down: 5, thin: 'M-20 0C-12-9-8 9 0 0C8-9 12 9 20 0', after: 'our own' },
    link: { half: 16, up: 7, down: 7, thin: 'M-16-6L-5-2H5L16-6M-16 6L-5 2H5L16 6', after: 'our own' },
    bleed: { half: 10, up: 6, down: 6, body: bowTie(9, 6), after: 'ISO 10628-2' },
    'purge-point': { half: 10, up: 6, down: 6, body: bowTie(9, 6), after: 'ISO 10628-2' },
    gauge: { half: 14, up: 14, down: 14, body: circle(0, 0, 14), letters: 'PI', after: 'ISO 14617' },
};

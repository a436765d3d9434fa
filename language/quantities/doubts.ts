/**
 * What the laws themselves leave open, each declared once: half widths that about 95 % of all cases keep. A quantity or a model
 * reads one by `q.doubt(...)`; from there it reaches every number that rests on it (see spread.ts).
 */
import { defineDoubt, type Doubt } from './define.js';

/** V for one cell; half width by surface, see `surfaces` in the physics: the state of an electrode cannot be known from a description. */
export const surfaceDoubt = defineDoubt({ name: 'surface of the electrodes', unit: 'V a cell', source: 'spread of seven measured stacks; stainless steel by judgement' });
/** V for one cell that is left after one reading at the bench. */
export const readingDoubt = defineDoubt({ name: 'curve beside the one reading', unit: 'V a cell', source: 'how far seven measured stacks stray from a curve through one of their points' });
/** In half widths, which differ upwards and downwards by the make of the sheet, see `separators` in the physics. */
export const separatorDoubt = defineDoubt({ name: 'resistance of the separator', half: 1, uneven: true, source: 'Vermeiren 1998 for composite sheet; porosity alone for cloth and felt' });
/** In half widths, see `pressedExtra` in the physics. */
export const pressedDoubt = defineDoubt({ name: 'contact of pressed electrodes', half: 1, uneven: true, told: '0.05 to 0.15 Ω·cm²', source: 'zero-gap cells after Haverkort, second-hand' });
/** Share of the conductivity. */
export const conductivityDoubt = defineDoubt({ name: 'conductivity of the lye', half: 0.05, source: 'Gilliam 2007 against See & White 1997' });
/** Share of what bubbles add to the resistance of the gaps. */
export const bubbleDoubt = defineDoubt({ name: 'bubbles in the gaps', half: 0.5, source: 'Vogt & Balzer 2005; unforced flow differs by as much' });
/** Volume fraction of gas in the channels by which gas and lye leave. */
export const outletDoubt = defineDoubt({ name: 'gas in the outlet channels', half: 0.15, told: '0.15 to 0.45 of the volume', source: 'own choice, no source' });
/** Share of the heat that the surfaces lose: draughts and hidden faces. */
export const lossDoubt = defineDoubt({ name: 'heat lost by the surfaces', half: 0.3, source: 'Churchill & Chu 1975 on real rigs; common practice, no source' });
/** Share of the heat that warms stack and lye by a kelvin. */
export const capacityDoubt = defineDoubt({ name: 'heat that frames and boards take', half: 0.4, source: 'sum of masses against one measured stack (Ulleberg 2003)' });
/** Natural logarithm of a factor: what the lift law made of measured air lifts. */
export const liftDoubt = defineDoubt({ name: 'lye lifted by the gas', half: Math.log(1.45), told: 'a factor of 1.45', uneven: true, source: 'held against air lifts of Stenning & Martin 1968, Kassab 2009' });
/** Natural logarithm of a factor: supersaturation at the electrodes and the lye that changes sides. */
export const crossoverDoubt = defineDoubt({ name: 'gas that crosses the separator', half: Math.log(3), uneven: true, told: 'a factor of 3', source: 'Trinke 2018; de Groot 2022: supersaturation and mixing are not known from a description' });
/** Share of pure hydroxide in the solid as sold, see `solutes`. */
export const assayDoubt = defineDoubt({ name: 'assay of the solid', source: 'usual range on the bags of that solid; common practice, no source' });
/** Share of the delivery of a compressor that was not measured. */
export const deliveryDoubt = defineDoubt({ name: 'delivery of the compressor', half: 0.3, source: 'Santos 2019: ± 20 % without a calibration; hydrogen leaks more' });
/** Share of the pull of a rod that its torque leaves open: dry, oiled and dirty threads differ. */
export const threadDoubt = defineDoubt({ name: 'friction of the threads', half: 0.3, source: 'torque against pull without a lubricant that is known: common practice, no source' });
/** Natural logarithm of a factor: sheets and hoses of one name differ by make, filler and softener. */
export const permeabilityDoubt = defineDoubt({ name: 'hydrogen through plastic', half: Math.log(2), uneven: true, told: 'a factor of 2', source: 'tables of permeability scatter by as much; from memory' });
/** Share of the film of a bag whose sides are not told: from a ball to a cushion sewn of two sheets four times as long as wide. */
export const cushionDoubt = defineDoubt({ name: 'shape of the bag', half: 0.23, told: 'from a ball to a long cushion', source: 'paper bag formula, Robin 2004, from memory' });
/** Share of what a battery loses by itself: twice as much for every 10 K, more with age. */
export const selfDischargeDoubt = defineDoubt({ name: 'self-discharge of the battery', half: 0.5, source: 'encyclopedia pages: 4 to 6 % a month for lead-acid, 3 to 20 % with age and warmth' });

/** V for one cell: what oxides on the plates add to the reversible voltage of a stopped cell, more at first and less after minutes. */
export const oxideDoubt = defineDoubt({ name: 'charge left in the plates', half: 0.15, unit: 'V a cell', source: '1.2 to 1.5 V a cell at first, 1.32 to 1.36 V as in nickel-hydrogen batteries: from memory' });
/** Share of the volts that warmth takes off. */
export const warmthDoubt = defineDoubt({ name: 'volts that warmth saves', half: 0.5, source: 'measured stacks lose 1.5 to 5.5 mV/K for each cell at 300 mA/cm² (Ulleberg 2003; Sánchez 2018; de Groot 2022), second-hand' });
/** Share of what an alternator gives of the shaft's power: half of it hot and loaded, seven tenths at its best. */
export const alternatorDoubt = defineDoubt({ name: 'efficiency of the alternator', half: 0.2, source: 'belt-driven claw-pole alternators, 50 to 70 %: from memory' });
/** Share of the vapour over the warm lye that does not come back to it as drops, from none to all of it: half is expected. */
export const vapourLeavesDoubt = defineDoubt({ name: 'vapour that does not come back', half: 1, told: 'none to all of it', source: 'what condenses in riser and column is not known from a description' });

/** What was read with an instrument on the stack, or beside it. */
export type Read = 'volts' | 'amperes' | 'temperature';
export type Metered = Read | 'gas' | 'water';
/** Half width of a usual instrument, as a share of what it shows, or in K; where the text tells no ±. */
export const instrumentDoubts: Readonly<Record<Metered, Doubt & { readonly half: number }>> = {
    volts: { name: 'voltmeter', half: 0.005, source: 'hand meters, ± 0.5 % and three digits: makers\' pages' },
    amperes: { name: 'ammeter', half: 0.02, source: 'clamp or shunt with a hand meter; common practice, no source' },
    temperature: { name: 'thermometer', half: 2.5, unit: 'K', source: 'thermocouple K of class 2: IEC 60584-1, second-hand' },
    gas: { name: 'gas meter', half: 0.1, source: 'rotameters, 5 % of full scale, read at half of it: makers\' pages, from memory' },
    water: { name: 'water as measured out', half: 0.05, source: 'marks on a vessel; common practice, no source' },
};
/** V, A, K, or a share of gas or water: the ± of one thing read, as it stands in the text. `at`: which of several points, from 1. */
export function toleranceDoubt(what: Metered, at?: number): Doubt {
    return defineDoubt({ name: `${what} as read${at ? `, point ${at}` : ''}`, unit: { volts: 'V', amperes: 'A', temperature: 'K', gas: undefined, water: undefined }[what], stated: true, source: 'as stated' });
}

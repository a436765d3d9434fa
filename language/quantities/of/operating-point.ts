/** Current, volts and what they are made of, at the operating point. */
import { reversibleVoltage, thermoneutralVoltage, thermoneutralVoltageWithVapour } from '../../physics/water-splitting.js';
import { defineQuantity } from '../define.js';
import { oxideDoubt } from '../doubts.js';
import { beyondCurve, coldStart, hottestPoint, operatingPoint } from '../operating-point.js';
import { type OperatingPoint } from '../stack-solver.js';
import { sourceModel } from '../source.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import type { View } from '../view.js';

const solvedTogether = 'current, volts, bypass, heat and temperature solved together: source line = stack curve, heat made = heat lost';
const model = 'Tafel lines of smooth nickel (Kibria 1995, 1996), of an activated pair (Hammoudi 2012) where it is highly activated, surface offset from measured stacks, conductivity of Gilliam 2007';
/** K, 50 °C, where the temperature is not known: the voltage moves by 8 mV for 10 K. Common practice, no source. */
const WORKING = 323.15;
/** V for each cell that oxides on the plates add at first, in the middle of their spread. */
const OXIDES = 0.15;
const at = (q: View, read: (p: OperatingPoint) => number) => {
    const p = q.model(operatingPoint);
    return p ? read(p) : NaN;
};

export default [
    defineQuantity({
        name: 'source-open-voltage', of: 'stack', measure: 'voltage', meaning: 'Highest voltage that the source puts on the stack without load; the crest where nothing smooths it.',
        formula: 'stated voltage or no-load voltage; crest of the rectified winding less the diodes', source: 'nameplate; textbook rectifier relations',
        work: q => {
            const s = q.model(sourceModel);
            return s ? Math.max(s.open, s.kind === 'pulses' ? s.crest : s.open) : q.num('source');
        },
    }),
    defineQuantity({
        name: 'cells-total', of: 'stack', measure: 'number', meaning: 'Cells that make gas, all groups together.', formula: 'cells in a group x groups', source: 'definition',
        work: q => q.num('cells') * q.maybe('groups', 1),
    }),
    defineQuantity({
        name: 'current', of: 'stack', measure: 'current', meaning: 'Current through the whole stack at the operating point, all groups together.',
        formula: solvedTogether, source: model, range: '10..90 °C, 5..500 mA/cm², 10..40 wt%', shownAt: 'wetted', shownAs: '',
        work: q => {
            const p = q.model(operatingPoint);
            if (!p) return NaN;
            const remarks = p.limitedBy === 'too few volts' ? ['The source has too few volts for this stack: no current flows.'] : p.runsAway ? ['No steady temperature below boiling was found.'] : [];
            const side = beyondCurve(q);
            return { value: p.current, remarks: side ? [...remarks, `This lies ${side} the curve that the stack states; from its end on the model goes on.`] : remarks };
        },
    }),
    defineQuantity({
        name: 'current-per-group', of: 'stack', measure: 'current', meaning: 'Current through each group, taken as equal.', formula: 'current / groups', source: 'definition', work: q => at(q, p => p.groupCurrent),
    }),
    defineQuantity({
        name: 'current-density', of: 'stack', measure: 'current-density', unit: 'mA/cm2', meaning: 'Current of one cell over the wetted area of one plate face.',
        formula: 'current per group / wetted area', source: 'definition', shownAt: 'wetted', shownAs: '',
        work: q => {
            const w = q.sizes('wetted');
            return w ? q.q('current-per-group') / (w[0] * w[1]) : q.num('wetted');
        },
    }),
    defineQuantity({
        name: 'reversible-voltage', of: 'stack', measure: 'voltage', meaning: 'Least voltage that can split water, at the temperature of the stack and 1 bar.',
        formula: '1.5184 - 1.5421e-3 T + 9.523e-5 T ln T + 9.84e-8 T²', source: 'LeRoy, Bowen & LeRoy, J. Electrochem. Soc. 127 (1980) 1954, eq. 58', range: '0..250 °C',
        work: q => {
            const t = q.maybeQ('temperature');
            return reversibleVoltage(t === t ? t : WORKING);
        },
    }),
    defineQuantity({
        name: 'rest-voltage', of: 'stack', measure: 'voltage', meaning: 'Reversible voltage over the lye: with the pressure of the gases, their vapour, and water bound by the lye.',
        formula: 'reversible voltage + 3RT/4F ln p(gas) - RT/2F ln(water activity)', source: 'Nernst; Balej 1985 for the water activity', work: q => at(q, p => p.rest),
    }),
    defineQuantity({
        name: 'held-voltage', of: 'stack', measure: 'voltage', meaning: 'Voltage that the stopped stack still holds at first, as a battery of its plates and their two gases; it falls over minutes to hours.',
        formula: 'cells in a group x (reversible voltage at 20 °C + 0.15 V)', source: 'LeRoy et al. 1980; what oxides on the plates add: from memory, ± 0.15 V a cell',
        work: q => q.num('cells') * (reversibleVoltage(ROOM) + OXIDES + q.doubt(oxideDoubt)),
    }),
    defineQuantity({
        name: 'thermoneutral-voltage', of: 'stack', measure: 'voltage', meaning: 'Voltage at which the reaction neither warms nor cools the cell.', formula: 'enthalpy of the reaction / 2F', source: 'LeRoy et al. 1980; NIST-JANAF',
        work: q => thermoneutralVoltage(q.q('temperature')),
    }),
    defineQuantity({
        name: 'enthalpy-voltage', of: 'stack', measure: 'voltage', meaning: 'The same, with water fed cold and vapour carried away by both gases: what the heat balance counts.',
        formula: 'higher heating voltage + 1.5 p_w/(P - p_w) · Y/2F', source: 'LeRoy et al. 1980', work: q => thermoneutralVoltageWithVapour(q.q('temperature'), q.the('lye')?.q('vapour-pressure') ?? NaN, airPressureOf(q)),
    }),
    defineQuantity({
        name: 'volts-per-cell', of: 'stack', measure: 'voltage', meaning: 'Voltage of one cell at the operating point. The state of an electrode cannot be known from a description, so the ± is wide until one reading of volts, amperes and temperature is given.',
        formula: 'rest voltage + anode and cathode overvoltage + current density x (gaps, separator, bubbles) + surface offset', source: model,
        range: '10..90 °C, 5..500 mA/cm², 10..40 wt%', shownAt: 'cells', shownAs: '',
        work: q => at(q, p => (p.current > 0 ? p.cellVoltage : NaN)),
    }),
    defineQuantity({ name: 'anode-overvoltage', of: 'stack', measure: 'voltage', meaning: 'Extra volts that the oxygen side asks.', formula: 'larger of two Tafel lines', source: 'Kibria & Mridha 1996, or Hammoudi 2012 where it is highly activated; second-hand', work: q => at(q, p => p.anode) }),
    defineQuantity({ name: 'cathode-overvoltage', of: 'stack', measure: 'voltage', meaning: 'Extra volts that the hydrogen side asks.', formula: 'larger of two Tafel lines', source: 'Kibria, Mridha & Khan 1995, or Hammoudi 2012 where it is highly activated; second-hand', work: q => at(q, p => p.cathode) }),
    defineQuantity({ name: 'ohmic-voltage', of: 'stack', measure: 'voltage', meaning: 'Volts lost in lye and separator of one cell, without bubbles.', formula: 'current density x (2 gap/conductivity + separator)', source: 'Gilliam 2007; Vermeiren 1998', work: q => at(q, p => p.ohmic) }),
    defineQuantity({ name: 'bubble-voltage', of: 'stack', measure: 'voltage', meaning: 'More volts because bubbles take room in the gaps.', formula: 'ohmic part x ((1 - void)^-1.5 - 1)', source: 'Bruggeman; Vogt & Balzer 2005; ± half of it', work: q => at(q, p => p.bubbles) }),
    defineQuantity({ name: 'void-fraction', of: 'stack', measure: 'fraction', meaning: 'Share of gas in the lye between the plates, hydrogen side.', formula: 'drift of the rising gas, at least the clinging bubbles', source: 'Zuber & Findlay 1965; Vogt & Balzer 2005', work: q => at(q, p => p.voidFraction) }),
    defineQuantity({
        name: 'voltage', of: 'stack', measure: 'voltage', meaning: 'Voltage at the ends of the stack at the operating point.', formula: 'cells in a group x volts per cell, bypass counted', source: model, shownAt: 'cells', shownAs: 'stack',
        work: q => at(q, p => (p.current > 0 ? p.voltage : NaN)),
    }),
    defineQuantity({ name: 'power', of: 'stack', measure: 'power', meaning: 'Electrical power into the stack.', formula: 'voltage x current', source: 'definition', work: q => q.q('voltage') * q.q('current') }),
    defineQuantity({
        name: 'form-factor', of: 'stack', measure: 'number', meaning: 'RMS over mean of the stack current: 1 for smooth current. Gas follows the mean, heat the RMS.', formula: 'as the supply states it; else rectified sine into a clamp', source: 'closed form',
        work: q => at(q, p => q.all('supply').find(s => s.name === q.model(sourceModel)?.part)?.maybe('form-factor', p.formFactor) ?? p.formFactor),
    }),
    defineQuantity({
        name: 'current-cold', of: 'stack', measure: 'current', meaning: 'Current in the first minutes of a start on the coldest day of the site.', formula: solvedTogether, source: model,
        work: q => q.model(coldStart)?.current ?? NaN,
    }),
    defineQuantity({ name: 'volts-per-cell-cold', of: 'stack', measure: 'voltage', meaning: 'Volts per cell in the first minutes on the coldest day.', formula: solvedTogether, source: model, work: q => q.model(coldStart)?.cellVoltage ?? NaN }),
    defineQuantity({ name: 'current-hot', of: 'stack', measure: 'current', meaning: 'Current on the hottest day, after hours.', formula: solvedTogether, source: model, work: q => q.model(hottestPoint)?.current ?? NaN }),
];

/** Energy behind a volume of gas, efficiencies with their basis, power at the plug. */
import { GAS_CONSTANT, ATMOSPHERE, HIGHER_HEATING_VALUE, LOWER_HEATING_VALUE, ZERO_CELSIUS } from '../../physics/constants.js';
import { defineQuantity } from '../define.js';
import { sourceModel } from '../source.js';

/** Moles in a cubic metre at 0 °C and 101.325 kPa. */
export const MOLES_PER_NORMAL_CUBIC_METRE = ATMOSPHERE / (GAS_CONSTANT * ZERO_CELSIUS);

export default [
    defineQuantity({ name: 'energy-per-volume', of: 'stack', measure: 'energy-per-gas', unit: 'kWh/m3', meaning: 'Electrical energy into the stack for each m³ of hydrogen (0 °C, 101.325 kPa, dry), supply and leads not counted.', formula: 'power / hydrogen rate', source: 'definition', shownAt: 'header', shownAs: '', work: q => q.q('power') / (q.q('hydrogen-rate') / MOLES_PER_NORMAL_CUBIC_METRE) }),
    defineQuantity({ name: 'efficiency-hhv', of: 'stack', measure: 'fraction', meaning: 'Share of the electrical energy found again in the gas, by its higher heating value (3.54 kWh/m³).', formula: 'hydrogen rate x higher heating value / power', source: 'CODATA Key Values', work: q => q.q('hydrogen-rate') * HIGHER_HEATING_VALUE / q.q('power') }),
    defineQuantity({ name: 'efficiency-lhv', of: 'stack', measure: 'fraction', meaning: 'The same by the lower heating value (3.00 kWh/m³), which a flame gives without condensing.', formula: 'hydrogen rate x lower heating value / power', source: 'CODATA Key Values', work: q => q.q('hydrogen-rate') * LOWER_HEATING_VALUE / q.q('power') }),
    defineQuantity({ name: 'voltage-efficiency', of: 'stack', measure: 'fraction', meaning: 'Reversible voltage over the volts of a cell. Not an energy efficiency.', formula: 'reversible voltage / volts per cell', source: 'definition', work: q => q.q('reversible-voltage') / q.q('volts-per-cell') }),
    defineQuantity({ name: 'plug-power', of: 'stack', measure: 'power', meaning: 'Power at the plug for the stack: supply, leads and diodes counted.', formula: '(stack power + losses of leads and diodes) / efficiency of the supply', source: 'definition; efficiency as stated or assumed', work: q => {
        const s = q.model(sourceModel);
        const i = q.q('current');
        return s ? (q.q('power') + i * i * s.leads + i * s.diodes) / s.efficiency : NaN;
    } }),
    defineQuantity({ name: 'plug-energy-per-volume', of: 'stack', measure: 'energy-per-gas', unit: 'kWh/m3', meaning: 'Energy at the plug for each m³ of hydrogen (0 °C, dry).', formula: 'plug power / hydrogen rate', source: 'definition', work: q => q.q('plug-power') / (q.q('hydrogen-rate') / MOLES_PER_NORMAL_CUBIC_METRE) }),
    defineQuantity({ name: 'ripple-loss', of: 'stack', measure: 'fraction', meaning: 'Energy that pulses of the current cost above smooth current with the same mean, as a share of the power of the stack. Gas follows the mean, the loss in the lye the RMS.', formula: '(form factor² - 1) x volts lost in lye, separator and bubbles / volts per cell', source: 'Joule', work: q => (q.q('form-factor') ** 2 - 1) * (q.q('ohmic-voltage') + q.q('bubble-voltage')) / q.q('volts-per-cell') }),
];

/**
 * The units that a rig text may use. To add one, add a row (and its line in test/language/units.test.ts).
 *
 * `is` is how the unit library writes it: this table maps the trade's spelling to it, and the library never sees what a
 * maker typed. `prefixes` are those that people really put before it.
 */
export interface UnitRow {
    readonly spellings: string;
    readonly is: string;
    readonly name: string;
    readonly prefixes?: string;
    /** Offset of the scale, for temperatures: kelvin at zero of this unit. */
    readonly offset?: number;
    readonly mark?: 'gauge' | 'absolute';
    readonly currency?: string;
    /** A unit that should not be raised to a power again (`mm2^2`). */
    readonly remark?: string;
}

const u = (spellings: string, is: string, name: string, more: Partial<UnitRow> = {}): UnitRow => ({ spellings, is, name, ...more });

/** Moles in a litre of ideal gas at 0 °C and 101.325 kPa (CODATA 2018), and at 15 °C and 101.325 kPa (ISO 13443). */
const NORMAL = '0.044615033';
const STANDARD = '0.042292638';

export const unitTable: readonly UnitRow[] = [
    u('m', 'm', 'metre', { prefixes: 'm c d k µ u n' }),
    u('in inch', 'inch', 'inch'),
    u('ft', 'ft', 'foot'),
    u('m2 m²', 'm^2', 'square metre', { remark: 'power' }),
    u('cm2 cm²', 'cm^2', 'square centimetre', { remark: 'power' }),
    u('mm2 mm²', 'mm^2', 'square millimetre', { remark: 'power' }),
    u('in2', 'inch^2', 'square inch', { remark: 'power' }),
    u('m3 m³', 'm^3', 'cubic metre', { remark: 'power' }),
    u('cm3 cm³ cc', 'cm^3', 'cubic centimetre', { remark: 'power' }),
    u('L l litre litres', '0.001 m^3', 'litre', { prefixes: 'm c d µ u' }),
    u('gal', 'gallon', 'US gallon'),
    u('NL Nl', `${NORMAL} mol`, 'normal litre: 0 °C, 101.325 kPa, dry', { prefixes: 'm' }),
    u('Nm3 Nm³', `${NORMAL}e3 mol`, 'normal cubic metre: 0 °C, 101.325 kPa, dry'),
    u('sL', `${STANDARD} mol`, 'standard litre: 15 °C, 101.325 kPa, dry'),
    u('sm3', `${STANDARD}e3 mol`, 'standard cubic metre: 15 °C, 101.325 kPa, dry'),
    u('mol', 'mol', 'mole', { prefixes: 'm k' }),
    u('g', 'g', 'gram', { prefixes: 'm k µ u' }),
    u('t', 'tonne', 'tonne'),
    u('lb', 'lbm', 'pound'),
    u('oz', 'oz', 'ounce'),
    u('s', 's', 'second', { prefixes: 'm µ u' }),
    u('min', 'minute', 'minute'),
    u('h', 'hour', 'hour'),
    u('day days d', 'day', 'day'),
    u('week weeks', 'week', 'week'),
    u('month months', '30.4375 day', 'month (a twelfth of a year)'),
    u('year years', '365.25 day', 'year'),
    u('Hz', 'Hz', 'hertz', { prefixes: 'k M' }),
    u('rpm', '1/minute', 'turns per minute'),
    u('V', 'V', 'volt', { prefixes: 'm k µ u' }),
    u('A', 'A', 'ampere', { prefixes: 'm k µ u' }),
    u('W', 'W', 'watt', { prefixes: 'm k M µ u' }),
    u('Wp', 'W', 'watt at full sun'),
    u('VA', 'V A', 'volt-ampere', { prefixes: 'k' }),
    u('J', 'J', 'joule', { prefixes: 'm k M' }),
    u('Wh', 'W hour', 'watt-hour', { prefixes: 'k M' }),
    u('Ah', 'A hour', 'ampere-hour', { prefixes: 'm' }),
    u('C', 'C', 'coulomb'),
    u('ohm Ω Ohm', 'ohm', 'ohm', { prefixes: 'm k M µ u' }),
    u('S', 'S', 'siemens', { prefixes: 'm µ u' }),
    u('F', 'farad', 'farad', { prefixes: 'm µ u n p' }),
    u('H', 'H', 'henry', { prefixes: 'm µ u' }),
    u('T', 'T', 'tesla', { prefixes: 'm' }),
    u('Pa', 'Pa', 'pascal', { prefixes: 'm h k M µ u' }),
    u('bar', 'bar', 'bar', { prefixes: 'm' }),
    u('barg bar(g)', 'bar', 'bar above the air outside', { mark: 'gauge' }),
    u('bara bar(a)', 'bar', 'bar above vacuum', { mark: 'absolute' }),
    u('kPag kPa(g)', 'kPa', 'kilopascal above the air outside', { mark: 'gauge' }),
    u('kPaa kPa(a)', 'kPa', 'kilopascal above vacuum', { mark: 'absolute' }),
    u('psi', 'psi', 'pound per square inch'),
    u('psig', 'psi', 'pound per square inch above the air outside', { mark: 'gauge' }),
    u('psia', 'psi', 'pound per square inch above vacuum', { mark: 'absolute' }),
    u('atm', 'atm', 'standard atmosphere'),
    u('mmH2O mmWC mmWS', '9.80665 Pa', 'millimetre of water column'),
    u('cmH2O', '98.0665 Pa', 'centimetre of water column'),
    u('inH2O', '249.08891 Pa', 'inch of water column'),
    u('mmHg torr', 'mmHg', 'millimetre of mercury'),
    u('N', 'N', 'newton', { prefixes: 'm k' }),
    u('kgf', '9.80665 N', 'kilogram-force'),
    u('lbf', 'lbf', 'pound-force'),
    u('Nm', 'N m', 'newton metre'),
    u('K', 'K', 'kelvin', { prefixes: 'm' }),
    u('°C degC ℃', 'K', 'degree Celsius', { offset: 273.15 }),
    u('°F degF', '0.5555555555555556 K', 'degree Fahrenheit', { offset: 255.3722222222222 }),
    u('% pct', '0.01', 'per cent'),
    u('wt% w%', '0.01', 'per cent of the mass'),
    u('vol%', '0.01', 'per cent of the volume'),
    u('‰', '0.001', 'per mille'),
    u('ppm', '0.000001', 'part per million'),
    u('° deg', '0.017453292519943295', 'degree of arc'),
    u('rad', '1', 'radian'),
    u('EUR €', '1', 'euro', { currency: 'EUR' }),
    u('USD', '1', 'US dollar', { currency: 'USD' }),
    u('GBP £', '1', 'pound sterling', { currency: 'GBP' }),
    u('CHF', '1', 'Swiss franc', { currency: 'CHF' }),
    u('SEK', '1', 'Swedish krona', { currency: 'SEK' }),
    u('NOK', '1', 'Norwegian krone', { currency: 'NOK' }),
    u('DKK', '1', 'Danish krone', { currency: 'DKK' }),
    u('PLN', '1', 'Polish złoty', { currency: 'PLN' }),
    u('CZK', '1', 'Czech koruna', { currency: 'CZK' }),
    u('CAD', '1', 'Canadian dollar', { currency: 'CAD' }),
    u('AUD', '1', 'Australian dollar', { currency: 'AUD' }),
    u('NZD', '1', 'New Zealand dollar', { currency: 'NZD' }),
    u('JPY', '1', 'yen', { currency: 'JPY' }),
    u('INR', '1', 'Indian rupee', { currency: 'INR' }),
    u('BRL', '1', 'Brazilian real', { currency: 'BRL' }),
    u('ZAR', '1', 'South African rand', { currency: 'ZAR' }),
];

/** What a prefix multiplies by; `u` is typed for µ. */
export const prefixFactors: Readonly<Record<string, number>> = {
    p: 1e-12, n: 1e-9, µ: 1e-6, μ: 1e-6, u: 1e-6, m: 1e-3, c: 1e-2, d: 0.1, h: 100, k: 1e3, M: 1e6,
};

/**
 * Dimensions: what a number measures, as powers of the base quantities. Interned, so that two are equal exactly if
 * they are the same object.
 */

/** Powers of metre, kilogram, second, ampere, kelvin, mole, money. */
export type Powers = readonly [number, number, number, number, number, number, number];
export interface Dimension {
    readonly powers: Powers;
    readonly key: string;
}

const known = new Map<string, Dimension>();

export function dimension(powers: readonly number[]): Dimension {
    const key = powers.map(p => Math.round(p * 1e6) / 1e6 + 0).join(',');
    let d = known.get(key);
    if (!d) known.set(key, (d = { powers: [...powers] as unknown as Powers, key }));
    return d;
}

export const one = dimension([0, 0, 0, 0, 0, 0, 0]);

export function times(a: Dimension, b: Dimension): Dimension {
    return a === one ? b : b === one ? a : dimension(a.powers.map((p, i) => p + b.powers[i]));
}
export function over(a: Dimension, b: Dimension): Dimension {
    return b === one ? a : dimension(a.powers.map((p, i) => p - b.powers[i]));
}
export function power(a: Dimension, exponent: number): Dimension {
    return dimension(a.powers.map(p => p * exponent));
}

/** A named dimension: what fields and quantities are declared with. */
export interface Measure {
    readonly dimension: Dimension;
    /** As the maker would say it: 'a length'. */
    readonly says: string;
    /** Units of the trade, the usual one first: what completion offers, and what messages show. */
    readonly units: readonly string[];
}

const m = (powers: number[], says: string, units: string): Measure => ({ dimension: dimension(powers), says, units: units.split(' ') });

/** Every dimension that a property or a quantity may have. The first unit is the one shown unless a declaration says otherwise. */
export const measures = {
    number: m([0, 0, 0, 0, 0, 0, 0], 'a plain number', ''),
    fraction: m([0, 0, 0, 0, 0, 0, 0], 'a share', '% ppm'),
    'mass-fraction': m([0, 0, 0, 0, 0, 0, 0], 'a share of the mass', 'wt% % ppm'),
    angle: m([0, 0, 0, 0, 0, 0, 0], 'an angle', '° rad'),
    length: m([1, 0, 0, 0, 0, 0, 0], 'a length', 'mm cm m µm in ft'),
    area: m([2, 0, 0, 0, 0, 0, 0], 'an area', 'mm2 cm2 m2 in2'),
    volume: m([3, 0, 0, 0, 0, 0, 0], 'a volume', 'L mL m3 cm3'),
    mass: m([0, 1, 0, 0, 0, 0, 0], 'a mass', 'kg g mg lb'),
    time: m([0, 0, 1, 0, 0, 0, 0], 'a time', 's min h day days weeks months years ms'),
    frequency: m([0, 0, -1, 0, 0, 0, 0], 'a rate', 'Hz rpm /h /day'),
    speed: m([1, 0, -1, 0, 0, 0, 0], 'a speed', 'm/s mm/s mm/h m/h'),
    voltage: m([2, 1, -3, -1, 0, 0, 0], 'a voltage', 'V mV kV'),
    current: m([0, 0, 0, 1, 0, 0, 0], 'a current', 'A mA'),
    'current-density': m([-2, 0, 0, 1, 0, 0, 0], 'a current per area', 'mA/cm2 A/m2 A/cm2'),
    power: m([2, 1, -3, 0, 0, 0, 0], 'a power', 'W kW VA mW'),
    energy: m([2, 1, -2, 0, 0, 0, 0], 'an energy', 'kWh Wh MJ kJ J mJ'),
    charge: m([0, 0, 1, 1, 0, 0, 0], 'a charge', 'Ah mAh C'),
    resistance: m([2, 1, -3, -2, 0, 0, 0], 'a resistance', 'ohm mohm kohm'),
    capacitance: m([-2, -1, 4, 2, 0, 0, 0], 'a capacitance', 'mF µF F'),
    inductance: m([2, 1, -2, -2, 0, 0, 0], 'an inductance', 'mH µH H'),
    'flux-density': m([0, 1, -2, -1, 0, 0, 0], 'a flux density', 'T mT'),
    conductivity: m([-3, -1, 3, 2, 0, 0, 0], 'a conductivity', 'S/cm mS/cm µS/cm S/m'),
    resistivity: m([3, 1, -3, -2, 0, 0, 0], 'a resistivity', 'µohm·m ohm·m'),
    'area-resistance': m([4, 1, -3, -2, 0, 0, 0], 'a resistance times an area', 'ohm·cm2'),
    pressure: m([-1, 1, -2, 0, 0, 0, 0], 'a pressure', 'bar kPa Pa mbar psi mmH2O MPa'),
    force: m([1, 1, -2, 0, 0, 0, 0], 'a force', 'N kN kgf'),
    torque: m([2, 1, -2, 0, 0, 0, 0], 'a torque', 'Nm'),
    temperature: m([0, 0, 0, 0, 1, 0, 0], 'a temperature', '°C K °F'),
    'temperature-difference': m([0, 0, 0, 0, 1, 0, 0], 'a difference of temperatures', 'K'),
    'temperature-coefficient': m([2, 1, -3, -1, -1, 0, 0], 'a voltage per kelvin', 'mV/K'),
    'thermal-resistance': m([-2, -1, 3, 0, 1, 0, 0], 'a thermal resistance', 'K/W'),
    'thermal-conductance': m([2, 1, -3, 0, -1, 0, 0], 'a heat loss per kelvin', 'W/K'),
    'heat-transfer': m([0, 1, -3, 0, -1, 0, 0], 'a heat transfer coefficient', 'W/(m2·K)'),
    'heat-capacity': m([2, 1, -2, 0, -1, 0, 0], 'a heat capacity', 'kJ/K J/K'),
    flow: m([3, 0, -1, 0, 0, 0, 0], 'a flow', 'L/h L/min m3/h mL/min mL/h'),
    'gas-flow': m([0, 0, -1, 0, 0, 1, 0], 'a flow of gas', 'NL/h NL/min Nm3/h L/h L/min m3/h sL/h mol/h'),
    'gas-volume': m([0, 0, 0, 0, 0, 1, 0], 'an amount of gas', 'NL Nm3 L m3 sL mol'),
    'gas-per-day': m([0, 0, -1, 0, 0, 1, 0], 'an amount of gas per day', 'NL/day L/day NL/h L/h L/week'),
    'mass-flow': m([0, 1, -1, 0, 0, 0, 0], 'a mass per time', 'g/h kg/h mg/h'),
    density: m([-3, 1, 0, 0, 0, 0, 0], 'a density', 'kg/m3 g/mL kg/L mg/L g/m3'),
    concentration: m([-3, 0, 0, 0, 0, 1, 0], 'a concentration', 'mol/L mmol/L'),
    molality: m([0, -1, 0, 0, 0, 1, 0], 'a molality', 'mol/kg'),
    viscosity: m([-1, 1, -1, 0, 0, 0, 0], 'a viscosity', 'mPa·s µPa·s'),
    permeability: m([2, -1, 1, 0, 0, 0, 0], 'a flow per area and pressure', 'L/(m2·h·kPa) m/(s·Pa)'),
    irradiance: m([0, 1, -3, 0, 0, 0, 0], 'sunshine on an area', 'W/m2'),
    'energy-per-gas': m([-1, 1, -2, 0, 0, 0, 0], 'an energy per volume of gas', 'kWh/m3 kWh/Nm3 Wh/L'),
    money: m([0, 0, 0, 0, 0, 0, 1], 'an amount of money', 'EUR USD GBP CHF'),
    'money-per-energy': m([-2, -1, 2, 0, 0, 0, 1], 'a price of energy', 'EUR/kWh USD/kWh GBP/kWh CHF/kWh'),
    'money-per-gas': m([-3, 0, 0, 0, 0, 0, 1], 'a price of gas', 'EUR/m3 EUR/L USD/m3 GBP/m3'),
    'money-per-time': m([0, 0, -1, 0, 0, 0, 1], 'money per time', 'EUR/h EUR/years'),
    'apparent-power': m([2, 1, -3, 0, 0, 0, 0], 'an apparent power', 'VA kVA'),
    'let-through': m([0, 0, 1, 2, 0, 0, 0], 'a let-through energy', 'A^2·s'),
    slope: m([0, 0, 0, 0, 0, 0, 0], 'a slope', '% °'),
} satisfies Record<string, Measure>;

export type MeasureName = keyof typeof measures;

/** Where an amount of gas (in moles) and a volume of it stand for each other. */
const gasKeys = new Set((['gas-flow', 'gas-volume', 'flow', 'volume', 'energy-per-gas', 'money-per-gas'] as const).flatMap(name => {
    const d = measures[name].dimension;
    return [d.key, dimension(d.powers.map((p, i) => (name.includes('per') ? (i === 0 ? p + 3 : i === 5 ? p - 1 : p) : p))).key];
}));
/**
 * Gas is said as an amount (normal litres, a number of moles) or as a volume (litres). How many moles of `to` stand
 * where `from` has a volume: 1 for a flow said in L/h where NL/h is meant, -1 the other way, undefined if that is not the
 * only difference, or if the two are not about gas.
 */
export function gasDifference(from: Dimension, to: Dimension): number | undefined {
    const k = to.powers[5] - from.powers[5];
    if (!k || !gasKeys.has(from.key) || !gasKeys.has(to.key)) return undefined;
    return from.powers.every((p, i) => p + (i === 5 ? k : i === 0 ? -3 * k : 0) === to.powers[i]) ? k : undefined;
}

/** What a dimension is called, for a message: 'a length'; unnamed ones are shown by their powers. */
export function saysDimension(d: Dimension): string {
    for (const measure of Object.values(measures)) if (measure.dimension === d) return measure.says;
    const names = ['m', 'kg', 's', 'A', 'K', 'mol', 'money'];
    return d.powers.map((p, i) => (p ? (p === 1 ? names[i] : `${names[i]}^${p}`) : '')).filter(Boolean).join('·');
}

/** Energy in words of everyday life. */
import { digits } from '../../units/format.js';

/** J in a litre of petrol burnt, lower heating value: textbook, from memory, within a twentieth. */
const PETROL = 32e6;
/** J that bring a litre of water from 20 °C to the boil: 80 K x 4.19 kJ/(kg K), IAPWS. */
const BOILED = 80 * 4190;
/** kg of a small car. */
const CAR = 1000;

/** 'burnt, the heat of 37 mL of petrol; it would bring 3.5 L of water to the boil'. */
export function asHeat(joule: number): string {
    const litres = joule / PETROL;
    return `burnt, the heat of ${litres < 1 ? `${digits(1000 * litres, 2)} mL` : `${digits(litres, 2)} L`} of petrol; it would bring ${digits(joule / BOILED, 2)} L of water to the boil`;
}
/** Work let loose by a vessel that bursts. */
export function asImpact(joule: number): string {
    return `let loose at once it is the blow of a small car at ${digits(3.6 * Math.sqrt(2 * joule / CAR), 2)} km/h`;
}
export const HEAT_SOURCE = 'Heat: lower heating value of hydrogen, 241.8 kJ/mol (CODATA Key Values). Petrol: 32 MJ a litre, textbook, from memory. Water: 4.19 kJ/(kg K), from 20 °C (IAPWS).';
export const IMPACT_SOURCE = 'Blow: a car of 1000 kg with as much energy of motion; the gas taken to expand without heat (textbook).';

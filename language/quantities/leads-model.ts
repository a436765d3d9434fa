/** Resistance of a pair of leads as described. */
import { copperResistivity, RESISTIVITY } from '../physics/wiring.js';
import type { View } from './view.js';

/** K, 50 °C: a conductor that carries its current for hours. Common practice, no source. */
const CONDUCTOR = 323.15;
/** Resistance over that of copper of the same section. Copper-clad aluminium, a tenth of copper by volume: from memory. */
const OVER_COPPER: Readonly<Record<string, number>> = { aluminium: RESISTIVITY.aluminium / RESISTIVITY.copper, 'copper-clad': 1.55 };
/** m, one way, where no length is stated. */
const USUAL_LENGTH = 2;

/**
 * Resistance of a pair of leads, there and back, conductor at 50 °C.
 *
 * @returns Ω; 0 if the section is not known (it then costs nothing, and hover says so). Clamps and lugs are not in it.
 *          Source: [iec-60028] for copper
 */
export function leadsResistanceOf(leads: View): number {
    const section = leads.maybe('section');
    const length = leads.maybe('length', USUAL_LENGTH);
    if (!(section > 0)) return 0;
    const material = leads.word('material') ?? 'copper';
    return 2 * length * (OVER_COPPER[material] ?? 1) * copperResistivity(CONDUCTOR) / section;
}

/** Leads whose volts the stack misses: all but those between a battery and the converter that runs from it. */
export function leadsToStack(q: View): View[] {
    const converter = q.all('supply').find(s => s.word('sort') === 'converter');
    return q.all('leads').filter(l => !converter || !q.paths.after(l.name, 'current').includes(converter.name));
}

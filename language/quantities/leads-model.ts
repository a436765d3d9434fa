/** Resistance of a pair of leads as described. */
import { copperResistivity } from '../physics/wiring.js';
import type { View } from './view.js';

/** Ω, there and back, conductor at 50 °C; 0 if its section is not known (it then costs nothing, and hover says so). */
export function leadsResistanceOf(leads: View): number {
    const section = leads.maybe('section');
    const length = leads.maybe('length', 2);
    if (!(section > 0)) return 0;
    const material = leads.word('material') ?? 'copper';
    const factor = material === 'aluminium' ? 1.64 : material === 'copper-clad' ? 1.55 : 1;
    return 2 * length * factor * copperResistivity(323.15) / section;
}

/** Leads whose volts the stack misses: all but those between a battery and the converter that runs from it. */
export function leadsToStack(q: View): View[] {
    const converter = q.all('supply').find(s => s.word('sort') === 'converter');
    return q.all('leads').filter(l => !converter || !q.paths.after(l.name, 'current').includes(converter.name));
}

/** A rig with variants laid over it, worked out as far as it is asked about; kept for as long as the rig is read, and what did not change from one reading to the next. */
import { withVariants } from '../rig/variants.js';
import { Memory } from './memory.js';
import { Workings } from './workings.js';

const ofReading = new WeakMap<Workings, Map<string, Workings>>();
const acrossReadings = new WeakMap<object, Map<string, Memory>>();

/** The names in 'winter, spring'. */
export const namesOf = (text: string): string[] => text.split(',').map(n => n.trim()).filter(Boolean);

/** A rig in variants. @param names  variants, later ones winning; those that do not exist are left out, they are told at their line */
export function workingsIn(workings: Workings, names: readonly string[]): Workings {
    const key = names.join();
    let varied = ofReading.get(workings);
    if (!varied) ofReading.set(workings, (varied = new Map()));
    let found = varied.get(key);
    if (!found) varied.set(key, (found = new Workings(withVariants(workings.rig, names).rig, memoryOf(workings, key))));
    return found;
}
function memoryOf(workings: Workings, key: string): Memory | undefined {
    const { generation } = workings;
    if (!generation) return undefined;
    let memories = acrossReadings.get(generation);
    if (!memories) acrossReadings.set(generation, (memories = new Map()));
    let memory = memories.get(key);
    if (!memory) memories.set(key, (memory = new Memory()));
    return memory;
}

/** Guards that stop the stack: which there are, and the text that adds one. */
import type { Fix } from '../rig/rig.js';
import type { View } from '../quantities/view.js';
import { additionTo, insertAfter } from './fixes.js';

export interface Guard {
    readonly view: View;
    /** Where it acts, SI; NaN if not said. */
    readonly at: number;
}
/** Switches, trips and the like that sense a quantity and by acting on one side stop the making of gas. */
export function stackGuards(v: View, quantity: string, side: 'above' | 'below'): Guard[] {
    const stoppers = v.controls.stackStoppers();
    const found: Guard[] = [];
    for (const g of v.controls.sensing(quantity)) {
        if (!stoppers.has(g.name)) continue;
        for (const key of ['trips', 'breaks']) if (g.word(`${key}.side`) === side) found.push({ view: g, at: g.maybe(`${key}.value`) });
    }
    return found;
}

/** Declares a trip behind a part and lets it stop what feeds the stack. Undefined where there is nothing to stop. */
export function addStackTrip(v: View, name: string, lines: Readonly<Record<string, string>>, title: string): Fix | undefined {
    const { written: rig } = v;
    const source = v.controls.sources()[0];
    if (!source || rig.parts.has(name)) return undefined;
    // What latches is stopped rather than the supply itself, so that it stays off until somebody has looked.
    const latch = source.names('needs').map(n => v.other(n)).find(o => o && ['contactor', 'relay'].includes(o.kind) && o.part.entries.has('latched-by'));
    const target = latch ?? source;
    const entry = target.part.entries.get('stopped-by');
    const stop = entry?.value ? { span: { ...entry.span, start: entry.span.end }, text: `, ${name}` } : additionTo(rig, target.part, 'stopped-by', name);
    const declared = insertAfter(v, `trip ${name} {\n${Object.entries(lines).map(([key, text]) => `  ${`${key}:`.padEnd(18)}${text}`).join('\n')}\n}`, title);
    return stop && declared && { title, edits: [...declared.edits, stop], preferred: true };
}

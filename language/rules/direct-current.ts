/** Direct voltage on the way of the current: what a fuse or a switch has to break. */
import type { View } from '../quantities/view.js';

export interface DirectVolts {
    /** The part that makes it, and the property that says so. */
    readonly view: View;
    readonly key: string;
    /** V, the most that it shows without load. */
    readonly volts: number;
}
const keys: Readonly<Record<string, readonly string[]>> = { supply: ['no-load', 'voltage'], battery: ['full', 'voltage'], panels: ['open-circuit'], transformer: ['secondary-unloaded', 'secondary'] };

/** The highest direct voltage of what stands before a part on the path of the current, as stated; undefined where none is known. */
export function directVolts(v: View): DirectVolts | undefined {
    let most: DirectVolts | undefined;
    const before = v.paths.before(v.name, 'current');
    const rectified = before.some(n => v.other(n)?.kind === 'rectifier');
    for (const name of before) {
        const view = v.other(name);
        const key = view && keys[view.kind]?.find(k => view.maybe(k) > 0);
        // Before a rectifier the current of a winding alternates.
        if (!view || !key || (view.kind === 'transformer' && !rectified)) continue;
        // Behind it stands the crest of the wave, what the diodes take not counted.
        const volts = view.maybe(key) * (view.kind === 'panels' ? view.maybe('wiring.series', 1) : view.kind === 'transformer' ? Math.SQRT2 : 1);
        if (!most || volts > most.volts) most = { view, key, volts };
    }
    return most;
}

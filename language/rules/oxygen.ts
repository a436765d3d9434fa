/** What oxygen is for at a part: let go, led to a flame, or under pressure. Asked by the rules on handling it. */
import type { View } from '../quantities/view.js';

/**
 * `pressed` on the pressure of a cylinder or a compressor, these themselves included; `reduced` behind their regulator;
 * `burnt` on the way to a burner straight from the stack; undefined where no oxygen goes, or where it only goes outdoors.
 */
export function oxygenDuty(v: View): 'pressed' | 'reduced' | 'burnt' | undefined {
    const { paths } = v;
    if (!paths.to(v.name, 'oxygen').length && !paths.from(v.name, 'oxygen').length) return undefined;
    const kind = (name: string) => v.other(name)?.kind ?? '';
    const presses = [v.name, ...paths.before(v.name, 'oxygen')].filter(n => kind(n) === 'cylinder' || kind(n) === 'compressor');
    if (presses.some(p => !paths.between(p, v.name, 'oxygen').some(n => kind(n) === 'regulator'))) return 'pressed';
    if (presses.length) return 'reduced';
    return paths.after(v.name, 'oxygen').some(n => kind(n) === 'burner' || kind(n) === 'engine') ? 'burnt' : undefined;
}

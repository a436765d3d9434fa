/** How loudly a thing that is missing is told, by how far the rig is. */
import type { View } from '../quantities/view.js';
import type { Severity, Tell } from './define.js';

/** In a first idea, what is missing is a step still to take: told one step more gently than from a drawing on. */
export function missing(tell: Tell, severity: Severity): Severity {
    if (tell.stage !== 'idea') return severity;
    return severity === 'error' ? 'warning' : 'hint';
}
/** Told as `built` from stage built on, as `before` up to then. */
export function onceBuilt(tell: Tell, built: Severity, before: Severity): Severity {
    return tell.reached('built') ? built : before;
}
/** Not said, or said to be unknown: a danger that hangs on it is as open in the one case as in the other. */
export function notGiven(v: View, key: string): boolean {
    const says = v.says(key);
    return says === 'silent' || says === 'unknown';
}

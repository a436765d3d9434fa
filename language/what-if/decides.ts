/** Which guesses a finding hangs on: with one of them at an end of its usual spread, all else as described, it would not be told. */
import { spreadOf } from '../quantities/spread.js';
import { Supposed } from '../quantities/supposed.js';
import { Workings } from '../quantities/workings.js';
import type { Finding } from '../rules/define.js';
import { toldAgain, type JudgeOptions } from '../rules/judge.js';

const known = new WeakMap<Finding, readonly string[]>();

/**
 * @param workings  the rig in which it was told
 * @param most      guesses that are tried, the first ones it rests on
 * @returns labels of assumed values, as in `finding.rests`
 */
export function decidedBy(workings: Workings, finding: Finding, most: number, options: JudgeOptions = {}): readonly string[] {
    let labels = known.get(finding);
    if (!labels) known.set(finding, (labels = finding.rests.slice(0, most).filter(label => decides(workings, finding, label, options))));
    return labels;
}
function decides(workings: Workings, finding: Finding, label: string, options: JudgeOptions): boolean {
    const [name, key, ...slots] = label.split('.');
    const part = workings.rig.parts.get(name);
    const given = part && workings.given(part, key);
    const fact = given?.facts.get(slots.join('.'));
    if (given?.status !== 'assumed' || !given.property || !fact) return false;
    const [low, high] = spreadOf(given.property, fact);
    if (!(low < high)) return false;
    const at = (si: number) => new Workings(workings.rig, undefined, new Supposed(workings.supposed).value(name, label.slice(name.length + 1), si));
    return !toldAgain(at(low), finding, options) || !toldAgain(at(high), finding, options);
}

/** Assumed values that would bring an error, or take one away, if they were three tenths off: the whole rig worked out again for each end. */
import { Workings } from '../../../quantities/workings.js';
import { spreadOf } from '../../../quantities/spread.js';
import { judge } from '../../../rules/judge.js';
import type { Finding } from '../../../rules/define.js';
import { assumptionRows } from '../../../reference/quantities.js';
import { CannotTry, inputOf, type TriedInput } from '../../../what-if/input.js';
import { defineSection, list, words, type Asked } from '../define.js';
import type { Cell } from '../page.js';

const OFF = 0.3;
/** Values tried at most, and ms in which a next one is begun. Own choice: a reader waits for a page. */
const MOST = 40;
const TIME = 600;

export default defineSection({
    name: 'flips', title: 'What a guess decides', order: 110, lead: `Assumed values that would bring an error, or take one away, if they were ${100 * OFF} % off: find these out before anything is decided by the findings.`,
    make: a => {
        const inputs = candidatesOf(a).flatMap(name => triedOf(a, name) ?? []);
        const errors = (w: Workings) => new Map(judge(w, { today: a.options.today }).findings.filter(f => f.severity === 'error').map(f => [key(f), f]));
        const before = errors(new Workings(a.analysis.rig, undefined, a.workings.supposed));
        const items: Cell[] = [];
        const began = a.options.clock?.();
        let tried = 0;
        for (const input of inputs.slice(0, MOST)) {
            if (began !== undefined && a.options.clock!() - began > TIME) break;
            tried++;
            for (const si of endsOf(input)) {
                const after = errors(input.at(si));
                const says = `${input.name} at ${input.say(si)} instead of ${input.say(input.now)}`;
                for (const [k, f] of after) if (!before.has(k)) items.push([`${says} would bring an error: ${f.rule}`, f.message]);
                for (const [k, f] of before) if (!after.has(k)) items.push([`${says} would take an error away: ${f.rule}`, f.message]);
            }
        }
        const left = inputs.length - tried;
        return [
            ...(items.length ? list(items) : [words(tried ? `None of the ${tried === 1 ? 'one value' : `${tried} values`} that were tried, each by itself at both ends: ${inputs.slice(0, tried).map(i => i.name).join(', ')}.` : 'No number is assumed here that an error could hang on.')]),
            words(`${tried && items.length ? `${tried} values were tried, each by itself. ` : ''}${left > 0 ? `${left} more were not tried. ` : ''}Temperatures were moved to the ends of their usual spread instead, since ${100 * OFF} % of a temperature means nothing. Two guesses off at once can do more.`, 'quiet'),
        ];
    },
});
const key = (f: Finding) => `${f.rule} ${f.span.file} ${f.span.start}`;
/** Assumed numbers by their weight: those that findings rest on first. */
function candidatesOf({ analysis, workings, hidden }: Asked): string[] {
    const names = new Set([...analysis.findings.flatMap(f => f.rests), ...assumptionRows(workings).map(r => r.name)]);
    return [...names].filter(n => !hidden.has(n.split('.')[0]));
}
function triedOf({ workings }: Asked, name: string): TriedInput | undefined {
    try {
        const input = inputOf(workings, name);
        return endsOf(input).length ? input : undefined;
    } catch (e) {
        if (e instanceof CannotTry) return undefined;
        throw e;
    }
}
function endsOf(input: TriedInput): number[] {
    const { now, unit, property, view, name } = input;
    if (!(Math.abs(now) > 0)) return [];
    if (unit?.offset) {
        const fact = view.given(property.name).facts.get(name.split('.').slice(2).join('.'));
        const [low, high] = fact ? spreadOf(property, fact) : [now, now];
        return low < high ? [low, high] : [];
    }
    return [now * (1 - OFF), now * (1 + OFF)].map(si => input.rounded(si, 0)).filter(si => si !== now);
}

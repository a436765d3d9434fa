/**
 * What papers ask of a rig. What the text does not tell is a blank; an assumption of the language is never printed as if it were told, and a
 * number that rests on one bears a mark.
 */
import type { Analysis } from '../../index.js';
import { showFact, showResult, showSpread } from '../../reference/values.js';
import type { View } from '../../quantities/view.js';
import type { Faults } from '../../run/faults.js';
import { show } from '../../units/format.js';
import type { Fact } from '../../values/match.js';
import { el, together, type Markup } from '../svg.js';
import { blank } from './page.js';

/** Marks a number that rests on something assumed. */
export const ASSUMED = '*';
/** Names in one cell before the rest is only counted. */
const MOST_NAMES = 12;
/** SI, per measure: what nobody reads on the instruments of a workshop is told as less than that. */
const UNREADABLE: Readonly<Record<string, readonly [number, string]>> = { pressure: [10, '0.01 kPa'], length: [1e-3, '1 mm'] };

export class Bench {
    private readonly live: readonly View[];
    /** What was assumed of which numbers were printed since they were last listed. */
    private assumed = new Set<string>();
    constructor(readonly analysis: Analysis, readonly faults?: Faults) {
        this.live = [...analysis.workings.allViews()].filter(v => !v.part.pattern);
    }
    get title(): string {
        return this.analysis.rig.title;
    }
    get paths() {
        return this.analysis.workings.paths;
    }
    get controls() {
        return this.analysis.workings.controls;
    }
    /** Parts that stand in the rig, in the order of the text. */
    parts(...kinds: readonly string[]): readonly View[] {
        return kinds.length ? this.live.filter(v => kinds.includes(v.kind)) : this.live;
    }
    the(kind: string): View | undefined {
        return this.live.find(v => v.kind === kind);
    }
    other(name: string): View | undefined {
        return this.live.find(v => v.name === name);
    }
    /** What the text tells in one slot of a property ('port.bore'); undefined where it is silent, unknown or only assumed. */
    fact(v: View | undefined, key: string): Fact | undefined {
        if (!v) return undefined;
        const [own, slot = ''] = key.split('.');
        const given = v.given(own);
        return given.status === 'stated' || given.status === 'like' ? given.facts.get(slot) : undefined;
    }
    /** The same as its writer wrote it: '2 mm', 'nickel', '125 x 145 x 0.8 mm'; undefined if not told. */
    told(v: View | undefined, key: string): string | undefined {
        if (v?.says(key.split('.')[0]) === 'none') return 'none';
        const fact = this.fact(v, key);
        if (!fact) return undefined;
        return showFact(fact) || fact.names?.join('.') || undefined;
    }
    /** The same, SI; NaN if not told. */
    num(v: View | undefined, key: string): number {
        const fact = this.fact(v, key);
        return fact ? fact.number : NaN;
    }
    sizes(v: View | undefined, key: string): readonly number[] | undefined {
        return this.fact(v, key)?.sizes;
    }
    /** The whole value as it stands in the text. */
    written(v: View | undefined, key: string): string | undefined {
        if (!v) return undefined;
        const given = v.given(key);
        return given.status === 'stated' || given.status === 'like' || given.status === 'none' ? given.entry?.value?.text.trim().replace(/\s+/g, ' ').replace(/^"(.*)"$/, '$1') : undefined;
    }
    /** What is told, or a blank. */
    ask(v: View | undefined, key: string): string | Markup {
        return this.told(v, key) ?? blank();
    }
    /** A number worked out, SI; NaN if it cannot be known. */
    q(v: View | undefined, name: string): number {
        return v?.result(name)?.value ?? NaN;
    }
    /** Whether it rests on something that the text does not tell. */
    rests(v: View | undefined, name: string): boolean {
        return (v?.result(name)?.rests.length ?? 0) > 0;
    }
    /** A number worked out with its ±, marked where it rests on something assumed; a blank where it cannot be known. */
    predicted(v: View | undefined, name: string, figures = 3): Markup {
        const result = v?.result(name);
        if (!result || result.value !== result.value) return blank();
        for (const label of result.rests) this.assumed.add(label);
        const mark = result.rests.length > 0 && el('sup', {}, ASSUMED);
        const [least, told] = UNREADABLE[result.quantity.measure] ?? [0, ''];
        if (Math.abs(result.value) < least) return together(`less than ${told}`, mark);
        const spread = showSpread(result);
        return together(showResult(result, figures), spread && el('small', {}, ` ${spread}`), mark);
    }
    /** An SI number in a unit, or a blank. */
    number(si: number, unit: string, figures = 3): string | Markup {
        return si === si && Number.isFinite(si) ? show(si, unit, figures) : blank();
    }
    /** What the marked numbers rest on, since this was last asked. */
    takeAssumed(): readonly string[] {
        const list = [...this.assumed];
        this.assumed = new Set();
        return list;
    }
    names(list: readonly string[]): string | Markup {
        if (!list.length) return blank();
        return list.length > MOST_NAMES ? `${list.slice(0, MOST_NAMES).join(', ')} and ${list.length - MOST_NAMES} more` : list.join(', ');
    }
    /** Findings that say that something is wrong. */
    get errors(): number {
        return this.analysis.findings.filter(f => f.severity === 'error').length;
    }
}

/**
 * A part as laws and rules see it: given values, words, other quantities. Everything read through a view is noted, so
 * that any result can show its working and say which guesses it rests on.
 */
import type { MeasureName } from '../units/dimension.js';
import type { Facts } from '../values/match.js';
import type { Part, Rig, Span } from '../rig/rig.js';
import type { Paths } from '../rig/paths.js';
import type { Controls } from '../rig/controls.js';
import type { Given, Result, Workings } from './workings.js';
import type { Doubt, Model } from './define.js';

export class View {
    constructor(private readonly workings: Workings, private readonly own: Part) {}

    /** The block itself. What is read of it is noted: the whole block counts as read. */
    get part(): Part {
        this.workings.noteText(this.own);
        return this.own;
    }

    /** What its kind declares, and whether it is a pattern. Of its block nothing else counts as read by these. */
    get declared(): Part['kind'] {
        this.workings.notePresence(this.own);
        return this.own.kind;
    }
    get pattern(): boolean {
        this.workings.notePresence(this.own);
        return !!this.own.pattern;
    }

    get name(): string {
        return this.own.name;
    }
    get kind(): string {
        return this.own.kindWord;
    }
    /** All of the rig; whoever decides by it is asked again at every edit. */
    get rig(): Rig {
        this.workings.noteCell('whole');
        return this.workings.rig;
    }
    /** The rig for those who compose what is told: places and fixes. Not noted, since what is told is composed anew each time. */
    get written(): Rig {
        return this.workings.rig;
    }
    get paths(): Paths {
        return this.workings.paths;
    }
    get controls(): Controls {
        this.workings.noteCell('controls');
        return this.workings.controls;
    }

    // ---- given values -------------------------------------------------------------------------------------------

    /** What was given for a property, with its origin. Not noted as an input. */
    given(key: string): Given {
        return this.workings.given(this.own, key);
    }
    /** How a property stands: 'stated', 'like', 'assumed', 'none', 'unknown', 'silent', 'broken'. */
    says(key: string): Given['status'] {
        return this.given(key).status;
    }
    /** True if the text says it (here or in the part it is like), `none` included. */
    said(key: string): boolean {
        const s = this.says(key);
        return s === 'stated' || s === 'like' || s === 'none';
    }
    /** SI number of a property ('level') or of a slot of it ('port.bore'). NaN if unknown; then the result rests on something missing. */
    num(key: string): number {
        return this.workings.number(this.own, key, true);
    }
    /** The same, where it is no loss if it is not known. */
    maybe(key: string, otherwise = NaN): number {
        const n = this.workings.number(this.own, key, false);
        return n === n ? n : otherwise;
    }
    /** SI number of a line about another part, in a reading or a claim: 'stack.voltage'; as what it measures if that can be written
     *  in two ways, as a flow of gas can. NaN if there is none. */
    seen(key: string, measure?: MeasureName): number {
        return this.workings.seen(this.own, key, measure);
    }
    /** The ± of such a line, SI; 0 where none is written. */
    seenHalf(key: string): number {
        return this.workings.seenHalf(this.own, key);
    }
    /** A word in a line about another part: 'lye.solute'; undefined if there is none. */
    seenWord(key: string): string | undefined {
        return this.workings.seenWord(this.own, key);
    }
    /** Bounds of a number by its tolerance or range. */
    bounds(key: string): { low: number; high: number } {
        return this.workings.bounds(this.own, key);
    }
    /** A word ('PP', 'bridge'); undefined if silent, none or unknown. */
    word(key: string): string | undefined {
        return this.workings.word(this.own, key);
    }
    /** yes -> true, no -> false, anything else undefined. */
    yes(key: string): boolean | undefined {
        const w = this.word(key);
        return w === 'yes' ? true : w === 'no' ? false : undefined;
    }
    /** The lengths of a size, a x b x c, in m. */
    sizes(key: string): readonly number[] | undefined {
        return this.workings.fact(this.own, key)?.sizes;
    }
    /** Notes something read by `sizes` as an input, in SI. */
    workingsNote(key: string, value: number): void {
        this.workings.noteValue(this.own, key, value);
    }
    /** The items of a list, as facts by slot. */
    rows(key: string): readonly Facts[] {
        return this.workings.rows(this.own, key);
    }
    /** Names in a list of parts or conditions. */
    names(key: string): readonly string[] {
        return this.workings.names(this.own, key);
    }

    /** Air pressure at the site, Pa: stated, or by its height above the sea. */
    airPressure(): number {
        if (this.kind === 'site') this.maybe('altitude');
        return this.workings.airPressure;
    }

    // ---- worked out ---------------------------------------------------------------------------------------------

    /** SI value of another quantity of this part; NaN if unknown, noted as missing then. */
    q(name: string): number {
        return this.workings.quantityNumber(this.own, name, true);
    }
    /** The same, where it is no loss if it is not known. */
    maybeQ(name: string, otherwise = NaN): number {
        const n = this.workings.quantityNumber(this.own, name, false);
        return n === n ? n : otherwise;
    }
    /** The whole result, with its inputs. */
    result(name: string): Result | undefined {
        return this.workings.quantity(this.own, name);
    }
    /** Something solved as a whole. */
    model<T>(m: Model<T>): T {
        return this.workings.model(this.own, m);
    }
    /** The same in a rig that differs by a little, as a place to start from; undefined if there is none. */
    nearby<T>(m: Model<T>): T | undefined {
        return this.workings.nearby(this.own, m);
    }
    /** How far off a law is supposed to be: 0 as things are expected, ± `half` at its bounds; `told` where its bounds differ by make. */
    doubt(d: Doubt, half = d.half ?? NaN, told = d.told): number {
        return this.workings.doubt(this.own, d, half, told);
    }

    // ---- other parts --------------------------------------------------------------------------------------------

    /** The only part of a kind, or the first one; undefined if there is none. */
    the(kind: string): View | undefined {
        return this.workings.partsOf(kind)[0];
    }
    /** Every part of a kind, in the order of the text. */
    all(kind: string): readonly View[] {
        return this.workings.partsOf(kind);
    }
    /** All parts that stand in the rig, in the order of the text. */
    every(): readonly View[] {
        return [...this.workings.allViews()].filter(v => !v.own.pattern);
    }
    /** A part by its name. */
    other(name: string): View | undefined {
        return this.workings.viewOf(name);
    }

    // ---- places for findings ------------------------------------------------------------------------------------

    /** Where a property is said; the part's name if it is not. */
    at(key?: string): Span {
        if (!key) return this.own.nameSpan;
        const entry = this.own.entries.get(key.split('.')[0]);
        return entry ? (entry.value ? entry.span : entry.keySpan) : this.own.nameSpan;
    }
    /** The place of one slot of a property. */
    atSlot(key: string): Span {
        const entry = this.own.entries.get(key.split('.')[0]);
        const fact = this.workings.fact(this.own, key);
        return entry && fact ? { file: entry.span.file, start: entry.span.start + fact.start, end: entry.span.start + fact.end } : this.at(key);
    }
}

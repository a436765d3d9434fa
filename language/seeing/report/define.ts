/** How a section of the report is declared: one file in `of/`. It tells what was worked out, and works nothing out by itself. */
import type { Analysis } from '../../index.js';
import type { Result, Workings } from '../../quantities/workings.js';
import { resultsOf } from '../../reference/quantities.js';
import type { Finding } from '../../rules/define.js';
import { singleFaultsIn, type Faults } from '../../run/faults.js';
import { CannotRun } from '../../run/run.js';
import type { Block, Cell, Row } from './page.js';
import { withoutStore, type Lesser } from './store.js';

export interface ReportOptions {
    /** ISO date of the day. */
    readonly today?: string;
    /** What fills a store, and the store, are left out of a shared report unless this is set; what can fail in them never is. */
    readonly withStorage?: boolean;
    /** Faults are broken through; false: the report says that they were not. */
    readonly faults?: boolean;
    /** ms, for what is tried as long as there is time; without it a fixed number of tries is made. */
    readonly clock?: () => number;
}
export interface SectionOf {
    /** Of its place in the page: a word. */
    readonly name: string;
    readonly title: string;
    /** One sentence: what it is for. */
    readonly lead: string;
    /** Place in the report. */
    readonly order: number;
    readonly page?: 'own' | 'wide';
    /** What stands in it; left out where there is nothing to say. */
    readonly make: (a: Asked) => readonly Block[];
}
export function defineSection(s: SectionOf): SectionOf {
    return s;
}

/** What sections ask: the rig, and what several of them want to know, worked out once. */
export class Asked {
    readonly workings: Workings;
    /** The same rig without its store; undefined where it has none. */
    readonly lesser: Lesser | undefined;
    /** Parts that this copy leaves out. */
    readonly hidden: ReadonlySet<string>;
    /** Single failures followed; a text: why there are none. */
    readonly faults: Faults | string;
    /** Known numbers, in the order of the text. */
    readonly results: readonly Result[];

    constructor(readonly analysis: Analysis, readonly options: ReportOptions) {
        this.workings = analysis.workings;
        this.lesser = withoutStore(analysis.workings);
        this.hidden = options.withStorage ? new Set() : this.lesser?.gone ?? new Set();
        this.faults = options.faults === false ? 'No failure was followed for this copy: ask for one in which they were.' : broken(analysis.workings);
        this.results = resultsOf(analysis.workings).filter(r => r.value === r.value);
    }
    /** A number of the first part of a kind that has it. */
    quantity(kind: string, name: string): Result | undefined {
        return this.results.find(r => r.part.kindWord === kind && r.quantity.name === name);
    }
    /** The part that a finding stands in; undefined for the rig as a whole. */
    partOf(f: Finding): string | undefined {
        return [...this.analysis.rig.parts.values()].find(p => p.span.file === f.span.file && p.span.start <= f.span.start && f.span.start < p.span.end)?.name;
    }
}
function broken(workings: Workings): Faults | string {
    try {
        return singleFaultsIn(workings);
    } catch (e) {
        if (e instanceof CannotRun) return `Nothing could be broken, since the rig cannot be run through: ${e.message}`;
        throw e;
    }
}

// ---- building blocks -------------------------------------------------------------------------------------------------

export const words = (text: string, as?: 'strong' | 'quiet'): Block => ({ is: 'words', text, as });
export const heading = (text: string): Block => ({ is: 'heading', text });
export const list = (items: readonly Cell[]): Block[] => (items.length ? [{ is: 'list', items }] : []);
export const table = (head: readonly string[], rows: readonly Row[], numbers?: readonly number[]): Block[] => (rows.length ? [{ is: 'table', head, rows, numbers }] : []);
/** A name of the language as words: 'volts-per-cell' -> 'volts per cell'. */
export const spaced = (name: string): string => name.replace(/-hhv$/, ' by higher heating value').replace(/-lhv$/, ' by lower heating value').replaceAll('-', ' ');
/** The first so many, and how many more there are. */
export function cut<T>(all: readonly T[], most: number, more: (left: number) => string): { readonly shown: readonly T[]; readonly rest: readonly Block[] } {
    return { shown: all.slice(0, most), rest: all.length > most ? [words(more(all.length - most), 'quiet')] : [] };
}

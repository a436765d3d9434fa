/** A rig as plain data: what its texts say, and where each thing was said. No syntax tree in it. */
import type { Condition } from '../values/match.js';
import type { ParsedValue } from '../values/parse-value.js';
import type { Kind, Medium, Property } from '../vocabulary/define.js';

/** A range of one file, in UTF-16 units. */
export interface Span {
    readonly file: string;
    readonly start: number;
    readonly end: number;
}
export const stages = ['idea', 'drawn', 'built', 'running', 'retired'] as const;
export type Stage = (typeof stages)[number];
/** Whether a rig of that stage has come to another one; always where none is named. */
export const reaches = (stage: Stage, other: Stage | undefined): boolean => other === undefined || stages.indexOf(stage) >= stages.indexOf(other);

export interface Fix {
    readonly title: string;
    readonly edits: readonly { readonly span: Span; readonly text: string }[];
    /** Keeps the meaning of the text: may be applied with all others of its sort at once. */
    readonly keepsMeaning?: boolean;
    readonly preferred?: boolean;
    /** What it would newly raise, if anything: said in its title by those who show it. */
    readonly raises?: readonly string[];
}
/** Something wrong with the text itself, told while reading. */
export interface Problem {
    readonly code: string;
    readonly span: Span;
    readonly message: string;
    readonly related?: readonly { readonly span: Span; readonly message: string }[];
    readonly fixes?: readonly Fix[];
}

/** `key: value` as written. */
export interface Entry {
    readonly key: string;
    readonly keySpan: Span;
    /** Of the value; empty and at the end of the line if there is none yet. */
    readonly span: Span;
    readonly value: ParsedValue | undefined;
    /** Its declaration, if the kind knows the key. */
    readonly property: Property | undefined;
    readonly note?: string;
    /** Something in it could not be read: its value is unknown. */
    broken: boolean;
}
export interface Part {
    readonly name: string;
    readonly kind: Kind | undefined;
    readonly kindWord: string;
    readonly file: string;
    /** The name in its header, or the kind's word where it has no name of its own. */
    readonly nameSpan: Span;
    readonly kindSpan: Span;
    /** The whole block. */
    readonly span: Span;
    /** Inside the braces; undefined without braces. */
    readonly inside: Span | undefined;
    readonly named: boolean;
    readonly base?: { readonly name: string; readonly span: Span };
    readonly entries: ReadonlyMap<string, Entry>;
    readonly note?: string;
    /** Not in any text: there because every rig has one, or because another part implies it. */
    readonly implied?: boolean;
    /** From a library: a pattern, in no rig until `like` names it. */
    readonly pattern?: boolean;
}
export interface Stop {
    readonly name: string;
    readonly port?: string;
    readonly span: Span;
}
export interface Path {
    readonly medium: Medium | string;
    readonly mediumSpan: Span;
    readonly stops: readonly Stop[];
    readonly span: Span;
    readonly file: string;
    /** Something in it could not be read: what it joins is not fully known. */
    readonly broken: boolean;
}
export interface Named {
    readonly name: string;
    readonly nameSpan: Span;
    readonly span: Span;
    readonly value: ParsedValue | undefined;
    readonly note?: string;
}
export interface Expectation {
    readonly span: Span;
    readonly text: string;
    /** Before the colon: in which variant, during which scenario, if what happens. */
    readonly when?: { readonly word: 'with' | 'during' | 'if'; readonly text: string; readonly span: Span };
    /** A comparison at rest; undefined where it is about time, or could not be read. */
    readonly value?: ParsedValue;
    readonly valueSpan: Span;
    readonly overTime: boolean;
    readonly broken: boolean;
}
export interface Allowance {
    readonly rule: string;
    readonly ruleSpan: Span;
    readonly on?: { readonly name: string; readonly span: Span };
    readonly until?: string;
    readonly by?: string;
    readonly because?: string;
    /** From a `weigh` line: what its findings weigh from now on, instead of being turned down. */
    readonly level?: Level;
    readonly span: Span;
}
export const levels = ['nothing', 'hint', 'warning', 'error'] as const;
export type Level = (typeof levels)[number];
export interface Use {
    readonly span: Span;
    readonly target: string;
    readonly targetSpan: Span;
    /** Without quotes: a library shipped with the tool. */
    readonly shipped: boolean;
}
/** What one file says. */
export interface Page {
    readonly file: string;
    readonly text: string;
    readonly sort: 'rig' | 'library' | 'page';
    readonly title?: { readonly text: string; readonly span: Span };
    readonly stage?: { readonly word: Stage; readonly span: Span };
    readonly parts: readonly Part[];
    readonly lets: readonly Named[];
    readonly paths: readonly Path[];
    readonly expects: readonly Expectation[];
    readonly allows: readonly Allowance[];
    readonly uses: readonly Use[];
    readonly problems: readonly Problem[];
    /** Every name in the text that may mean a part or a named value, for the editor. */
    readonly occurrences: readonly Occurrence[];
}
export interface Occurrence {
    readonly names: readonly string[];
    readonly start: number;
    readonly end: number;
    readonly role: 'definition' | 'reference';
}
/** All pages of a rig together. */
export interface Rig {
    readonly root: string;
    readonly title: string;
    readonly stage: Stage;
    readonly stageSaid: boolean;
    /** A library opened by itself: patterns, judged by themselves only. */
    readonly isLibrary: boolean;
    readonly pages: readonly Page[];
    /** Parts of the rig by name, statements (readings, tests ...) included; implied ones too. */
    readonly parts: ReadonlyMap<string, Part>;
    readonly patterns: ReadonlyMap<string, Part>;
    readonly lets: ReadonlyMap<string, Named>;
    readonly paths: readonly Path[];
    readonly expects: readonly Expectation[];
    readonly allows: readonly Allowance[];
    /** Told while the pages were put together. */
    readonly problems: readonly Problem[];
    /** With the parts that belong to variants only, where there are such. */
    readonly whole?: Rig;
}
export type { Condition };

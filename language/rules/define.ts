/**
 * How a rule is declared: name, severity, summary, source, and one function that looks and tells. One file per rule in
 * `of/<family>/`, its page (`.md`) beside it: why, limit, example wrong and right, how to mend, when not to worry. The
 * examples of the page are its tests. Rules read given values and quantities; they never recompute physics.
 */
import type { View } from '../quantities/view.js';
import type { Workings } from '../quantities/workings.js';
import type { Fix, Span, Stage } from '../rig/rig.js';

export type Severity = 'error' | 'warning' | 'hint';
export type Family =
    | 'reading the text' | 'electrical supply' | 'stack' | 'separators and purity' | 'lye and materials' | 'circulation and levels'
    | 'heat' | 'gas conditioning' | 'buffer' | 'compressor' | 'storage' | 'controls' | 'wiring' | 'siting' | 'operation'
    | 'use' | 'money' | 'the description';

export interface Rule {
    readonly name: string;
    readonly family: Family;
    /** Its usual severity; a telling may lower or raise it. */
    readonly severity: Severity;
    /** The bad situation in one sentence. */
    readonly summary: string;
    /** Why it matters, for every telling that does not say its own. */
    readonly why: string;
    /** Standard, handbook or table with the clause, as far as known; 'common practice, no source'; 'from memory' where so. */
    readonly source: string;
    /** A life can hang on it: muted it leaves a reminder, and what it cannot check is told. */
    readonly guardsLife?: boolean;
    /** Speaks from this stage on; before it, it is one line in the list of things to do. */
    readonly from?: Stage;
    /** Is folded under these when they fire: the cause is told once. */
    readonly under?: readonly string[];
    /** Kind of part it is asked for; 'rig' once for the whole. Left out for what is told while reading. */
    readonly on?: string | readonly string[];
    readonly check?: (v: View, tell: Tell) => void;
    /** Told of runs with something broken, once they are done; never while typing. */
    readonly fromRuns?: boolean;
}

export interface Telling {
    /** Where it can be mended. */
    readonly at: Span;
    /** What, with the number and the limit, in one or two sentences. */
    readonly message: string;
    readonly severity?: Severity;
    readonly why?: string;
    readonly source?: string;
    /** The other places involved. */
    readonly related?: readonly { readonly span: Span; readonly message: string }[];
    readonly fixes?: readonly Fix[];
}
export interface Tell {
    (telling: Telling): void;
    /**
     * Whether a number is over its limit. Within a tenth below, that is noted (`near.ts`), so ask it last: where it says yes, tell.
     * `unit` as it is shown; `at` and `key` are where the number can be mended.
     */
    exceeds(number: number, limit: number, unit: string, at: View, key?: string): boolean;
    /** The same for a limit that is a least. */
    fallsShort(number: number, limit: number, unit: string, at: View, key?: string): boolean;
    /** A life-guarding check that lacks an input: `what` completes 'cannot check …'. */
    cannotCheck(v: View, key: string, what: string): void;
    /** Date given from outside, or undefined. ISO. */
    readonly today: string | undefined;
    readonly stage: Stage;
    /** True from this stage on. */
    reached(stage: Stage): boolean;
    readonly workings: Workings;
}

export interface Finding {
    readonly rule: string;
    readonly severity: Severity;
    readonly message: string;
    readonly why: string;
    readonly source: string;
    readonly span: Span;
    readonly related: readonly { readonly span: Span; readonly message: string }[];
    readonly fixes: readonly Fix[];
    /** Assumed values that it rests on: 'stack.gap'. */
    readonly rests: readonly string[];
    readonly guardsLife: boolean;
}

export function defineRule(rule: Rule): Rule {
    return rule;
}

/**
 * The front door of the language: texts in, rig, quantities and findings out. Pure: no editor, no file system, no clock.
 *
 *     const analyst = new Analyst(file => texts.get(file));
 *     const { rig, workings, findings } = analyst.analyse('shed.rig', { today: '2026-06-15' });
 */
import { FrameReader } from './grammar/frame.js';
import { checkNames } from './quantities/check-names.js';
import { Memory } from './quantities/memory.js';
import { Workings } from './quantities/workings.js';
import { assemble, shippedText } from './rig/assemble.js';
import { readPage, ValueStore } from './rig/read-page.js';
import type { Fix, Page, Rig } from './rig/rig.js';
import { asItStands, withVariants } from './rig/variants.js';
import type { Finding } from './rules/define.js';
import { judge } from './rules/judge.js';
import type { Near } from './rules/near.js';

export interface AnalyseOptions {
    /** ISO date; rules about dates are silent without it. */
    readonly today?: string;
    /** Filled with milliseconds per rule, if given together with a clock. */
    readonly times?: Map<string, number>;
    readonly clock?: () => number;
}
export interface Analysis {
    readonly rig: Rig;
    readonly workings: Workings;
    /** Of all files of the rig, in the order of file and place. */
    readonly findings: readonly Finding[];
    /** Close to a limit and not over it, the nearest first. */
    readonly near: readonly Near[];
    /** Every file that was asked for, found or not: when one of them changes, this is old. */
    readonly files: readonly string[];
}

/** Reads and judges rigs; keeps what did not change from one reading to the next. */
export class Analyst {
    private readonly frames = new FrameReader();
    private readonly values = new ValueStore();
    private readonly pages = new Map<string, Page>();
    private readonly memories = new Map<string, Memory>();

    /** @param textOf text of a file by its name (a path or URI), or undefined if there is no such file */
    constructor(private readonly textOf: (file: string) => string | undefined) {}

    /** What one file says by itself. Never throws for any text. */
    page(file: string): Page | undefined {
        const text = shippedText(file) ?? this.textOf(file);
        if (text === undefined) return undefined;
        const before = this.pages.get(file);
        if (before && before.text === text) return before;
        const page = readPage(file, this.frames.read(file, text), this.values);
        this.pages.set(file, page);
        this.values.turn();
        return page;
    }
    /** Works out the rig whose first file this is. */
    analyse(file: string, options: AnalyseOptions = {}): Analysis {
        const files = new Set<string>([file]);
        const root = this.page(file) ?? readPage(file, this.frames.read(file, ''), this.values);
        const rig = asItStands(assemble(root, f => {
            files.add(f);
            return this.page(f);
        }));
        let memory = this.memories.get(file);
        if (!memory) this.memories.set(file, (memory = new Memory()));
        const workings = new Workings(rig, memory);
        workings.workOutAll();
        if (!rig.isLibrary && root.sort === 'rig') workings.problems.push(...checkNames(workings));
        const { findings, near } = judge(workings, options);
        return { rig, workings, findings, near, files: [...files] };
    }
    forget(file: string): void {
        this.pages.delete(file);
        this.frames.forget(file);
        this.memories.delete(file);
    }
}

/** Analyses one text by itself. */
export function analyseText(text: string, options: AnalyseOptions = {}, file = 'rig.rig'): Analysis {
    return new Analyst(f => (f === file ? text : undefined)).analyse(file, options);
}

/** The same rig with variants laid over it, in that order; with none, without what belongs to variants only. What cannot be applied is among its findings. */
export function inVariants(analysis: Analysis, names: readonly string[], options: AnalyseOptions = {}): Analysis {
    const { rig, problems } = withVariants(analysis.rig, names);
    const workings = new Workings(problems.length ? { ...rig, problems: [...rig.problems, ...problems] } : rig);
    workings.workOutAll();
    workings.problems.push(...checkNames(workings));
    return { rig: workings.rig, workings, ...judge(workings, options), files: analysis.files };
}

/** The text of a file after a fix. */
export function applyFix(text: string, file: string, fix: Fix): string {
    let out = text;
    for (const e of fix.edits.filter(e => e.span.file === file).sort((a, b) => b.span.start - a.span.start)) {
        out = out.slice(0, e.span.start) + e.text + out.slice(e.span.end);
    }
    return out;
}
/** Tries fixes on the text of a rig. One trial after the other costs little: each differs from the last by two small edits. */
export class Trials {
    private textOf: (file: string) => string | undefined = () => undefined;
    private readonly analyst = new Analyst(file => this.textOf(file));

    /** The rig as it would be with a fix. */
    with(fix: Fix, before: Analysis, textOf: (file: string) => string | undefined, options: AnalyseOptions = {}): Analysis {
        this.textOf = file => {
            const text = textOf(file);
            return text === undefined ? undefined : applyFix(text, file, fix);
        };
        return this.analyst.analyse(before.rig.root, options);
    }
    /**
     * What a fix would newly raise: its findings of error or warning that were not there before. A fix that raises an error
     * is not worth offering.
     */
    raisedBy(fix: Fix, before: Analysis, textOf: (file: string) => string | undefined, options: AnalyseOptions = {}): Finding[] {
        const after = this.with(fix, before, textOf, options);
        const had = new Map<string, number>();
        for (const f of before.findings) if (f.severity !== 'hint') had.set(f.rule, (had.get(f.rule) ?? 0) + 1);
        return after.findings.filter(f => {
            if (f.severity === 'hint') return false;
            const left = had.get(f.rule) ?? 0;
            had.set(f.rule, left - 1);
            return left <= 0;
        });
    }
}

export type { Finding, Fix, Near, Page, Rig };
export { Workings };

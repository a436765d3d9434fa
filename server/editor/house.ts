/**
 * What the server knows: open texts, files asked for, and the worked-out rigs. Analysis is one synchronous pass; whoever
 * asks gets the answer for the text on screen. This file knows no protocol but its plain data types.
 */
import type { ClientCapabilities } from 'vscode-languageserver';
import { Analyst, Trials, type Analysis, type Finding, type Fix } from '../../language/index.js';
import { resolveUse, shippedText } from '../../language/rig/assemble.js';
import { Lines } from '../../language/rig/lines.js';
import type { Page, Span } from '../../language/rig/rig.js';
import { faultFindings } from '../../language/reference/fault-findings.js';
import { faultsKept, type Faults } from '../../language/run/faults.js';
import type { RunResult } from '../../language/run/run.js';

export interface Position {
    readonly line: number;
    /** In UTF-16 units. */
    readonly character: number;
}
export interface Range {
    readonly start: Position;
    readonly end: Position;
}
export interface Doc {
    readonly uri: string;
    /** As the editor counts; undefined where the file is not open. */
    readonly version: number | undefined;
    readonly text: string;
    readonly lines: Lines;
    readonly open: boolean;
}
export interface Settings {
    /** ISO date for rules about dates; the day of the machine if not set. */
    readonly today?: string;
    /** Whether numbers are shown at the line ends. */
    readonly hints: boolean;
    /** Whether one thing is broken after the other in the background. */
    readonly faults: boolean;
}
export interface Change {
    readonly range?: Range;
    readonly text: string;
}
/** A file with what it says, in the rig that it belongs to, all of the text as it is now. */
export interface Sight {
    readonly doc: Doc;
    readonly page: Page;
    readonly analysis: Analysis;
}
interface Worked {
    /** Undefined where analysis itself failed: then there is nothing to tell. */
    readonly analysis: Analysis | undefined;
    readonly files: ReadonlySet<string>;
    readonly today: string;
    stale: boolean;
}

export class House {
    settings: Settings = { hints: true, faults: true };
    client: ClientCapabilities = {};
    /** The client is our own extension: it knows our commands and opens our pages. */
    ownClient = false;
    /** Called for a file that a text uses and nobody has opened; its text comes back by `learn`, at once or later. */
    wanted: (uri: string) => void = () => {};
    /** Rig files beside a file, where whoever runs the server can tell. */
    neighbours: (uri: string) => readonly string[] = () => [];
    /** Called when analysis itself failed: never the maker's fault, never the end of the server. */
    failed: (error: unknown) => void = () => {};
    /** Has the findings told again soon. */
    republish: () => void = () => {};
    /** First files of rigs of a folder that was checked as a whole: their findings are told although nothing of them is open. */
    watched: ReadonlySet<string> = new Set();
    /** What was last run through with an analysis: gone with it as soon as the text changes. */
    readonly lastRun = new WeakMap<Analysis, RunResult>();
    /** Called each time that findings were told. */
    told: () => void = () => {};
    /** Whether somebody waits for runs with something broken: those in the background let it go first. */
    faultsAsked = 0;
    private readonly ofFaults = new WeakMap<Analysis, { readonly found: Faults; readonly findings: readonly Finding[] }>();
    /** Rigs whose faults were asked for: told even where the background does not look for them. */
    readonly rigsAsked = new Set<string>();
    private readonly docs = new Map<string, Doc>();
    private readonly asked = new Set<string>();
    private readonly looked = new Set<string>();
    private readonly worked = new Map<string, Worked>();
    private analyst = this.newAnalyst();
    private trials = new Trials();
    private readonly raised = new WeakMap<Fix, { analysis: Analysis; raised: readonly Finding[] }>();

    // ---- texts ----------------------------------------------------------------------------------------------------

    doc(uri: string): Doc | undefined {
        return this.docs.get(uri);
    }
    openDocs(): Doc[] {
        return [...this.docs.values()].filter(d => d.open);
    }
    allDocs(): Iterable<Doc> {
        return this.docs.values();
    }
    /** Files that are known by what was read, not by what is on screen. */
    closedUris(): string[] {
        return [...this.docs.values()].filter(d => !d.open).map(d => d.uri);
    }
    open(uri: string, text: string, version: number): void {
        this.put(uri, text, version, true);
    }
    /** Applies the changes of one step, in their order. A file that is not open is left alone. */
    change(uri: string, version: number, changes: readonly Change[]): void {
        let doc = this.docs.get(uri);
        if (!doc?.open) return;
        for (const c of changes) {
            const text: string = c.range ? doc.text.slice(0, doc.lines.offset(c.range.start)) + c.text + doc.text.slice(doc.lines.offset(c.range.end)) : c.text;
            doc = { uri, text, version, open: true, lines: new Lines(text) };
        }
        this.docs.set(uri, { ...doc, version });
        this.markStale(uri);
    }
    /** What was on screen is gone; where another rig uses the file, its text is asked for again. */
    close(uri: string): void {
        const doc = this.docs.get(uri);
        if (!doc) return;
        const used = [...this.worked].some(([root, w]) => root !== uri && w.files.has(uri)) || this.watched.has(uri);
        this.asked.delete(uri);
        if (used) {
            this.docs.set(uri, { ...doc, open: false, version: undefined });
            this.asked.add(uri);
            this.wanted(uri);
        } else {
            this.docs.delete(uri);
            this.analyst.forget(uri);
            // What was tried on it need not be kept either.
            this.trials = new Trials();
        }
        this.markStale(uri);
        const roots = new Set(this.roots());
        for (const root of this.worked.keys()) if (!roots.has(root)) this.worked.delete(root);
    }
    /** The text of a file that is not open; undefined: there is none. Tells whether something changed by it. */
    learn(uri: string, text: string | undefined): boolean {
        const before = this.docs.get(uri);
        if (before?.open || before?.text === text) return false;
        if (text === undefined) {
            this.docs.delete(uri);
            this.analyst.forget(uri);
            this.markStale(uri);
        } else {
            this.put(uri, text, undefined, false);
        }
        return true;
    }
    /** A file was changed outside: its text is asked for again, now or when it is next needed. */
    forget(uri: string): void {
        this.looked.clear();
        if (this.docs.get(uri)?.open) return;
        this.asked.delete(uri);
        if (this.docs.has(uri)) {
            this.asked.add(uri);
            this.wanted(uri);
        }
        this.markStale(uri);
    }
    private put(uri: string, text: string, version: number | undefined, open: boolean): void {
        const before = this.docs.get(uri);
        const same = before?.text === text;
        this.docs.set(uri, { uri, text, version, open, lines: same ? before.lines : new Lines(text) });
        if (!same) this.markStale(uri);
    }
    private textOf(uri: string): string | undefined {
        const doc = this.docs.get(uri);
        if (doc) return doc.text;
        if (!this.asked.has(uri)) {
            this.asked.add(uri);
            this.wanted(uri);
        }
        return this.docs.get(uri)?.text;
    }
    private markStale(uri: string): void {
        for (const w of this.worked.values()) if (w.files.has(uri)) w.stale = true;
    }
    private newAnalyst(): Analyst {
        return new Analyst(uri => this.textOf(uri));
    }

    // ---- worked-out rigs ------------------------------------------------------------------------------------------

    /** The day on which rigs are judged, ISO. */
    get today(): string {
        if (this.settings.today) return this.settings.today;
        const now = new Date();
        return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
    }
    /** What one file says by itself; undefined if it is not known. */
    page(uri: string): Page | undefined {
        if (!this.docs.has(uri) && shippedText(uri) === undefined) return undefined;
        try {
            return this.analyst.page(uri);
        } catch (error) {
            this.crashed(error);
            return undefined;
        }
    }
    /** First file of the rig that a file belongs to: a page is looked for among what the known rigs use. */
    rootOf(uri: string): string {
        if (this.page(uri)?.sort !== 'page') return uri;
        const found = this.rigThatUses(uri);
        if (found) return found;
        // Nobody known uses it: the files beside it may. Each folder is looked through once.
        const folder = uri.slice(0, uri.lastIndexOf('/'));
        if (this.looked.has(folder)) return uri;
        this.looked.add(folder);
        for (const other of this.neighbours(uri)) if (other !== uri) this.textOf(other);
        return this.rigThatUses(uri) ?? uri;
    }
    private rigThatUses(uri: string): string | undefined {
        const seen = new Set([uri]);
        const found: string[] = [];
        for (const used of seen) {
            for (const doc of this.docs.values()) {
                if (seen.has(doc.uri)) continue;
                const page = this.page(doc.uri);
                if (!page?.uses.some(u => resolveUse(doc.uri, u) === used) || page.sort === 'library') continue;
                seen.add(doc.uri);
                if (page.sort === 'rig') found.push(doc.uri);
            }
        }
        // Two rigs may use one page: the one on screen comes first, then the order of names.
        const rank = (u: string) => (this.docs.get(u)?.open ? 0 : 1);
        return found.sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1))[0];
    }
    /** The analysis of the rig that a file belongs to, for the text as it is now; undefined if the file is not known or cannot be worked out. */
    analysis(uri: string): Analysis | undefined {
        if (!this.docs.has(uri) && shippedText(uri) === undefined) return undefined;
        const root = this.rootOf(uri);
        const before = this.worked.get(root);
        const today = this.today;
        if (before && !before.stale && before.today === today) return before.analysis;
        let analysis: Analysis | undefined;
        try {
            analysis = this.analyst.analyse(root, { today });
        } catch (error) {
            this.crashed(error);
        }
        this.worked.set(root, { analysis, files: new Set(analysis?.files ?? [...(before?.files ?? []), root]), today, stale: false });
        return analysis;
    }
    /** A file that is on screen or was read, with its page and its rig. */
    sight(uri: string): Sight | undefined {
        const doc = this.docs.get(uri);
        const analysis = this.analysis(uri);
        const page = analysis?.rig.pages.find(p => p.file === uri) ?? this.page(uri);
        return doc && page && analysis ? { doc, page, analysis } : undefined;
    }
    /** What the reader kept may be half made: it begins afresh. */
    private crashed(error: unknown): void {
        this.analyst = this.newAnalyst();
        this.failed(error);
    }
    setSettings(settings: Settings): void {
        this.settings = settings;
    }
    /** First files of the rigs to tell: those with an open file, and those of a checked folder. */
    roots(): string[] {
        return [...new Set([...this.openDocs().map(d => this.rootOf(d.uri)), ...[...this.watched].filter(u => this.docs.has(u))])];
    }
    /** Files of the rig with this first file that it was last worked out from. */
    filesOf(root: string): ReadonlySet<string> {
        return this.worked.get(root)?.files ?? new Set();
    }
    /** Analyses of all rigs that are on screen or being told. */
    allAnalyses(): Analysis[] {
        return this.roots().map(r => this.analysis(r)).filter((a): a is Analysis => !!a);
    }
    findingsIn(uri: string): readonly Finding[] {
        const analysis = this.analysis(uri);
        return analysis ? this.findingsOf(analysis).filter(f => f.span.file === uri) : [];
    }
    /** What reading told, and what runs with something broken told, where nothing has changed that those runs read. */
    findingsOf(analysis: Analysis): readonly Finding[] {
        return [...analysis.findings, ...this.faultFindings(analysis)];
    }
    /** Of runs only; placed anew, since places move with every edit. */
    faultFindings(analysis: Analysis): readonly Finding[] {
        if (!this.settings.faults && !this.rigsAsked.has(analysis.rig.root)) return [];
        try {
            const found = faultsKept(analysis.workings);
            if (!found) return [];
            let known = this.ofFaults.get(analysis);
            if (known?.found !== found) this.ofFaults.set(analysis, (known = { found, findings: faultFindings(analysis.workings, found, this.today) }));
            return known.findings;
        } catch (error) {
            this.failed(error);
            return [];
        }
    }
    /** Whether an analysis is that of the text on screen. Asks nothing to be worked out. */
    isNow(analysis: Analysis): boolean {
        const w = this.worked.get(analysis.rig.root);
        return w?.analysis === analysis && !w.stale;
    }
    /** What a fix would newly raise: warnings and errors. Worked out once for a fix. */
    raisedBy(fix: Fix, analysis: Analysis): readonly Finding[] {
        const known = this.raised.get(fix);
        if (known?.analysis === analysis) return known.raised;
        let raised: readonly Finding[];
        try {
            raised = this.trials.raisedBy(fix, analysis, u => this.docs.get(u)?.text, { today: this.today });
        } catch (error) {
            this.trials = new Trials();
            this.failed(error);
            raised = [];
        }
        this.raised.set(fix, { analysis, raised });
        return raised;
    }
    /** The rig as it would be with a fix; undefined where that cannot be worked out. */
    tried(fix: Fix, analysis: Analysis): Analysis | undefined {
        try {
            return this.trials.with(fix, analysis, u => this.docs.get(u)?.text, { today: this.today });
        } catch (error) {
            this.trials = new Trials();
            this.failed(error);
            return undefined;
        }
    }
    /** Lines of any file of a rig, open or not. */
    linesOf(uri: string): Lines {
        return this.docs.get(uri)?.lines ?? new Lines(shippedText(uri) ?? '');
    }
    location(span: Span): { uri: string; range: ReturnType<Lines['range']> } {
        return { uri: span.file, range: this.linesOf(span.file).range(span) };
    }
}

/**
 * What the server knows: open texts, files asked for, and the worked-out rigs. Analysis is one synchronous pass; whoever
 * asks gets the answer for the text on screen. This file knows no protocol but its plain data types.
 */
import type { ClientCapabilities } from 'vscode-languageserver';
import { Analyst, type Analysis, type Finding } from '../../language/index.js';
import { resolveUse, shippedText } from '../../language/rig/assemble.js';
import { Lines } from '../../language/rig/lines.js';
import type { Page, Span } from '../../language/rig/rig.js';

export interface Doc {
    readonly uri: string;
    readonly version: number | undefined;
    readonly text: string;
    readonly lines: Lines;
    readonly open: boolean;
}
export interface Settings {
    /** ISO date for rules about dates; the day of the machine if not set. */
    readonly today?: string;
    readonly hints: boolean;
}
export interface Change {
    readonly range?: { start: { line: number; character: number }; end: { line: number; character: number } };
    readonly text: string;
}
interface Worked {
    analysis: Analysis;
    stale: boolean;
}

export class House {
    settings: Settings = { hints: true };
    client: ClientCapabilities = {};
    /** Called for a file that a text uses and nobody has opened; its text comes back by `learn`. */
    wanted: (uri: string) => void = () => {};
    /** Called when analysis itself failed: never the maker's fault, never the end of the server. */
    failed: (error: unknown) => void = () => {};
    /** Findings are told again soon. */
    republish: () => void = () => {};
    /** First files of rigs of a folder that was checked as a whole: their findings are told although nothing of them is open. */
    watched: ReadonlySet<string> = new Set();
    private readonly docs = new Map<string, Doc>();
    private readonly asked = new Set<string>();
    private readonly worked = new Map<string, Worked>();
    private readonly analyst = new Analyst(uri => this.textOf(uri));

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
    private put(uri: string, text: string, version: number | undefined, open: boolean): void {
        const before = this.docs.get(uri);
        this.docs.set(uri, { uri, text, version, open, lines: before?.text === text ? before.lines : new Lines(text) });
        if (before?.text !== text) this.markStale(uri);
    }
    open(uri: string, text: string, version: number): void {
        this.put(uri, text, version, true);
        this.worked.get(uri) ?? this.markStale(uri);
    }
    change(uri: string, version: number, changes: readonly Change[]): void {
        let doc = this.docs.get(uri);
        if (!doc) return;
        for (const c of changes) {
            const text: string = c.range ? doc.text.slice(0, doc.lines.offset(c.range.start)) + c.text + doc.text.slice(doc.lines.offset(c.range.end)) : c.text;
            doc = { uri, text, version, open: true, lines: new Lines(text) };
        }
        this.docs.set(uri, doc);
        this.markStale(uri);
    }
    /** The file stays known with its last text, since others may use it; its own findings go. */
    close(uri: string): void {
        const doc = this.docs.get(uri);
        if (doc) this.docs.set(uri, { ...doc, open: false, version: undefined });
        this.asked.delete(uri);
    }
    /** The text of a file that is not open; undefined: there is none. */
    learn(uri: string, text: string | undefined): boolean {
        if (this.docs.get(uri)?.open) return false;
        const before = this.docs.get(uri)?.text;
        if (text === undefined) {
            if (before === undefined) return false;
            this.docs.delete(uri);
            this.analyst.forget(uri);
            this.markStale(uri);
            return true;
        }
        this.put(uri, text, undefined, false);
        return before !== text;
    }
    /** A file was changed outside: ask for it again when it is next needed. */
    forget(uri: string): void {
        if (this.docs.get(uri)?.open) return;
        this.asked.delete(uri);
        if (this.docs.has(uri)) this.wanted(uri);
        this.markStale(uri);
    }
    private textOf(uri: string): string | undefined {
        const doc = this.docs.get(uri);
        if (doc) return doc.text;
        if (!this.asked.has(uri)) {
            this.asked.add(uri);
            this.wanted(uri);
        }
        return undefined;
    }
    private markStale(uri: string): void {
        for (const [root, w] of this.worked) if (root === uri || w.analysis.files.includes(uri)) w.stale = true;
    }

    // ---- worked-out rigs ------------------------------------------------------------------------------------------

    get today(): string {
        return this.settings.today ?? new Date().toISOString().slice(0, 10);
    }
    setSettings(settings: Settings): void {
        this.settings = settings;
        for (const w of this.worked.values()) w.stale = true;
    }
    /** First file of the rig that a file belongs to: a page or library may be used by a rig that is known. */
    rootOf(uri: string): string {
        const page = this.page(uri);
        if (!page || page.sort !== 'page') return uri;
        for (const doc of this.docs.values()) {
            if (doc.uri === uri) continue;
            const other = this.page(doc.uri);
            if (other?.sort === 'rig' && other.uses.some(u => resolveUse(doc.uri, u) === uri)) return doc.uri;
        }
        return uri;
    }
    page(uri: string): Page | undefined {
        return this.docs.has(uri) || shippedText(uri) !== undefined ? this.analyst.page(uri) : undefined;
    }
    /** The analysis of the rig that a file belongs to, for the text as it is now. */
    analysis(uri: string): Analysis | undefined {
        if (!this.docs.has(uri) && shippedText(uri) === undefined) return undefined;
        const root = this.rootOf(uri);
        const before = this.worked.get(root);
        if (before && !before.stale) return before.analysis;
        try {
            const analysis = this.analyst.analyse(root, { today: this.today });
            this.worked.set(root, { analysis, stale: false });
            return analysis;
        } catch (error) {
            this.failed(error);
            return before?.analysis;
        }
    }
    /** Rigs to work out and tell: those with an open file. */
    roots(): string[] {
        return [...new Set([...this.openDocs().map(d => this.rootOf(d.uri)), ...[...this.watched].filter(u => this.docs.has(u))])];
    }
    isStale(root: string): boolean {
        return this.worked.get(root)?.stale ?? true;
    }
    findingsIn(uri: string): readonly Finding[] {
        return this.analysis(uri)?.findings.filter(f => f.span.file === uri) ?? [];
    }
    /** Lines of any file of a rig, open or not. */
    linesOf(uri: string): Lines {
        return this.docs.get(uri)?.lines ?? new Lines(shippedText(uri) ?? '');
    }
    location(span: Span): { uri: string; range: ReturnType<Lines['range']> } {
        return { uri: span.file, range: this.linesOf(span.file).range(span) };
    }
}

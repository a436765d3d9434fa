/**
 * Texts with marks, for tests of editor features.
 *
 *     stack { ce<|>lls: 10 }          a cursor
 *     stack { cells: <|10|> }         a stretch
 *     stack { cells: 10 }
 *     #       ^^^^^ property          what is expected of the stretch above; the line is taken out
 */
import '../../language/grammar/polyfill.js';
import type { ClientCapabilities, TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import { House, type Position, type Range } from '../../server/editor/house.js';
import { Lines } from '../../language/rig/lines.js';

export interface Mark {
    readonly range: Range;
    /** The words behind the ^^^. */
    readonly label: string;
    /** The text above the ^^^. */
    readonly over: string;
}
export interface Marked {
    readonly text: string;
    /** Cursors, and starts of stretches, in their order. */
    readonly cursors: readonly Position[];
    readonly ranges: readonly Range[];
    readonly marks: readonly Mark[];
}
/** Takes the marks out of a text. */
export function marked(source: string): Marked {
    const kept: string[] = [];
    const found: { line: number; from: number; to: number; label: string }[] = [];
    for (const line of source.split('\n')) {
        const m = /^(\s*#\s*)(\^+)\s*(.*)$/.exec(line);
        if (m && kept.length) found.push({ line: kept.length - 1, from: m[1].length, to: m[1].length + m[2].length, label: m[3].trim() });
        else kept.push(line);
    }
    const cursors: number[] = [];
    const ranges: { start: number; end: number }[] = [];
    let text = '';
    let open = -1;
    const withMarks = kept.join('\n');
    for (let i = 0; i < withMarks.length;) {
        if (withMarks.startsWith('<|>', i)) {
            cursors.push(text.length);
            i += 3;
        } else if (withMarks.startsWith('<|', i)) {
            open = text.length;
            cursors.push(open);
            i += 2;
        } else if (open >= 0 && withMarks.startsWith('|>', i)) {
            ranges.push({ start: open, end: text.length });
            open = -1;
            i += 2;
        } else text += withMarks[i++];
    }
    if (open >= 0) throw new Error('a stretch is not closed');
    const lines = new Lines(text);
    return {
        text, cursors: cursors.map(o => lines.at(o)), ranges: ranges.map(r => lines.range(r)),
        marks: found.map(m => ({ label: m.label, over: lines.lineText(m.line).slice(m.from, m.to), range: { start: { line: m.line, character: m.from }, end: { line: m.line, character: m.to } } })),
    };
}

/** A client that can do everything. */
export const everything: ClientCapabilities = {
    textDocument: {
        publishDiagnostics: { relatedInformation: true, versionSupport: true, tagSupport: { valueSet: [1, 2] } },
        hover: { contentFormat: ['markdown', 'plaintext'] },
        completion: { completionItem: { snippetSupport: true, documentationFormat: ['markdown', 'plaintext'] } },
        documentSymbol: { hierarchicalDocumentSymbolSupport: true },
        rename: { prepareSupport: true }, inlayHint: { resolveSupport: { properties: ['tooltip'] } }, semanticTokens: { requests: { full: true, range: true }, tokenTypes: [], tokenModifiers: [], formats: ['relative'] },
        codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: [] } } },
    },
};
export const main = 'file:///rigs/a.rig';

export interface Opened extends Marked {
    readonly house: House;
    readonly uri: string;
    /** The first cursor. */
    readonly at: Position;
    /** The text of a stretch. */
    readonly read: (range: Range, uri?: string) => string;
}
/**
 * A house with a text on screen.
 * @param others further files, by name; they lie beside the first and are not open
 */
export function open(source: string, { others = {}, client = everything, today = '2026-06-15', own = true }: { others?: Record<string, string>; client?: ClientCapabilities; today?: string; own?: boolean } = {}): Opened {
    const m = marked(source);
    const house = new House();
    house.client = client;
    house.ownClient = own;
    house.setSettings({ today, hints: true, faults: true });
    house.failed = error => {
        throw error;
    };
    const files = new Map(Object.entries(others).map(([name, text]) => [`file:///rigs/${name}`, text]));
    house.neighbours = () => [...files.keys()];
    house.wanted = uri => void house.learn(uri, files.get(uri));
    house.open(main, m.text, 1);
    const read = (range: Range, uri = main) => {
        const lines = house.linesOf(uri);
        return lines.text.slice(lines.offset(range.start), lines.offset(range.end));
    };
    return { ...m, house, uri: main, at: m.cursors[0] ?? { line: 0, character: 0 }, read };
}
/** A text after edits, as an editor makes them: all at once, none overlapping. */
export function apply(text: string, edits: readonly TextEdit[]): string {
    const lines = new Lines(text);
    const sorted = edits.map(e => ({ from: lines.offset(e.range.start), to: lines.offset(e.range.end), text: e.newText })).sort((a, b) => a.from - b.from || a.to - b.to);
    let out = '';
    let at = 0;
    for (const e of sorted) {
        if (e.from < at) throw new Error('edits overlap');
        out += text.slice(at, e.from) + e.text;
        at = e.to;
    }
    return out + text.slice(at);
}
export function applyTo(text: string, edit: WorkspaceEdit | undefined, uri = main): string {
    return apply(text, edit?.changes?.[uri] ?? []);
}

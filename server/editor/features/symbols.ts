import { SymbolKind, type DocumentSymbol } from 'vscode-languageserver';
import { quantityOf } from '../../../language/quantities/index.js';
import { showResult } from '../../../language/reference/values.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { pageIn } from '../spot.js';

/** Outline: parts under their `# ====` headings, with a number that tells most; and all names of the workspace. */
const symbols: Feature = {
    name: 'symbols',
    capabilities: () => ({ documentSymbolProvider: true, workspaceSymbolProvider: true }),
    register(connection, house) {
        connection.onDocumentSymbol(({ textDocument }) => outline(house, textDocument.uri));
        connection.onWorkspaceSymbol(({ query }) => [...house.allDocs()].flatMap(d => house.page(d.uri)?.parts ?? []).filter(p => p.name.toLowerCase().includes(query.toLowerCase())).slice(0, 500)
            .map(p => ({ name: p.name, kind: SymbolKind.Object, containerName: p.kindWord, location: house.location(p.nameSpan) })));
    },
};
export default symbols;

const kindsOfSymbol: Record<string, SymbolKind> = { control: SymbolKind.Event, records: SymbolKind.File, statements: SymbolKind.Namespace, world: SymbolKind.Package };
export function outline(house: House, uri: string): DocumentSymbol[] {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri) ?? house.page(uri);
    const doc = house.doc(uri);
    if (!page || !doc) return [];
    const all: DocumentSymbol[] = [];
    for (const p of page.parts) {
        if (!p.name) continue;
        const live = analysis?.rig.parts.get(p.name) === p;
        const q = [...quantityOf(p.kindWord).values()].find(x => x.shownAt);
        const result = live && q ? analysis!.workings.quantity(p, q.name) : undefined;
        const detail = `${p.name === p.kindWord ? '' : p.kindWord}${result && result.value === result.value ? `  ${showResult(result)}` : ''}`.trim();
        all.push({ name: p.name, detail, kind: kindsOfSymbol[p.kind?.group ?? ''] ?? SymbolKind.Object, range: doc.lines.range(p.span), selectionRange: doc.lines.range(p.nameSpan.start >= p.span.start ? p.nameSpan : p.kindSpan), children: [] });
    }
    for (const l of page.lets) all.push({ name: l.name, detail: l.value?.text ?? '', kind: SymbolKind.Constant, range: doc.lines.range({ start: l.nameSpan.start, end: l.span.end }), selectionRange: doc.lines.range(l.nameSpan) });
    for (const p of page.paths) if (p.stops.length) all.push({ name: `${p.stops[0].name} to ${p.stops.at(-1)!.name}`, detail: `path of ${p.medium}`, kind: SymbolKind.Interface, range: doc.lines.range(p.span), selectionRange: doc.lines.range(p.span) });
    all.sort((a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character);
    const headings: { title: string; line: number }[] = [];
    for (let line = 0; line < doc.lines.count; line++) {
        const m = /^#\s*(?:=|-){2,}\s*(.+?)\s*(?:=|-)*\s*$/.exec(doc.lines.lineText(line));
        if (m) headings.push({ title: m[1], line });
    }
    if (!headings.length) return all;
    const out: DocumentSymbol[] = all.filter(s => s.range.start.line < headings[0].line);
    headings.forEach((h, i) => {
        const next = headings[i + 1]?.line ?? doc.lines.count;
        const end = { line: Math.max(h.line, next - 1), character: doc.lines.lineText(Math.max(h.line, next - 1)).length };
        out.push({
            name: h.title, kind: SymbolKind.Module, range: { start: { line: h.line, character: 0 }, end }, selectionRange: { start: { line: h.line, character: 0 }, end: { line: h.line, character: doc.lines.lineText(h.line).length } },
            children: all.filter(s => s.range.start.line > h.line && s.range.start.line < next),
        });
    });
    return out;
}

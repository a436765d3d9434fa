import { SymbolKind, type DocumentSymbol, type SymbolInformation } from 'vscode-languageserver';
import { quantityOf } from '../../../language/quantities/index.js';
import { showResult } from '../../../language/reference/values.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { headingIn } from '../heading.js';

/** Outline: parts under their `# ====` headings, each with the number that tells most. */
const symbols: Feature = {
    name: 'symbols',
    capabilities: () => ({ documentSymbolProvider: true }),
    register(connection, house) {
        connection.onDocumentSymbol(({ textDocument: { uri } }) => {
            const tree = outline(house, uri);
            return house.client.textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport ? tree : flat(tree, uri);
        });
    },
};
export default symbols;

const symbolOf: Record<string, SymbolKind> = { control: SymbolKind.Event, records: SymbolKind.File, statements: SymbolKind.Namespace, world: SymbolKind.Package };

export function outline(house: House, uri: string): DocumentSymbol[] {
    const sight = house.sight(uri);
    if (!sight) return [];
    const { page, doc, analysis } = sight;
    const { lines } = doc;
    const all: DocumentSymbol[] = [];
    for (const p of page.parts) {
        if (!p.name) continue;
        // The number that belongs to what is usually said first.
        const first = p.kind?.template?.[0]?.split(':')[0];
        const shown = analysis.rig.parts.get(p.name) === p ? [...quantityOf(p.kindWord).values()].filter(x => x.shownAt) : [];
        const q = shown.find(x => x.shownAt === first) ?? shown[0];
        const result = q && analysis.workings.quantity(p, q.name);
        const detail = [p.name === p.kindWord ? '' : p.kindWord, result && result.value === result.value ? showResult(result) : ''].filter(Boolean).join(', ');
        all.push({ name: p.name, detail, kind: symbolOf[p.kind?.group ?? ''] ?? SymbolKind.Object, range: lines.range(p.span), selectionRange: lines.range(p.nameSpan), children: [] });
    }
    for (const l of page.lets) all.push({ name: l.name, detail: l.value?.text ?? '', kind: SymbolKind.Constant, range: lines.range({ start: l.nameSpan.start, end: Math.max(l.nameSpan.end, l.span.end) }), selectionRange: lines.range(l.nameSpan) });
    for (const p of page.paths) {
        if (p.stops.length) all.push({ name: `${p.stops[0].name} to ${p.stops.at(-1)!.name}`, detail: p.medium, kind: SymbolKind.Interface, range: lines.range(p.span), selectionRange: lines.range(p.mediumSpan) });
    }
    all.sort((a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character);
    const headings: { title: string; line: number }[] = [];
    for (let line = 0; line < lines.count; line++) {
        const title = headingIn(lines.lineText(line));
        if (title) headings.push({ title, line });
    }
    if (!headings.length) return all;
    const out = all.filter(s => s.range.start.line < headings[0].line);
    headings.forEach((h, i) => {
        const next = headings[i + 1]?.line ?? lines.count;
        const children = all.filter(s => s.range.start.line > h.line && s.range.start.line < next);
        // A block that is not closed may reach over the next heading: what holds it must reach as far.
        const last = Math.max(next - 1, ...children.map(c => c.range.end.line));
        out.push({
            name: h.title, kind: SymbolKind.Module, children,
            range: { start: { line: h.line, character: 0 }, end: { line: last, character: lines.lineText(last).length } },
            selectionRange: { start: { line: h.line, character: 0 }, end: { line: h.line, character: lines.lineText(h.line).length } },
        });
    });
    return out;
}
function flat(tree: readonly DocumentSymbol[], uri: string, containerName?: string): SymbolInformation[] {
    return tree.flatMap(s => [{ name: s.name, kind: s.kind, location: { uri, range: s.range }, containerName }, ...flat(s.children ?? [], uri, s.name)]);
}

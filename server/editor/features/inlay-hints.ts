/** Numbers at the line ends: what follows from the line. One hint a line, quiet and short. */
import type { InlayHint } from 'vscode-languageserver';
import { quantityOf } from '../../../language/quantities/index.js';
import { showResult, showSpread } from '../../../language/reference/values.js';
import { workingOf } from '../../../language/reference/working.js';
import type { Result } from '../../../language/quantities/workings.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { pageIn } from '../spot.js';

/** Our own mark: about equal, since these are worked out. */
const MARK = '≈ ';

const inlayHints: Feature = {
    name: 'inlay-hints',
    capabilities: () => ({ inlayHintProvider: { resolveProvider: false } }),
    register(connection, house) {
        connection.languages.inlayHint.on(({ textDocument, range }) => (house.settings.hints ? hintsIn(house, textDocument.uri).filter(h => h.position.line >= range.start.line && h.position.line <= range.end.line) : []));
    },
};
export default inlayHints;

export function hintsIn(house: House, uri: string): InlayHint[] {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri);
    const doc = house.doc(uri);
    if (!analysis || !page || !doc || analysis.rig.isLibrary) return [];
    const { workings, rig } = analysis;
    const byLine = new Map<number, Result[]>();
    for (const part of page.parts) {
        if (rig.parts.get(part.name) !== part || part.pattern) continue;
        for (const q of quantityOf(part.kindWord).values()) {
            if (!q.shownAt) continue;
            const entry = q.shownAt === 'header' ? undefined : part.entries.get(q.shownAt);
            if (q.shownAt !== 'header' && !entry) continue;
            const result = workings.quantity(part, q.name)!;
            if (result.value !== result.value) continue;
            const line = doc.lines.at(entry ? Math.max(entry.span.start, entry.span.end - 1) : part.inside?.start ?? part.span.end).line;
            const list = byLine.get(line);
            if (list) list.push(result);
            else byLine.set(line, [result]);
        }
    }
    const hints: InlayHint[] = [];
    for (const [line, results] of byLine) {
        const text = doc.lines.lineText(line).replace(/\s+$/, '');
        hints.push({
            position: { line, character: text.length }, paddingLeft: true,
            label: MARK + results.slice(0, 4).map(label).join(' · '),
            tooltip: { kind: 'markdown', value: results.slice(0, 4).map(r => workingOf(r, { depth: 1 })).join('\n\n---\n\n') },
        });
    }
    for (const named of page.lets) {
        const value = rig.lets.get(named.name) === named ? workings.namedValue(named.name) : undefined;
        if (!value?.unit || !named.value?.names) continue;
        const line = doc.lines.at(named.span.end - 1).line;
        hints.push({ position: { line, character: doc.lines.lineText(line).trimEnd().length }, paddingLeft: true, label: MARK + valueText(value.si, value.unit) });
    }
    return hints.sort((a, b) => a.position.line - b.position.line);
}
function valueText(si: number, unit: { factor: number; offset: number; text: string }): string {
    return `${Number(((si - unit.offset) / unit.factor).toPrecision(4))} ${unit.text}`;
}
function label(r: Result): string {
    const name = r.quantity.shownAs ?? r.quantity.name;
    const spread = showSpread(r);
    return `${name ? `${name} ` : ''}${showResult(r)}${spread.startsWith('±') && r.quantity.name === 'volts-per-cell' ? ` ${spread}` : ''}`;
}

/** Numbers at the line ends: what follows from the line. One hint a line, quiet and short. */
import type { InlayHint } from 'vscode-languageserver';
import { quantityOf } from '../../../language/quantities/index.js';
import { timesOf } from '../../../language/reference/run-text.js';
import { showHalf, showResult } from '../../../language/reference/values.js';
import { withUnit } from '../../../language/units/format.js';
import { fromSi } from '../../../language/units/unit.js';
import type { Result } from '../../../language/quantities/workings.js';
import { compactWorking, shortWorking } from '../compact-working.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';

/** Our own mark: about equal, since these are worked out. */
const MARK = '≈ ';
const BETWEEN = ' · ';
const MOST = 4;
/** Hints end at this column, characters, or with their first number: behind a long line the rest would be out of sight. */
const WIDEST = 130;
/** A spread is shown where it is this large a share of the number: there the number alone would promise too much. */
const WIDE = 0.05;
/** K, the same of a temperature. */
const WIDE_WARMTH = 3;

const inlayHints: Feature = {
    name: 'inlay-hints',
    capabilities: client => (client.textDocument?.inlayHint ? { inlayHintProvider: { resolveProvider: true } } : {}),
    register(connection, house) {
        connection.languages.inlayHint.on(({ textDocument, range }) => {
            if (!house.settings.hints) return [];
            const lazy = house.client.textDocument?.inlayHint?.resolveSupport?.properties.includes('tooltip') ?? false;
            return hintsIn(house, textDocument.uri, range.start.line, range.end.line, lazy);
        });
        connection.languages.inlayHint.resolve(hint => {
            const data = hint.data as { uri: string; names: string[] } | undefined;
            return data ? { ...hint, tooltip: tooltip(resultsOf(house, data.uri, data.names)) } : hint;
        });
    },
};
export default inlayHints;

/** @param lazy leaves the working out: it is asked for when the hint is pointed at */
export function hintsIn(house: House, uri: string, from = 0, to = Infinity, lazy = false): InlayHint[] {
    const sight = house.sight(uri);
    if (!sight || sight.analysis.rig.isLibrary) return [];
    const { doc, page, analysis } = sight;
    const { workings, rig } = analysis;
    const byLine = new Map<number, Result[]>();
    for (const part of page.parts) {
        if (rig.parts.get(part.name) !== part) continue;
        for (const q of quantityOf(part.kindWord).values()) {
            if (!q.shownAt) continue;
            const entry = q.shownAt === 'header' ? undefined : part.entries.get(q.shownAt);
            if (q.shownAt !== 'header' && !entry) continue;
            const line = doc.lines.at(entry ? Math.max(entry.span.start, entry.span.end - 1) : part.inside?.start ?? part.span.end).line;
            if (line < from || line > to) continue;
            const result = workings.quantity(part, q.name)!;
            if (result.value !== result.value) continue;
            // Two parts on one line would mix their numbers: the first one speaks.
            const list = byLine.get(line);
            if (list && list[0].part !== part) continue;
            if (list) list.push(result);
            else byLine.set(line, [result]);
        }
    }
    const hints: InlayHint[] = [];
    const put = (line: number, label: string, more: Partial<InlayHint> = {}) => {
        if (line >= from && line <= to) hints.push({ position: { line, character: doc.lines.lineText(line).trimEnd().length }, label: MARK + label, paddingLeft: true, ...more });
    };
    for (const [line, all] of byLine) {
        const results = inTurn(all).slice(0, MOST);
        const labels = results.map(label);
        const room = WIDEST - doc.lines.lineText(line).trimEnd().length - MARK.length;
        while (labels.length > 1 && labels.join(BETWEEN).length > room) labels.pop();
        results.length = labels.length;
        put(line, labels.join(BETWEEN), lazy ? { data: { uri, names: results.map(r => `${r.part.name}.${r.quantity.name}`) } } : { tooltip: tooltip(results) });
    }
    for (const named of page.lets) {
        const value = rig.lets.get(named.name) === named && named.value?.names ? workings.namedValue(named.name) : undefined;
        if (value?.unit && value.unit.dimension === value.dimension) put(doc.lines.at(Math.max(named.span.start, named.span.end - 1)).line, withUnit(fromSi(value.si, value.unit), value.unit, 4));
    }
    // When it switches stands there after a run, as long as the text is the one that was run.
    const ran = house.lastRun.get(analysis);
    if (ran) for (const part of page.parts) {
        const times = rig.parts.get(part.name) === part ? timesOf(ran, part.name, part.kindWord) : undefined;
        const line = doc.lines.at(part.inside?.start ?? part.span.end).line;
        if (times && !byLine.has(line)) put(line, times);
    }
    return hints.sort((a, b) => a.position.line - b.position.line);
}
/** Of what belongs to a part as a whole, by what it measures; what is not named here comes last. */
const wholeOrder: readonly string[] = ['gas-flow', 'temperature', 'pressure'];
const wholeRank = (r: Result) => (wholeOrder.indexOf(r.quantity.measure) + wholeOrder.length + 1) % (wholeOrder.length + 1);
/**
 * Where several properties share a line, each has its say before any has a second one; what belongs to the part as a
 * whole comes after them: its gas, since that is what a rig is for, then what can do harm.
 */
function inTurn(results: readonly Result[]): Result[] {
    const byPlace = new Map<string, Result[]>();
    for (const r of results) byPlace.set(r.quantity.shownAt!, [...(byPlace.get(r.quantity.shownAt!) ?? []), r]);
    const header = byPlace.get('header')?.sort((a, b) => wholeRank(a) - wholeRank(b));
    byPlace.delete('header');
    const keys = results[0].part.entries;
    const order = [...byPlace].sort((a, b) => keys.get(a[0])!.keySpan.start - keys.get(b[0])!.keySpan.start).map(([, list]) => list);
    if (header) order.push(header);
    const out: Result[] = [];
    for (let round = 0; out.length < results.length; round++) for (const list of order) if (list[round]) out.push(list[round]);
    return out;
}
function resultsOf(house: House, uri: string, names: readonly string[]): Result[] {
    const analysis = house.analysis(uri);
    return names.flatMap(n => {
        const part = analysis?.rig.parts.get(n.slice(0, n.indexOf('.')));
        return (part && analysis!.workings.quantity(part, n.slice(n.indexOf('.') + 1))) ?? [];
    });
}
function tooltip(results: readonly Result[]): InlayHint['tooltip'] {
    return { kind: 'markdown', value: results.map((r, i) => (i ? shortWorking(r) : compactWorking(r))).join('\n\n') };
}
function label(r: Result): string {
    const name = r.quantity.shownAs ?? r.quantity.name;
    const wide = r.high - r.low > 2 * (r.quantity.measure === 'temperature' ? WIDE_WARMTH : WIDE * Math.abs(r.value));
    return `${name ? `${name} ` : ''}${showResult(r)}${wide ? ` ${showHalf(r)}` : ''}`;
}

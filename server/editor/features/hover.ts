/** What stands under the cursor: the value as it was read, where it came from, what follows from it, and its working. */
import { MarkupKind } from 'vscode-languageserver';
import { capital } from '../../../language/values/evaluate.js';
import { show } from '../../../language/units/format.js';
import { unitOf } from '../../../language/units/unit.js';
import { measures } from '../../../language/units/dimension.js';
import { momentary } from '../../../language/vocabulary/momentary.js';
import { kinds } from '../../../language/vocabulary/index.js';
import { explain } from '../../../language/reference/explain.js';
import { originOf, showFact, showResult, showSpread } from '../../../language/reference/values.js';
import { workingOf } from '../../../language/reference/working.js';
import { quantityOf } from '../../../language/quantities/index.js';
import { ruleNamed } from '../../../language/rules/index.js';
import type { Analysis, Finding } from '../../../language/index.js';
import type { Part } from '../../../language/rig/rig.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { namePiece, pageIn, spotAt, type Spot } from '../spot.js';

const hover: Feature = {
    name: 'hover',
    capabilities: () => ({ hoverProvider: true }),
    register(connection, house) {
        connection.onHover(({ textDocument, position }) => {
            const text = hoverAt(house, textDocument.uri, position);
            if (!text) return null;
            const plain = !house.client.textDocument?.hover?.contentFormat?.includes(MarkupKind.Markdown) && !!house.client.textDocument?.hover?.contentFormat;
            return { contents: { kind: plain ? MarkupKind.PlainText : MarkupKind.Markdown, value: plain ? text.replace(/\*\*?|`/g, '') : text } };
        });
    },
};
export default hover;

/** Markdown for a place, or undefined. */
export function hoverAt(house: House, uri: string, position: { line: number; character: number }): string | undefined {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri) ?? house.page(uri);
    const doc = house.doc(uri);
    if (!analysis || !page || !doc) return undefined;
    const offset = doc.lines.offset(position);
    const told = analysis.findings.filter(f => f.span.file === uri && f.span.start <= offset && offset <= f.span.end);
    const about = aboutSpot(analysis, spotAt(page, offset));
    const pieces = [...told.map(whyOf), about].filter(Boolean);
    return pieces.length ? pieces.join('\n\n---\n\n') : undefined;
}
function whyOf(f: Finding): string {
    const rests = f.rests.length ? `\n\nRests on what is assumed: ${f.rests.slice(0, 4).join(', ')}${f.rests.length > 4 ? ' …' : ''}.` : '';
    return `**Why** (${f.rule}): ${f.why}${f.source ? `\n\n*Source:* ${f.source}` : ''}${rests}`;
}
function aboutSpot(analysis: Analysis, spot: Spot): string | undefined {
    const { workings, rig } = analysis;
    const { part, entry, occurrence, page, offset } = spot;
    const live = part && rig.parts.get(part.name) === part ? part : undefined;
    if (occurrence) {
        const piece = namePiece(page, occurrence, offset);
        const named = occurrence.names.length === 1 && rig.lets.get(occurrence.names[0]);
        if (named) {
            const value = workings.namedValue(named.name);
            return `**${named.name}** = ${value ? show(value.si, value.unit?.text ?? '', 4) : 'unknown'}${named.note ? `\n\n${named.note}` : ''}`;
        }
        const target = rig.parts.get(occurrence.names[0]) ?? rig.patterns.get(occurrence.names[0]);
        if (target && piece.index > 0) return aboutName(analysis, target, occurrence.names.slice(1).join('.'));
        if (target && !(spot.in === 'header' && part === target && occurrence.role === 'reference')) return aboutPart(analysis, target);
    }
    if (entry && part?.kind && spot.in === 'key' && entry.property) return live ? aboutProperty(analysis, live, entry.key) : explain(`${part.kind.name}.${entry.key}`)?.markdown;
    if (entry && spot.in === 'value') {
        const word = spot.word;
        if (word && unitOf(word.text) && /\d\s*$/.test(page.text.slice(0, word.start))) {
            const e = explain(word.text)?.markdown.replace(/^# .*\n+/, '');
            return `**${word.text}**: ${e}`;
        }
        if (live) return aboutProperty(analysis, live, entry.key);
    }
    if (spot.in === 'header' && part?.kind) return live ? aboutPart(analysis, live) : `**${part.kind.name}**: ${part.kind.doc}`;
    if (spot.word) {
        const rule = ruleNamed(spot.word.text);
        if (rule) return `**${rule.name}** (${rule.severity}): ${rule.summary}\n\n${rule.why}`;
        const lineStart = page.text.lastIndexOf('\n', offset - 1) + 1;
        if (spot.word.start === lineStart || kinds.has(spot.word.text)) return explain(spot.word.text)?.markdown.replace(/^# (.*)\n+/, '**$1**: ').split('\n|')[0];
    }
    return undefined;
}
function aboutPart(analysis: Analysis, part: Part): string {
    const numbers = [...quantityOf(part.kindWord).values()].filter(q => q.shownAt).map(q => analysis.workings.quantity(part, q.name)!).filter(r => r && r.value === r.value).slice(0, 8);
    const lines = [`**${part.name}**${part.name === part.kindWord ? '' : `, a ${part.kindWord}`}${part.base ? `, like ${part.base.name}` : ''}`, part.note ?? part.kind?.doc ?? ''];
    if (numbers.length) lines.push(numbers.map(r => `- ${r.quantity.name}: **${showResult(r)}** ${showSpread(r)}`).join('\n'));
    return lines.filter(Boolean).join('\n\n');
}
function aboutName(analysis: Analysis, part: Part, name: string): string | undefined {
    const result = analysis.workings.quantity(part, name);
    if (result) return workingOf(result, { depth: 1 });
    if (part.kind?.properties[name.split('.')[0]]) return aboutProperty(analysis, part, name.split('.')[0]);
    const moment = momentary.get(name);
    return moment && `**${part.name}.${name}**: ${moment.doc} It can be sensed, read and logged.`;
}
function aboutProperty(analysis: Analysis, part: Part, key: string): string | undefined {
    const { workings } = analysis;
    const given = workings.given(part, key);
    const property = given.property;
    if (!property) return undefined;
    const facts = [...given.facts].map(([slot, f]) => `${slot ? `${slot} ` : ''}${showFact(f)}`).slice(0, 6);
    const rows = given.rows.length > 1 ? ` (${given.rows.length} items)` : '';
    const lines = [`**${part.name}.${key}**${facts.length ? ` = ${facts.join(', ')}${rows}` : ''}  \n${capital(originOf(given))}.`, given.entry?.note ?? property.doc];
    const amounts = [...given.facts.values()].filter(f => f.amount?.dimension === measures.pressure.dimension);
    if (amounts.some(f => !f.amount!.basis)) lines.push('*Read as gauge: above the air outside. Write `bar abs` for a pressure above vacuum.*');
    if ([...given.facts.values()].some(f => f.stateTaken)) lines.push('*A litre without its state is taken at 20 °C and 101.325 kPa, dry. Write NL for 0 °C.*');
    for (const q of quantityOf(part.kindWord).values()) {
        if (q.shownAt !== key) continue;
        const result = workings.quantity(part, q.name)!;
        lines.push(result.value === result.value ? workingOf(result, { depth: 1 }) : `**${part.name}.${q.name}** is not known yet${result.missing.length ? `: ${result.missing.slice(0, 3).join(', ')} ${result.missing.length > 1 ? 'are' : 'is'} not given` : ''}.`);
        if (lines.join('\n\n').split('\n').length > 26) break;
    }
    return lines.join('\n\n');
}

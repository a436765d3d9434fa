/** What stands under the cursor: the value as it was read, where it came from, what follows from it, and its working. */
import type { Hover } from 'vscode-languageserver';
import { explain } from '../../../language/reference/explain.js';
import { originOf, resultText, showFact } from '../../../language/reference/values.js';
import { quantityOf } from '../../../language/quantities/index.js';
import { ruleNamed } from '../../../language/rules/index.js';
import { nearPlace, nearText, type Near } from '../../../language/rules/near.js';
import { gasDifference, measures } from '../../../language/units/dimension.js';
import { digits, show } from '../../../language/units/format.js';
import { toSi, unitOf } from '../../../language/units/unit.js';
import { decidedBy } from '../../../language/what-if/decides.js';
import { capital } from '../../../language/values/evaluate.js';
import { walk, type NodeOf } from '../../../language/values/parse-value.js';
import { kinds } from '../../../language/vocabulary/index.js';
import { momentary } from '../../../language/vocabulary/momentary.js';
import type { Analysis, Finding } from '../../../language/index.js';
import type { Entry, Page, Part } from '../../../language/rig/rig.js';
import { assumedOf } from '../assumptions.js';
import { atMost, compactWorking, shortWorking } from '../compact-working.js';
import { standingInRun, standingOf } from '../expectation.js';
import type { Feature } from '../feature.js';
import type { House, Position, Sight } from '../house.js';
import { meaningOf } from '../names.js';
import { hoverFormats, markup } from '../plain-text.js';
import { namePiece, spotAt, type Spot } from '../spot.js';

/** A window beside the cursor is read at a glance. */
const MOST_LINES = 25;
/** Lines of ours about a finding: its message is shown by the editor. */
const MOST_FINDINGS = 2;
/** Notes of what is near a limit. */
const MOST_NEAR = 3;
/** Guesses of a finding that are tried at their ends: each costs a rig worked out twice. */
const MOST_TRIED = 3;

const hover: Feature = {
    name: 'hover',
    capabilities: () => ({ hoverProvider: true }),
    register(connection, house) {
        connection.onHover(({ textDocument, position }) => hoverAt(house, textDocument.uri, position) ?? null);
    },
};
export default hover;

export function hoverAt(house: House, uri: string, position: Position): Hover | undefined {
    const sight = house.sight(uri);
    if (!sight) return undefined;
    const { page, doc, analysis } = sight;
    const offset = doc.lines.offset(position);
    const told = analysis.findings.filter(f => f.span.file === uri && f.span.start <= offset && offset <= f.span.end).slice(0, MOST_FINDINGS);
    const about = aboutSpot(sight, spotAt(page, offset));
    const pieces = [...told.map(f => whyOf(analysis, f, house.today)), about?.text].filter(Boolean);
    if (!pieces.length) return undefined;
    const range = about ?? told[0]?.span;
    return { contents: markup(atMost(pieces.join('\n\n---\n\n'), MOST_LINES), hoverFormats(house.client)), range: range && doc.lines.range(range) };
}
function whyOf({ workings }: Analysis, f: Finding, today: string): string {
    const decided = decidedBy(workings, f, MOST_TRIED, { today });
    const guess = decided.length ? ` **A guess decides it**: within what is usual for ${decided.join(', ')} it may not be so. Say yours.` : '';
    const rests = f.rests.length ? `  \nRests on what is assumed: ${f.rests.slice(0, 4).join(', ')}${f.rests.length > 4 ? ' …' : ''}.${guess}` : '';
    return `**Why** (${f.rule}): ${f.why}${f.source ? `  \n*Source:* ${f.source}` : ''}${rests}`;
}

interface About {
    readonly text: string;
    readonly start: number;
    readonly end: number;
}
const on = (place: { start: number; end: number }, text: string | undefined): About | undefined => (text ? { text, start: place.start, end: place.end } : undefined);

function aboutSpot({ analysis, page }: Sight, spot: Spot): About | undefined {
    if (spot.quiet === 'comment') return undefined;
    const { part, entry, offset, word } = spot;
    return aboutReference(analysis, page, spot)
        ?? (entry && part && spot.in === 'value' ? aboutUnit(entry, offset) : undefined)
        ?? (entry && part?.kind ? on(spot.in === 'key' ? entry.keySpan : entry.span, aboutProperty(analysis, page, part, entry.key)) : undefined)
        ?? (spot.in === 'header' && part?.kind && offset <= Math.max(part.kindSpan.end, part.nameSpan.end) ? on(part.kindSpan, aboutPart(analysis, part)) : undefined)
        ?? aboutLine(analysis, page, spot)
        ?? (word && !spot.quiet ? on(word, aboutWord(word.text, page.text, word.start)) : undefined);
}
function aboutReference(analysis: Analysis, page: Page, spot: Spot): About | undefined {
    const { occurrence, offset } = spot;
    if (!occurrence) return undefined;
    const piece = namePiece(occurrence, offset);
    const target = meaningOf(analysis.rig, page, occurrence.names[0]);
    if (!target) return undefined;
    if (!('kindWord' in target)) {
        const value = analysis.workings.namedValue(target.name);
        const note = target.note ? `\n\n${target.note}` : '';
        return on(piece, `**${target.name}** = ${value ? show(value.si, value.unit?.text ?? '', 4) : 'not known yet'}${note}`);
    }
    if (piece.index > 0) return on({ start: occurrence.start, end: occurrence.end }, aboutName(analysis, page, target, occurrence.names.slice(1).join('.')));
    return on(piece, aboutPart(analysis, target));
}
/** A number with its unit: what the unit is, and the same in others. */
function aboutUnit(entry: Entry, offset: number): About | undefined {
    let found: NodeOf<'quantity'> | undefined;
    for (const sequence of entry.value?.list ?? []) {
        const at = (n: { unitStart: number; end: number }) => entry.span.start + n.unitStart <= offset && offset <= entry.span.start + n.end;
        for (const node of sequence) walk(node, n => void (n.is === 'quantity' && at(n) && (found = n)));
    }
    if (!found) return undefined;
    const { unit, value } = found;
    const si = toSi(value, unit);
    const mine = Object.values(measures).filter(m => m.dimension === unit.dimension && m.units[0]);
    const group = mine.find(m => m.units.includes(unit.text)) ?? mine[0];
    const alike = (group?.units ?? []).map(u => unitOf(u))
        .filter(u => u && u.text !== unit.text && u.dimension === unit.dimension && u.currency === unit.currency);
    const others = alike.map(u => show(si, u!.text, 4));
    const gas = Object.values(measures).find(m => gasDifference(unit.dimension, m.dimension) === 1);
    const basis = unit.dimension !== measures.pressure.dimension ? ''
        : unit.mark === 'absolute' ? 'Above vacuum.' : 'Above the air outside (gauge); `abs` behind it means above vacuum.';
    const says = unit.text === 'AWG' ? `American wire gauge; this one is ${digits(si * 1e6, 3)} mm2`
        : unit.name === unit.text && group ? group.says : unit.name;
    const text = [
        `**${unit.text}**: ${says}. ${basis}`.trim(),
        others.length ? `${digits(value, 6)} ${unit.text} = ${others.slice(0, 5).join(' = ')}` : '',
        gas ? 'Where an amount of gas is meant, a litre is taken at 20 °C and 101.325 kPa, dry; `NL` is at 0 °C.' : '',
    ];
    return on({ start: entry.span.start + found.unitStart, end: entry.span.start + found.end }, text.filter(Boolean).join('  \n'));
}
/** Lines that are no part: expectations, permissions, what is used, the stage. */
function aboutLine(analysis: Analysis, page: Page, spot: Spot): About | undefined {
    const { offset } = spot;
    const inside = (s: { start: number; end: number }) => s.start <= offset && offset <= s.end;
    const allow = page.allows.find(a => inside(a.ruleSpan));
    if (allow) return on(allow.ruleSpan, aboutRule(allow.rule));
    const expectation = page.expects.find(e => inside(e.span));
    if (expectation) {
        const s = standingOf(analysis.workings, expectation);
        const missing = s.missing.length ? `: ${s.missing.slice(0, 3).join(', ')} ${s.missing.length > 1 ? 'are' : 'is'} not given` : '';
        const more = s.is === 'may not hold' ? ' The value as worked out holds; its bounds reach over the limit.'
            : s.is === 'held against a run' ? ` ${standingInRun(analysis.workings, expectation) ?? ''}` : '';
        return on(expectation.span, `**${capital(s.is)}**${s.now ? `: it is ${s.now} now` : missing}.${more}`);
    }
    if (page.stage && inside(page.stage.span)) return on(page.stage.span, explain(page.stage.word)?.markdown.replace(/^# (.*)\n+/, '**$1**: '));
    return undefined;
}
function aboutRule(name: string): string | undefined {
    const rule = ruleNamed(name);
    return rule && `**${rule.name}** (${rule.severity}): ${rule.summary}\n\n${rule.why}\n\n*Source:* ${rule.source}`;
}
function aboutWord(word: string, text: string, start: number): string | undefined {
    const rule = aboutRule(word);
    if (rule) return rule;
    const first = !text.slice(text.lastIndexOf('\n', start - 1) + 1, start).trim();
    return first || kinds.has(word) ? explain(word)?.markdown.replace(/^# (.*)\n+/, '**$1**: ').split('\n|')[0].trim() : undefined;
}

// ---- parts and their values ---------------------------------------------------------------------------------------

function aboutPart(analysis: Analysis, part: Part): string {
    const { workings, rig } = analysis;
    const title = `**${part.name}**${part.name === part.kindWord ? '' : `, a ${part.kindWord}`}${part.base ? `, like ${part.base.name}` : ''}${part.implied ? ' (in no text; all of it assumed)' : ''}`;
    const lines = [title, part.note ?? '', part.kind?.doc ?? `${part.kindWord} is not a kind of part.`].filter(Boolean);
    if (rig.parts.get(part.name) !== part) return lines.join('\n\n');
    const numbers = [...quantityOf(part.kindWord).values()].filter(q => q.shownAt)
        .map(q => workings.quantity(part, q.name)!).filter(r => r.value === r.value).slice(0, 8);
    if (numbers.length) lines.push(numbers.map(r => `- ${r.quantity.name} ≈ ${resultText(r)}`).join('\n'));
    const near = nearLines(analysis.near.filter(n => n.part === part.name), true);
    if (near) lines.push(near);
    const ways = [...workings.paths.mediaOf(part.name)].map(m => {
        const name = (s: { name: string }) => s.name;
        const before = workings.paths.to(part.name, m as never).map(l => name(l.from));
        const after = workings.paths.from(part.name, m as never).map(l => name(l.to));
        return `${m}: ${[before.join(' and '), part.name, after.join(' and ')].filter(Boolean).join(' -> ')}`;
    });
    if (ways.length) lines.push(ways.slice(0, 3).join('  \n'));
    const assumed = assumedOf(analysis, part);
    const more = assumed.length > 6 ? ` and ${assumed.length - 6} more` : '';
    if (assumed.length) lines.push(`*Assumed:* ${assumed.slice(0, 6).map(a => `${a.key} ${a.value}`).join(', ')}${more}`);
    return lines.join('\n\n');
}
function nearLines(near: readonly Near[], ofPart: boolean): string {
    return near.slice(0, MOST_NEAR).map(n => {
        const [place, over] = ofPart ? [n.key ? `${nearPlace(n)}, ` : '', ''] : ['', ` Beyond it: ${ruleNamed(n.rule)?.summary ?? ''}`];
        return `*Near a limit* (${place}${n.rule}): ${nearText(n)}.${over}`;
    }).join('  \n');
}
/** What stands after a point: a quantity, a property, something that is sensed. */
function aboutName(analysis: Analysis, page: Page, part: Part, name: string): string | undefined {
    const result = analysis.rig.parts.get(part.name) === part ? analysis.workings.quantity(part, name) : undefined;
    if (result) return compactWorking(result);
    const key = name.split('.')[0];
    if (part.kind?.properties[key]) return aboutProperty(analysis, page, part, key);
    const moment = momentary.get(name);
    return moment && `**${part.name}.${name}**: ${moment.doc} It can be sensed, read and logged.`;
}
function aboutProperty(analysis: Analysis, page: Page, part: Part, key: string): string | undefined {
    const { workings, rig } = analysis;
    const property = part.kind?.properties[key];
    if (!property) {
        // A dotted key of a reading, a claim, a change.
        const [name, ...rest] = key.split('.');
        const other = rest.length ? meaningOf(rig, page, name) : undefined;
        return other && 'kindWord' in other ? aboutName(analysis, page, other, rest.join('.')) : undefined;
    }
    // Half-typed text may hold two parts of one name: only one of them is worked out.
    if (rig.parts.get(part.name) !== part) return explain(`${part.kind!.name}.${key}`)?.markdown.replace(/^# (.*)\n+/, '**$1**: ');
    const given = workings.given(part, key);
    const facts = [...given.facts].map(([slot, f]) => `${slot ? `${slot} ` : ''}${showFact(f)}`).slice(0, 6);
    const rows = given.rows.length > 1 ? ` (the first of ${given.rows.length})` : '';
    const lines = [`**${part.name}.${key}**${facts.length ? ` = ${facts.join(', ')}${rows}` : ''}  \n${capital(originOf(given))}.`];
    if (given.entry?.note) lines.push(given.entry.note);
    lines.push(property.doc);
    const pressures = [...given.facts.values()].filter(f => f.amount?.dimension === measures.pressure.dimension);
    if (pressures.some(f => !f.amount!.basis)) lines.push('*Read as gauge: above the air outside. Write `bar abs` for a pressure above vacuum.*');
    for (const f of pressures) {
        if (f.amount!.basis !== 'absolute') continue;
        const unit = f.amount!.unit?.text.startsWith('k') ? 'kPa' : 'bar';
        lines.push(`*Above the air outside it is ${show(f.number - workings.airPressure, unit, 4)}.*`);
    }
    if ([...given.facts.values()].some(f => f.stateTaken)) lines.push('*A litre without its state is taken at 20 °C and 101.325 kPa, dry. Write `NL` for 0 °C.*');
    const near = nearLines(analysis.near.filter(n => n.part === part.name && n.key?.split('.')[0] === key), false);
    if (near) lines.push(near);
    const shown = [...quantityOf(part.kindWord).values()].filter(q => q.shownAt === key).map(q => workings.quantity(part, q.name)!);
    shown.forEach((r, i) => lines.push(i ? shortWorking(r) : compactWorking(r)));
    return lines.join('\n\n');
}

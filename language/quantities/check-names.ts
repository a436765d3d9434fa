/**
 * Names with a point outside of plain values: what switches sense, what readings, changes, variants and logs are about,
 * what an expectation over time speaks of. Tells names that stand for nothing, and thresholds of the wrong dimension.
 */
import { measures, saysDimension, type Dimension } from '../units/dimension.js';
import { inMeasure } from '../values/evaluate.js';
import { nearest, offering } from '../values/nearest.js';
import { momentary } from '../vocabulary/momentary.js';
import { kinds } from '../vocabulary/index.js';
import { pathEnds } from '../rig/assemble.js';
import type { Part, Problem, Rig, Span } from '../rig/rig.js';
import { variantsOf, withVariants } from '../rig/variants.js';
import { weigh } from './expectation.js';
import { quantityOf } from './index.js';
import type { Workings } from './workings.js';

/** Dimension of `part.name`, whatever sort of name it is; undefined if it is none, null if it has no dimension. */
export function dimensionOf(part: Part, name: string): Dimension | null | undefined {
    const quantity = quantityOf(part.kindWord).get(name);
    if (quantity) return measures[quantity.measure].dimension;
    const moment = momentary.get(name);
    if (moment) return measures[moment.measure].dimension;
    const [key, ...slots] = name.split('.');
    const property = part.kind?.properties[key];
    if (!property) return undefined;
    const atom = property.items[0]?.find(a => typeof a !== 'string' && (!slots.length || a.slot === slots[0]));
    return typeof atom === 'object' && typeof atom.type === 'string' && atom.type in measures ? measures[atom.type as keyof typeof measures].dimension : null;
}
/** Every name that can follow the point after a part. */
export function namesAfterPoint(part: Part): string[] {
    return [...new Set([...quantityOf(part.kindWord).keys(), ...Object.keys(part.kind?.properties ?? {}), ...momentary.keys()])];
}

export function checkNames(workings: Workings): Problem[] {
    const { whole: rig = workings.rig } = workings.rig;
    const problems: Problem[] = [];
    const told = (span: Span, message: string, near?: string, whole?: string) => {
        problems.push({ code: 'unknown-name', span, message, fixes: near ? [{ title: `Write ${whole ?? near}`, edits: [{ span, text: whole ?? near }], preferred: true }] : undefined });
    };
    const check = (names: readonly string[], span: Span): Part | undefined => {
        const part = rig.parts.get(names[0]);
        if (!part) {
            const near = nearest(names[0], rig.parts.keys());
            told({ ...span, end: span.start + names[0].length }, offering(`A part ${names[0]} does not exist`, near), near);
            return undefined;
        }
        const name = names.slice(1).join('.');
        if (name && part.kind && dimensionOf(part, name) === undefined) {
            const near = nearest(name, namesAfterPoint(part));
            told(span, offering(`${part.name} has no ${name}`, near), near, near && `${part.name}.${near}`);
        }
        return part;
    };
    for (const part of rig.parts.values()) {
        if (part.kind?.statement) checkStatement(rig, part, check, told);
        const senses = part.kind?.properties.senses && part.entries.get('senses');
        if (senses && !senses.broken) {
            const fact = workings.given(part, 'senses').facts.get('');
            if (fact?.names) {
                const of = check(fact.names, { ...senses.span, start: senses.span.start + fact.start, end: senses.span.start + fact.end });
                if (of) checkThresholds(workings, part, of, fact.names.slice(1).join('.'), problems);
            }
        } else if (part.base && part.kind?.properties.senses) {
            const names = workings.given(part, 'senses').facts.get('')?.names;
            const of = names && rig.parts.get(names[0]);
            if (of) checkThresholds(workings, part, of, names.slice(1).join('.'), problems);
        }
        checkListed(workings, part, told);
    }
    // What a variant cannot replace; names that stand for nothing are told above.
    for (const variant of variantsOf(rig)) {
        for (const p of withVariants(rig, [variant.name]).problems) {
            if (p.code !== 'unknown-name' && !problems.some(q => q.span.file === p.span.file && q.span.start === p.span.start)) problems.push(p);
        }
    }
    checkOverTime(rig, told);
    for (const e of rig.expects) {
        for (const t of weigh(workings, e).troubles) {
            const at = (start: number, end: number): Span => ({ ...e.valueSpan, start: e.valueSpan.start + start, end: e.valueSpan.start + end });
            const span = at(t.start, t.end);
            const fix = t.fix && { title: t.fix.title, edits: [{ span: t.fix.start === undefined ? span : at(t.fix.start, t.fix.end!), text: t.fix.text }] };
            problems.push({ code: t.code, span, message: t.message, fixes: fix && [fix] });
        }
    }
    return problems;
}

function checkStatement(rig: Rig, part: Part, check: (names: readonly string[], span: Span) => Part | undefined, told: (span: Span, message: string, near?: string) => void): void {
    for (const entry of part.entries.values()) {
        if (entry.property) continue;
        if (entry.key.includes('.')) check(entry.key.split('.'), entry.keySpan);
        else if (part.kind!.statement === 'supposed' && !rig.parts.has(entry.key)) {
            const near = nearest(entry.key, rig.parts.keys());
            told(entry.keySpan, offering(`${entry.key} is neither a property of a variant nor a part that it could take away`, near), near);
        }
    }
}

/** A threshold is compared with what is sensed: both must be of one dimension. */
function checkThresholds(workings: Workings, part: Part, of: Part, name: string, problems: Problem[]): void {
    const expected = dimensionOf(of, name);
    if (!expected) return;
    for (const key of ['makes', 'breaks', 'trips', 'alarm', 'resets']) {
        const given = workings.given(part, key);
        const amount = given.facts.get('value')?.amount;
        if (!amount || !given.entry || given.from) continue;
        const fits = inMeasure(amount, expected) ?? (amount.dimension === measures['gas-flow'].dimension && expected === measures.flow.dimension ? amount : undefined);
        if (fits) continue;
        const fact = given.facts.get('value')!;
        problems.push({
            code: amount.unit ? 'wrong-dimension' : 'unit-missing', span: { ...given.entry.span, start: given.entry.span.start + fact.start, end: given.entry.span.start + fact.end },
            message: amount.unit ? `${part.name} senses ${of.name}.${name}, ${saysDimension(expected)}; this is ${saysDimension(amount.dimension)}.` : `A unit is missing: ${part.name} senses ${saysDimension(expected)}.`,
        });
    }
}

/** Names in lists (needs, stopped-by, covers ...) must be parts. */
function checkListed(workings: Workings, part: Part, told: (span: Span, message: string, near?: string) => void): void {
    const { whole: rig = workings.rig } = workings.rig;
    for (const entry of part.entries.values()) {
        if (entry.broken || !entry.property || !entry.value) continue;
        const named = entry.property.items.some(i => i.some(a => typeof a !== 'string' && (a.type === 'condition' || (typeof a.type === 'object' && 'part' in a.type))));
        if (!named) continue;
        for (const row of workings.given(part, entry.key).rows) {
            for (const fact of row.values()) {
                const names = fact.condition ? fact.condition.of : fact.names ? fact.names.map(n => ({ names: n.split('.'), start: fact.start, end: fact.end })) : [];
                for (const n of names) {
                    const first = n.names[0];
                    if (rig.parts.has(first) || pathEnds.has(first) || kinds.has(first)) continue;
                    const near = nearest(first, rig.parts.keys());
                    const span = { ...entry.span, start: entry.span.start + n.start, end: entry.span.start + n.end };
                    if (fact.text === 'section') told(span, offering(`A part ${first} does not exist`, near));
                    else told({ ...span, end: span.start + first.length }, offering(`A part ${first} does not exist`, near), near);
                }
            }
        }
    }
}

const lead = /^(?:always|never|before\s+\d{1,2}:\d{2}|at\s+end|at\s+\d{1,2}:\d{2}|within\s+[\d.]+\s+\w+(?:\s+of\s+\d{1,2}:\d{2})?|from\s+\d{1,2}:\d{2}\s+to\s+\d{1,2}:\d{2}(?:\s+always|\s+never)?|after\s+[\d.]+\s+\w+)\s*/;
/** Expectations over time are a small language of parts, states and comparisons; a typing slip must not pass unseen. */
function checkOverTime(rig: Rig, told: (span: Span, message: string, near?: string) => void): void {
    for (const e of rig.expects) {
        if (e.broken) continue;
        if (e.when) checkCondition(rig, e.when, told);
        if (!e.overTime) continue;
        const text = e.text.slice(e.valueSpan.start - e.span.start);
        let at = e.valueSpan.start;
        for (const clause of text.split(',')) {
            const trimmed = clause.trimStart();
            const start = at + clause.length - trimmed.length;
            const m = lead.exec(trimmed);
            const rest = m ? trimmed.slice(m[0].length) : trimmed;
            const from = start + (m ? m[0].length : 0);
            at += clause.length + 1;
            if (/[<>=]|\bbetween\b/.test(rest)) {
                for (const name of rest.matchAll(/[\p{L}_][\p{L}\p{N}_-]*(?:\.[\p{L}_][\p{L}\p{N}_-]*)+/gu)) {
                    const part = rig.parts.get(name[0].split('.')[0]);
                    const span = { file: e.span.file, start: from + name.index, end: from + name.index + name[0].length };
                    if (!part) told(span, `A part ${name[0].split('.')[0]} does not exist.`, undefined);
                    else if (part.kind && dimensionOf(part, name[0].split('.').slice(1).join('.')) === undefined) told(span, `${part.name} has no ${name[0].split('.').slice(1).join('.')}.`);
                }
            } else if (rest.trim()) {
                checkState(rig, rest.trimEnd(), { file: e.span.file, start: from, end: from + rest.trimEnd().length }, told);
            }
        }
    }
}
/** `transformer stopped`, `main not made`. */
function checkState(rig: Rig, text: string, span: Span, told: (span: Span, message: string, near?: string) => void): void {
    const m = /^([\p{L}_][\p{L}\p{N}_-]*)\s*(.*)$/u.exec(text);
    if (!m) return told(span, 'A part and its state are expected here, as transformer stopped.');
    const part = rig.parts.get(m[1]);
    if (!part) {
        const near = nearest(m[1], rig.parts.keys());
        return told({ ...span, end: span.start + m[1].length }, offering(`A part ${m[1]} does not exist`, near), near);
    }
    const state = m[2].replace(/^not\s+/, '').replace(/\s+/g, ' ');
    const known = [...(part.kind?.states ?? []), ...(part.kind?.events ?? [])];
    if (!known.length || known.includes(state)) return;
    const near = nearest(state, known);
    const at = { ...span, start: span.end - m[2].replace(/^not\s+/, '').length };
    told(state ? at : span, state ? `${part.name} cannot be ${state}${near ? `; did you mean ${near}?` : ''}${near ? '' : `: ${known.join(', ')}.`}` : `What of ${part.name}: ${known.slice(0, 5).join(', ')}?`, near);
}
function checkCondition(rig: Rig, when: { word: string; text: string; span: Span }, told: (span: Span, message: string, near?: string) => void): void {
    if (when.word !== 'if') {
        for (const name of when.text.split(/\s*,\s*/)) {
            const part = rig.parts.get(name);
            if (part?.kind?.name === (when.word === 'with' ? 'variant' : 'scenario')) continue;
            const near = nearest(name, [...rig.parts.values()].filter(p => p.kind?.name === (when.word === 'with' ? 'variant' : 'scenario')).map(p => p.name));
            told(when.span, offering(`There is no ${when.word === 'with' ? 'variant' : 'scenario'} ${name}`, near), near);
        }
        return;
    }
    checkState(rig, when.text, when.span, told);
}

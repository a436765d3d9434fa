/**
 * Tidies a rig text, line by line: indents, lines values up, one blank where one belongs. Never changes what a text says,
 * and leaves a line that cannot be read as it is. Formatting twice changes nothing more.
 */
import { FrameReader } from '../grammar/frame.js';
import type { Item } from '../grammar/frame.js';
import { parseValue } from '../values/parse-value.js';
import { Lines } from './lines.js';

/** Column at which values stand in a block of several lines. */
const VALUE_COLUMN = 20;
const INDENT = '  ';

export interface LineEdit {
    readonly line: number;
    /** How many lines it replaces. */
    readonly count: number;
    readonly text: string;
}

/** The tidied text. */
export function formatText(text: string): string {
    const edits = formatEdits(text);
    const lines = text.split('\n');
    for (const e of [...edits].reverse()) lines.splice(e.line, e.count, ...(e.text === '' ? [] : e.text.replace(/\n$/, '').split('\n')));
    let out = lines.join('\n');
    const eol = /\r\n/.test(text) ? '\r\n' : '\n';
    out = `${out.replace(/(?:[ \t]*\r?\n)*[ \t]*$/, '')}${eol}`;
    return out.trim() === '' ? '' : out;
}

/** The edits that tidy a text, from top to bottom, none overlapping. */
export function formatEdits(text: string): LineEdit[] {
    const lines = new Lines(text);
    const eol = /\r\n/.test(text) ? '\r\n' : '\n';
    const wanted: (string | undefined)[] = [];
    for (let l = 0; l < lines.count; l++) wanted.push(lines.lineText(l).replace(/[ \t\u00a0]+$/, ''));
    const frame = new FrameReader().read('format', text);
    for (const piece of frame.pieces) {
        for (const item of piece.items) tidyItem(item, piece.at, text, lines, wanted);
    }
    const edits: LineEdit[] = [];
    let blanks = 0;
    for (let l = 0; l < lines.count; l++) {
        const before = lines.lineText(l);
        const after = wanted[l]!;
        const last = l === lines.count - 1;
        if (after === '') {
            blanks++;
            if (blanks > 2 && !last) {
                edits.push({ line: l, count: 1, text: '' });
                continue;
            }
        } else blanks = 0;
        if (after !== before) edits.push({ line: l, count: 1, text: last ? after : after + eol });
    }
    return edits;
}

function comment(lineText: string, from: number): { at: number; text: string } | undefined {
    let quoted = false;
    for (let i = from; i < lineText.length; i++) {
        if (lineText[i] === '"') quoted = !quoted;
        else if (lineText[i] === '#' && !quoted) return { at: i, text: lineText.slice(i).trimEnd() };
    }
    return undefined;
}
/** A line with its comment kept at its column where it can be, else two blanks behind. */
function withComment(body: string, old: { at: number; text: string } | undefined): string {
    return old ? `${body.padEnd(Math.max(body.length + 2, body.trim() ? old.at : 0))}${old.text}` : body;
}
/** One blank between pieces of a value, nothing else changed; undefined where it cannot be read. */
export function tidyValue(value: string): string | undefined {
    const parsed = parseValue(value);
    if (parsed.problems.length) return undefined;
    let out = '';
    let quoted = false;
    for (let i = 0; i < value.length; i++) {
        const c = value[i];
        if (c === '"') quoted = !quoted;
        if (!quoted && (c === ' ' || c === '\t' || c === '\u00a0')) {
            if (!out.endsWith(' ')) out += ' ';
        } else out += c;
    }
    const tidy = out.trim().replace(/ ,/g, ',');
    // Only blanks may have gone: what is read must be the same.
    return same(parseValue(tidy), parsed) ? tidy : undefined;
}
function same(a: unknown, b: unknown): boolean {
    const strip = (k: string, v: unknown) => (['start', 'end', 'unitStart', 'text'].includes(k) ? undefined : k === 'dimension' ? (v as { key: string }).key : v);
    return JSON.stringify(a, strip) === JSON.stringify(b, strip);
}

function tidyItem(item: Item, at: number, text: string, lines: Lines, wanted: (string | undefined)[]): void {
    const line = lines.at(at + item.start).line;
    const endLine = lines.at(at + Math.max(item.start, item.end - 1)).line;
    if (item.is === 'line') {
        if (line !== endLine || item.text === undefined || text.slice(lines.startOf(line), at + item.start).trim()) return;
        const body = item.word === 'path' ? tidyPath(item.text) : item.word === 'let' ? tidyLet(item.text) : tidyValue(item.text);
        if (body === undefined) return;
        // Media of neighbouring paths may be lined up by hand: the blanks after the colon are kept.
        const head = item.word === 'path' ? /^[^:]*:[ \t]*/.exec(item.text)?.[0] : undefined;
        const whole = head && body.includes(':') ? `${head.replace(/[ \t]*:[ \t]*$/, ':')}${' '.repeat(Math.max(1, /[ \t]*$/.exec(head)![0].length))}${body.slice(body.indexOf(':') + 1).trimStart()}` : body;
        wanted[line] = withComment(`${item.word} ${whole}`, comment(lines.lineText(line), at + item.end - lines.startOf(line)));
        return;
    }
    if (item.is !== 'block' || !item.items || item.closeAt === undefined) return;
    if (line === endLine) return tidyOneLine(item, at, text, lines, wanted, line);
    const open = lines.at(at + item.openAt).line;
    const close = lines.at(at + item.closeAt).line;
    if (open === line && !text.slice(lines.startOf(line), at + item.start).trim() && !text.slice(at + item.openAt + 1, lines.endOf(line)).replace(/#.*/, '').trim()) {
        const header = text.slice(at + item.start, at + item.openAt).trim().replace(/[ \t]+/g, ' ');
        wanted[line] = withComment(`${header} {`, comment(lines.lineText(line), at + item.openAt - lines.startOf(line)));
    }
    const closing = lines.lineText(close);
    if (/^\s*\}\s*(#.*)?$/.test(closing)) wanted[close] = withComment('}', comment(closing, 0));
    const perLine = new Map<number, number>();
    for (const p of item.items) {
        const l = lines.at(at + p.start).line;
        perLine.set(l, (perLine.get(l) ?? 0) + 1);
    }
    for (const p of item.items) {
        if (p.is !== 'property' || p.value === undefined) continue;
        const l = lines.at(at + p.start).line;
        const last = lines.at(at + p.end - 1).line;
        if (perLine.get(l) !== 1 || l === open || (l === close && last === close) || text.slice(lines.startOf(l), at + p.start).trim()) continue;
        const key = `${p.key}:`;
        const head = INDENT + (key.length < VALUE_COLUMN - INDENT.length ? key.padEnd(VALUE_COLUMN - INDENT.length) : `${key} `);
        if (last === l) {
            const tidy = tidyValue(p.value) ?? p.value.trim();
            // Values lined up by hand (a table of hours) keep their own blanks.
            wanted[l] = withComment(head + tidy, comment(lines.lineText(l), at + p.end - lines.startOf(l)));
        } else {
            if (tidyValue(p.value) === undefined) continue;
            for (let k = l; k <= last; k++) {
                const from = k === l ? at + p.valueAt : lines.startOf(k);
                const raw = text.slice(from, Math.min(lines.endOf(k), k === last ? at + p.end : Infinity));
                const c = comment(raw, 0);
                const piece = (c ? raw.slice(0, c.at) : raw).trim().replace(/([^"]*)("[^"]*")?/g, (_, a: string, q: string | undefined) => a.replace(/[ \t]+/g, ' ') + (q ?? ''));
                if (!piece && !c) {
                    wanted[k] = '';
                    continue;
                }
                const body = (k === l ? head : ' '.repeat(VALUE_COLUMN)) + piece;
                const tail = k === last ? comment(lines.lineText(k), at + p.end - lines.startOf(k)) : c && { at: from - lines.startOf(k) + c.at, text: c.text };
                wanted[k] = withComment(piece ? body : ' '.repeat(VALUE_COLUMN), tail || undefined).trimEnd();
            }
        }
    }
    for (let l = open + 1; l < close; l++) {
        const t = lines.lineText(l);
        if (/^\s*#/.test(t) && wanted[l] === t.trimEnd()) wanted[l] = INDENT + t.trim();
    }
}
function tidyOneLine(item: Extract<Item, { is: 'block' }>, at: number, text: string, lines: Lines, wanted: (string | undefined)[], line: number): void {
    if (text.slice(lines.startOf(line), at + item.start).trim()) return;
    const after = text.slice(at + item.end, lines.endOf(line));
    if (after.replace(/#.*/, '').trim() || item.items!.some(p => p.is !== 'property' || p.value === undefined)) return;
    const header = text.slice(at + item.start, at + item.openAt).trim().replace(/[ \t]+/g, ' ');
    // Neighbours may be lined up by hand: the blanks before the brace and between properties are kept, at least the usual ones.
    const lead = Math.max(1, /[ \t]*$/.exec(text.slice(at + item.start, at + item.openAt))![0].length);
    let body = '';
    let previous = -1;
    for (const p of item.items!) {
        if (p.is !== 'property') return;
        const gap = previous < 0 ? 0 : Math.max(3, at + p.start - previous);
        const beforeValue = Math.max(1, at + p.valueAt - (at + p.start + p.key.length) - 1);
        body += `${' '.repeat(gap)}${p.key}:${' '.repeat(/^\s*$/.test(text.slice(at + p.start + p.key.length + 1, at + p.valueAt)) ? beforeValue : 1)}${tidyValue(p.value!) ?? p.value!.trim()}`;
        previous = at + p.end;
    }
    wanted[line] = withComment(`${header}${' '.repeat(lead)}{ ${body} }`.replace('{  }', '{ }'), comment(lines.lineText(line), at + item.end - lines.startOf(line)));
}
function tidyPath(text: string): string | undefined {
    const m = /^([^\s:]+)\s*:(.*)$/.exec(text);
    if (!m) return undefined;
    const stops = m[2].split('->').map(s => s.trim());
    if (stops.some(s => !s || /\s/.test(s))) return undefined;
    return `${m[1]}: ${stops.join(' -> ')}`;
}
function tidyLet(text: string): string | undefined {
    const m = /^(\S+)\s*=(.*)$/.exec(text);
    const value = m && tidyValue(m[2]);
    return m && value ? `${m[1]} = ${value}` : undefined;
}

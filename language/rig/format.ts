/**
 * Tidies a rig text: values in one column, one blank where one belongs, neighbours lined up where they were lined up.
 * Never changes what a text says, and never touches a line that cannot be read. Tidying twice changes nothing more.
 *
 * Works on units: the lines that one header, property or statement stands on. A unit with anything unreadable on its lines
 * stays byte for byte; the others are tidied all the same. What comes out is read again, and an edit that would change
 * what the text says is dropped.
 */
import { FrameReader, type BlockItem, type Frame, type Item, type LineItem, type PropertyItem } from '../grammar/frame.js';
import { match, type Facts } from '../values/match.js';
import { parseValue, walk, type Node, type ParsedValue } from '../values/parse-value.js';
import type { Property } from '../vocabulary/define.js';
import { kinds } from '../vocabulary/index.js';
import { Lines } from './lines.js';

/** Column at which values stand in a block of several lines. Fixed, so that a new key moves no other line. */
const VALUE_COLUMN = 20;
const INDENT = 2;
const MOST_BLANK_LINES = 2;
const BEFORE_COMMENT = 2;
const BETWEEN_PROPERTIES = 3;

export interface LineEdit {
    readonly line: number;
    /** How many lines it replaces. */
    readonly count: number;
    /** What stands there instead, with its line ends; empty if the lines go. */
    readonly text: string;
}

/** The tidied text. */
export function formatText(text: string): string {
    return apply(text, formatEdits(text));
}

/**
 * The edits that tidy a text, from top to bottom, none overlapping.
 *
 * @param range only these lines, counted from 0, both included; all if left out
 */
export function formatEdits(text: string, range?: { readonly from: number; readonly to: number }): LineEdit[] {
    const values = new Values();
    const wanted = editsOf(text, values).filter(e => !range || (e.line >= range.from && e.line <= range.to));
    return wanted.length ? sound(text, wanted, meaning(text, values), values) : [];
}
/** Values by their text, each read once. */
class Values {
    private readonly parsed = new Map<string, ParsedValue>();
    private readonly keys = new Map<ParsedValue, Map<Property | undefined, string>>();
    parse(raw: string): ParsedValue {
        let v = this.parsed.get(raw);
        if (!v) this.parsed.set(raw, (v = parseValue(raw)));
        return v;
    }
    /** What a value says, as a text without places and blanks. */
    key(raw: string, property?: Property): string {
        const v = this.parse(raw);
        let byProperty = this.keys.get(v);
        if (!byProperty) this.keys.set(v, (byProperty = new Map()));
        let key = byProperty.get(property);
        if (key === undefined) byProperty.set(property, (key = v.problems.length ? raw.trim() : valueKey(v, property)));
        return key;
    }
}

// ---- from text to units -------------------------------------------------------------------------------------------

type Segment = { readonly start: number; readonly end: number } & (
    | { readonly is: 'header'; readonly block: BlockItem; readonly at: number }
    | { readonly is: 'property'; readonly item: PropertyItem; readonly at: number; readonly kind: string }
    | { readonly is: 'close'; readonly block: BlockItem }
    | { readonly is: 'line'; readonly item: LineItem; readonly at: number }
    | { readonly is: 'odd' }
);
/** Lines that belong together, first and last included. */
interface Unit { from: number; to: number; segments: Segment[] }

function segmentsOf(frame: Frame): Segment[] {
    const segments: Segment[] = [];
    const odd = (item: Item, at: number) => segments.push({ is: 'odd', start: at + item.start, end: at + item.end });
    for (const { at, items } of frame.pieces) {
        for (const item of items) {
            if (item.is === 'line') {
                segments.push({ is: 'line', item, at, start: at + item.start, end: at + item.end });
            } else if (item.is !== 'block') {
                // A property in no block cannot be placed: the line above it may be the one that is wrong.
                odd(item, at);
            } else {
                segments.push({ is: 'header', block: item, at, start: at + item.start, end: item.items ? at + item.openAt + 1 : at + item.end });
                for (const inner of item.items ?? []) {
                    if (inner.is === 'property') segments.push({ is: 'property', item: inner, at, kind: item.kind, start: at + inner.start, end: at + inner.end });
                    else if (inner.is === 'line') segments.push({ is: 'line', item: inner, at, start: at + inner.start, end: at + inner.end });
                    else odd(inner, at);
                }
                if (item.closeAt !== undefined) segments.push({ is: 'close', block: item, start: at + item.closeAt, end: at + item.closeAt + 1 });
            }
        }
    }
    return segments;
}
function unitsOf(segments: readonly Segment[], lines: Lines): Unit[] {
    const units: Unit[] = [];
    for (const s of segments) {
        const from = lines.at(s.start).line;
        const to = lines.at(Math.max(s.start, s.end - 1)).line;
        const last = units.at(-1);
        if (last && from <= last.to) {
            last.to = Math.max(last.to, to);
            last.segments.push(s);
        } else {
            units.push({ from, to, segments: [s] });
        }
    }
    return units;
}

// ---- rows: what a unit looks like when tidy -------------------------------------------------------------------------

interface Cell {
    text: string;
    /** Column where it stood. */
    readonly at: number;
    /** Least blanks before it. */
    readonly gap: number;
    /** For a property: its key, and whether it stood closer than that, so that a long value may have pushed it out of its column. */
    readonly key?: string;
    readonly tight?: boolean;
}
/** Between rows: nothing, or lines that stay as they are. */
type Gap = 'blank' | 'odd';
interface Row {
    /** Rows of one sort that follow each other may be lined up. */
    readonly sort: 'part' | 'properties' | 'path' | 'expect' | 'let' | 'alone' | 'through';
    readonly indent: number;
    readonly cells: Cell[];
    /** Stands under the last cell of this row. */
    readonly under?: Row;
    comment?: { readonly text: string; readonly at: number };
    /** Where the cells begin, when laid out. */
    xs: number[];
}
function row(sort: Row['sort'], indent: number, cells: Cell[], under?: Row): Row {
    return { sort, indent, cells, under, xs: [] };
}

interface Written { text: string; comment?: { text: string; at: number }; at: number }

/** The lines of a value as written: the text and the comment of each, with their columns. `column` is that of its first character. */
function writtenLines(raw: string, column: number): Written[] {
    return raw.split('\n').map((line, k) => {
        const cut = commentAt(line, 0);
        const shift = k === 0 ? column : 0;
        const text = cut < 0 ? line : line.slice(0, cut);
        return {
            text: text.trim(), at: shift + text.length - text.trimStart().length,
            comment: cut < 0 ? undefined : { text: line.slice(cut).trimEnd(), at: shift + cut },
        };
    });
}
/** Index of the # that begins a comment, or -1. */
function commentAt(line: string, from: number): number {
    let quoted = false;
    for (let i = from; i < line.length; i++) {
        if (line[i] === '"') quoted = !quoted;
        else if (line[i] === '#' && !quoted) return i;
    }
    return -1;
}
/** Changes what stands outside of quotes. */
function unquoted(text: string, change: (piece: string) => string): string {
    return text.replace(/("[^"]*(?:"|$))|([^"]+)/g, (_, quoted: string | undefined, plain: string | undefined) => quoted ?? change(plain!));
}
/** One blank for several; none before a comma, one after it, but never inside what may be a decimal comma. */
function fewBlanks(text: string): string {
    return unquoted(text, s => s.replace(/[ \t\u00a0]+/g, ' ').replace(/ ,/g, ',').replace(/,(?=\S)/g, (comma, i: number) => (/\d/.test(s[i - 1] ?? '') && /\d/.test(s[i + 1]) ? comma : ', ')))
        .replace(/,(?=")/g, ', ').trim();
}

/** The lines of a value when tidy; undefined if it cannot be read. */
function tidyValue(values: Values, raw: string, column: number, property?: Property): Written[] | undefined {
    const before = values.parse(raw);
    if (before.problems.length) return undefined;
    const written = writtenLines(raw, column);
    for (const text of [spaced(raw, before), raw]) {
        const lines = writtenLines(text, column).map((w, k): Written => ({ ...written[k], text: fewBlanks(w.text) }));
        if (lines.every((l, k) => l.text === written[k].text)) return written;
        const after = lines.map(l => l.text + (l.comment ? `  ${l.comment.text}` : '')).join('\n');
        if (!values.parse(after).problems.length && values.key(after, property) === values.key(raw, property)) return lines;
    }
    return written;
}
const spacedOperators = new Set(['±', '<', '<=', '>', '>=', '=']);
/** One blank between a number and its unit, and around signs that compare; ± for +/-. */
function spaced(raw: string, value: ParsedValue): string {
    const edits: { start: number; end: number; text: string }[] = [];
    const visit = (node: Node) => {
        if (node.is === 'quantity' && node.unitStart > node.start && /[\d.]/.test(raw[node.unitStart - 1]) && !/^°(?![CFK])/.test(raw.slice(node.unitStart))) {
            edits.push({ start: node.unitStart, end: node.unitStart, text: ' ' });
        }
        if (node.is === 'operation' && spacedOperators.has(node.op)) {
            const sign = /^([ \t\u00a0]*)(\+\/-|±|<=|>=|≤|≥|<|>|=)([ \t\u00a0]*)$/.exec(raw.slice(node.a.end, node.b.start));
            if (sign) edits.push({ start: node.a.end, end: node.b.start, text: ` ${sign[2] === '+/-' ? '±' : sign[2]} ` });
        }
    };
    for (const sequence of value.list) for (const node of sequence) walk(node, visit);
    let out = raw;
    for (const e of edits.sort((a, b) => b.start - a.start || b.end - a.end)) out = out.slice(0, e.start) + e.text + out.slice(e.end);
    return out;
}
/** Right-hand numbers of a table stay so: the figures of its lines ended in one column. */
function lineUpNumbers(lines: readonly Written[]): void {
    const figures = lines.filter(l => l.text).map(l => ({ l, figure: /^-?\d+(?:\.\d+)?(?= )/.exec(l.text)?.[0] }));
    if (figures.length < 2 || figures.some(f => f.figure === undefined)) return;
    const ends = new Set(figures.map(f => f.l.at + f.figure!.length));
    if (ends.size !== 1) return;
    const width = Math.max(...figures.map(f => f.figure!.length));
    for (const { l, figure } of figures) l.text = ' '.repeat(width - figure!.length) + l.text;
}

/** Rows for the lines of a value: the first behind its key, the others under it. */
function rowsOfValue(first: Row, lines: readonly Written[]): Row[] {
    const cell = first.cells.at(-1)!;
    cell.text += lines[0].text;
    first.comment = lines[0].comment;
    return [first, ...lines.slice(1).map((l): Row => ({ ...row('through', 0, l.text ? [{ text: l.text, at: l.at, gap: 0 }] : [], first), comment: l.comment }))];
}

class Tidier {
    /** All rows from top to bottom. */
    private readonly all: (Row | Gap)[] = [];
    private readonly rowOf = new Map<Segment, Row>();

    constructor(private readonly text: string, private readonly lines: Lines, private readonly values: Values) {}

    /** What becomes of the lines that are tidied, from top to bottom. */
    tidy(): { from: number; to: number; texts: string[] }[] {
        const segments = segmentsOf(new FrameReader().read('format', this.text));
        const inside = this.insides(segments);
        const places: { from: number; to: number; rows: Row[] }[] = [];
        const put = (from: number, to: number, rows: Row[]) => {
            this.all.push(...rows);
            places.push({ from, to, rows });
        };
        let l = 0;
        const upTo = (end: number) => {
            for (; l < end; l++) {
                const line = this.lines.lineText(l);
                if (/^[ \t\u00a0]*#/.test(line)) put(l, l, [this.commentLine(line, inside.has(l))]);
                else this.all.push(isBlank(line) ? 'blank' : 'odd');
            }
        };
        const units = unitsOf(segments, this.lines);
        for (const [k, unit] of units.entries()) {
            upTo(unit.from);
            // A } with something before it, and properties after it that belong to nothing, may be a slip: it stays where it is.
            const slip = unit.segments.length > 1 && unit.segments.at(-1)!.is === 'close' && units[k + 1]?.segments[0].is === 'odd';
            const rows = slip ? undefined : this.rowsOf(unit);
            if (rows) put(unit.from, unit.to, rows);
            else this.all.push('odd');
            l = unit.to + 1;
        }
        upTo(this.lines.count);
        layOut(this.all);
        const written = write(this.all);
        return places.map(p => ({ from: p.from, to: p.to, texts: p.rows.map(r => written.get(r)!) }));
    }
    /** A line with nothing but a comment. Right under a comment behind a value it goes on with it. */
    private commentLine(line: string, inside: boolean): Row {
        const at = line.indexOf('#');
        const above = this.all.at(-1);
        if (above && typeof above === 'object' && above.comment?.at === at) return { ...row('through', 0, []), comment: { text: line.slice(at).trimEnd(), at } };
        return row('through', inside ? INDENT : 0, [{ text: inside ? line.slice(at).trimEnd() : line.trimEnd(), at, gap: 0 }]);
    }
    /** Lines strictly between the braces of blocks of several lines. */
    private insides(segments: readonly Segment[]): Set<number> {
        const inside = new Set<number>();
        let open: { block: BlockItem; line: number } | undefined;
        for (const s of segments) {
            if (s.is === 'header') open = s.block.items ? { block: s.block, line: this.lines.at(s.end - 1).line } : undefined;
            if (s.is !== 'close' || open?.block !== s.block) continue;
            for (let l = open.line + 1; l < this.lines.at(s.start).line; l++) inside.add(l);
        }
        return inside;
    }
    /** Comments behind what is read on the lines of a unit; undefined if anything else stands there that is not understood. */
    private commentsOf(unit: Unit): Map<number, { text: string; at: number }> | undefined {
        const comments = new Map<number, { text: string; at: number }>();
        for (let l = unit.from; l <= unit.to; l++) {
            const start = this.lines.startOf(l);
            const line = this.lines.lineText(l);
            if (/[\r\v\f\ufeff\u2028\u2029]/.test(line)) return undefined;
            let at = 0;
            for (const s of unit.segments) {
                const from = Math.max(0, s.start - start);
                const to = Math.min(line.length, s.end - start);
                if (to <= 0 || from >= line.length) continue;
                if (/[^ \t\u00a0]/.test(line.slice(at, from))) return undefined;
                at = Math.max(at, to);
            }
            const rest = line.slice(at);
            if (!/^[ \t\u00a0]*(#|$)/.test(rest)) return undefined;
            if (rest.includes('#')) comments.set(l, { text: rest.slice(rest.indexOf('#')).trimEnd(), at: at + rest.indexOf('#') });
        }
        return comments;
    }
    private column(offset: number): number {
        return this.lines.at(offset).character;
    }
    /** The tidy rows of a unit; undefined if it stays as it is. */
    private rowsOf(unit: Unit): Row[] | undefined {
        const { segments } = unit;
        const comments = this.commentsOf(unit);
        if (!comments || segments.some(s => s.is === 'odd')) return undefined;
        const [first] = segments;
        const rows = first.is === 'line' ? (segments.length === 1 ? this.rowsOfLine(first.item, first.at) : undefined)
            : this.isOneLine(unit) ? this.rowsOfOneLine(segments) : this.rowsOfSeveral(segments);
        if (!rows) return undefined;
        for (const [l, comment] of comments) {
            // A comment stays with what it stood behind: with the last value of its line, if there is one.
            const here = segments.filter(s => this.lines.at(s.end - 1).line === l).reverse();
            const behind = here.find(s => s.is === 'property') ?? here[0];
            const r = (behind && this.rowOf.get(behind)) ?? rows.at(-1)!;
            if (r.comment) return undefined;
            r.comment = comment;
        }
        return rows;
    }
    /** A part without braces, or with all of its block on one line. */
    private isOneLine({ segments, from, to }: Unit): boolean {
        const [first, ...rest] = segments;
        if (first.is !== 'header' || from !== to) return false;
        if (!first.block.items) return rest.length === 0;
        const last = rest.at(-1);
        return last?.is === 'close' && last.block === first.block && rest.slice(0, -1).every(s => s.is === 'property');
    }
    /** `kind name`, and `like base` if it is like another. */
    private header({ block, at, start }: Segment & { is: 'header' }): Cell[] {
        const raw = this.text.slice(start, block.items ? at + block.openAt : at + block.end);
        const like = block.like && !raw.includes('"') ? /[ \t\u00a0]like(?=[ \t\u00a0\r\n]|$)/.exec(raw) : undefined;
        const column = this.column(start);
        const cell = (text: string, from: number): Cell => ({ text: text.trim().replace(/[ \t\u00a0\r\n]+/g, ' '), at: column + from, gap: from ? 1 : 0 });
        return like ? [cell(raw.slice(0, like.index), 0), cell(raw.slice(like.index), like.index + 1)] : [cell(raw, 0)];
    }
    private rowsOfOneLine(segments: readonly Segment[]): Row[] | undefined {
        const head = segments[0] as Segment & { is: 'header' };
        const cells = this.header(head);
        if (head.block.items) {
            const properties = segments.slice(1, -1) as (Segment & { is: 'property' })[];
            const brace = this.column(head.end - 1);
            for (const [k, p] of properties.entries()) {
                const said = this.property(p);
                if (!said || said.lines.length > 1) return undefined;
                const text = `${said.key}: ${said.lines[0].text}`;
                cells.push(k ? { text, ...this.between(properties[k - 1], p) } : { text: `{ ${text}`, at: brace, gap: 1 });
            }
            if (properties.length) cells.at(-1)!.text += ' }';
            else cells.push({ text: '{ }', at: brace, gap: 1 });
        }
        return [row('part', 0, cells)];
    }
    /** Lines of a block of several lines: its header, some of its properties, its end. */
    private rowsOfSeveral(segments: readonly Segment[]): Row[] | undefined {
        const rows: Row[] = [];
        let rest = segments;
        const [first] = segments;
        const close = segments.at(-1)!;
        if (first.is === 'header') {
            if (!first.block.items) return undefined;
            // While a block is being typed its first line is left alone.
            if (segments.length > 1 && first.block.closeAt === undefined) return undefined;
            const r = row('alone', 0, [{ text: `${this.header(first).map(c => c.text).join(' ')} {`, at: 0, gap: 0 }]);
            this.rowOf.set(first, r);
            rows.push(r);
            rest = rest.slice(1);
        }
        if (close.is === 'close') rest = rest.slice(0, -1);
        if (rest.some(s => s.is !== 'property')) return undefined;
        const said = rest.map(s => this.property(s as Segment & { is: 'property' }));
        if (said.some(s => !s)) return undefined;
        if (said.length > 1 && said.every(s => s!.lines.length === 1)) {
            const r = row('properties', INDENT, said.map((s, k) => ({
                text: `${s!.key}: ${s!.lines[0].text}`, ...(k ? this.between(rest[k - 1], rest[k]) : { at: 0, gap: 0 }),
            })));
            for (const s of rest) this.rowOf.set(s, r);
            rows.push(r);
        } else {
            for (const [k, s] of said.entries()) {
                const { key, lines } = s!;
                lineUpNumbers(lines);
                const name = `${key}:`;
                const r = row('alone', INDENT, [{ text: name, at: 0, gap: 0 }, { text: '', at: 0, gap: Math.max(1, VALUE_COLUMN - INDENT - name.length) }]);
                const made = rowsOfValue(r, lines);
                this.rowOf.set(rest[k], made.at(-1)!);
                rows.push(...made);
            }
        }
        if (close.is === 'close') {
            const r = row('alone', 0, [{ text: '}', at: this.column(close.start), gap: 0 }]);
            this.rowOf.set(close, r);
            rows.push(r);
        }
        return rows;
    }
    /** How a property stands behind the one before it. */
    private between(before: Segment, after: Segment): Omit<Cell, 'text'> {
        const key = after.is === 'property' ? after.item.key : undefined;
        return { at: this.column(after.start), gap: BETWEEN_PROPERTIES, key, tight: after.start - before.end < BETWEEN_PROPERTIES };
    }
    private property(s: Segment & { is: 'property' }): { key: string; lines: Written[] } | undefined {
        const { item, at, kind } = s;
        if (item.value === undefined) return undefined;
        const lines = tidyValue(this.values, item.value, this.column(at + item.valueAt), kinds.get(kind)?.properties[item.key]);
        return lines && { key: item.key, lines };
    }
    private rowsOfLine(item: LineItem, at: number): Row[] | undefined {
        if (item.text === undefined) return undefined;
        const start = this.column(at + item.start);
        const head = (text: string) => ({ text, at: start, gap: 0 });
        const tidy = (raw: string, column: number) => tidyValue(this.values, raw, column);
        /** The rest of the statement, from a place in its text. */
        const make = (sort: Row['sort'], before: string, from: number, tidy: (raw: string, column: number) => Written[] | undefined) => {
            const offset = at + item.textAt + from;
            const lines = tidy(item.text!.slice(from), this.column(offset));
            return lines?.[0].text ? rowsOfValue(row(sort, 0, [head(before), { text: '', at: this.column(offset), gap: 1 }]), lines) : undefined;
        };
        switch (item.word) {
            case 'path': {
                const medium = /^([^\s:]+)[ \t]*:[ \t]*/.exec(item.text);
                return medium ? make('path', `path ${medium[1]}:`, medium[0].length, tidyPath) : undefined;
            }
            case 'let': {
                const name = /^([\p{L}_][\p{L}\p{N}_-]*)[ \t]*(?==)/u.exec(item.text);
                if (!name) return undefined;
                const rows = make('let', `let ${name[1]}`, name[0].length, (raw, column) => {
                    const lines = tidyValue(this.values, raw.slice(1), column + 1);
                    return lines?.[0].text ? [{ ...lines[0], text: `= ${lines[0].text}` }, ...lines.slice(1)] : undefined;
                });
                return rows;
            }
            case 'expect': {
                const when = /^(with|during|if)[ \t]+([^:\n#]*?)[ \t]*:[ \t]*/.exec(item.text);
                const rest = item.text.slice(when?.[0].length ?? 0);
                const overTime = when?.[1] === 'during' || when?.[1] === 'if' || /^(always|never|within|before|at|from|after)\b/.test(rest);
                return make(when ? 'expect' : 'through', when ? `expect ${when[1]} ${fewBlanks(when[2])}:` : 'expect', when?.[0].length ?? 0, overTime ? tidyWords : tidy);
            }
            case 'use':
                return /^("[^"\n]*"|[\p{L}_][\p{L}\p{N}_-]*)$/u.test(item.text) ? make('through', 'use', 0, tidyWords) : undefined;
            default:
                return make('through', item.word, 0, tidy);
        }
    }
}
/** Words without a value's grammar: only their blanks. */
function tidyWords(raw: string, column: number): Written[] {
    return writtenLines(raw, column).map(l => ({ ...l, text: fewBlanks(l.text) }));
}
function tidyPath(raw: string, column: number): Written[] | undefined {
    const lines = writtenLines(raw, column);
    if (lines.some(l => l.comment?.text.includes('->'))) return undefined;
    const stop = /^[\p{L}_][\p{L}\p{N}_-]*(?:\.[\p{L}_][\p{L}\p{N}_-]*)?$/u;
    const stops = lines.map(l => l.text).join(' ').split('->').map(s => s.trim());
    if (stops.some(s => !stop.test(s))) return undefined;
    return lines.map(l => ({ ...l, text: l.text.replace(/[ \t\u00a0]*->[ \t\u00a0]*/g, ' -> ').trim() }));
}

// ---- laying out -----------------------------------------------------------------------------------------------------

/** Gives every cell its column. Neighbours whose cells stood in one column stand in one column again. */
function layOut(rows: readonly (Row | Gap)[]): void {
    let run: Row[] = [];
    const end = () => {
        lineUp(run, 0);
        run = [];
    };
    for (const r of rows) {
        if (r === 'blank' || (r !== 'odd' && r.under)) continue;
        if (r === 'odd') {
            end();
        } else if (r.sort === 'through') {
            lineUp([r], 0);
        } else {
            if (r.sort === 'alone' || run[0]?.sort !== r.sort) end();
            run.push(r);
        }
    }
    end();
    for (const r of rows) if (typeof r === 'object' && r.under) r.xs = [r.under.xs.at(-1)!];
}
/** Cell k of rows whose cells before it are lined up already. */
function lineUp(all: readonly Row[], k: number): void {
    const rows = all.filter(r => r.cells.length > k);
    for (let i = 0, j = 0; i < rows.length; i = j) {
        let column: number | undefined = rows[i].cells[k].tight ? undefined : rows[i].cells[k].at;
        for (j++; j < rows.length && (k === 0 || joins(rows[j - 1].cells[k], rows[j].cells[k], column)); j++) {
            if (!rows[j].cells[k].tight) column = rows[j].cells[k].at;
        }
        const together = rows.slice(i, j);
        const x = k === 0 ? rows[i].indent : Math.max(...together.map(r => r.xs[k - 1] + r.cells[k - 1].text.length + r.cells[k].gap));
        for (const r of together) r.xs[k] = x;
        lineUp(together, k + 1);
    }
}
/** Whether a cell belongs to the column of the one above it; `column` is where the column stands, if a cell above tells. */
function joins(above: Cell, cell: Cell, column: number | undefined): boolean {
    if (cell.at === above.at || cell.at === column) return true;
    if (cell.key === undefined || cell.key !== above.key) return false;
    return cell.tight ? column !== undefined && cell.at > column : column === undefined && above.tight === true && above.at > cell.at;
}
/** The line of each row. Comments that stood in one column do so again: never further left, two blanks behind the text. */
function write(rows: readonly (Row | Gap)[]): Map<Row, string> {
    const written = new Map<Row, string>();
    for (const r of rows) if (typeof r === 'object') written.set(r, r.cells.reduce((body, c, k) => body.padEnd(r.xs[k]) + c.text, ''));
    for (let i = 0, j = 0; i < rows.length; i = j) {
        j++;
        const first = rows[i];
        if (typeof first === 'string' || !first.comment) continue;
        const together = [first];
        for (let next = rows[j]; typeof next === 'object' && next.comment?.at === first.comment.at; next = rows[++j]) together.push(next);
        const ends = together.map(r => written.get(r)!.length).filter(n => n > 0);
        // Comments among the lines of a list, with nothing before them, stand under its items.
        const column = ends.length ? Math.max(first.comment.at, ...ends.map(n => n + BEFORE_COMMENT)) : first.under?.xs.at(-1) ?? first.comment.at;
        for (const r of together) written.set(r, written.get(r)!.padEnd(column) + r.comment!.text);
    }
    return written;
}

// ---- edits ----------------------------------------------------------------------------------------------------------

const isBlank = (line: string) => /^[ \t\u00a0]*$/.test(line);

function editsOf(text: string, values: Values): LineEdit[] {
    const bom = text.startsWith('\ufeff') ? '\ufeff' : '';
    const body = text.slice(bom.length);
    const lines = new Lines(body);
    /** The line end of a line as it is written; that of the line before for the last one. */
    const eol = (l: number): string => (l + 1 < lines.count ? body.slice(lines.endOf(l), lines.startOf(l + 1)) : l > 0 ? eol(l - 1) : '\n');
    const tidied = new Tidier(body, lines, values).tidy();
    const made = new Map(tidied.map(t => [t.from, t]));
    const edits: LineEdit[] = [];
    // Blank lines at the end go, up to what is last said.
    let last = lines.count - 1;
    while (last >= 0 && isBlank(lines.lineText(last))) last--;
    const put = (line: number, count: number, texts: readonly string[]) => {
        const lead = line === 0 ? bom : '';
        const before = text.slice(line === 0 ? 0 : bom.length + lines.startOf(line), line + count < lines.count ? bom.length + lines.startOf(line + count) : text.length);
        // A single line keeps the line end that it has.
        const after = lead + texts.map((t, k) => t + eol(Math.min(line + k, line + count - 1))).join('');
        if (after !== before) edits.push({ line, count, text: after });
    };
    let blanks = MOST_BLANK_LINES;
    for (let l = 0; l <= last;) {
        const unit = made.get(l);
        const line = lines.lineText(l);
        if (unit) {
            const count = unit.to - unit.from + 1;
            if (unit.texts.length === count) unit.texts.forEach((t, k) => put(l + k, 1, [t]));
            else put(l, count, unit.texts);
            l += count;
            blanks = 0;
        } else if (isBlank(line)) {
            blanks++;
            put(l, 1, blanks > MOST_BLANK_LINES ? [] : ['']);
            l++;
        } else {
            put(l, 1, [line]);
            l++;
            blanks = 0;
        }
    }
    // The line after the last line break is no line of its own.
    const rest = lines.count - 1 - last;
    if (rest > 0 && last >= 0 && body.slice(lines.startOf(last + 1)) !== '') edits.push({ line: last + 1, count: rest, text: '' });
    if (last < 0 && body !== '') edits.push({ line: 0, count: lines.count, text: bom });
    return edits;
}
function apply(text: string, edits: readonly LineEdit[]): string {
    if (!edits.length) return text;
    const lines = new Lines(text);
    let out = '';
    let at = 0;
    for (const e of edits) {
        out += text.slice(at, lines.startOf(e.line)) + e.text;
        at = e.line + e.count < lines.count ? lines.startOf(e.line + e.count) : text.length;
    }
    return out + text.slice(at);
}
/** Those edits after which the text says what it said. All of them, unless something here is wrong. */
function sound(text: string, edits: readonly LineEdit[], said: string, values: Values): LineEdit[] {
    if (!edits.length || meaning(apply(text, edits), values) === said) return [...edits];
    if (edits.length === 1) return [];
    const half = edits.length >> 1;
    const left = sound(text, edits.slice(0, half), said, values);
    const both = [...left, ...sound(text, edits.slice(half), said, values)];
    return meaning(apply(text, both), values) === said ? both : left;
}

// ---- what a text says -----------------------------------------------------------------------------------------------

/** A text with everything in it that matters, and nothing else: equal for two texts that say the same. */
function meaning(text: string, values: Values): string {
    const frame = new FrameReader().read('meaning', text);
    const out: string[] = [];
    const value = (raw: string, property?: Property) => values.key(raw, property);
    const item = (i: Item, kind: string): void => {
        switch (i.is) {
            case 'property':
                out.push(`  ${i.key}: ${i.value === undefined ? '' : value(i.value, kinds.get(kind)?.properties[i.key])}`);
                break;
            case 'line':
                out.push(`${i.word} ${i.text === undefined ? '' : statement(i.word, i.text, value)}`);
                break;
            case 'block':
                out.push(`${i.kind} ${i.name ?? ''} ${i.base ?? ''} ${i.like} ${i.items ? '{' : ''}`);
                for (const inner of i.items ?? []) item(inner, i.kind);
                if (i.closeAt !== undefined) out.push('}');
                break;
            default:
                out.push(`${i.is} ${i.text.trim()}`);
        }
    };
    for (const piece of frame.pieces) for (const i of piece.items) item(i, '');
    for (const n of frame.notes) out.push(`## ${frame.text.slice(n.start, n.end).trim()}`);
    return out.join('\n');
}
function statement(word: string, text: string, value: (raw: string) => string): string {
    const plain = text.split('\n').map(l => (commentAt(l, 0) < 0 ? l : l.slice(0, commentAt(l, 0)))).join(' ');
    if (word === 'path' || (word === 'expect' && /^(during|if|always|never|within|before|at|from|after)\b/.test(text))) {
        return unquoted(plain, s => s.replace(/[ \t\u00a0\r]+/g, ' ').replace(/ ?(->|,|:) ?/g, '$1')).trim();
    }
    const head = word === 'let' ? /^[^=]*=/.exec(text)?.[0] : word === 'expect' ? /^with [^:]*:/.exec(text)?.[0] : undefined;
    return head ? `${head.replace(/\s+/g, '')} ${value(text.slice(head.length))}` : value(text);
}
const positions = new Set(['start', 'end', 'unitStart', 'text']);
/** A value without its places and blanks. */
function valueKey(value: ParsedValue, property?: Property): string {
    const tree = JSON.stringify(value.list, (key, v: unknown) => (positions.has(key) ? undefined : key === 'unit' ? (v as { factor: number; offset: number; name: string; mark?: string }) && [(v as { factor: number }).factor, (v as { offset: number }).offset, (v as { name: string }).name, (v as { mark?: string }).mark] : key === 'dimension' ? (v as { key: string }).key : v));
    if (!property) return tree;
    const m = match(value, property);
    return `${tree} ${factsKey(m.facts)} ${m.rows.map(factsKey).join(' ')} ${m.problems.map(p => p.code).join(' ')}`;
}
function factsKey(facts: Facts): string {
    return [...facts].map(([slot, f]) => `${slot}=${f.number} ${f.low} ${f.high} ${f.word?.replace(/\s+/g, ' ') ?? ''} ${f.text?.replace(/\s+/g, ' ') ?? ''} ${f.sizes?.join(' ') ?? ''} ${f.names?.join('.') ?? ''}`).join(';');
}

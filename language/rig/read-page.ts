/**
 * Frame -> page: what one file says, by itself. Total: any text gives a page; a line that cannot be read costs that line.
 * Knows the vocabulary; does not know the other files.
 */
import type { BlockItem, Frame, Item, LineItem, PropertyItem } from '../grammar/frame.js';
import { lineWords } from '../grammar/scanner.js';
import { match, type MatchProblem } from '../values/match.js';
import { measures, type MeasureName } from '../units/dimension.js';
import { halfTyped, nearest, offering } from '../values/nearest.js';
import { parseValue, walk, type Node, type ParsedValue } from '../values/parse-value.js';
import { media, type Kind, type Property } from '../vocabulary/define.js';
import { kindCalled, kinds } from '../vocabulary/index.js';
import { again, keep } from './kept-items.js';
import { levels, stages, type Allowance, type Entry, type Expectation, type Fix, type Level, type Named, type Occurrence, type Page, type Part, type Path, type Problem, type Span, type Stage, type Stop, type Use } from './rig.js';

/** Parsed values by their text, kept from one reading to the next as long as the text stands somewhere. */
export class ValueStore {
    private before = new Map<string, ParsedValue>();
    private now = new Map<string, ParsedValue>();
    parse(text: string): ParsedValue {
        let v = this.now.get(text);
        if (v) return v;
        v = this.before.get(text) ?? parseValue(text);
        this.now.set(text, v);
        return v;
    }
    /** Call after a round of readings: what was not asked for in it and in the one before is dropped. */
    turn(): void {
        if (this.now.size < 4000) return;
        this.before = this.now;
        this.now = new Map();
    }
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };
interface Building extends Omit<Mutable<Part>, 'entries'> { entries: Map<string, Entry>; told: boolean; closeAt?: number }

const partName = /^[\p{L}_][\p{L}\p{N}_-]*$/u;

/** Reads one file. */
export function readPage(file: string, frame: Frame, values: ValueStore): Page {
    return new PageReader(file, frame, values).read();
}

class PageReader {
    private readonly parts: Building[] = [];
    private readonly lets: Named[] = [];
    private readonly paths: Path[] = [];
    private readonly expects: Expectation[] = [];
    private readonly allows: Allowance[] = [];
    private readonly uses: Use[] = [];
    private readonly problems: Problem[] = [];
    private readonly occurrences: Occurrence[] = [];
    private sort: Page['sort'] = 'page';
    private title: Page['title'];
    private stage: Page['stage'];
    private at = 0;

    constructor(private readonly file: string, private readonly frame: Frame, private readonly values: ValueStore) {}

    read(): Page {
        const flat: { item: Item; at: number }[] = [];
        for (const p of this.frame.pieces) for (const item of p.items) flat.push({ item, at: p.at });
        /** A header whose { is missing, or a part that a stray } closed too early: takes the properties that follow. */
        let waiting: Building | undefined;
        let orphans: { first: Span; keys: string[]; last: Span } | undefined;
        const tellOrphans = () => {
            if (!orphans) return;
            const { first, last, keys } = orphans;
            this.problem('belongs-to-nothing', { ...first, end: keys.length > 1 ? first.end : last.end },
                keys.length > 1 ? `${keys.slice(0, 3).join(', ')}${keys.length > 3 ? ' …' : ''} belong to no part: the line with its kind and { is missing above.` : `${keys[0]} belongs to no part: the line with its kind and { is missing above.`);
            orphans = undefined;
        };
        flat.forEach(({ item, at }, i) => {
            this.at = at;
            if (item.is === 'property') {
                if (waiting?.closeAt !== undefined && !strayFollows(flat, i)) waiting = undefined;
                if (!waiting) {
                    const span = this.span(item.start, item.start + item.key.length);
                    if (orphans) {
                        orphans.keys.push(item.key);
                        orphans.last = span;
                    } else {
                        orphans = { first: span, keys: [item.key], last: span };
                    }
                    return;
                }
                if (!waiting.told) {
                    waiting.told = true;
                    if (waiting.closeAt === undefined) {
                        const end = waiting.span.end;
                        this.problem('brace-missing', waiting.nameSpan, `{ is missing after ${waiting.name}.`, [{ title: 'Open the block with {', edits: [{ span: { ...waiting.span, start: end }, text: ' {' }] }]);
                    } else {
                        this.problem('brace-missing', { file: this.file, start: waiting.closeAt, end: waiting.closeAt + 1 }, `This } closes ${waiting.name} too early.`);
                    }
                }
                this.entry(item, waiting);
                return;
            }
            tellOrphans();
            switch (item.is) {
                case 'line':
                    waiting = undefined;
                    if (!this.again(item)) this.keeping(item, item.word !== 'rig' && item.word !== 'library', () => this.line(item));
                    break;
                case 'stray':
                    if (!waiting?.told) this.problem('brace-missing', this.span(item.start, item.end), 'This } closes nothing.', [{ title: 'Take it away', edits: [{ span: this.span(item.start, item.end), text: '' }] }]);
                    waiting = undefined;
                    break;
                case 'junk':
                    this.junk(item.text, this.span(item.start, item.end));
                    break;
                case 'block': {
                    // What stands around its brace is no part of the piece: it is looked at each time.
                    const whole = item.closeAt !== undefined && !this.closedOddly(item);
                    if (whole && this.again(item)) {
                        waiting = undefined;
                        break;
                    }
                    const part = this.keeping(item, whole, () => this.block(item));
                    if (!item.items) waiting = part;
                    else if (part && item.closeAt !== undefined && !whole) {
                        waiting = part;
                        part.closeAt = at + item.closeAt;
                    } else waiting = undefined;
                    break;
                }
            }
        });
        tellOrphans();
        return {
            file: this.file, text: this.frame.text, sort: this.sort, title: this.title, stage: this.stage, parts: this.parts, lets: this.lets,
            paths: this.paths, expects: this.expects, allows: this.allows, uses: this.uses, problems: this.problems, occurrences: this.occurrences,
        };
    }

    // ---- what did not change --------------------------------------------------------------------------------------

    /** Takes over what an item added before; false if it must be read. */
    private again(item: BlockItem | LineItem): boolean {
        const added = again(item, this.file, this.at, () => this.noteAbove(this.at + item.start));
        if (!added) return false;
        this.parts.push(...added.parts as Building[]);
        this.lets.push(...added.lets);
        this.paths.push(...added.paths);
        this.expects.push(...added.expects);
        this.allows.push(...added.allows);
        this.uses.push(...added.uses);
        for (const o of added.occurrences) this.occurrences.push(o);
        return true;
    }
    /** Reads an item and keeps what it added, if it may be kept and nothing was wrong with it. */
    private keeping<T>(item: BlockItem | LineItem, may: boolean, read: () => T): T {
        const from = [this.parts, this.lets, this.paths, this.expects, this.allows, this.uses, this.occurrences, this.problems].map(list => list.length);
        const result = read();
        if (may && this.problems.length === from[7]) {
            keep(item, this.file, this.at, this.noteAbove(this.at + item.start), {
                parts: this.parts.slice(from[0]), lets: this.lets.slice(from[1]), paths: this.paths.slice(from[2]), expects: this.expects.slice(from[3]),
                allows: this.allows.slice(from[4]), uses: this.uses.slice(from[5]), occurrences: this.occurrences.slice(from[6]),
            });
        }
        return result;
    }

    // ---- small tools --------------------------------------------------------------------------------------------

    private span(start: number, end: number): Span {
        return { file: this.file, start: this.at + start, end: this.at + Math.max(end, start) };
    }
    private problem(code: string, span: Span, message: string, fixes?: Fix[]): void {
        this.problems.push({ code, span: span.end > span.start ? span : { ...span, end: span.start + 1 }, message, fixes });
    }
    private replaceFix(span: Span, title: string, text: string, keepsMeaning = false): Fix {
        return { title, edits: [{ span, text }], preferred: true, keepsMeaning };
    }
    /** The `##` note that stands on the lines right above an offset, or at the end of its line. */
    private noteAbove(start: number): string | undefined {
        const { notes, text } = this.frame;
        if (!notes.length) return undefined;
        const lines: string[] = [];
        let lineStart = text.lastIndexOf('\n', start - 1) + 1;
        for (let k = notes.length - 1; k >= 0; k--) {
            if (notes[k].end >= lineStart) continue;
            if (text.slice(notes[k].end, lineStart).trim() || text.slice(notes[k].end, lineStart).split('\n').length > 2) break;
            lines.unshift(text.slice(notes[k].start, notes[k].end).trim());
            lineStart = text.lastIndexOf('\n', notes[k].start) + 1;
        }
        return lines.length ? lines.join(' ') : undefined;
    }
    private value(text: string, at: number): { value: ParsedValue; broken: boolean } {
        const value = this.values.parse(text);
        this.inValue(value.problems, at);
        return { value, broken: value.problems.length > 0 };
    }
    /** Problems inside a value, told at their places in the page. */
    private inValue(problems: readonly MatchProblem[], at: number): void {
        for (const p of problems) {
            const span = this.span(at + p.start, at + p.end);
            const fixes = p.fix && [this.replaceFix(p.fix.start === undefined ? span : this.span(at + p.fix.start, at + p.fix.end!), p.fix.title, p.fix.text, p.code === 'decimal-comma')];
            this.problem(p.code, span, p.message, fixes);
        }
    }
    private namesIn(value: ParsedValue, at: number): void {
        if (!value.names) return;
        for (const sequence of value.list) {
            for (const node of sequence) {
                walk(node, n => {
                    if (n.is === 'name') this.occurrences.push({ names: n.names, start: this.at + at + n.start, end: this.at + at + n.end, role: 'reference' });
                });
            }
        }
    }
    /** In a block of several lines, a } with something else on its line may be a slip. */
    private closedOddly(item: BlockItem): boolean {
        const { text } = this.frame;
        const close = this.at + item.closeAt!;
        const from = text.lastIndexOf('\n', close) + 1;
        const end = text.indexOf('\n', close);
        if (from <= this.at + item.start) return false;
        return /[^\s}]/.test((text.slice(from, close) + text.slice(close + 1, end < 0 ? undefined : end)).replace(/#.*/, ''));
    }
    private junk(text: string, span: Span): void {
        const word = /^[\p{L}_][\p{L}\p{N}_.-]*/u.exec(text)?.[0];
        const semicolon = /;\s*$/.test(text);
        const decimal = /^\d/.test(text);
        const near = word && nearest(word, [...lineWords, ...kinds.keys()]);
        this.problem('unfinished-line', span, semicolon ? '; means nothing here: a line ends by itself.'
            : decimal ? 'A value stands after a name and a colon.'
                : near && near !== word ? `This line is not understood; does it begin with ${near}?` : 'This line is not understood: a property is written name: value.');
    }

    // ---- parts --------------------------------------------------------------------------------------------------

    private block(item: BlockItem): Building | undefined {
        const kind = kinds.get(item.kind);
        const kindSpan = this.span(item.start, item.start + item.kind.length);
        const name = item.name?.replace(/^"|"$/g, '');
        if (!kind) {
            const called = kindCalled(item.kind)?.name;
            const near = called ?? nearest(item.kind, item.items || item.name ? kinds.keys() : [...kinds.keys(), ...lineWords]);
            const asLine = !item.items && lineWords.includes(item.kind as never);
            const begun = near || item.items || item.name ? undefined : halfTyped(item.kind, [...kinds.keys(), ...lineWords]);
            this.problem(asLine || begun ? 'unfinished-line' : 'unknown-word', kindSpan, called ? `${item.kind} is called ${called} here.` : near ? `${item.kind} is not a kind of part; did you mean ${near}?`
                : begun ?? `${item.kind} is not a kind of part.`,
                near ? [this.replaceFix(kindSpan, `Write ${near}`, near)] : undefined);
            // Misspelt it is still a part: its name stands for something.
            if (!item.items && !(near && item.name)) return undefined;
        } else if (!item.items && !item.name) {
            // A bare kind word is an unfinished line, never a part: half-typed, it would take the name of the finished one.
            this.problem('unfinished-line', kindSpan, item.like ? `Something must follow like.` : `${item.kind} is not finished: a name or { must follow.`);
            return undefined;
        }
        if (item.like && !item.base) this.problem('unfinished-line', this.span(item.nameAt, item.end), 'After like comes the name of a part of the same kind.');
        const nameSpan = item.name !== undefined ? this.span(item.nameAt, item.nameAt + item.name.length) : kindSpan;
        if (item.name !== undefined && !partName.test(item.name)) {
            this.problem('value-not-understood', nameSpan, 'A name has letters, digits and hyphens only, without quotes.', [this.replaceFix(nameSpan, 'Write it as a name', name!.trim().replace(/[^\p{L}\p{N}_-]+/gu, '-') || 'part')]);
        }
        const part: Building = {
            name: name ?? item.kind, kind, kindWord: item.kind, file: this.file, nameSpan, kindSpan, span: this.span(item.start, item.end),
            inside: item.items ? this.span(item.openAt + 1, item.closeAt ?? item.end) : undefined, named: item.name !== undefined,
            base: item.base ? { name: item.base, span: this.span(item.baseAt, item.baseAt + item.base.length) } : undefined,
            entries: new Map(), note: this.noteAbove(this.at + item.start), told: false,
        };
        this.parts.push(part);
        this.occurrences.push({ names: [part.name], start: nameSpan.start, end: nameSpan.end, role: 'definition' });
        if (part.base) this.occurrences.push({ names: [part.base.name], start: part.base.span.start, end: part.base.span.end, role: 'reference' });
        if (item.items) this.inside(item, part);
        return part;
    }
    private inside(item: BlockItem, part: Building): void {
        const own: Item[] = [];
        for (const inner of item.items!) {
            switch (inner.is) {
                case 'property':
                    own.push(inner);
                    this.entry(inner, part);
                    break;
                case 'block': {
                    const known = kinds.get(inner.kind);
                    if (known && inner.name && !inner.items && item.closeAt === undefined) {
                        this.unclosed(part, own, item);
                        this.block(inner);
                        break;
                    }
                    const span = this.span(inner.start, inner.end);
                    const near = part.kind && nearest(inner.kind, Object.keys(part.kind.properties));
                    const exact = part.kind?.properties[inner.kind];
                    this.problem('unfinished-line', span, exact ? `${inner.kind} has no value yet: a colon and its value must follow.`
                        : inner.kind === 'like' ? likeBefore(part)
                        : near ? `This line is not understood; did you mean ${near}: …?`
                        : (!inner.name && part.kind && halfTyped(inner.kind, Object.keys(part.kind.properties))) || 'This line is not understood: a property is written name: value.',
                        near || exact ? [this.replaceFix(this.span(inner.start, inner.start + inner.kind.length), `Write ${near ?? inner.kind}:`, `${near ?? inner.kind}:`)] : undefined);
                    break;
                }
                case 'line':
                    this.unclosed(part, own, item);
                    this.line(inner);
                    break;
                default:
                    this.junk(inner.text, this.span(inner.start, inner.end));
            }
        }
        if (item.closeAt === undefined) this.unclosed(part, own, item);
    }
    private unclosed(part: Building, own: readonly Item[], item: BlockItem): void {
        if (part.told) return;
        part.told = true;
        const last = own.at(-1);
        const end = last ? last.end : item.openAt + 1;
        this.problem('brace-missing', this.span(end - 1, end), `} is missing: ${part.name} ends here.`, [{ title: 'Close the block', edits: [{ span: this.span(end, end), text: this.frame.text.slice(this.at + item.start, this.at + end).includes('\n') ? '\n}' : ' }' }] }]);
    }
    private entry(item: PropertyItem, part: Building): void {
        const keySpan = this.span(item.start, item.start + item.key.length);
        const dotted = item.key.includes('.');
        const property = part.kind?.properties[item.key];
        const before = part.entries.get(item.key);
        if (before) {
            this.problems.push({ code: 'given-twice', span: keySpan, message: `${item.key} is given twice; the first one holds.`, related: [{ span: before.keySpan, message: 'first given here' }] });
        }
        if (part.kind && !property && !(dotted && part.kind.statement) && !(part.kind.statement === 'supposed' && !dotted)) {
            const near = nearest(item.key, Object.keys(part.kind.properties));
            const offers = near ? [] : propertiesLike(part.kind, item.key, item.value);
            this.problem('unknown-word', keySpan, dotted && !part.kind.statement ? `${item.key}: a key with a point stands in readings, claims, changes and variants only.`
                : item.key === 'like' ? likeBefore(part) : offering(`${part.kind.name} has no ${item.key}`, near, offers.length ? `; it has ${list(offers)}.` : kinds.has(item.key) ? `: a ${item.key} is a part of its own, in a block of its own.` : '.'), near ? [this.replaceFix(keySpan, `Write ${near}`, near)] : undefined);
        }
        if (dotted) this.occurrences.push({ names: item.key.split('.'), start: keySpan.start, end: keySpan.end, role: 'reference' });
        if (item.value === undefined) {
            this.problem('unfinished-line', { ...keySpan, end: keySpan.end + 1 }, `${item.key} has no value yet.`);
            const end = this.span(item.end, item.end);
            if (!before) part.entries.set(item.key, { key: item.key, keySpan, span: end, value: undefined, property, broken: true, note: this.noteAbove(keySpan.start) });
            return;
        }
        const span = this.span(item.valueAt, item.valueAt + item.value.length);
        const { value, broken } = this.value(item.value, item.valueAt);
        const entry: Entry = { key: item.key, keySpan, span, value, property, broken, note: this.noteAbove(keySpan.start) };
        if (property && !broken && !(dotted && part.kind?.statement)) {
            const matched = matchCached(value, property);
            if (matched.problems.length) {
                entry.broken = true;
                this.inValue(matched.problems, item.valueAt);
            }
        }
        if (!property || refersToNames(property)) this.namesIn(value, item.valueAt);
        if (!before) part.entries.set(item.key, entry);
    }

    // ---- statements ---------------------------------------------------------------------------------------------

    private line(item: LineItem): void {
        const whole = this.span(item.start, item.end);
        const word = this.span(item.start, item.start + item.word.length);
        if (item.text === undefined) {
            const how: Record<string, string> = {
                rig: 'rig "Title", drawn', library: 'library "Title"', use: 'use "file.rig"', let: 'let name = value',
                path: 'path hydrogen: stack -> h2-column', expect: 'expect stack.voltage < 30 V', allow: 'allow rule-name on part until 2027-01-31 by name because "reason"', weigh: 'weigh rule-name as warning because "reason"',
            };
            this.problem('unfinished-line', word, `${item.word} is not finished: it is written ${how[item.word]}.`);
            return;
        }
        const textSpan = this.span(item.textAt, item.textAt + item.text.length);
        switch (item.word) {
            case 'rig':
            case 'library':
                return this.titleLine(item, textSpan, whole);
            case 'use': {
                const quoted = /^"([^"\n]*)"$/.exec(item.text);
                const target = quoted ? quoted[1] : item.text;
                if (!quoted && !partName.test(item.text)) {
                    this.problem('value-not-understood', textSpan, 'A file stands in quotes, as use "parts.rig"; a library shipped with the tool without, as use parts.', [this.replaceFix(textSpan, 'Put it in quotes', `"${item.text.replaceAll('"', '')}"`, true)]);
                    return;
                }
                this.uses.push({ span: whole, target, targetSpan: quoted ? { ...textSpan, start: textSpan.start + 1, end: textSpan.end - 1 } : textSpan, shipped: !quoted });
                return;
            }
            case 'let':
                return this.letLine(item, textSpan, whole);
            case 'path':
                return this.pathLine(item, textSpan, whole);
            case 'expect':
                return this.expectLine(item, textSpan);
            case 'allow':
            case 'weigh':
                return this.allowLine(item, textSpan, whole);
        }
    }
    private titleLine(item: LineItem, textSpan: Span, whole: Span): void {
        if (this.sort !== 'page') this.problem('given-twice', whole, `This file has a title already; a second ${item.word} line counts for nothing.`);
        else this.sort = item.word as 'rig' | 'library';
        const { value } = this.value(item.text!, item.textAt);
        const [title, stage] = value.list.map(s => s[0]);
        if (title?.is !== 'text') {
            const end = stage ? textSpan.start + (value.list[0].at(-1)?.end ?? 0) : textSpan.end;
            const span = { ...textSpan, end };
            this.problem('value-not-understood', span, 'A title stands between quotes.', [this.replaceFix(span, 'Put it in quotes', `"${this.frame.text.slice(span.start, span.end).replaceAll('"', '')}"`, true)]);
        } else {
            this.title ??= { text: title.value, span: this.span(item.textAt + title.start, item.textAt + title.end) };
        }
        if (item.word === 'library') return;
        const at = stage && this.span(item.textAt + stage.start, item.textAt + value.list[1].at(-1)!.end);
        if (stage?.is === 'name' && stages.includes(stage.names[0] as Stage)) {
            this.stage ??= { word: stage.names[0] as Stage, span: at! };
        } else if (stage) {
            const near = stage.is === 'name' ? nearest(stage.names[0], stages) : undefined;
            this.problem('unknown-word', at!, near ? `The stage is not known; did you mean ${near}?` : `How far is it? One of ${stages.join(', ')}.`, near ? [this.replaceFix(at!, `Write ${near}`, near)] : undefined);
        }
    }
    private letLine(item: LineItem, textSpan: Span, whole: Span): void {
        const head = /^([\p{L}_][\p{L}\p{N}_-]*)\s*=[ \t]*/u.exec(item.text!);
        if (!head) {
            this.problem('unfinished-line', textSpan, 'A named value is written let name = value.');
            return;
        }
        const name = head[1];
        const nameSpan = this.span(item.textAt, item.textAt + name.length);
        this.occurrences.push({ names: [name], start: nameSpan.start, end: nameSpan.end, role: 'definition' });
        const rest = item.text!.slice(head[0].length).trimStart();
        if (!rest) {
            this.problem('unfinished-line', nameSpan, `${name} has no value yet.`);
            this.lets.push({ name, nameSpan, span: whole, value: undefined });
            return;
        }
        const at = item.textAt + item.text!.length - rest.length;
        const { value, broken } = this.value(rest, at);
        this.namesIn(value, at);
        this.lets.push({ name, nameSpan, span: this.span(at, item.textAt + item.text!.length), value: broken ? undefined : value, note: this.noteAbove(whole.start) });
    }
    private pathLine(item: LineItem, textSpan: Span, whole: Span): void {
        const head = /^([^\s:]+)\s*:[ \t]*/.exec(item.text!);
        if (!head) {
            this.problem('unfinished-line', textSpan, 'A path is written path medium: from -> to.');
            return;
        }
        const medium = head[1];
        const mediumSpan = this.span(item.textAt, item.textAt + medium.length);
        let broken = false;
        if (!media.includes(medium as never)) {
            const near = nearest(medium, media);
            this.problem('unknown-word', mediumSpan, offering(`A path carries ${media.slice(0, -1).join(', ')} or ${media.at(-1)}`, near), near ? [this.replaceFix(mediumSpan, `Write ${near}`, near)] : undefined);
            broken = true;
        }
        const stops: Stop[] = [];
        const rest = item.text!.slice(head[0].length);
        let p = item.textAt + head[0].length;
        const pieces = rest.split('->');
        for (const piece of pieces) {
            const written = piece.replace(/#.*$/gm, m => ' '.repeat(m.length));
            const name = written.trim();
            const from = p + written.length - written.trimStart().length;
            const m = /^([\p{L}_][\p{L}\p{N}_-]*)(?:\.([\p{L}_][\p{L}\p{N}_-]*))?$/u.exec(name);
            if (m) {
                const span = this.span(from, from + name.length);
                stops.push({ name: m[1], port: m[2], span });
                this.occurrences.push({ names: [m[1]], start: span.start, end: span.start + m[1].length, role: 'reference' });
            } else {
                const at = name ? from : Math.min(p, item.end - 1);
                this.problem('unfinished-line', name ? this.span(at, at + name.length) : this.span(Math.max(item.textAt, at - 2), Math.max(at, item.textAt + 1)), name ? `${name.includes(' ') ? 'Between two parts of a path stands ->' : 'The name of a part must stand here'}.` : 'The name of a part must follow ->.');
                broken = true;
            }
            p += piece.length + 2;
        }
        if (stops.length === 1 && !broken) {
            this.problem('unfinished-line', stops[0].span, 'A path leads from one part to another: -> and a name must follow.');
            broken = true;
        }
        this.paths.push({ medium, mediumSpan, stops, span: whole, file: this.file, broken });
    }
    private expectLine(item: LineItem, textSpan: Span): void {
        const text = item.text!;
        const head = /^(with|during|if)\s+([^:]*?)\s*:[ \t]*/.exec(text);
        let at = item.textAt;
        let rest = text;
        let when: Expectation['when'];
        if (head) {
            const nameAt = item.textAt + head[0].indexOf(head[2], head[1].length);
            when = { word: head[1] as 'with', text: head[2], span: this.span(nameAt, nameAt + head[2].length) };
            const first = /^[\p{L}_][\p{L}\p{N}_-]*/u.exec(head[2])?.[0];
            if (first) this.occurrences.push({ names: [first], start: when.span.start, end: when.span.start + first.length, role: 'reference' });
            at += head[0].length;
            rest = text.slice(head[0].length);
        }
        const overTime = when?.word === 'during' || when?.word === 'if' || /^(always|never|within|before|at|from|after)\b/.test(rest);
        const valueSpan = this.span(at, item.textAt + text.length);
        if (!rest) {
            this.problem('unfinished-line', textSpan, 'Something must follow the colon.');
            this.expects.push({ span: textSpan, text, when, valueSpan, overTime, broken: true });
            return;
        }
        if (overTime) {
            for (const m of rest.matchAll(/[\p{L}_][\p{L}\p{N}_-]*(?:\.[\p{L}_][\p{L}\p{N}_-]*)?/gu)) this.occurrences.push({ names: m[0].split('.'), start: this.at + at + m.index, end: this.at + at + m.index + m[0].length, role: 'reference' });
            this.expects.push({ span: textSpan, text, when, valueSpan, overTime, broken: false });
            return;
        }
        const parsed = this.value(rest, at);
        let { broken } = parsed;
        const e = parsed.value.list[0]?.[0];
        if (!broken && (parsed.value.list.length > 1 || parsed.value.list[0].length > 1 || !isComparison(e))) {
            this.problem('value-not-understood', valueSpan, 'An expectation compares two values, with <, > or between … and ….');
            broken = true;
        }
        this.namesIn(parsed.value, at);
        this.expects.push({ span: textSpan, text, when, value: parsed.value, valueSpan, overTime, broken });
    }
    private allowLine(item: LineItem, textSpan: Span, whole: Span): void {
        const { value, broken } = this.value(item.text!, item.textAt);
        const nodes = value.list[0] ?? [];
        const first = nodes[0];
        const weighs = item.word === 'weigh';
        if (broken) return;
        if (first?.is !== 'name' || value.list.length > 1) {
            this.problem('unfinished-line', textSpan, weighs ? 'A rule is weighed by weigh rule-name as warning because "reason".' : 'A permission is written allow rule-name on part until 2027-01-31 by name because "reason".');
            return;
        }
        const a: Mutable<Allowance> = { rule: first.names.join('.'), ruleSpan: this.span(item.textAt + first.start, item.textAt + first.end), span: whole };
        for (let k = 1; k < nodes.length; k += 2) {
            const word = nodes[k];
            const next = nodes[k + 1] as Node | undefined;
            const w = word.is === 'word' || word.is === 'name' ? (word.is === 'word' ? word.name : word.names[0]) : '';
            const nextSpan = next && this.span(item.textAt + next.start, item.textAt + next.end);
            if (w === 'on' && next?.is === 'name') {
                a.on = { name: next.names[0], span: nextSpan! };
                this.occurrences.push({ names: next.names, start: nextSpan!.start, end: nextSpan!.end, role: 'reference' });
            } else if (weighs && w === 'as' && next?.is === 'name' && isLevel(next.names[0])) a.level = next.names[0];
            else if (w === 'until' && next?.is === 'date') a.until = next.value;
            else if (w === 'by' && (next?.is === 'name' || next?.is === 'text')) a.by = next.is === 'text' ? next.value : next.names.join('.');
            else if (w === 'because' && next?.is === 'text') a.because = next.value;
            else {
                this.problem('value-not-understood', this.span(item.textAt + word.start, item.textAt + (next ?? word).end), weighs ? `After the rule come as ${levels.join(', ')}, on part, and because "reason".` : 'After the rule come on part, until date, by name and because "reason".');
                break;
            }
        }
        if (weighs && !a.level) {
            if (nodes.length === 1) this.problem('unfinished-line', textSpan, `What shall it weigh? weigh ${a.rule} as ${levels.join(', ')}.`);
            return;
        }
        this.allows.push(a);
    }
}

const isLevel = (word: string): word is Level => (levels as readonly string[]).includes(word);

/** What a kind has in the place of a property that it does not have: those that take such a value. `like` stands before the brace. */
function propertiesLike(kind: Kind, key: string, value: string | undefined): string[] {
    if (key === 'like' || value === undefined) return [];
    const node = parseValue(value).list[0]?.[0];
    if (node?.is !== 'quantity') return [];
    const takes = (p: Property) => p.items.some(item => item.some(atom => typeof atom !== 'string' && typeof atom.type === 'string' && atom.type in measures && measures[atom.type as MeasureName].dimension === node.unit.dimension));
    return Object.values(kind.properties).filter(takes).map(p => p.name).slice(0, 6);
}
const likeBefore = (part: { readonly kindWord: string; readonly name: string }) => `like stands before the brace: ${part.kindWord} ${part.name} like another { }.`;
const list = (words: readonly string[]) => (words.length > 1 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : words[0]);
function isComparison(e: Node | undefined): boolean {
    return e?.is === 'operation' && ['<', '<=', '>', '>=', '=', 'between'].includes(e.op);
}
function strayFollows(flat: readonly { item: Item }[], i: number): boolean {
    while (flat[i]?.item.is === 'property' || flat[i]?.item.is === 'junk') i++;
    return flat[i]?.item.is === 'stray';
}
/** A property whose words may be names of parts or of named values. */
function refersToNames(property: Property): boolean {
    return property.items.some(item => item.some(atom => typeof atom !== 'string' && (typeof atom.type === 'object' ? 'part' in atom.type || 'size' in atom.type : !['yes-no', 'text', 'date', 'clock', 'thread'].includes(atom.type))));
}

/** Matches without a rig depend on the value's text and the property alone. */
const matches = new WeakMap<ParsedValue, Map<Property, ReturnType<typeof match>>>();
export function matchCached(value: ParsedValue, property: Property): ReturnType<typeof match> {
    let byProperty = matches.get(value);
    if (!byProperty) matches.set(value, (byProperty = new Map()));
    let m = byProperty.get(property);
    if (!m) byProperty.set(property, (m = match(value, property)));
    return m;
}
export type { Kind };

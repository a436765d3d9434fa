/**
 * Reads one value: `140 x 180 x 1 mm`, `12.0 V ± 2 %`, `23.4 V at 45 A`, `(a - b) / 2`, `nickel, 1 mm`.
 * Total: gives a tree and problems, both with offsets inside the text, so that equal texts share one result.
 *
 * Loosest first:  < <= > >= = between   ..   at   ± +/-   x   + -   * /   unary -   ^ (to the right)
 * Words that follow each other without an operator are a sequence; commas make a list of sequences.
 */
import { commonUnits, unitBefore, unitOf, type Unit } from '../units/unit.js';
import { nearest, offering } from './nearest.js';

interface Place { start: number; end: number }
export type Node = Place & (
    | { is: 'number'; value: number; decimals: number }
    | { is: 'quantity'; value: number; unit: Unit; unitStart: number; decimals: number }
    | { is: 'text'; value: string; closed: boolean }
    | { is: 'date'; value: string; time?: string }
    | { is: 'clock'; value: string }
    | { is: 'name'; names: string[] }
    /** A word that joins: at, of, per, each, side, above ... */
    | { is: 'word'; name: string }
    | { is: 'operation'; op: Operator; a: Node; b: Node; c?: Node }
    | { is: 'negative'; a: Node }
    | { is: 'call'; name: string; args: Node[] }
    /** The unit after `"heading" in`. */
    | { is: 'unit'; unit: Unit }
    | { is: 'nothing' }
    | { is: 'unknown' }
);
export type NodeOf<K extends Node['is']> = Extract<Node, { is: K }>;
export type Operator = '<' | '<=' | '>' | '>=' | '=' | 'between' | '..' | 'at' | '±' | 'x' | '+' | '-' | '*' | '/' | '^';

/** What is wrong inside a value. `code` is the name of the finding. */
export interface ValueProblem extends Place {
    code: 'unfinished-line' | 'unknown-word' | 'decimal-comma' | 'value-not-understood' | 'date-not-understood';
    message: string;
    fix?: { title: string; text: string; start?: number; end?: number };
}
export interface ParsedValue {
    text: string;
    list: Node[][];
    problems: ValueProblem[];
    /** Whether names of parts or named values occur: then the value must be worked out in its rig. */
    names: boolean;
}

const LETTERS = 'A-Za-z_\\u00AA-\\u02FF\\u0370-\\u1FFF';
const NAME = new RegExp(`[${LETTERS}][\\w${LETTERS}]*(?:-[\\w${LETTERS}]+)*`, 'y');
const NUMBER = /\d+(?:\.\d+)?(?:[eE][+-]?\d+(?![\w.]))?/y;
const DATE = /\d{4}-\d{1,2}-\d{1,2}(?![\w-])(?:[ \t]+(\d{1,2}:\d{2})(?!\d))?/y;
const MONTH = /(?:19|20)\d{2}-\d{2}(?![\w-])/y;
const CLOCK = /\d{1,2}:\d{2}(?![\d:])/y;
const FRACTION = /(?:(\d+) )?(\d+)\/(\d+)(?![\w.])/y;
const COMMA_DECIMAL = /\d+,\d+(?![\d,])/y;
const WORD = '[A-Za-zµμ°%‰€£Ω℃][\\wµμ°%‰€Ω²³]*(?:\\^-?\\d+)?';
/** A unit as written: no blanks around / and ·, so that `5 m / v` stays a division and `5 m/s` is one unit. */
const UNIT = new RegExp(`[ \\t]*(${WORD}(?:\\((?:g|a)\\))?(?:[·*⋅]${WORD}|/(?:\\([^()\\n]*\\)|${WORD}))*)`, 'y');
const MARK = /[ \t]+(?:abs|absolute|gauge)(?![\w-])/y;
const level: Record<Operator, number> = {
    '<': 1, '<=': 1, '>': 1, '>=': 1, '=': 1, between: 1, '..': 2, at: 3, '±': 4, x: 5, '+': 6, '-': 6, '*': 7, '/': 7, '^': 9,
};
const UNARY = 8;
/** Operations inside each other, or in a row. */
const DEEPEST = 200;
const symbols: readonly [string, Operator][] = [
    ['+/-', '±'], ['..', '..'], ['<=', '<='], ['>=', '>='], ['≤', '<='], ['≥', '>='], ['<', '<'], ['>', '>'], ['=', '='],
    ['±', '±'], ['+', '+'], ['-', '-'], ['−', '-'], ['*', '*'], ['·', '*'], ['×', 'x'], ['/', '/'], ['^', '^'],
];
/** Words that may follow a number without being a unit. */
export const joiningWords: ReadonlySet<string> = new Set([
    'x', 'at', 'of', 'and', 'or', 'to', 'per', 'each', 'side', 'above', 'below', 'between', 'after', 'for', 'from', 'in', 'long',
    'bore', 'up', 'way', 'not', 'by', 'until', 'because', 'on', 'through', 'every', 'then',
]);
/** What is counted by its name: no unit, and nothing that joins. */
const counted: ReadonlySet<string> = new Set(['cells']);
/** Joining words that may stand last. */
const complete = new Set(['each', 'side', 'long', 'bore', 'up', 'way', 'in']);

/** Parses a value. Never throws; the result depends on the text alone. */
export function parseValue(text: string): ParsedValue {
    const problems: ValueProblem[] = [];
    const n = text.length;
    let i = 0;
    let depth = 0;
    let names = false;

    const problem = (code: ValueProblem['code'], start: number, end: number, message: string, fix?: ValueProblem['fix']) => {
        problems.push({ code, start, end: Math.max(end, start + 1), message, fix });
    };
    const skip = () => {
        while (i < n && (text.charCodeAt(i) <= 32 || text.charCodeAt(i) === 160)) i++;
        if (text[i] === '#') {
            while (i < n && text[i] !== '\n') i++;
            if (i < n) skip();
        }
    };
    const take = (r: RegExp) => {
        r.lastIndex = i;
        const m = r.exec(text);
        if (m) i = r.lastIndex;
        return m;
    };
    const peek = (r: RegExp) => {
        r.lastIndex = i;
        return r.exec(text)?.[0];
    };

    function operator(): [string, Operator] | undefined {
        skip();
        const c = text[i];
        if (c === undefined || c === ',' || c === ')' || (c === '-' && text[i + 1] === '>')) return undefined;
        const s = symbols.find(([written]) => text.startsWith(written, i));
        if (s) return s;
        if (c === 'x' && /\d/.test(text[i + 1] ?? '')) return ['x', 'x'];
        const w = c === 'x' || c === 'a' || c === 'b' ? peek(NAME) : undefined;
        return w === 'x' || w === 'at' || w === 'between' ? [w, w] : undefined;
    }

    function number(start: number): Node {
        let m = take(DATE);
        if (m) {
            const [year, month, day] = m[0].split(/[-\s]/).map(Number);
            const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
            if (month < 1 || month > 12 || day < 1 || day > days) {
                problem('date-not-understood', start, i, `There is no day ${m[0].trim()}.`);
                return { is: 'unknown', start, end: i };
            }
            const pad = (x: number) => String(x).padStart(2, '0');
            return { is: 'date', value: `${year}-${pad(month)}-${pad(day)}`, time: m[1], start, end: i };
        }
        if ((m = take(MONTH)) && text[i] !== '.') return { is: 'date', value: m[0], start, end: i };
        i = start;
        if ((m = take(CLOCK))) return { is: 'clock', value: m[0].padStart(5, '0'), start, end: i };
        if ((m = take(COMMA_DECIMAL)) && !/^\d+,\d+,/.test(m[0])) {
            const [whole, part] = m[0].split(',');
            const end = i;
            UNIT.lastIndex = i;
            if (UNIT.exec(text)) i = UNIT.lastIndex;
            problem('decimal-comma', start, end, `Write ${whole}.${part} with a point: a comma separates the items of a list.`,
                { title: `Write ${whole}.${part}`, text: `${whole}.${part}`, start, end });
            return { is: 'unknown', start, end: i };
        }
        i = start;
        m = take(FRACTION);
        const written = m ? '' : take(NUMBER)![0];
        const value = m ? Number(m[1] ?? 0) + Number(m[2]) / Number(m[3]) : Number(written);
        const decimals = written.includes('.') ? written.split(/[.eE]/)[1].length : 0;
        const end = i;
        if (text[i] === 'x' && /\d/.test(text[i + 1] ?? '')) return { is: 'number', value, decimals, start, end };
        if (text[i] === '.' && text[i + 1] !== '.') {
            i++;
            problem('value-not-understood', i - 1, i, 'A number does not end with a point.', { title: 'Take the point away', text: '' });
        }
        UNIT.lastIndex = i;
        m = UNIT.exec(text);
        if (!m) return { is: 'number', value, decimals, start, end };
        const unitEnd = UNIT.lastIndex;
        const unitStart = unitEnd - m[1].length;
        let unit = m[1] === 'in' && /^ (?:series|parallel|a row)\b/.test(text.slice(unitEnd, unitEnd + 12)) ? undefined : unitOf(m[1].replaceAll('⋅', '·'));
        if (unit) {
            i = unitEnd;
            const mark = peek(MARK);
            const marked = mark && unitOf(`${m[1]} ${mark.trim()}`);
            if (marked) {
                unit = marked;
                i += mark.length;
            }
            if (text.startsWith(' per ', i)) {
                // `900 L per week` is `900 L/week`.
                const each = /^ per ([A-Za-z]+)(?![\w-])/.exec(text.slice(i, i + 24));
                const per = each && unitOf(each[1]) ? unitOf(`${unit.text}/${each[1]}`) : undefined;
                if (per && !unit.mark) {
                    unit = per;
                    i += each![0].length;
                }
            }
            return { is: 'quantity', value, unit, decimals, start, unitStart, end: i };
        }
        i = unitStart;
        const word = peek(NAME) ?? '';
        if (word === 'per') {
            // `4 per h`: a count per time.
            const back = i;
            i += 3;
            skip();
            UNIT.lastIndex = i;
            const per = UNIT.exec(text);
            const perUnit = per && unitOf(`/${per[1]}`);
            if (perUnit && unitOf(per[1])) {
                i = UNIT.lastIndex;
                return { is: 'quantity', value, unit: { ...perUnit, text: `per ${per[1]}` }, decimals, start, unitStart, end: i };
            }
            i = back;
        }
        if (joiningWords.has(word) || counted.has(word)) {
            i = end;
            return { is: 'number', value, decimals, start, end };
        }
        // A word of the vocabulary may follow a number without blank or unit only by mistake: tell it, keep the rest.
        i = unitEnd;
        const near = nearest(m[1], commonUnits());
        problem('unknown-word', unitStart, unitEnd, offering(`${m[1]} is not a unit`, near),
            near ? { title: `Write ${near}`, text: near } : undefined);
        return { is: 'unknown', start, end: i };
    }

    function primary(): Node {
        skip();
        const start = i;
        const c = text[i];
        if (c === undefined) return { is: 'nothing', start, end: start };
        if (c >= '0' && c <= '9') return number(start);
        if (c === '"') {
            let e = text.indexOf('"', i + 1);
            const closed = e >= 0;
            if (!closed) {
                e = n;
                problem('unfinished-line', start, n, 'The closing quote is missing.', { title: 'Close the quote', text: `${text.slice(start, n)}"` });
            }
            i = Math.min(n, e + 1);
            return { is: 'text', value: text.slice(start + 1, e), closed, start, end: i };
        }
        if (c === '(') {
            i++;
            const inner = binary(1);
            skip();
            if (text[i] === ')') i++;
            else problem('unfinished-line', start, start + 1, 'This ( is never closed.');
            return { ...inner, start, end: i };
        }
        if (c === '-' || c === '−') {
            if (text[i + 1] === '>') return { is: 'nothing', start, end: start };
            i++;
            const a = binary(UNARY);
            if (a.is === 'nothing') problem('unfinished-line', start, start + 1, 'Something must follow the minus.');
            if (a.is === 'quantity' || a.is === 'number') return { ...a, value: -a.value, start };
            return { is: 'negative', a, start, end: i };
        }
        const word = take(NAME)?.[0];
        if (!word) return { is: 'nothing', start, end: start };
        const before = unitBefore(word);
        if (before) {
            const back = i;
            skip();
            const m = take(NUMBER);
            if (m) return { is: 'quantity', value: Number(m[0]), unit: before(Number(m[0])), decimals: 0, start, unitStart: start, end: i };
            i = back;
        }
        if (text[i] === '(') {
            i++;
            const args: Node[] = [];
            for (;;) {
                args.push(binary(1));
                skip();
                if (text[i] !== ',') break;
                i++;
            }
            if (text[i] === ')') i++;
            else problem('unfinished-line', start, i, 'This ( is never closed.');
            return { is: 'call', name: word, args, start, end: i };
        }
        const parts = [word];
        while (text[i] === '.' && text[i + 1] !== '.') {
            i++;
            const m = take(NAME);
            if (m) {
                parts.push(m[0]);
            } else {
                problem('unfinished-line', i - 1, i, 'A name must follow the point.');
                break;
            }
        }
        if (parts.length === 1 && joiningWords.has(word)) return { is: 'word', name: word, start, end: i };
        names = true;
        return { is: 'name', names: parts, start, end: i };
    }

    /** Keeps the tree shallow enough for whoever walks it: the rest of a value that goes deeper is not read. */
    function tooDeep(): Node {
        const start = i;
        problem('value-not-understood', start, n, 'This goes too deep to be read; give pieces of it a name with let.');
        i = n;
        return { is: 'unknown', start, end: n };
    }
    function binary(lowest: number): Node {
        if (depth > DEEPEST) return tooDeep();
        depth++;
        const e = operations(lowest);
        depth--;
        return e;
    }
    function operations(lowest: number): Node {
        let a = primary();
        if (a.is === 'nothing') return a;
        for (let count = 0; ; count++) {
            const found = operator();
            if (!found) return a;
            if (count > DEEPEST) return tooDeep();
            const [written, op] = found;
            if (level[op] < lowest) return a;
            const at = i;
            i += written.length;
            const b = binary(op === '^' ? level[op] : level[op] + 1);
            let c: Node | undefined;
            if (op === 'between') {
                skip();
                const back = i;
                if (take(NAME)?.[0] === 'and') c = binary(2);
                else i = back;
            }
            if (op === 'between' ? !c || c.is === 'nothing' || b.is === 'nothing' : b.is === 'nothing' || b.is === 'word') {
                problem('unfinished-line', at, at + written.length,
                    op === 'between' ? 'After between come two values with and between them.' : `Something must follow ${written}.`);
            }
            a = { is: 'operation', op, a, b, c, start: a.start, end: Math.max(at + written.length, (c ?? b).end) };
        }
    }

    const list: Node[][] = [];
    for (;;) {
        const sequence: Node[] = [];
        skip();
        while (i < n && text[i] !== ',') {
            const at = i;
            const e = binary(1);
            if (e.is === 'nothing') {
                problem('value-not-understood', at, at + 1, `${text[at]} means nothing here.`);
                i = Math.max(i, at + 1);
            } else {
                sequence.push(e);
            }
            skip();
            if (e.is === 'word' && e.name === 'in') {
                UNIT.lastIndex = i;
                const written = UNIT.exec(text)?.[1];
                const unit = written && unitOf(written);
                if (unit) {
                    sequence.push({ is: 'unit', unit, start: i, end: (i = UNIT.lastIndex) });
                    skip();
                }
            }
        }
        if (sequence.length || !list.length) list.push(sequence);
        if (i >= n) break;
        i++;
        skip();
        // A comma before the end is let pass, so that adding a line to a list touches one line only.
    }
    const last = list.at(-1)!.at(-1);
    if (last?.is === 'word' && !complete.has(last.name)) problem('unfinished-line', last.start, last.end, `Something must follow ${last.name}.`);
    return { text, list, problems, names };
}

/** Calls `visit` for each node of a tree, parents first. */
export function walk(node: Node | undefined, visit: (node: Node) => void): void {
    if (!node) return;
    visit(node);
    if (node.is === 'operation') {
        walk(node.a, visit);
        walk(node.b, visit);
        walk(node.c, visit);
    } else if (node.is === 'negative') {
        walk(node.a, visit);
    } else if (node.is === 'call') {
        for (const arg of node.args) walk(arg, visit);
    }
}

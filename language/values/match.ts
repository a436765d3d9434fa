/**
 * A parsed value against the declaration of its property: which slot got what, and what does not fit, in the maker's
 * words. Without a rig (`resolve` undefined) a value that names other values answers `needsRig`.
 */
import { measures, one, saysDimension, type MeasureName } from '../units/dimension.js';
import type { Unit } from '../units/unit.js';
import { exampleOf, type Atom, type Item, type Property, type Slot, type SlotType } from '../vocabulary/define.js';
import { capital, evaluate, inMeasure, isTrouble, leadingUnit, tookState, type Amount, type Resolve, type Trouble, type Worked } from './evaluate.js';
import { nearest } from './nearest.js';
import type { Node, ParsedValue } from './parse-value.js';

/** What stands in one slot. Numbers are SI; NaN where the slot holds something else. */
export interface Fact {
    readonly start: number;
    readonly end: number;
    readonly number: number;
    readonly low: number;
    readonly high: number;
    readonly amount?: Amount;
    readonly word?: string;
    readonly text?: string;
    readonly sizes?: readonly number[];
    /** Names of a part, a quantity ('bag', 'volume') or a condition. */
    readonly names?: readonly string[];
    readonly condition?: Condition;
    /** A litre without its state was taken as at 20 °C. */
    readonly stateTaken?: boolean;
}
/** `main`, `bag-draw or hand-draw`, `a and b`. Each name with its place. */
export interface Condition {
    readonly join: 'one' | 'or' | 'and';
    readonly of: readonly { readonly names: readonly string[]; readonly start: number; readonly end: number }[];
}
export type Facts = ReadonlyMap<string, Fact>;
export interface MatchProblem {
    start: number;
    end: number;
    code: string;
    message: string;
    fix?: { title: string; text: string; start?: number; end?: number };
}
export interface Matched {
    /** `none`, `unknown`: the value is that single word. */
    readonly says?: 'none' | 'unknown';
    readonly facts: Facts;
    /** For properties with rows: the facts of each item. */
    readonly rows: readonly Facts[];
    readonly problems: readonly MatchProblem[];
    readonly needsRig: boolean;
}

class NeedsRig extends Error {}
const needsRig = new NeedsRig();

/** Matches a value with its property. Pure; `resolve` looks names up in the rig. */
export function match(value: ParsedValue, property: Property, resolve?: Resolve): Matched {
    const only = value.list.length === 1 && value.list[0].length === 1 ? value.list[0][0] : undefined;
    if (only?.is === 'name' && only.names.length === 1 && (only.names[0] === 'none' || only.names[0] === 'unknown')) {
        const word = only.names[0] as 'none' | 'unknown';
        if (word === 'none' && !property.none) {
            const example = exampleOf(property);
            return broken({ start: only.start, end: only.end, code: 'value-not-understood', message: `There is always some ${property.name}${example ? `: say it, as ${property.name}: ${example}` : ': say it'}, or write unknown.` });
        }
        const item = property.items[0];
        const expectsWord = item?.some(a => typeof a !== 'string' && typeof a.type === 'object' && 'words' in a.type && a.type.words.includes(word));
        const said: Facts = expectsWord ? new Map([[firstSlot(item)!.slot, wordFact(only, word)]]) : new Map();
        return { says: word, facts: said, rows: [], problems: [], needsRig: false };
    }
    try {
        const matched = property.rows ? matchRows(value, property, resolve) : matchItems(value, property, resolve);
        const fact = property.positive ? matched.facts.get('') : undefined;
        if (fact && fact.amount && fact.number < 0) {
            return broken({ start: fact.start, end: fact.end, code: 'value-not-understood', message: `${property.name} cannot be below 0; ${value.text.slice(fact.start, fact.end)} is.` });
        }
        return matched;
    } catch (e) {
        if (e === needsRig) return { facts: new Map(), rows: [], problems: [], needsRig: true };
        throw e;
    }
}
const broken = (problem: MatchProblem): Matched => ({ facts: new Map(), rows: [], problems: [problem], needsRig: false });
const firstSlot = (item: Item | undefined) => item?.find((a): a is Slot => typeof a !== 'string');

function matchRows(value: ParsedValue, property: Property, resolve: Resolve | undefined): Matched {
    const rows: Facts[] = [];
    const problems: MatchProblem[] = [];
    for (const sequence of value.list) {
        if (!sequence.length) continue;
        const nodes = flat(sequence);
        const tried = tryItem(nodes, property.items[0], value.text, resolve);
        if (tried.facts) rows.push(tried.facts);
        else problems.push(withExample(tried.problem, property));
    }
    return { facts: rows[0] ?? new Map(), rows, problems, needsRig: false };
}

function matchItems(value: ParsedValue, property: Property, resolve: Resolve | undefined): Matched {
    const facts = new Map<string, Fact>();
    const problems: MatchProblem[] = [];
    const filled = new Set<Item>();
    for (const sequence of value.list) {
        if (!sequence.length) continue;
        const nodes = flat(sequence);
        let best: Tried | undefined;
        let matched = false;
        for (const item of property.items) {
            if (filled.has(item)) continue;
            const tried = tryItem(nodes, item, value.text, resolve);
            if (tried.facts) {
                for (const [k, v] of tried.facts) facts.set(k, v);
                filled.add(item);
                matched = true;
                break;
            }
            if (!best || tried.reached > best.reached) best = tried;
        }
        if (matched) continue;
        if (best) {
            problems.push(withExample(best.problem, property));
        } else {
            const [first, last] = [sequence[0], sequence.at(-1)!];
            problems.push(withExample({ start: first.start, end: last.end, code: 'value-not-understood', message: `${value.text.slice(first.start, last.end)} is one item too many for ${property.name}.` }, property));
        }
    }
    return { facts, rows: facts.size ? [facts] : [], problems, needsRig: false };
}

/** A value of several pieces is best shown as it is written: `2 m2 at 2.4 m`. A number gets the unit that is usual there. */
function withExample(problem: MatchProblem, property: Property): MatchProblem {
    const example = exampleOf(property);
    if (!/\d/.test(example)) return problem;
    const several = property.items.length > 1 || property.items.some(i => i.length > 1);
    const unit = /^[-\d.]+ ([^\s,]+)$/.exec(example)?.[1];
    if (problem.code === 'unit-missing' && !several) return unit && problem.fix ? { ...problem, fix: { ...problem.fix, title: `Write it in ${unit}`, text: ` ${unit}` } } : problem;
    if (!several || (problem.code !== 'unit-missing' && problem.code !== 'value-not-understood') || problem.message.includes(example)) return problem;
    // The first unit of a table is only a guess here, and not one to press a key for.
    return { ...problem, message: `${problem.message.replace(/, as in: [^:]*\.$/, '.')} For instance ${property.name}: ${example}.`, fix: problem.code === 'unit-missing' ? undefined : problem.fix };
}
/** `a at b` as a row of three, so that patterns need not know about operators. */
function flat(sequence: readonly Node[]): Node[] {
    return sequence.flatMap(node =>
        node.is === 'operation' && node.op === 'at'
            ? [...flat([node.a]), { is: 'word', name: 'at', start: node.a.end, end: node.b.start } as Node, ...flat([node.b])]
            : [node]);
}

interface Tried {
    facts?: Map<string, Fact>;
    problem: MatchProblem;
    /** How far the item was understood, to choose the most telling problem. */
    reached: number;
}

function tryItem(nodes: readonly Node[], item: Item, text: string, resolve: Resolve | undefined): Tried {
    const facts = new Map<string, Fact>();
    let i = 0;
    for (let a = 0; a < item.length; a++) {
        const atom = item[a];
        if (typeof atom === 'string') {
            const optional = atom.endsWith('?');
            const literal = optional ? atom.slice(0, -1) : atom;
            if (isWord(nodes[i], literal)) {
                i++;
                continue;
            }
            if (optional) continue;
            const at = nodes[i] ?? nodes.at(-1);
            const hole = { start: nodes[i] ? at!.start : Math.max(0, (at?.end ?? 1) - 1), end: at?.end ?? 1 };
            return { reached: i, problem: { ...hole, code: 'value-not-understood', message: `${literal} is expected here, as in: ${pattern(item)}.` } };
        }
        if (i >= nodes.length) {
            if (atom.optional) continue;
            const last = nodes.at(-1);
            return { reached: i, problem: { start: Math.max(0, (last?.end ?? 1) - 1), end: last?.end ?? 1, code: 'unfinished-line', message: `Something must follow: ${pattern(item)}.` } };
        }
        const got = take(nodes, i, atom.type, literalAfter(item, a), text, resolve);
        if ('fact' in got) {
            facts.set(atom.slot, got.fact);
            i += got.used;
        } else if (!atom.optional) {
            return { reached: i + (got.problem.code === 'wrong-dimension' || got.problem.code === 'unit-missing' ? 0.5 : 0), problem: got.problem };
        }
    }
    if (i < nodes.length) {
        const [from, to] = [nodes[i], nodes.at(-1)!];
        return { reached: i, problem: { start: from.start, end: to.end, code: 'value-not-understood', message: `${text.slice(from.start, to.end)} does not fit here; expected is ${pattern(item)}.` } };
    }
    return { facts, reached: i, problem: { start: 0, end: 1, code: '', message: '' } };
}
function literalAfter(item: Item, a: number): string | undefined {
    for (let k = a + 1; k < item.length; k++) {
        const atom = item[k];
        if (typeof atom === 'string') return atom.replace(/\?$/, '');
    }
    return undefined;
}
const isWord = (node: Node | undefined, word: string) => (node?.is === 'word' && node.name === word) || (node?.is === 'name' && node.names.length === 1 && node.names[0] === word);

type Got = { fact: Fact; used: number } | { problem: MatchProblem };
const problemAt = (node: { start: number; end: number }, code: string, message: string, fix?: MatchProblem['fix']): Got => ({ problem: { start: node.start, end: node.end, code, message, fix } });
const blank = { number: NaN, low: NaN, high: NaN };
const wordFact = (node: Node, word: string): Fact => ({ start: node.start, end: node.end, ...blank, word, text: word });

function take(nodes: readonly Node[], i: number, type: SlotType, until: string | undefined, text: string, resolve: Resolve | undefined): Got {
    const node = nodes[i];
    if (typeof type === 'object') {
        if ('words' in type) return takeWord(node, type.words, type.open ?? false, text, type.called);
        if ('part' in type) return takePart(nodes, i);
        return takeSize(node, type.size, type.of, type.least ?? type.size, resolve);
    }
    switch (type) {
        case 'count': {
            const w = work(node, resolve);
            if ('problem' in w) return w;
            if (w.amount.dimension !== one || w.amount.unit) return problemAt(node, 'wrong-dimension', 'A plain count is expected here, without a unit.');
            if (!Number.isInteger(w.amount.si)) return problemAt(node, 'value-not-understood', 'A whole number is expected here.');
            return { fact: number(node, w.amount), used: 1 };
        }
        case 'yes-no': {
            if (isWord(node, 'yes') || isWord(node, 'no')) return { fact: wordFact(node, text.slice(node.start, node.end)), used: 1 };
            return problemAt(node, 'unknown-word', 'yes or no is expected here.');
        }
        case 'date':
            return node.is === 'date' ? { fact: { ...wordFact(node, node.value), text: node.time ? `${node.value} ${node.time}` : node.value }, used: 1 }
                : problemAt(node, 'date-not-understood', 'A date is expected here, as 2026-03-14.');
        case 'clock':
            return node.is === 'clock' ? { fact: { ...wordFact(node, node.value), number: clock(node.value), low: clock(node.value), high: clock(node.value) }, used: 1 }
                : problemAt(node, 'date-not-understood', 'A time of day is expected here, as 15:30.');
        case 'text':
        case 'any': {
            if (node.is === 'text') return { fact: { ...wordFact(node, node.value), word: undefined }, used: 1 };
            let end = i;
            while (end < nodes.length && !(until && isWord(nodes[end], until))) end++;
            if (end === i) return problemAt(node, 'value-not-understood', 'A few words are expected here.');
            const t = text.slice(node.start, nodes[end - 1].end);
            return { fact: { start: node.start, end: nodes[end - 1].end, ...blank, text: t, word: t }, used: end - i };
        }
        case 'quantity':
            if (node.is === 'name' && node.names.length >= 2) return { fact: { start: node.start, end: node.end, ...blank, names: node.names, text: node.names.join('.') }, used: 1 };
            return problemAt(node, 'value-not-understood', 'A part and a quantity with a point between them are expected here, as bag.volume.');
        case 'condition':
            return takeCondition(nodes, i);
        case 'thread': {
            if (node.is === 'text' || node.is === 'name') {
                const next = nodes[i + 1];
                const pair = node.is === 'name' && (node.names[0] === 'G' || node.names[0] === 'DN' || node.names[0] === 'M') && next && (next.is === 'number' || next.is === 'quantity');
                const end = pair ? next.end : node.end;
                const t = node.is === 'text' ? node.value : text.slice(node.start, end);
                return { fact: { start: node.start, end, ...blank, text: t, word: t }, used: pair ? 2 : 1 };
            }
            return problemAt(node, 'value-not-understood', 'A thread is expected here, as M8 or G 1/4.');
        }
        case 'sensed': {
            const w = work(node, resolve);
            return 'problem' in w ? w : { fact: number(node, w.amount), used: 1 };
        }
        default:
            return takeQuantity(nodes, i, type, resolve);
    }
}
function clock(hhmm: string): number {
    const [h, m] = hhmm.split(':').map(Number);
    return h * 3600 + m * 60;
}
function number(node: Node, a: Amount): Fact {
    return { start: node.start, end: node.end, number: a.si, low: a.low, high: a.high, amount: a };
}
function work(node: Node, resolve: Resolve | undefined, carried?: Unit): { amount: Amount } | { problem: MatchProblem } {
    if (!resolve && mentionsNames(node)) throw needsRig;
    const w: Worked = evaluate(node, resolve, carried);
    return isTrouble(w) ? { problem: asProblem(w) } : { amount: w };
}
function asProblem(t: Trouble): MatchProblem {
    return { start: t.start, end: t.end, code: t.code, message: t.message, fix: t.fix };
}
function mentionsNames(node: Node): boolean {
    if (node.is === 'operation') return mentionsNames(node.a) || mentionsNames(node.b) || (!!node.c && mentionsNames(node.c));
    if (node.is === 'call') return node.args.some(mentionsNames);
    if (node.is === 'negative') return mentionsNames(node.a);
    return node.is === 'name';
}

/** Other dimensions that stand for the same thing. */
const instead: Partial<Record<MeasureName, readonly MeasureName[]>> = {
    'mass-fraction': ['concentration', 'molality'],
    'apparent-power': ['power'],
};

function takeQuantity(nodes: readonly Node[], i: number, measure: MeasureName, resolve: Resolve | undefined): Got {
    const node = nodes[i];
    const wanted = measures[measure];
    if (node.is === 'text' || node.is === 'date' || node.is === 'clock' || node.is === 'word' || node.is === 'unit') {
        return problemAt(node, 'value-not-understood', `${capital(wanted.says)} is expected here.`);
    }
    const w = work(node, resolve);
    if ('problem' in w) return w;
    let a = w.amount;
    let used = 1;
    // `3 h 20 min`: neighbours of the same dimension add up.
    while (measure === 'time' && nodes[i + used]?.is === 'quantity') {
        const next = evaluate(nodes[i + used], resolve);
        if (isTrouble(next) || next.dimension !== a.dimension) break;
        a = { ...a, si: a.si + next.si, low: a.low + next.low, high: a.high + next.high };
        used++;
    }
    const fits = inMeasure(a, wanted.dimension) ?? instead[measure]?.map(m => (a.dimension === measures[m].dimension ? a : undefined)).find(Boolean);
    if (!fits) {
        if (a.dimension === one && !a.unit && !mentionsNames(node)) {
            const guess = wanted.units[0];
            return problemAt(node, 'unit-missing', `A unit is missing: ${wanted.units.slice(0, 4).join(', ')}?`,
                guess ? { title: `Write it in ${guess}`, text: ` ${guess}`, start: node.end, end: node.end } : undefined);
        }
        const place = node.is === 'quantity' ? { start: node.unitStart, end: node.end } : node;
        return problemAt(place, 'wrong-dimension', `${capital(wanted.says)} is expected here${wanted.units[0] ? `, in ${wanted.units.slice(0, 3).join(' or ')}` : ''}; ${node.is === 'quantity' ? node.unit.text : 'this'} is ${saysDimension(a.dimension)}.`);
    }
    if (a.dimension === one && !a.unit && Math.abs(a.si) > 1 && (measure === 'fraction' || measure === 'mass-fraction') && !mentionsNames(node)) {
        // 0.25 can be meant as it stands; 25 is 25 per cent, or a slip.
        const guess = wanted.units[0];
        return problemAt(node, 'unit-missing', `A unit is missing: ${wanted.units.slice(0, 4).join(', ')}?`, { title: `Write it in ${guess}`, text: ` ${guess}`, start: node.end, end: node.end });
    }
    return { fact: { ...number(node, fits), end: nodes[i + used - 1].end, stateTaken: tookState(a, fits.dimension) || undefined }, used };
}

function takeWord(node: Node, of: readonly string[], open: boolean, text: string, called?: Readonly<Record<string, string>>): Got {
    const written = text.slice(node.start, node.end);
    const other = written.toLowerCase();
    if (called && !of.includes(written) && Object.hasOwn(called, other)) return problemAt(node, 'unknown-word', `${written} is called ${called[other]} here.`, { title: `Write ${called[other]}`, text: called[other] });
    if (node.is === 'name' && node.names.length === 1 && (open || of.includes(node.names[0]))) return { fact: wordFact(node, node.names[0]), used: 1 };
    if ((node.is === 'text' && open) || of.includes(written)) return { fact: wordFact(node, node.is === 'text' ? node.value : written), used: 1 };
    const near = node.is === 'name' ? nearest(node.names.join('.'), of) : undefined;
    return problemAt(node, 'unknown-word', near ? `${written} is not known here; did you mean ${near}?` : `${list(of)} is expected here.`,
        near ? { title: `Write ${near}`, text: near } : undefined);
}
function takePart(nodes: readonly Node[], i: number): Got {
    const node = nodes[i];
    if (node.is !== 'name') return problemAt(node, 'value-not-understood', 'The name of a part is expected here.');
    // `h2-column to store-bag`: everything on the path between.
    if (isWord(nodes[i + 1], 'to') && nodes[i + 2]?.is === 'name') {
        const to = nodes[i + 2] as Extract<Node, { is: 'name' }>;
        return { fact: { start: node.start, end: to.end, ...blank, names: [node.names[0], to.names[0]], text: 'section' }, used: 3 };
    }
    return { fact: { start: node.start, end: node.end, ...blank, names: [node.names.join('.')], word: node.names.join('.') }, used: 1 };
}
function takeSize(node: Node, n: number, of: MeasureName, least: number, resolve: Resolve | undefined): Got {
    const leaves: Node[] = [];
    const gather = (x: Node) => {
        if (x.is === 'operation' && x.op === 'x') {
            gather(x.a);
            gather(x.b);
        } else if (x.is === 'operation' && x.op === '±') {
            gather(x.a);
        } else {
            leaves.push(x);
        }
    };
    gather(node);
    if (leaves.length > n || leaves.length < least) {
        return problemAt(node, 'value-not-understood', `A size of ${n} is expected here, as ${n === 2 ? '100 x 120 mm' : n === 3 ? '150 x 180 x 1 mm' : '100 mm'}.`);
    }
    const sizes: number[] = new Array(leaves.length);
    let carried: Unit | undefined;
    for (let k = leaves.length - 1; k >= 0; k--) {
        const w = work(leaves[k], resolve, carried);
        if ('problem' in w) return w;
        if (w.amount.dimension !== measures[of].dimension) {
            return w.amount.dimension === one && !w.amount.unit
                ? problemAt(leaves[k], 'unit-missing', `A unit is missing: ${measures[of].units.slice(0, 3).join(', ')}?`, { title: `Write it in ${measures[of].units[0]}`, text: ` ${measures[of].units[0]}`, start: leaves[k].end, end: leaves[k].end })
                : problemAt(leaves[k], 'wrong-dimension', `${capital(measures[of].says)} is expected here; this is ${saysDimension(w.amount.dimension)}.`);
        }
        sizes[k] = w.amount.si;
        carried = leadingUnit(leaves[k]) ?? carried;
    }
    return { fact: { start: node.start, end: node.end, ...blank, sizes, text: undefined }, used: 1 };
}
function takeCondition(nodes: readonly Node[], i: number): Got {
    const of: { names: readonly string[]; start: number; end: number }[] = [];
    let join: Condition['join'] = 'one';
    let k = i;
    for (;;) {
        const node = nodes[k];
        if (node?.is !== 'name') return problemAt(node ?? nodes[k - 1], 'value-not-understood', 'The name of a switch, trip, relay or contactor is expected here.');
        of.push({ names: node.names, start: node.start, end: node.end });
        k++;
        const word = nodes[k];
        if (word?.is !== 'word' || (word.name !== 'or' && word.name !== 'and')) break;
        if (join !== 'one' && join !== word.name) return problemAt(word, 'value-not-understood', 'Write or and and in separate items, or give the pair a relay of its own.');
        join = word.name;
        k++;
    }
    return { fact: { start: nodes[i].start, end: nodes[k - 1].end, ...blank, condition: { join, of } }, used: k - i };
}

/** A pattern for people: `material, free length to pressed length`. */
function pattern(item: Item): string {
    return item.map(describe).filter(Boolean).join(' ');
}
function describe(atom: Atom): string {
    if (typeof atom === 'string') return atom.endsWith('?') ? '' : atom;
    const { type } = atom;
    if (typeof type === 'object') {
        if ('words' in type) return type.words.length > 4 ? `a word (${type.words.slice(0, 3).join(', ')} …)` : list(type.words);
        if ('part' in type) return 'the name of a part';
        return `${type.size === 2 ? 'a x b' : type.size === 3 ? 'a x b x c' : 'a size'} in ${measures[type.of].units[0]}`;
    }
    const simple: Record<string, string> = { count: 'a count', 'yes-no': 'yes or no', text: 'a few words', date: 'a date', clock: 'a time of day', quantity: 'part.quantity', condition: 'a name', sensed: 'a value', thread: 'a thread', any: 'anything' };
    return simple[type] ?? measures[type as MeasureName].says;
}
function list(words: readonly string[]): string {
    return words.length < 2 ? words[0] ?? '' : words.length > 8 ? `${words.slice(0, 7).join(', ')} or another` : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}
export { list as inWords };

/** What may come next in a half-typed value, by the form that its property declares. */
import { measures, type MeasureName } from '../../language/units/dimension.js';
import { unitOf } from '../../language/units/unit.js';
import type { Atom, Item, Property, Slot } from '../../language/vocabulary/define.js';

export interface Next {
    /** Slots that may be filled now. */
    readonly slots: readonly Slot[];
    /** Fixed words that may come now: 'at', 'each side'. */
    readonly words: readonly string[];
    /** The slot of the number that stands last: its unit may come. */
    readonly ofNumber: readonly Slot[];
    /** Something of this item stands already. */
    readonly begun: boolean;
    /** Nothing more needs to come: the item is complete as it stands. */
    readonly complete: boolean;
}
type Token = { readonly is: 'number' | 'word' | 'text' | 'other'; readonly text: string; readonly unit: boolean };

const UNIT = '[A-Za-zµμ°%‰€£Ω℃][^\\s,{}"]*';
const TOKEN = new RegExp(`"[^"]*"?|[-+−]?\\d[\\d.:-]*(?:\\s*(?:\\.\\.|x|×|±|\\+/-|\\*|/(?=\\s*\\d))\\s*[-−]?\\d[\\d.]*)*|[\\p{L}_][\\p{L}\\p{N}_.-]*|\\S`, 'gu');

/** The pieces of one item of a list. A number takes the unit behind it. */
function tokensOf(text: string): Token[] {
    const out: Token[] = [];
    for (const m of text.matchAll(TOKEN)) {
        const t = m[0];
        const last = out.at(-1);
        if (/^[-+−]?\d/.test(t)) out.push({ is: 'number', text: t, unit: /^\d{4}-\d{2}|^\d{1,2}:\d{2}$/.test(t) });
        else if (last?.is === 'number' && !last.unit && new RegExp(`^${UNIT}$`).test(unitHere(text, m.index)) && unitOf(unitHere(text, m.index))) out[out.length - 1] = { ...last, unit: true };
        else if (last?.is === 'number' && last.unit && !/^[\p{L}"]/u.test(t)) continue;
        else out.push({ is: t[0] === '"' ? 'text' : /^[\p{L}_]/u.test(t) ? 'word' : 'other', text: t, unit: false });
    }
    return out.filter(t => t.is !== 'other');
}
function unitHere(text: string, at: number): string {
    return /^[^\s,{}"]*/.exec(text.slice(at))![0];
}

const literal = (a: string) => a.replace(/\?$/, '');
const mayMiss = (a: Atom) => (typeof a === 'string' ? a.endsWith('?') : !!a.optional);
const numeric = (s: Slot) => (typeof s.type === 'string' ? !['yes-no', 'text', 'quantity', 'condition', 'thread', 'any'].includes(s.type) : 'size' in s.type);

/** A number there is nothing without its unit. */
function hasUnit({ type }: Slot): boolean {
    if (typeof type === 'string' && type in measures) return measures[type as MeasureName].units[0] !== '';
    return type === 'sensed' || (typeof type === 'object' && 'size' in type);
}
/** Places in an item that some tokens may lead to: the atoms that were filled, by index. */
function reach(item: Item, tokens: readonly Token[]): { at: number; last?: Slot }[] {
    let states: { at: number; last?: Slot }[] = [{ at: 0 }];
    tokens.forEach(t => {
        const next: typeof states = [];
        for (const s of states) {
            for (let a = s.at; a < item.length; a++) {
                const atom = item[a];
                if (typeof atom === 'string') {
                    if (t.is === 'word' && t.text === literal(atom)) next.push({ at: a + 1 });
                } else {
                    const { type } = atom;
                    const free = type === 'text' || type === 'any' || type === 'condition';
                    const fits = t.is === 'number' ? numeric(atom) || free || type === 'thread'
                        : t.is === 'text' ? free || type === 'thread' || (typeof type === 'object' && 'words' in type && !!type.open)
                            : typeof type === 'object' && 'words' in type ? type.open || type.words.includes(t.text) : type === 'yes-no' ? t.text === 'yes' || t.text === 'no' : type !== 'date' && type !== 'clock';
                    if (fits) {
                        next.push({ at: a + 1, last: atom });
                        // Words run on until something fixed comes: and times add up, 3 h 20 min.
                        if (free || type === 'time') next.push({ at: a, last: atom });
                    }
                }
                if (!mayMiss(atom)) break;
            }
        }
        states = next;
    });
    return states;
}

/**
 * @param typed the value from behind its colon to where the next piece would begin: without the word being typed
 */
export function nextInValue(property: Property, typed: string): Next {
    const items = splitItems(typed);
    const current = tokensOf(items.at(-1)!);
    // Items that were filled before are not asked for again, where each has a form of its own.
    const open = new Set(property.items);
    if (!property.rows) {
        for (const before of items.slice(0, -1)) {
            const filled = [...open].find(i => complete(i, reach(i, tokensOf(before)))) ?? [...open].find(i => reach(i, tokensOf(before)).length);
            if (filled) open.delete(filled);
        }
    }
    const slots = new Set<Slot>();
    const words = new Set<string>();
    const ofNumber = new Set<Slot>();
    let whole = false;
    for (const item of open) {
        const states = reach(item, current);
        const unfinished = current.at(-1)?.is === 'number' && !current.at(-1)!.unit && states.every(s => s.last && hasUnit(s.last));
        if (current.length && !unfinished && complete(item, states)) whole = true;
        for (const s of states) {
            const last = current.at(-1);
            if (last?.is === 'number' && !last.unit && s.last) ofNumber.add(s.last);
            for (let a = s.at; a < item.length; a++) {
                const atom = item[a];
                if (typeof atom === 'string') {
                    // Fixed words that follow each other are one: each side.
                    if (a > s.at && typeof item[a - 1] === 'string') continue;
                    let all = literal(atom);
                    for (let b = a + 1; b < item.length && typeof item[b] === 'string'; b++) all += ` ${literal(item[b] as string)}`;
                    words.add(all);
                } else {
                    slots.add(atom);
                }
                if (!mayMiss(atom)) break;
            }
        }
    }
    return { slots: [...slots], words: [...words], ofNumber: [...ofNumber], begun: current.length > 0, complete: whole };
}
function complete(item: Item, states: readonly { at: number }[]): boolean {
    return states.some(s => item.slice(s.at).every(mayMiss));
}
/** Commas outside of quotes and brackets. */
function splitItems(text: string): string[] {
    const out = [''];
    let quoted = false;
    let depth = 0;
    for (const c of text) {
        if (c === '"') quoted = !quoted;
        else if (!quoted && c === '(') depth++;
        else if (!quoted && c === ')') depth--;
        if (c === ',' && !quoted && depth <= 0) out.push('');
        else out[out.length - 1] += c;
    }
    return out;
}

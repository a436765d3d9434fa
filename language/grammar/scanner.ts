/**
 * Tokens of a rig text. One pass, never fails, knows lines and shapes but no vocabulary.
 *
 *     name :               KEY ':' RAW?        RAW = the value as written, up to the end of the property
 *     rig, path, let ...   word RAW?           only as the first word of a line, and not before a colon
 *     name name? like? {   KIND NAME? ... '{'  the header of a part
 *     }                    '}', or STRAY when nothing is open
 *     anything else        JUNK                the rest of that line
 *
 * A property ends at the line end, at '}', at '#', or before the next `name:` on the same line. It goes on to the
 * next line after , + - * / -> ± or inside ( ), unless that line plainly starts something new: that condition keeps
 * `path h: stack ->` or `(a - b` from swallowing the rest of a file that somebody is typing in.
 * Blocks never nest: a header with a brace, or a statement, inside an open block closes that block (a '}' without length).
 */

/** Words that start a statement when they stand first on a line. */
export const lineWords = ['rig', 'library', 'use', 'let', 'path', 'expect', 'allow', 'weigh'] as const;
export type LineWord = (typeof lineWords)[number];

export type TokenType = 'KEY' | ':' | 'RAW' | 'KIND' | 'NAME' | 'like' | '{' | '}' | 'STRAY' | 'JUNK' | LineWord;
export interface Token {
    type: TokenType;
    start: number;
    end: number;
}
export interface Scanned {
    tokens: Token[];
    /** Indices into `tokens`: where a top-level item starts. */
    tops: number[];
    /** `##` notes, as ranges of the text without the marks. */
    notes: { start: number; end: number }[];
}

const isLineWord = new Set<string>(lineWords);
const STARTS = 1;
const DIGIT = 2;
const classes = new Uint8Array(128);
for (let c = 0; c < 128; c++) {
    if ((c >= 97 && c <= 122) || (c >= 65 && c <= 90) || c === 95) classes[c] = STARTS;
    else if (c >= 48 && c <= 57) classes[c] = DIGIT;
}
/** Letters outside ASCII: µ, accented Latin, Greek, and any other script that makers name their parts in. */
const letter = /\p{L}/u;
const startsName = (c: number) => (c < 128 ? classes[c] === STARTS : c === c && letter.test(String.fromCharCode(c)));
const inName = (c: number) => (c < 128 ? classes[c] !== 0 : c === c && letter.test(String.fromCharCode(c)));
const isBlank = (c: number) => c === 32 || c === 9 || c === 13 || c === 160 || c === 0xfeff;

const NEWLINE = 10;
const QUOTE = 34;
const HASH = 35;
const OPEN = 40;
const CLOSE = 41;
const DOT = 46;
const HYPHEN = 45;
const COLON = 58;
const GREATER = 62;
const BRACE = 123;
const UNBRACE = 125;
const goesOnAfter = new Set([...',+-*/(±×−'].map(c => c.charCodeAt(0)));

const NAME = '[\\p{L}_][\\p{L}\\p{N}_-]*';
const DOTTED = '[\\p{L}_][\\p{L}\\p{N}_.-]*';
/** A line that plainly starts something: `key:`, a statement, `kind name {`, `kind {` or a bare `kind name` unindented, `}`, blank. */
const startsSomething = new RegExp(
    `[ \\t\\r]*(?:${DOTTED}[ \\t]*:|(?:${lineWords.join('|')})[ \\t]+[^:\\s]|${NAME}[ \\t]+${NAME}[^\\n{#]*\\{|\\}|\\r?$)` +
        `|${NAME}[ \\t]*\\{|${NAME}[ \\t]+${NAME}[ \\t\\r]*$`,
    'muy',
);
const restOfHeader = new RegExp(
    `(?:[ \\t]+(?!like(?![\\p{L}\\p{N}_-]))(${NAME}|"[^"\\n]*"))?(?:[ \\t]+(like)(?:[ \\t]+(${NAME}))?)?[ \\t\\r]*(?=[{#}\\n]|$)`,
    'uy',
);

/** End of the name at i: letters, digits, _ and hyphens (dots too, if asked) that stand between two of them. */
function nameEnd(text: string, i: number, dotted: boolean): number {
    for (;;) {
        const c = text.charCodeAt(i);
        if (inName(c)) i++;
        else if ((c === HYPHEN || (dotted && c === DOT)) && inName(text.charCodeAt(i + 1))) i += 2;
        else return i;
    }
}
function skipBlanks(text: string, i: number): number {
    while (isBlank(text.charCodeAt(i))) i++;
    return i;
}
/** True if the first character other than a blank before i is a line end, or nothing. */
function firstOnLine(text: string, i: number): boolean {
    do i--;
    while (i >= 0 && isBlank(text.charCodeAt(i)));
    return i < 0 || text.charCodeAt(i) === NEWLINE;
}

/** Splits a text into tokens. Linear in its length; any text gives a result. */
export function scan(text: string): Scanned {
    const tokens: Token[] = [];
    const tops: number[] = [];
    const notes: { start: number; end: number }[] = [];
    const n = text.length;
    /** Offset of the { of the open block, or -1. */
    let open = -1;
    let i = 0;
    const put = (type: TokenType, start: number, end: number) => {
        tokens.push({ type, start, end });
    };
    const top = () => {
        if (open < 0) tops.push(tokens.length);
    };

    const goesOn = (last: number, depth: number) => {
        if (depth > 0) return true;
        const c = text.charCodeAt(last);
        return goesOnAfter.has(c) || (c === GREATER && text.charCodeAt(last - 1) === HYPHEN);
    };
    /** Whether the open block began on the line that holds offset `at`. */
    const openedOnThisLine = (at: number) => open >= 0 && text.lastIndexOf('\n', at) <= open;

    function valueEnd(start: number, stopAtKey: boolean): number {
        let e = start;
        let last = -1;
        let depth = 0;
        while (e < n) {
            const c = text.charCodeAt(e);
            if (isBlank(c)) {
                e++;
            } else if (c === NEWLINE) {
                if (last < 0 || !goesOn(last, depth)) break;
                startsSomething.lastIndex = e + 1;
                if (startsSomething.test(text)) break;
                e++;
            } else if (c === HASH) {
                if (last < 0 || !goesOn(last, depth)) break;
                while (e < n && text.charCodeAt(e) !== NEWLINE) e++;
            } else if (c === QUOTE) {
                do e++;
                while (e < n && text.charCodeAt(e) !== QUOTE && text.charCodeAt(e) !== NEWLINE);
                if (text.charCodeAt(e) === QUOTE) e++;
                // Without its end it ends with its last character: the carriage return of a line end is none of it.
                else while (isBlank(text.charCodeAt(e - 1))) e--;
                last = e - 1;
            } else if (c === UNBRACE && open >= 0 && closesHere(e)) {
                break;
            } else if (startsName(c)) {
                const w = nameEnd(text, e, true);
                if (stopAtKey && text.charCodeAt(skipBlanks(text, w)) === COLON) break;
                e = w;
                last = e - 1;
            } else if (inName(c)) {
                while (inName(text.charCodeAt(e))) e++;
                last = e - 1;
            } else {
                if (c === OPEN) depth++;
                else if (c === CLOSE) depth--;
                last = e++;
            }
        }
        return last < 0 ? start : last + 1;
    }
    /** In a block of several lines a } inside a value closes it only at the line's end. */
    function closesHere(e: number): boolean {
        if (openedOnThisLine(e)) return true;
        const next = text.charCodeAt(skipBlanks(text, e + 1));
        return next !== next || next === NEWLINE || next === HASH || next === UNBRACE;
    }
    function value(type: TokenType, start: number, stopAtKey: boolean): number {
        const e = valueEnd(start, stopAtKey);
        if (e > start) put(type, start, e);
        return e;
    }
    const closeOpenBlock = (at: number) => {
        put('}', at, at);
        open = -1;
    };

    while (i < n) {
        const c = text.charCodeAt(i);
        if (c === NEWLINE || isBlank(c)) {
            i++;
            continue;
        }
        if (c === HASH) {
            let e = text.indexOf('\n', i);
            if (e < 0) e = n;
            if (text.charCodeAt(i + 1) === HASH) notes.push({ start: i + 2, end: e });
            i = e;
            continue;
        }
        if (c === UNBRACE) {
            top();
            put(open >= 0 ? '}' : 'STRAY', i, i + 1);
            open = -1;
            i++;
            continue;
        }
        if (startsName(c)) {
            const w = nameEnd(text, i, true);
            const colon = skipBlanks(text, w);
            if (text.charCodeAt(colon) === COLON) {
                top();
                put('KEY', i, w);
                put(':', colon, colon + 1);
                i = value('RAW', skipBlanks(text, colon + 1), true);
                continue;
            }
            const word = text.slice(i, w);
            if (isLineWord.has(word) && firstOnLine(text, i)) {
                if (open >= 0) closeOpenBlock(i);
                top();
                put(word as LineWord, i, w);
                i = value('RAW', skipBlanks(text, w), false);
                continue;
            }
            restOfHeader.lastIndex = w;
            const m = restOfHeader.exec(text);
            if (m && !(text.charCodeAt(w) === BRACE && !m[1] && open >= 0)) {
                let q = restOfHeader.lastIndex;
                while (q < n && (isBlank(text.charCodeAt(q)) || text.charCodeAt(q) === NEWLINE)) q++;
                const braced = text.charCodeAt(q) === BRACE;
                if (braced && open >= 0) closeOpenBlock(i);
                top();
                put('KIND', i, w);
                i = w;
                for (const [type, s] of [['NAME', m[1]], ['like', m[2]], ['NAME', m[3]]] as const) {
                    if (!s) continue;
                    i = skipBlanks(text, i);
                    put(type, i, i + s.length);
                    i += s.length;
                }
                if (braced) {
                    open = q;
                    put('{', q, q + 1);
                    i = q + 1;
                }
                continue;
            }
        }
        top();
        const e = value('JUNK', i, true);
        if (e > i) {
            i = e;
        } else {
            put('JUNK', i, i + 1);
            i++;
        }
    }
    if (open >= 0) put('}', n, n);
    return { tokens, tops, notes };
}

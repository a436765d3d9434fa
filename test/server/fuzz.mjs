// Random typing, pasting, deleting over the protocol, with requests in between. At every rest the findings must be those
// of a server that sees the text for the first time, every request must be answered, and nothing may stand in the log.
//
//     node test/server/fuzz.mjs [--seconds 60] [--seed N]
//
// On a difference the edits are made fewer as long as it stays, and printed.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { changed, connect, placeOf, plain, sleep } from './client.mjs';

const examples = path.resolve(import.meta.dirname, '../../examples');
const uri = 'file:///fuzz/a.rig';
const bits = ['{', '}', ': ', ' -> ', ', ', '"', '\n', '\r\n', '#', '##', '<', ' < ', '9', '0,5', ' ', '   ', '\t', 'bad', 'bag x {\n', '\nlye {\n', 'like ', 'path hydrogen: ', 'expect stack.voltage < 30 V\n', 'let a = ', 'let a = 3 bar\n', 'rig "B", built\n', 'allow ', 'use "b.rig"\n', ' ± 2 %', '2..', ' x 3', '°', 'µ', 'é', '😀', '½', '×', '−', '\u2028', '\ufeff', '\0', '(', ')'];
const methods = ['hover', 'completion', 'definition', 'documentSymbol', 'foldingRange', 'inlayHint', 'semanticTokens/full', 'prepareRename', 'documentHighlight', 'references', 'codeAction', 'codeLens', 'selectionRange', 'formatting', 'documentLink'];

/**
 * Plays rounds of edits until the time or the number of rounds is over.
 * @param {{ seconds?: number, rounds?: number, seed?: number, restsPerRound?: number, log?: (line: string) => void }} options
 * @returns what was played, and the difference if one was found
 */
export async function fuzz({ seconds = Infinity, rounds = Infinity, seed = 1, restsPerRound = 8, log = () => {} } = {}) {
    let state = seed | 0;
    const random = n => {
        state = (state + 0x6d2b79f5) | 0;
        let t = Math.imul(state ^ (state >>> 15), 1 | state);
        t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
        return ((t ^ (t >>> 14)) >>> 0) % n;
    };
    const one = list => list[random(list.length)];
    const texts = readdirSync(examples).filter(f => f.endsWith('.rig')).map(f => readFileSync(path.join(examples, f), 'utf8'));
    const lines = texts.join('\n').split('\n');
    /** What a hand does: type, delete, paste a line, turn things round, replace everything; undo is an edit like any other. */
    const change = text => {
        if (random(80) === 0) return { text: one(texts) };
        const from = random(text.length + 1);
        const to = Math.min(text.length, from + one([0, 0, 0, 1, 1, 3, 20]));
        const splits = k => k > 0 && k < text.length && ((text[k - 1] === '\r' && text[k] === '\n') || /[\ud800-\udbff]/.test(text[k - 1]));
        if (splits(from) || splits(to)) return change(text);
        return { range: { start: placeOf(text, from), end: placeOf(text, to) }, text: one(['', one(bits), one(bits), one(bits), `${one(lines)}\n`, [...text.slice(from, to)].reverse().join('')]) };
    };
    const total = { rounds: 0, edits: 0, requests: 0, rests: 0 };
    const end = Date.now() + seconds * 1000;
    const fresh = freshReader();
    try {
        while (total.rounds < rounds && Date.now() < end) {
            total.rounds++;
            const first = one(texts);
            const bursts = [];
            const c = await connect();
            let wrong;
            await c.open(uri, first);
            await c.findings(uri);
            for (let b = 0; b < restsPerRound && !wrong && Date.now() < end; b++) {
                const burst = [];
                const pending = [];
                for (let n = one([1, 1, 3, 10, 40]); n--;) {
                    const e = change(c.docs.get(uri).text);
                    burst.push(e);
                    total.edits++;
                    await c.edit(uri, e);
                    if (random(4) === 0) {
                        total.requests++;
                        const text = c.docs.get(uri).text;
                        const method = one(methods);
                        pending.push(c.ask(`textDocument/${method}`, requestAt(placeOf(text, random(text.length + 1)))).catch(x => {
                            // Refusals: taken back, out of date, no name here.
                            if (![-32800, -32801, -32803].includes(x.code)) wrong = { got: [`${method} failed: ${x.message}`], want: [] };
                        }));
                    }
                    if (random(8) === 0) await sleep(random(5));
                }
                bursts.push(burst);
                total.rests++;
                await Promise.race([Promise.all(pending), sleep(10_000).then(() => (wrong ??= { got: ['a request was never answered'], want: [] }))]);
                wrong ??= await difference(c, fresh);
            }
            await c.stop();
            if (wrong) {
                log(`seed ${seed}: a difference after ${total.edits} edits; making it smaller`);
                const small = await smaller(first, bursts, fresh);
                return { ...total, seed, difference: { first, ...wrong, ...small } };
            }
            if (total.rounds % 20 === 0) log(`${total.rounds} rounds, ${total.edits} edits`);
        }
    } finally {
        await fresh.stop();
    }
    return { ...total, seed, difference: undefined };
}
function requestAt(position) {
    return { textDocument: { uri }, position, range: { start: { line: 0, character: 0 }, end: position }, positions: [position], context: { diagnostics: [], includeDeclaration: true }, options: { tabSize: 2, insertSpaces: true } };
}
/** A server for texts that it has never seen; a new one now and then, so that it cannot have learned anything. */
function freshReader() {
    let c;
    let used = 0;
    return {
        async findings(text) {
            if (c && used >= 12) {
                await c.stop();
                c = undefined;
            }
            c ??= await connect();
            used = used >= 12 ? 1 : used + 1;
            const name = `file:///fuzz/fresh-${used}.rig`;
            await c.open(name, text);
            const found = plain(await c.findings(name));
            await c.close(name);
            return found;
        },
        stop: async () => void (await c?.stop()),
    };
}
async function difference(c, fresh) {
    const { text } = c.docs.get(uri);
    try {
        const got = plain(await c.findings(uri));
        const want = await fresh.findings(text);
        const said = [...c.trouble, ...(c.stderr ? [c.stderr] : [])];
        return got.join('\n') !== want.join('\n') || said.length ? { text, got: [...got, ...said], want } : undefined;
    } catch (error) {
        return { text, got: [String(error), ...c.trouble, c.stderr], want: [] };
    }
}
async function play(first, bursts, fresh) {
    const c = await connect();
    try {
        await c.open(uri, first);
        await c.findings(uri);
        for (const burst of bursts) {
            for (const e of burst) await c.edit(uri, e);
            await c.findings(uri);
        }
        return await difference(c, fresh);
    } catch (error) {
        return { text: c.docs.get(uri)?.text, got: [String(error)], want: [] };
    } finally {
        c.child.kill('SIGKILL');
    }
}
/** An edit that no longer fits the text is no edit: the test's own text and the server's would part. */
function fits(first, bursts) {
    let text = first;
    for (const e of bursts.flat()) {
        if (e.range) {
            const lines = text.split('\n');
            const ok = p => p.line < lines.length && p.character <= lines[p.line].replace(/\r$/, '').length;
            if (!ok(e.range.start) || !ok(e.range.end)) return false;
        }
        text = changed(text, e);
    }
    return true;
}
async function smaller(first, bursts, fresh) {
    let small = bursts;
    let last = await play(first, small, fresh);
    if (!last) return { bursts, remark: 'it does not come again when played alone: a matter of timing or of a request' };
    const end = Date.now() + 60_000;
    const attempt = async candidate => {
        if (Date.now() > end || !fits(first, candidate)) return;
        const w = await play(first, candidate, fresh);
        if (w) [small, last] = [candidate, w];
    };
    for (let i = bursts.length - 1; i >= 0; i--) await attempt(small.map((b, k) => (k === i ? [] : b)));
    for (let i = bursts.length - 1; i >= 0; i--) for (let k = small[i].length - 1; k >= 0; k--) await attempt(small.map((b, x) => (x === i ? b.filter((_, y) => y !== k) : b)));
    return { ...last, bursts: small.filter(b => b.length) };
}

if (process.argv[1] === import.meta.filename) {
    const { values } = parseArgs({ options: { seconds: { type: 'string', default: '30' }, seed: { type: 'string' } } });
    const result = await fuzz({ seconds: Number(values.seconds), seed: Number(values.seed ?? Date.now() % 1e9), log: console.log });
    console.log(result.difference ? JSON.stringify(result, null, 1) : `${result.rounds} rounds, ${result.edits} edits, ${result.requests} requests in between: no difference (seed ${result.seed})`);
    process.exit(result.difference ? 1 : 0);
}

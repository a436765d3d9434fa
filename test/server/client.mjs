// A language client for tests, over stdio. Every process that it starts is ended by stop(), or with this process.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import protocol from 'vscode-languageserver/node';
import { serverBundle } from './server-bundle.mjs';

const { createMessageConnection, StreamMessageReader, StreamMessageWriter } = protocol;
/** As the desktop client starts its server. */
const { execArgv, env } = JSON.parse(readFileSync(new URL('../../extension/server-process.json', import.meta.url), 'utf8'));
const start = async (args, stdio) => spawn(process.execPath, [...execArgv, await serverBundle(), ...args], { stdio, env: { ...process.env, ...env } });
const running = new Set();
process.on('exit', () => running.forEach(child => child.kill('SIGKILL')));
export const sleep = ms => new Promise(done => setTimeout(done, ms));
/** What an ordinary editor can do. */
export const usual = { textDocument: { publishDiagnostics: { versionSupport: true, relatedInformation: true }, rename: { prepareSupport: true }, hover: { contentFormat: ['markdown'] }, inlayHint: {}, semanticTokens: {}, documentSymbol: { hierarchicalDocumentSymbolSupport: true } }, workspace: {} };

/** Starts a server, says hello, and gives verbs to talk to it. */
export async function connect({ args = ['--stdio'], capabilities = usual, options, parent = process.pid, onReadFile } = {}) {
    const child = await start(args, 'pipe');
    running.add(child);
    let stderr = '';
    child.stderr.on('data', d => (stderr += d));
    const ended = once(child, 'exit').then(([code, signal]) => {
        running.delete(child);
        return code ?? signal;
    });
    child.stdin.on('error', () => {});
    const rpc = createMessageConnection(new StreamMessageReader(child.stdout), new StreamMessageWriter(child.stdin));
    /** Anything on stdout that is not the protocol, and what the server has to say to the log. */
    const trouble = [];
    rpc.onError(([e]) => trouble.push(String(e)));
    rpc.onUnhandledNotification(() => {});
    rpc.onNotification('window/logMessage', ({ type, message }) => type <= 2 && trouble.push(message));
    if (onReadFile) rpc.onRequest('rigwright/readFile', onReadFile);
    rpc.onRequest('client/registerCapability', () => null);
    const docs = new Map();
    const published = new Map();
    const waiting = new Set();
    rpc.onNotification('textDocument/publishDiagnostics', p => {
        published.set(p.uri, [...(published.get(p.uri) ?? []), p]);
        waiting.forEach(look => look());
    });
    rpc.listen();
    const initialized = await rpc.sendRequest('initialize', { processId: parent, rootUri: null, capabilities, initializationOptions: { today: '2026-06-15', ...options } });
    await rpc.sendNotification('initialized', {});
    const client = {
        child, rpc, initialized, ended, docs, trouble, get stderr() { return stderr; },
        published: uri => published.get(uri) ?? [],
        ask: (method, params, ...token) => rpc.sendRequest(method, params, ...token),
        tell: (method, params) => rpc.sendNotification(method, params),
        at: (uri, line, character) => ({ textDocument: { uri }, position: { line, character } }),
        async open(uri, text) {
            docs.set(uri, { text, version: 1 });
            await client.tell('textDocument/didOpen', { textDocument: { uri, languageId: 'rig', version: 1, text } });
        },
        async close(uri) {
            docs.delete(uri);
            await client.tell('textDocument/didClose', { textDocument: { uri } });
        },
        /** One or more edits as one new version; keeps the text that the server ought to have. */
        async edit(uri, ...changes) {
            const doc = docs.get(uri);
            doc.version++;
            for (const c of changes) doc.text = changed(doc.text, c);
            await client.tell('textDocument/didChange', { textDocument: { uri, version: doc.version }, contentChanges: changes });
        },
        /** The findings of the newest version. */
        async findings(uri, timeout = 10_000) {
            const end = Date.now() + timeout;
            for (;;) {
                const last = published.get(uri)?.at(-1);
                if (last && (!docs.has(uri) || last.version === docs.get(uri).version)) return last.diagnostics;
                if (Date.now() > end) throw new Error(`no findings for version ${docs.get(uri)?.version} of ${uri}; the last were of ${last?.version}`);
                await new Promise(done => {
                    const timer = setTimeout(look, 50);
                    function look() {
                        clearTimeout(timer);
                        waiting.delete(look);
                        done();
                    }
                    waiting.add(look);
                });
            }
        },
        async stop() {
            if (child.exitCode !== null || child.signalCode) return ended;
            await Promise.race([rpc.sendRequest('shutdown').catch(() => {}), sleep(3000)]);
            await rpc.sendNotification('exit').catch(() => {});
            const code = await Promise.race([ended, sleep(3000).then(() => 'hung')]);
            if (code === 'hung') child.kill('SIGKILL');
            rpc.dispose();
            return code;
        },
    };
    return client;
}
/** A server that is written to in whole pieces, as a busy pipe hands them over: all messages in one. */
export async function connectRaw() {
    const child = await start(['--stdio'], ['pipe', 'pipe', 'inherit']);
    running.add(child);
    child.on('exit', () => running.delete(child));
    const messages = [];
    const waiting = new Set();
    new StreamMessageReader(child.stdout).listen(m => {
        messages.push(m);
        waiting.forEach(look => look());
    });
    const raw = {
        messages,
        write(...list) {
            child.stdin.write(Buffer.concat(list.map(m => {
                const body = Buffer.from(JSON.stringify({ jsonrpc: '2.0', ...m }));
                return Buffer.concat([Buffer.from(`Content-Length: ${body.length}\r\n\r\n`), body]);
            })));
        },
        async until(test, timeout = 10_000) {
            const end = Date.now() + timeout;
            while (!test()) {
                if (Date.now() > end) throw new Error('it never came');
                await Promise.race([new Promise(done => waiting.add(done)), sleep(50)]);
            }
        },
        stop: () => child.kill('SIGKILL'),
    };
    raw.write({ id: 0, method: 'initialize', params: { processId: process.pid, rootUri: null, capabilities: usual, initializationOptions: { today: '2026-06-15' } } });
    await raw.until(() => messages.some(m => m.id === 0));
    raw.write({ method: 'initialized', params: {} });
    return raw;
}
/** Offset of a place; lines end with \n. */
export function offsetOf(text, { line, character }) {
    let i = 0;
    while (line--) i = text.indexOf('\n', i) + 1;
    return i + character;
}
export function placeOf(text, offset) {
    const before = text.slice(0, offset);
    const start = before.lastIndexOf('\n') + 1;
    return { line: before.split('\n').length - 1, character: offset - start };
}
export function changed(text, c) {
    return c.range ? text.slice(0, offsetOf(text, c.range.start)) + c.text + text.slice(offsetOf(text, c.range.end)) : c.text;
}
/** Findings in one order and in few words, to compare two servers. */
export const plain = list => list.map(d => `${d.range.start.line}:${d.range.start.character}-${d.range.end.line}:${d.range.end.character} ${d.severity} ${d.code} ${d.message}`).sort();

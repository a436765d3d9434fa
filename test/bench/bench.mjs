// npm run bench: edit to findings over the protocol, CPU of the server, memory, hover, bursts, start; the engine alone; and
// the yardsticks (a native TypeScript server on as many lines, a bare Langium server) in the same run. Prints a table and
// writes test/bench/results.json. Never a test: figures hang on the machine, so compare the ratios of one run.
//
//     npm run bench [-- --quick] [--only=ours,ts,langium]
import { execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { keepResults } from './keep-results.mjs';
import { exampleText, rigOf } from './rigs.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const quick = process.argv.includes('--quick');
const only = process.argv.find(a => a.startsWith('--only='))?.slice(7).split(',');
const wanted = name => !only || only.includes(name);
const cache = path.join(process.env.XDG_CACHE_HOME ?? path.join(os.homedir(), '.cache'), 'rigwright-bench');
const EDITS = quick ? 40 : 200;
const sleep = ms => new Promise(r => setTimeout(r, ms));
const quantile = (list, q) => [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(q * list.length))];
const round = x => Math.round(x * 100) / 100;

execFileSync(process.execPath, ['extension/scripts/build.mjs'], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });

const stat = pid => readFileSync(`/proc/${pid}/stat`, 'utf8').replace(/^.*\) /, '').split(' ');

// ---- a small language client, over stdio ------------------------------------------------------------------------------
class Client {
    constructor(command, args, env = {}) {
        this.child = spawn(command, args, { stdio: ['pipe', 'pipe', 'pipe'], env: { ...process.env, ...env } });
        this.buffer = Buffer.alloc(0);
        this.waiting = new Map();
        this.listeners = new Set();
        this.id = 0;
        this.child.stderr.on('data', d => (this.stderr = (this.stderr ?? '') + d));
        this.child.stdout.on('data', d => this.read(d));
    }
    read(data) {
        this.buffer = Buffer.concat([this.buffer, data]);
        for (;;) {
            const head = this.buffer.indexOf('\r\n\r\n');
            if (head < 0) return;
            const length = Number(/content-length: (\d+)/i.exec(this.buffer.toString('latin1', 0, head))?.[1]);
            if (this.buffer.length < head + 4 + length) return;
            const message = JSON.parse(this.buffer.toString('utf8', head + 4, head + 4 + length));
            this.buffer = this.buffer.subarray(head + 4 + length);
            if (message.id !== undefined && message.method === undefined) {
                this.waiting.get(message.id)?.(message.result ?? message.error);
                this.waiting.delete(message.id);
            } else if (message.id !== undefined) {
                this.write({ jsonrpc: '2.0', id: message.id, result: message.method === 'workspace/configuration' ? message.params.items.map(() => null) : null });
            } else {
                for (const l of this.listeners) l(message);
            }
        }
    }
    write(message) {
        const body = Buffer.from(JSON.stringify(message));
        this.child.stdin.write(`Content-Length: ${body.length}\r\n\r\n`);
        this.child.stdin.write(body);
    }
    notify(method, params) {
        this.write({ jsonrpc: '2.0', method, params });
    }
    ask(method, params) {
        const id = ++this.id;
        const answer = new Promise(r => this.waiting.set(id, r));
        this.write({ jsonrpc: '2.0', id, method, params });
        return answer;
    }
    next(test, ms = 20000) {
        return new Promise((resolve, reject) => {
            const timer = setTimeout(() => {
                this.listeners.delete(look);
                reject(new Error('no answer'));
            }, ms);
            const look = m => {
                if (!test(m)) return;
                clearTimeout(timer);
                this.listeners.delete(look);
                resolve(m);
            };
            this.listeners.add(look);
        });
    }
    /** The process and those it has started: a launcher does its work in a child. */
    pids() {
        const parents = new Map();
        for (const pid of readdirSync('/proc')) {
            try {
                if (/^\d+$/.test(pid)) parents.set(Number(pid), Number(stat(pid)[1]));
            } catch {
                // It has ended meanwhile.
            }
        }
        const own = [this.child.pid];
        for (const pid of own) for (const [child, parent] of parents) if (parent === pid) own.push(child);
        return own;
    }
    /** CPU seconds so far, all threads. */
    cpu() {
        return this.pids().reduce((sum, pid) => sum + (Number(stat(pid)[11]) + Number(stat(pid)[12])) / 100, 0);
    }
    peak() {
        return this.pids().reduce((sum, pid) => sum + Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024, 0);
    }
    async stop() {
        await Promise.race([this.ask('shutdown', null), sleep(1000)]);
        this.notify('exit');
        await Promise.race([new Promise(r => this.child.on('exit', r)), sleep(1000)]);
        this.child.kill('SIGKILL');
    }
}

async function measure({ name, command, args, env, language, uri, text, pull }) {
    const start = performance.now();
    const c = new Client(command, args, env);
    await c.ask('initialize', { processId: process.pid, rootUri: null, capabilities: { textDocument: { publishDiagnostics: { versionSupport: true }, diagnostic: {}, hover: {} }, workspace: { configuration: true } }, initializationOptions: { today: '2026-06-15' } });
    c.notify('initialized', {});
    let version = 1;
    const published = v => m => m.method === 'textDocument/publishDiagnostics' && m.params.uri === uri && (m.params.version === undefined || m.params.version === v);
    const answered = v => (pull ? c.ask('textDocument/diagnostic', { textDocument: { uri } }) : c.next(published(v)));
    const open = pull ? undefined : answered(1);
    c.notify('textDocument/didOpen', { textDocument: { uri, languageId: language, version, text } });
    await (open ?? answered(1));
    const first = performance.now() - start;
    const lines = text.split('\n');
    let seed = 12345;
    const random = n => (seed = (seed * 1103515245 + 12345) & 0x7fffffff) % n;
    const spot = () => {
        for (;;) {
            const line = random(lines.length);
            if (lines[line].length > 2) return { line, character: 1 + random(lines[line].length - 1) };
        }
    };
    const edit = (range, put) => {
        version++;
        const wait = pull ? undefined : answered(version);
        c.notify('textDocument/didChange', { textDocument: { uri, version }, contentChanges: [{ range, text: put }] });
        return wait ?? answered(version);
    };
    const pair = async walls => {
        const at = spot();
        for (const [range, put] of [[{ start: at, end: at }, 'k'], [{ start: at, end: { ...at, character: at.character + 1 } }, '']]) {
            const t = performance.now();
            await edit(range, put);
            walls?.push(performance.now() - t);
        }
    };
    for (let i = 0; i < 30; i++) await pair();
    const walls = [];
    const cpu = c.cpu();
    for (let i = 0; i < EDITS / 2; i++) await pair(walls);
    const perEdit = ((c.cpu() - cpu) * 1000) / EDITS;
    const hovers = [];
    for (let i = 0; i < 30; i++) {
        const at = spot();
        const done = edit({ start: at, end: at }, 'k');
        const t = performance.now();
        await c.ask('textDocument/hover', { textDocument: { uri }, position: at });
        hovers.push(performance.now() - t);
        await done;
        await edit({ start: at, end: { ...at, character: at.character + 1 } }, '');
    }
    // A burst beside one key at the same place, after the same pause.
    const bursts = [];
    const keys = [];
    for (let b = 0; b < (quick ? 4 : 16); b++) {
        const at = spot();
        const press = i => {
            const p = { ...at, character: at.character + i };
            const done = edit({ start: p, end: p }, 'k');
            done.catch(() => {});
            return done;
        };
        const clear = n => edit({ start: at, end: { ...at, character: at.character + n } }, '');
        const timed = async (list, done) => {
            const t = performance.now();
            await done;
            list.push(performance.now() - t);
        };
        await sleep(30);
        await timed(keys, press(0));
        await clear(1);
        for (let i = 0; i < 19; i++) {
            press(i);
            await sleep(30);
        }
        await timed(bursts, press(19));
        await clear(20);
    }
    const peak = c.peak();
    await c.stop();
    return {
        name, lines: lines.length, startMs: round(first), editP50: round(quantile(walls, 0.5)), editP95: round(quantile(walls, 0.95)), cpuPerEdit: round(perEdit),
        hoverAfterEditP95: round(quantile(hovers, 0.95)), keyAfterPauseP50: round(quantile(keys, 0.5)), burstP50: round(quantile(bursts, 0.5)), peakMB: Math.round(peak),
    };
}

function typescriptText(lines) {
    const out = [];
    for (let k = 0; out.length < lines; k++) {
        out.push(`interface Part${k} { readonly name: string; bore: number; length?: number; like?: Part${Math.max(0, k - 1)} }`, `function drop${k}(p: Part${k}, flow: number): number {`,
            `    const area = (Math.PI / 4) * p.bore ** 2;`, `    const speed = flow / area;`, `    return 0.5 * speed ** 2 * (p.length ?? ${k}) + ${k ? `drop${k - 1}(p, flow)` : '0'};`, `}`, '');
    }
    return out.slice(0, lines).join('\n');
}
function bareText(lines) {
    const out = [];
    for (let k = 0; out.length < lines; k++) {
        out.push(`part p${k}${k ? ` like p${k - 1}` : ''} {`, `  bore: ${8 + (k % 5)} mm`, `  length: ${k % 9} m`, `  level: 200 mm`, `  rating: ${k % 20} bar`, '}', `note p${k} "line ${k}"`, '');
    }
    return out.slice(0, lines).join('\n');
}
function ensureTools() {
    mkdirSync(cache, { recursive: true });
    if (!existsSync(path.join(cache, 'node_modules/typescript'))) {
        writeFileSync(path.join(cache, 'package.json'), '{"private":true}');
        execFileSync('npm', ['install', '--no-audit', '--no-fund', '--silent', 'typescript@7.0.2'], { cwd: cache, stdio: ['ignore', 'ignore', 'inherit'] });
    }
}

const results = [];
const bundle = path.join(cache, 'engine.mjs');
mkdirSync(cache, { recursive: true });
const { build } = await import('esbuild');
await build({ stdin: { contents: "export { Analyst } from './language/index.js'; export { quantityOf } from './language/quantities/index.js'; export { Workings } from './language/quantities/workings.js';", resolveDir: root, loader: 'ts' }, bundle: true, platform: 'node', format: 'esm', outfile: bundle, logLevel: 'warning', alias: { mathjs: path.join(root, 'node_modules/mathjs/lib/esm/type/unit/Unit.js') }, banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" } });
const { Analyst, quantityOf, Workings } = await import(pathToFileURL(bundle).href);
const engine = [];
for (const lines of [60, 200, 2000]) {
    let text = rigOf(lines);
    const analyst = new Analyst(() => text);
    const cold = performance.now();
    const { findings, rig } = analyst.analyse('a.rig', { today: '2026-06-15' });
    const first = performance.now() - cold;
    const base = text;
    const edits = quick ? 60 : 300;
    const timed = (times, work) => {
        const t = performance.now();
        const result = work();
        times.push(performance.now() - t);
        return result;
    };
    const read = () => analyst.analyse('a.rig', { today: '2026-06-15' });
    // Edits that touch no number of the stack.
    const same = [];
    for (let i = 0; i < edits; i++) {
        text = `${base}# ${i}\n`;
        timed(same, read);
    }
    // Edits that make everything be solved again; then every number of the rig, and then the bounds of all of them.
    const changed = [];
    const numbers = [];
    const bounds = [];
    /** All numbers of the rig worked out with nothing kept, read already; with the bounds of all of them. */
    const whole = [];
    const wholeBounds = [];
    let count = 0;
    for (let i = 0; i < edits; i++) {
        text = base.replace('gap:              2 mm', `gap:              2.${100 + i} mm`);
        const { workings } = timed(changed, read);
        const parts = [...workings.rig.parts.values()].filter(p => !p.pattern);
        const all = timed(numbers, () => parts.flatMap(p => [...quantityOf(p.kindWord).keys()].map(name => workings.quantity(p, name)))).filter(r => r && r.value === r.value);
        timed(bounds, () => all.reduce((sum, r) => sum + r.high - r.low, 0));
        count = all.length;
        const afresh = timed(whole, () => {
            const w = new Workings(workings.rig);
            w.workOutAll();
            return parts.flatMap(p => [...quantityOf(p.kindWord).keys()].map(name => w.quantity(p, name)));
        }).filter(r => r && r.value === r.value);
        timed(wholeBounds, () => afresh.reduce((sum, r) => sum + r.high - r.low, 0));
    }
    const row = {
        engine: lines, lines: base.split('\n').length, parts: rig.parts.size, findings: findings.length, firstMs: round(first), unrelatedEditP50: round(quantile(same, 0.5)), unrelatedEditP95: round(quantile(same, 0.95)),
        physicsEditP50: round(quantile(changed, 0.5)), physicsEditP95: round(quantile(changed, 0.95)), numbers: count, otherNumbersP50: round(quantile(numbers, 0.5)), allBoundsP50: round(quantile(bounds, 0.5)), wholeP50: round(quantile(whole, 0.5)), wholeWithBoundsP50: round(quantile(whole, 0.5) + quantile(wholeBounds, 0.5)),
    };
    engine.push(row);
    console.log(JSON.stringify(row));
}
// Rigs made for the bench, dense and with faults in them; and two of the examples, as a maker writes.
const texts = [...[60, 200, 2000].map(lines => ({ text: rigOf(lines), of: 'made' })), ...['potters-burner.rig', 'jeweller-torch-store.rig'].map(name => ({ text: exampleText(name), of: name }))];
const { execArgv, env } = JSON.parse(readFileSync(path.join(root, 'extension/server-process.json'), 'utf8'));
const ratios = [];
const bare = path.join(cache, 'bare.mjs');
if (wanted('ts')) ensureTools();
if (wanted('langium')) await build({ entryPoints: [path.join(import.meta.dirname, 'bare-langium.mjs')], bundle: true, platform: 'node', format: 'esm', outfile: bare, logLevel: 'warning', inject: [path.join(root, 'language/grammar/polyfill.mjs')], banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" } });
for (const { text, of } of texts) {
    const lines = text.split('\n').length;
    const cpu = {};
    const add = async (key, spec) => {
        try {
            const { name, ...r } = await measure(spec);
            cpu[key] = r.cpuPerEdit;
            results.push({ name, of, ...r });
            console.log(JSON.stringify(results.at(-1)));
        } catch (e) {
            console.log(`${spec.name}: ${e.message}`);
        }
    };
    // Started as the desktop client starts it.
    if (wanted('ours')) await add('ours', { name: 'rigwright', command: process.execPath, args: [...execArgv, path.join(root, 'server/out/stdio.cjs'), '--stdio'], env, language: 'rig', uri: 'file:///bench/a.rig', text });
    if (wanted('ts')) await add('ts', { name: 'typescript 7 native', command: process.execPath, args: [path.join(cache, 'node_modules/typescript/bin/tsc'), '--lsp', '--stdio'], language: 'typescript', uri: 'file:///bench/a.ts', text: typescriptText(lines), pull: true });
    if (wanted('langium')) {
        await add('sparse', { name: 'bare langium, short lines', command: process.execPath, args: [bare, '--stdio'], language: 'bare', uri: 'file:///bench/a.bare', text: bareText(lines) });
        await add('same', { name: 'bare langium, the same text', command: process.execPath, args: [bare, '--stdio', '--rig'], language: 'bare', uri: 'file:///bench/a.bare', text });
    }
    ratios.push({ of, lines, toNativeTypeScript: round(cpu.ours / cpu.ts), toBareLangiumOnShortLines: round(cpu.ours / cpu.sparse), toBareLangiumOnTheSameText: round(cpu.ours / cpu.same) });
}
console.table(results);
console.table(ratios);
if (!only) keepResults({ on: new Date().toISOString().slice(0, 10), node: process.version, cores: os.cpus().length, edits: EDITS, engine, protocol: results, cpuRatios: ratios });
process.exit(0);

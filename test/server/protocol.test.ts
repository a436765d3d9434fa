/** The server over stdio, as any editor would use it. */
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import { ErrorCodes, LSPErrorCodes, type Hover, type MarkupContent } from 'vscode-languageserver';
import { connect, connectRaw, plain, sleep, type ConnectOptions, type TestClient } from './client.mjs';
import { serverInputs } from './server-bundle.mjs';

const uri = 'file:///rigs/a.rig';
const rig = 'rig "A", idea\nsupply { sort: bench   voltage: 24 V   current-limit: 10 A }\nstack { cells: 10   wetted: 80 x 100 mm }\nlye { stenght: 25 wt% }\nbubbler b\npath hydrogen: stack -> b -> outdoors\n';
const point = (line: number, character: number) => ({ start: { line, character }, end: { line, character } });
const code = (p: Promise<unknown>) => p.then(() => 'answered', (e: { code: number }) => e.code);

const clients: TestClient[] = [];
const folders: string[] = [];
async function start(options?: ConnectOptions) {
    const c = await connect(options);
    clients.push(c);
    return c;
}
function folder(files: Record<string, string>) {
    const dir = mkdtempSync(path.join(os.tmpdir(), 'rigwright-protocol-'));
    folders.push(dir);
    for (const [name, text] of Object.entries(files)) writeFileSync(path.join(dir, name), text);
    return { dir, uri: (name: string) => pathToFileURL(path.join(dir, name)).href };
}
afterEach(async () => {
    for (const c of clients.splice(0)) {
        await c.stop();
        expect(c.trouble, 'stdout carries the protocol only, and nothing went wrong').toEqual([]);
        expect(c.stderr).toBe('');
    }
    for (const dir of folders.splice(0)) rmSync(dir, { recursive: true, force: true });
});

describe('findings', () => {
    it('carry the version that they belong to', async () => {
        const c = await start();
        await c.open(uri, rig);
        expect(plain(await c.findings(uri)).filter(f => f.includes('unknown-word'))).toEqual(['3:6-3:13 1 unknown-word lye has no stenght; did you mean strength?']);
        expect(c.published(uri).at(-1)!.version).toBe(1);
    });
    it('after a burst of typing are those of a server that sees the last text only', async () => {
        const c = await start();
        await c.open(uri, rig);
        await c.findings(uri);
        for (let i = 0; i < 300; i++) {
            await c.edit(uri, { range: point(2, 15), text: '1' });
            if (i % 20 === 0) await sleep(1);
        }
        await c.edit(uri, { range: { start: { line: 2, character: 15 }, end: { line: 2, character: 315 } }, text: '' });
        await c.edit(uri, { range: point(2, 17), text: '0' });
        const got = plain(await c.findings(uri));
        const fresh = await start();
        await fresh.open(uri, c.docs.get(uri)!.text);
        expect(got).toEqual(plain(await fresh.findings(uri)));
        expect(got.length).toBeGreaterThan(1);
        const versions = c.published(uri).map(p => p.version!);
        expect(versions).toEqual([...versions].sort((a, b) => a - b));
        expect(new Set(versions).size).toBe(versions.length);
        expect(versions.at(-1)).toBe(303);
    });
    it('of a burst that arrives in one piece are told once', async () => {
        const raw = await connectRaw();
        const told = () => raw.messages.filter(m => m.method === 'textDocument/publishDiagnostics') as { params: { version: number } }[];
        raw.write({ method: 'textDocument/didOpen', params: { textDocument: { uri, languageId: 'rig', version: 1, text: rig } } });
        await raw.until(() => told().length === 1);
        raw.write(...Array.from({ length: 50 }, (_, i) => ({ method: 'textDocument/didChange', params: { textDocument: { uri, version: i + 2 }, contentChanges: [{ range: point(2, 15), text: '1' }] } })));
        await raw.until(() => told().at(-1)!.params.version === 51);
        expect(told().map(t => t.params.version)).toEqual([1, 51]);
        raw.stop();
    });
    it('count UTF-16 units', async () => {
        const c = await start();
        await c.open(uri, 'rig "😀 °C", idea\nbag { place: "😀"   voluem: 80 L }   # °\n');
        expect(plain(await c.findings(uri)).filter(f => f.includes('unknown-word'))[0]).toMatch(/^1:20-1:26 /);
        await c.edit(uri, { range: point(1, 20), text: '😀 ' });
        await c.edit(uri, { range: { start: { line: 1, character: 20 }, end: { line: 1, character: 23 } }, text: '' });
        expect(plain(await c.findings(uri)).filter(f => f.includes('unknown-word'))[0]).toMatch(/^1:20-1:26 /);
    });
    it('go when the file is closed', async () => {
        const c = await start();
        await c.open(uri, rig);
        await c.findings(uri);
        await c.close(uri);
        await sleep(100);
        expect(c.published(uri).at(-1)!.diagnostics).toEqual([]);
    });
    it('of other files of a rig come in the same breath, and only when they change', async () => {
        const f = folder({ 'rig.rig': `${rig}use "gas.rig"\n`, 'gas.rig': 'bag { voluem: 80 L }\npath hydrogen: b -> bag\n' });
        const c = await start();
        await c.open(f.uri('rig.rig'), `${rig}use "gas.rig"\n`);
        const main = plain(await c.findings(f.uri('rig.rig')));
        expect(main.join()).not.toContain('file-not-found');
        expect(c.published(f.uri('rig.rig'))).toHaveLength(1);
        expect(plain(await c.findings(f.uri('gas.rig'))).join()).toContain('bag has no voluem');
        await c.edit(f.uri('rig.rig'), { range: point(0, 0), text: '# a remark\n' });
        await c.findings(f.uri('rig.rig'));
        expect(c.published(f.uri('gas.rig'))).toHaveLength(1);
    });
    it('of a page opened alone are those in its rig, which is found beside it', async () => {
        const f = folder({ 'rig.rig': `${rig}use "gas.rig"\n`, 'gas.rig': '' });
        const c = await start();
        await c.open(f.uri('gas.rig'), 'bag { volume: 80 L }\npath hydrogen: b -> bagg\n');
        expect(plain(await c.findings(f.uri('gas.rig'))).join()).toContain('A part bagg does not exist; did you mean bag?');
        expect(plain(await c.findings(f.uri('rig.rig'))).join()).toContain('stenght');
    });
    it('follow a file that changes on disk, for clients that watch none', async () => {
        const f = folder({ 'shelf.rig': 'library "S"\n' });
        const c = await start();
        const text = `${rig}use "shelf.rig"\nbag mine like big\n`;
        await c.open(f.uri('rig.rig'), text);
        expect(plain(await c.findings(f.uri('rig.rig'))).join()).toContain('A part big does not exist');
        writeFileSync(path.join(f.dir, 'shelf.rig'), 'library "S"\nbag big { volume: 1 L }\n');
        await c.tell('textDocument/didSave', { textDocument: { uri: f.uri('rig.rig') } });
        await sleep(300);
        expect(plain(await c.findings(f.uri('rig.rig'))).join()).not.toContain('A part big does not exist');
    });
    it('never flicker while a text is on its way from the client', async () => {
        const asked: string[] = [];
        const c = await start({ options: { client: 'browser' }, onReadFile: async p => {
            asked.push(p.uri);
            await sleep(120);
            return p.uri.endsWith('shelf.rig') ? { text: 'library "S"\nbag big { volume: 1 L }\n' } : { missing: true };
        } });
        await c.open('memfs:/w/a.rig', `${rig}use "shelf.rig"\nuse "none.rig"\nbag mine like big\n`);
        const told = plain(await c.findings('memfs:/w/a.rig')).join();
        expect(asked.sort()).toEqual(['memfs:/w/none.rig', 'memfs:/w/shelf.rig']);
        expect(told).toContain('There is no file none.rig');
        expect(told).not.toContain('shelf.rig');
        expect(c.published('memfs:/w/a.rig')).toHaveLength(1);
    });
    it('are pulled by clients that cannot be pushed to, with an id for unchanged ones', async () => {
        const c = await start({ capabilities: { textDocument: { diagnostic: {} } } });
        await c.open(uri, rig);
        const first = await c.ask('textDocument/diagnostic', { textDocument: { uri } });
        expect(plain(first.items).join()).toContain('stenght');
        expect(await c.ask('textDocument/diagnostic', { textDocument: { uri }, previousResultId: first.resultId })).toEqual({ kind: 'unchanged', resultId: first.resultId });
        await c.edit(uri, { range: { start: { line: 3, character: 6 }, end: { line: 3, character: 13 } }, text: 'strength' });
        const second = await c.ask('textDocument/diagnostic', { textDocument: { uri }, previousResultId: first.resultId });
        expect(second.kind).toBe('full');
        expect(plain(second.items).join()).not.toContain('stenght');
        expect(c.published(uri)).toEqual([]);
    });
});

describe('requests', () => {
    it('in the middle of a burst are answered for the text on screen', async () => {
        const c = await start();
        await c.open(uri, rig);
        const asked: Promise<Hover | null>[] = [];
        for (let i = 0; i < 50; i++) {
            await c.edit(uri, { range: point(0, 0), text: '# x\n' });
            asked.push(c.ask('textDocument/hover', c.at(uri, 3 + i, 10)));
        }
        const answers = await Promise.all(asked);
        answers.forEach((h, i) => {
            expect((h!.contents as MarkupContent).value).toContain('stack.cells');
            expect(h!.range!.start.line).toBe(3 + i);
        });
    });
    it('that are cancelled end at once, and the server goes on', async () => {
        const raw = await connectRaw();
        const answer = (id: number) => raw.messages.find(m => m.id === id && !m.method);
        raw.write({ method: 'textDocument/didOpen', params: { textDocument: { uri, languageId: 'rig', version: 1, text: rig } } });
        const ids = Array.from({ length: 40 }, (_, i) => i + 1);
        raw.write(...ids.map(id => ({ id, method: 'textDocument/semanticTokens/full', params: { textDocument: { uri } } })), ...ids.map(id => ({ method: '$/cancelRequest', params: { id } })));
        raw.write({ id: 99, method: 'textDocument/hover', params: { textDocument: { uri }, position: { line: 2, character: 10 } } });
        await raw.until(() => !!answer(99) && ids.every(answer));
        const cancelled = ids.filter(id => answer(id)!.error?.code === LSPErrorCodes.RequestCancelled);
        // The first may have been begun.
        expect(cancelled.length).toBeGreaterThanOrEqual(39);
        expect(answer(99)!.result).toBeTruthy();
        raw.stop();
    });
    it('that make no sense are refused or answered with nothing, and do no harm', async () => {
        const c = await start();
        expect(await code(c.ask('rigwright/no-such-thing', {}))).toBe(ErrorCodes.MethodNotFound);
        expect(await c.ask('textDocument/hover', c.at('file:///never/opened.rig', 0, 0))).toBeNull();
        expect(await c.ask('rigwright/explain', {})).toBeNull();
        expect(await c.ask('rigwright/assumptions', { uri: 'file:///never/opened.rig' })).toBeNull();
        await c.open(uri, '');
        expect(await c.findings(uri)).toEqual([]);
        expect(await c.ask('textDocument/hover', c.at(uri, 99, 99))).toBeNull();
        for (const method of ['completion', 'definition', 'references', 'documentHighlight']) expect(await code(c.ask(`textDocument/${method}`, { ...c.at(uri, 99, 99), context: { includeDeclaration: true } }))).toBe('answered');
        expect(await code(c.ask('textDocument/prepareRename', c.at(uri, 0, 0)))).toBe(LSPErrorCodes.RequestFailed);
        await c.edit(uri, { range: { start: { line: 5, character: 5 }, end: { line: 9, character: 9 } }, text: 'bag { volume: 1 L }' });
        await c.findings(uri);
    });
    it('of the ordinary sort are all answered on a whole rig', async () => {
        const c = await start();
        await c.open(uri, rig);
        const doc = { textDocument: { uri } };
        const at = c.at(uri, 5, 25);
        const whole = { ...doc, range: { start: { line: 0, character: 0 }, end: { line: 9, character: 0 } } };
        const answer = {
            completion: await c.ask('textDocument/completion', at), definition: await c.ask('textDocument/definition', at), references: await c.ask('textDocument/references', { ...at, context: { includeDeclaration: true } }),
            highlight: await c.ask('textDocument/documentHighlight', at), symbols: await c.ask('textDocument/documentSymbol', doc), names: await c.ask('workspace/symbol', { query: 'stack' }),
            folds: await c.ask('textDocument/foldingRange', doc), selection: await c.ask('textDocument/selectionRange', { ...doc, positions: [at.position] }), tokens: await c.ask('textDocument/semanticTokens/range', whole),
            hints: await c.ask('textDocument/inlayHint', whole), lenses: await c.ask('textDocument/codeLens', doc), format: await c.ask('textDocument/formatting', { ...doc, options: { tabSize: 2, insertSpaces: true } }),
            part: await c.ask('textDocument/rangeFormatting', { ...whole, options: { tabSize: 2, insertSpaces: true } }), actions: await c.ask('textDocument/codeAction', { ...doc, range: point(3, 8), context: { diagnostics: [] } }),
            rename: await c.ask('textDocument/rename', { ...at, newName: 'wash' }), explain: await c.ask('rigwright/explain', { name: 'stack' }), templates: await c.ask('rigwright/templates', {}),
            quantities: await c.ask('rigwright/quantities', { uri }), assumptions: await c.ask('rigwright/assumptions', { uri }), folder: await c.ask('rigwright/checkFolder', { files: [{ uri, text: rig }] }),
        };
        for (const [what, got] of Object.entries(answer)) expect(got, what).toBeTruthy();
        for (const what of ['completion', 'references', 'highlight', 'symbols', 'names', 'hints', 'lenses', 'actions', 'templates'] as const) expect(answer[what].length, what).toBeGreaterThan(0);
        expect(answer.rename.changes[uri]).toHaveLength(2);
        expect(answer.folder).toMatchObject({ files: 1, errors: expect.any(Number) });
        expect(answer.quantities).toMatchObject({ version: expect.any(String), quantities: expect.any(Array), assumptions: expect.any(Array) });
        const links = await c.ask('textDocument/documentLink', doc);
        expect(links).toEqual([]);
    });
});

describe('hello', () => {
    it('announces what it has, in plain forms', async () => {
        const c = await start();
        expect(c.initialized.serverInfo).toMatchObject({ name: 'rigwright' });
        expect(c.initialized.capabilities).toMatchObject({
            positionEncoding: 'utf-16', hoverProvider: true, definitionProvider: true, referencesProvider: true, documentHighlightProvider: true, documentSymbolProvider: true, workspaceSymbolProvider: true,
            foldingRangeProvider: true, selectionRangeProvider: true, documentFormattingProvider: true, documentRangeFormattingProvider: true, renameProvider: { prepareProvider: true }, inlayHintProvider: { resolveProvider: true },
        });
        expect(c.initialized.capabilities.diagnosticProvider).toBeUndefined();
    });
    it('is content with a client that announces nothing', async () => {
        const c = await start({ capabilities: {} });
        await c.open(uri, rig);
        expect(plain(await c.findings(uri)).join()).toContain('stenght');
        expect(c.initialized.capabilities.renameProvider).toBe(true);
        expect((await c.ask('textDocument/hover', c.at(uri, 2, 10))).contents.kind).toBe('plaintext');
    });
    it('takes settings while it runs', async () => {
        const c = await start();
        const text = `${rig}allow oxygen-kept until 2026-12-31 by Ada because "test"\n`;
        await c.open(uri, text);
        expect(plain(await c.findings(uri)).join()).not.toContain('permission-ended');
        const hints = () => c.ask('textDocument/inlayHint', { textDocument: { uri }, range: { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } } });
        expect((await hints()).length).toBeGreaterThan(0);
        await c.tell('workspace/didChangeConfiguration', { settings: { rigwright: { today: '2027-02-01', hints: false } } });
        expect(await hints()).toEqual([]);
        await sleep(200);
        expect(plain(await c.findings(uri)).join()).toContain('This permission ended on 2026-12-31');
    });
    it('works without the word --stdio too', async () => {
        const c = await start({ args: [] });
        await c.open(uri, rig);
        expect(plain(await c.findings(uri)).join()).toContain('stenght');
    });
});

describe('farewell', () => {
    it('after shutdown and exit: code 0', async () => {
        const c = await start();
        await c.ask('shutdown');
        await c.tell('exit');
        expect(await c.ended).toBe(0);
    });
    it('after exit alone: code 1', async () => {
        const c = await start();
        await c.tell('exit');
        expect(await c.ended).toBe(1);
    });
    it('when its editor closes the pipe', async () => {
        const c = await start();
        c.child.stdin!.end();
        expect(await Promise.race([c.ended, sleep(5000).then(() => 'still there')])).not.toBe('still there');
    });
    it('when its editor has vanished', { timeout: 15_000 }, async () => {
        // A process id above all that exist.
        const c = await start({ parent: 2 ** 22 - 7 });
        expect(await Promise.race([c.ended, sleep(10_000).then(() => 'still there')])).not.toBe('still there');
    });
});

describe('one copy', () => {
    it('of the JSON-RPC library in the bundle and among the packages: two would break cancellation', async () => {
        const inputs = await serverInputs();
        const copies = new Set(inputs.map(i => /^(.*node_modules\/vscode-jsonrpc)\//.exec(i)?.[1]).filter(Boolean));
        // The packages may be a link to another folder.
        expect([...copies].map(c => c!.replace(/^.*?(?=node_modules\/)/, ''))).toEqual(['node_modules/vscode-jsonrpc']);
        const root = path.resolve(import.meta.dirname, '../..', 'node_modules');
        const found = (dir: string): string[] => readdirSync(dir, { withFileTypes: true }).flatMap(d => {
            if (!d.isDirectory()) return [];
            const at = path.join(dir, d.name);
            if (d.name.startsWith('@')) return found(at);
            return [...(d.name === 'vscode-jsonrpc' ? [path.relative(root, at)] : []), ...(readdirSync(at).includes('node_modules') ? found(path.join(at, 'node_modules')) : [])];
        });
        expect(found(root)).toEqual(['vscode-jsonrpc']);
    });
});

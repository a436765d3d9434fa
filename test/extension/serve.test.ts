// Who may reach the folder that the light workbench shows, and what of it.
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import http from 'node:http';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../../extension/workbench/serve.mjs';

const top = mkdtempSync(path.join(os.tmpdir(), 'rigwright-serve-'));
const folder = path.join(top, 'rigs');
let server: Awaited<ReturnType<typeof serve>>;
let cookie: string;

interface Answer {
    status: number;
    headers: http.IncomingHttpHeaders;
    text: string;
}

/** A request as any program on this computer could make it. */
function ask(target: string, { method = 'GET', headers = {}, body = '' }: { method?: string; headers?: Record<string, string>; body?: string } = {}): Promise<Answer> {
    const [hostname, port] = server.host.split(':');
    return new Promise((resolve, reject) => {
        const request = http.request({ hostname, port, path: target, method, headers: { host: server.host, ...headers } }, response => {
            let text = '';
            response.setEncoding('utf8').on('data', chunk => (text += chunk)).on('end', () => resolve({ status: response.statusCode!, headers: response.headers, text }));
        });
        request.on('error', reject).end(body);
    });
}
const inside = (target: string, options: Parameters<typeof ask>[1] = {}) =>
    ask(target, { ...options, headers: { cookie, origin: `http://${server.host}`, ...options.headers } });
const file = (at: string) => `/fs/file?p=${encodeURIComponent(at)}`;

beforeAll(async () => {
    const page = path.join(top, 'editor', 'out', 'vs', 'code', 'browser', 'workbench');
    mkdirSync(page, { recursive: true });
    writeFileSync(path.join(page, 'workbench.html'), '<head></head>{{WORKBENCH_WEB_CONFIGURATION}}');
    mkdirSync(folder);
    writeFileSync(path.join(folder, 'a.rig'), 'rig "A"\n');
    writeFileSync(path.join(top, 'private.txt'), 'not for the page');
    symlinkSync(path.join(top, 'private.txt'), path.join(folder, 'link.rig'));
    symlinkSync(path.join(top, 'not-there.txt'), path.join(folder, 'nowhere.rig'));
    symlinkSync(top, path.join(folder, 'up'));
    server = await serve({ folder, extensionFolder: path.join(top, 'editor'), editor: path.join(top, 'editor'), settings: { 'rigwright.today': '2026-06-15' } });
    const entered = await ask(new URL(server.address()).pathname + new URL(server.address()).search);
    cookie = entered.headers['set-cookie']![0].split(';')[0];
});
afterAll(() => {
    server.stop();
    rmSync(top, { recursive: true, force: true });
});

describe('the gate', () => {
    it('listens on this computer only', () => {
        expect(server.host).toMatch(/^127\.0\.0\.1:\d+$/);
    });

    it('lets nobody in without the address', async () => {
        expect((await ask('/')).status).toBe(403);
        expect((await ask(file('/rigs/a.rig'))).status).toBe(403);
        expect((await ask('/?token=0123456789abcdef0123456789abcdef')).status).toBe(403);
    });

    it('gives an address that works once', async () => {
        const { pathname, search } = new URL(server.address());
        const first = await ask(pathname + search);
        expect(first.status).toBe(302);
        expect(first.headers['set-cookie']![0]).toMatch(/HttpOnly; SameSite=Strict/);
        const second = await ask(pathname + search);
        expect(second.status).toBe(403);
        expect(second.text).toContain('has been used');
    });

    it('refuses another host name, even with the cookie', async () => {
        expect((await inside('/', { headers: { host: 'rig.example:80' } })).status).toBe(403);
    });

    it('refuses writing for a page of another origin', async () => {
        const put = { method: 'PUT', body: 'taken over' };
        expect((await inside(file('/rigs/a.rig'), { ...put, headers: { origin: 'http://127.0.0.1:1' } })).status).toBe(403);
        expect((await ask(file('/rigs/a.rig'), { ...put, headers: { cookie } })).status).toBe(403);
        expect(readFileSync(path.join(folder, 'a.rig'), 'utf8')).toBe('rig "A"\n');
    });

    it('hands the settings to the page', async () => {
        const { status, text } = await inside('/');
        expect(status).toBe(200);
        expect(text).toContain('&quot;rigwright.today&quot;:&quot;2026-06-15&quot;');
    });
});

describe('the folder', () => {
    it('reads and writes the real files', async () => {
        expect((await inside(file('/rigs/a.rig'))).text).toBe('rig "A"\n');
        expect((await inside(file('/rigs/new/b.rig'), { method: 'PUT', body: 'rig "B"\n' })).status).toBe(200);
        expect(readFileSync(path.join(folder, 'new', 'b.rig'), 'utf8')).toBe('rig "B"\n');
        expect((await inside('/fs/move?p=%2Frigs%2Fnew%2Fb.rig&to=%2Frigs%2Fc.rig', { method: 'POST' })).status).toBe(200);
        expect((await inside(file('/rigs/c.rig'))).text).toBe('rig "B"\n');
        expect((await inside(file('/rigs/c.rig'), { method: 'DELETE' })).status).toBe(200);
        expect((await inside(file('/rigs/c.rig'))).status).toBe(404);
    });

    it.each([
        '/rigs/../private.txt', '/rigs/link.rig', '/rigs/up/private.txt', '/private.txt', '/etc/passwd', '/rigs/%2e%2e/private.txt', '/rigsx/a.rig', '/rigs/new/../../private.txt',
    ])('shows nothing outside: %s', async at => {
        const answer = await inside(file(at));
        expect([403, 404]).toContain(answer.status);
        expect(answer.text).not.toContain('not for the page');
    });

    it('writes and deletes nothing outside, nor the folder itself', async () => {
        for (const at of ['/rigs/up/private.txt', '/rigs/link.rig', '/rigs/nowhere.rig', '/rigs/../private.txt', '/rigs', '/rigs/']) {
            expect([403, 404]).toContain((await inside(file(at), { method: 'PUT', body: 'gone' })).status);
            expect([403, 404]).toContain((await inside(file(at), { method: 'DELETE' })).status);
        }
        expect((await inside('/fs/move?p=%2Frigs%2Fa.rig&to=%2Frigs%2Fup%2Fa.rig', { method: 'POST' })).status).toBe(403);
        expect(existsSync(path.join(top, 'not-there.txt'))).toBe(false);
        expect(readFileSync(path.join(top, 'private.txt'), 'utf8')).toBe('not for the page');
        expect(readFileSync(path.join(folder, 'a.rig'), 'utf8')).toBe('rig "A"\n');
    });

    it('serves no file beside the editor and the extension', async () => {
        for (const at of ['/static/../../private.txt', '/static/%2e%2e/private.txt', '/rigwright/..%2f..%2fprivate.txt', '/package.json']) {
            const answer = await inside(at);
            expect([403, 404]).toContain(answer.status);
            expect(answer.text).not.toContain('not for the page');
        }
    });

    it('goes on telling of a file that another program replaces by a new one, and of a folder that is new', async () => {
        /** Whether news of a path comes after an act. */
        const heard = async (act: () => void, wanted: string) => {
            await new Promise(resolve => setTimeout(resolve, 200));
            let { number } = JSON.parse((await inside('/fs/changes?since=0')).text);
            act();
            for (let tries = 0; tries < 5; tries++) {
                const answer = JSON.parse((await inside(`/fs/changes?since=${number}`)).text);
                if (answer.changes.some((change: { path: string }) => change.path === wanted)) return true;
                number = answer.number;
            }
            return false;
        };
        const replace = () => {
            writeFileSync(path.join(top, 'new.rig'), 'rig "A3"\n');
            renameSync(path.join(top, 'new.rig'), path.join(folder, 'a.rig'));
        };
        expect(await heard(replace, '/rigs/a.rig')).toBe(true);
        expect(await heard(replace, '/rigs/a.rig'), 'replaced a second time').toBe(true);
        expect(await heard(() => writeFileSync(path.join(folder, 'a.rig'), 'rig "A"\n'), '/rigs/a.rig'), 'written afterwards').toBe(true);
        expect(await heard(() => mkdirSync(path.join(folder, 'shed')), '/rigs/shed')).toBe(true);
        expect(await heard(() => writeFileSync(path.join(folder, 'shed', 'b.rig'), 'rig "B"\n'), '/rigs/shed/b.rig')).toBe(true);
    });
    it('tells what other programs change', async () => {
        const { number } = JSON.parse((await inside('/fs/changes?since=0')).text);
        const news = inside(`/fs/changes?since=${number}`);
        // Before the watcher's first look there may be older news; asked again until it is this file's.
        writeFileSync(path.join(folder, 'a.rig'), 'rig "A2"\n');
        let answer = JSON.parse((await news).text);
        const seen: string[] = answer.changes.map((change: { path: string }) => change.path);
        while (!seen.includes('/rigs/a.rig')) {
            answer = JSON.parse((await inside(`/fs/changes?since=${answer.number}`)).text);
            seen.push(...answer.changes.map((change: { path: string }) => change.path));
        }
        expect(seen).toContain('/rigs/a.rig');
    });
});

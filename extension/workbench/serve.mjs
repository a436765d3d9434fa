// A folder in VS Code's web workbench, with the extension and its server in the browser. Static files and Node's
// built-ins only: nothing here can run a command.
// Careful by default: 127.0.0.1 only, behind gate.mjs, nothing outside the folder; ends by itself when no window has
// been open for a while.
import http from 'node:http';
import { existsSync, lstatSync, readdirSync, readFileSync, realpathSync, watch } from 'node:fs';
import { lstat, mkdir, readFile, readdir, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { makeGate } from './gate.mjs';

const contentTypes = {
    '.html': 'text/html', '.js': 'text/javascript', '.cjs': 'text/javascript', '.mjs': 'text/javascript', '.css': 'text/css',
    '.json': 'application/json', '.svg': 'image/svg+xml', '.ttf': 'font/ttf', '.wasm': 'application/wasm', '.png': 'image/png',
    '.mp3': 'audio/mpeg',
};
const LARGEST_WRITE_BYTES = 50_000_000;
const LONGEST_WAIT_MS = 25_000;
/** As many changes of other programs as are remembered for a window that asks late. */
const KEPT_CHANGES = 1000;

/** A calm workbench: no advertising, no telemetry, no look for news. */
const calm = {
    'workbench.startupEditor': 'none',
    'workbench.tips.enabled': false,
    'workbench.secondarySideBar.defaultVisibility': 'hidden',
    'chat.disableAIFeatures': true,
    'window.commandCenter': false,
    'window.title': '${dirty}${activeEditorShort}${separator}${rootName}',
    'security.workspace.trust.enabled': false,
    'telemetry.telemetryLevel': 'off',
    'extensions.ignoreRecommendations': true,
    'extensions.autoCheckUpdates': false,
    'update.mode': 'none',
};

/**
 * Serves `folder` with the extension of `extensionFolder` in the workbench of `editor`.
 * `open` is a file of the folder to show on the first visit, and `line` the line (from 1) to show of it; `settings` are
 * defaults that the person may change.
 * `onIdle` is called after `idleMinutes` without a window. Gives `address()`, a new way in at each call, and `stop()`.
 */
export async function serve({
    folder, extensionFolder, editor, open, line = 1, settings = {}, port = 0, idleMinutes = 10, onIdle = () => {}, log = () => {},
}) {
    const shown = makeFolder(folder);
    const roots = [
        ['/static/', editor],
        ['/rigwright/', extensionFolder],
        ['/folder-extension/', path.join(import.meta.dirname, 'folder-extension')],
    ];
    let host;
    let gate;
    let lastSeen = Date.now();

    const server = http.createServer(async (request, response) => {
        const send = (status, body = '', type = 'text/plain', headers = {}) => {
            response.writeHead(status, {
                'content-type': type,
                'x-content-type-options': 'nosniff',
                'x-frame-options': 'SAMEORIGIN',
                'referrer-policy': 'no-referrer',
                ...headers,
            });
            response.end(body);
        };
        try {
            const refusal = gate.refuse(request);
            if (refusal) return send(refusal.status, refusal.text, 'text/plain', refusal.headers);
            lastSeen = Date.now();
            const url = new URL(request.url, `http://${host}`);
            const at = decodeURIComponent(url.pathname);
            if (at === '/') return send(200, page(), 'text/html', { 'cache-control': 'no-store' });
            if (at.startsWith('/fs/')) return await answerFolder(request, url, at.slice('/fs/'.length), send);
            for (const [prefix, served] of roots) {
                if (!at.startsWith(prefix)) continue;
                const file = path.join(served, path.normalize('/' + at.slice(prefix.length)));
                return await sendFile(at, file, prefix, send);
            }
            log(`404 ${at}`);
            return send(404);
        } catch (error) {
            log(`${request.method} ${request.url} ${error.code ?? error.stack}`);
            return send(['ENOENT', 'EISDIR', 'ENOTDIR'].includes(error.code) ? 404 : 403);
        }
    });

    async function answerFolder(request, url, verb, send) {
        const answer = shown.verbs[`${request.method} ${verb}`];
        if (!answer) return send(405);
        const body = [];
        let size = 0;
        for await (const chunk of request) {
            size += chunk.length;
            if (size > LARGEST_WRITE_BYTES) return send(413);
            body.push(chunk);
        }
        const result = await answer(url.searchParams.get('p') ?? '/', url.searchParams, Buffer.concat(body));
        const bytes = Buffer.isBuffer(result);
        const type = bytes ? 'application/octet-stream' : 'application/json';
        return send(200, bytes ? result : JSON.stringify(result), type, { 'cache-control': 'no-store' });
    }

    async function sendFile(at, file, prefix, send) {
        let body = await readFile(file);
        if (file.endsWith(path.join('workbench', 'workbench.js'))) body = withoutRemote(body.toString());
        const headers = { 'cache-control': prefix === '/static/' ? 'max-age=3600' : 'no-store' };
        if (at.endsWith('service-worker.js')) headers['service-worker-allowed'] = '/';
        return send(200, body, contentTypes[path.extname(file)] ?? 'application/octet-stream', headers);
    }

    function page() {
        const uri = at => ({ scheme: 'http', authority: host, path: at });
        const inFolder = (...names) => ({ scheme: 'folder', authority: '', path: ['', shown.name, ...names].join('/') });
        const selection = { startLineNumber: line, startColumn: 1 };
        const configuration = {
            folderUri: { $mid: 1, ...inFolder() },
            defaultLayout: open ? { editors: [{ uri: inFolder(open), options: { selection } }] } : undefined,
            additionalBuiltinExtensions: [uri('/folder-extension'), uri('/rigwright')],
            webviewEndpoint: 'static/out/vs/workbench/contrib/webview/browser/pre',
            serverBasePath: '/',
            userDataPath: '/user',
            enableWorkspaceTrust: false,
            isEnabledFileDownloads: true,
            isEnabledFileUploads: true,
            isEnabledCoderGettingStarted: false,
            productConfiguration: {
                enableTelemetry: false,
                nameShort: shown.name,
                nameLong: shown.name,
                rootEndpoint: '.',
                extensionEnabledApiProposals: { 'rigwright.folder': ['fileSearchProvider', 'textSearchProvider'] },
            },
            configurationDefaults: { ...calm, ...settings },
        };
        const text = JSON.stringify(configuration).replaceAll('&', '&amp;').replaceAll('"', '&quot;');
        return readFileSync(path.join(editor, 'out/vs/code/browser/workbench/workbench.html'), 'utf8')
            .replace('{{WORKBENCH_WEB_CONFIGURATION}}', () => text)
            .replaceAll('{{WORKBENCH_WEB_BASE_URL}}', 'static')
            .replace('{{WORKBENCH_AUTH_SESSION}}', '')
            .replace('{{WORKBENCH_NLS_FALLBACK_URL}}', 'static/out/nls.messages.js')
            .replace(/<script[^>]*src="{{WORKBENCH_NLS_URL}}"><\/script>/, '')
            .replaceAll('{{BASE}}', '.')
            .replaceAll('{{VS_BASE}}', '.')
            .replaceAll(/ nonce="{{WORKBENCH_SCRIPT_NONCE}}"/g, '')
            // The setting that hides this entry is heeded only as the person's own setting.
            .replace('</head>', '<style>#chat\\.statusBarEntry { display: none }</style></head>');
    }

    await new Promise((resolve, reject) => server.once('error', reject).listen(port, '127.0.0.1', resolve));
    host = `127.0.0.1:${server.address().port}`;
    gate = makeGate(host);

    const idle = setInterval(() => {
        if (shown.isWatched() || Date.now() - lastSeen < idleMinutes * 60_000) return;
        stop();
        onIdle();
    }, 5000);
    idle.unref();

    function stop() {
        clearInterval(idle);
        shown.stop();
        server.close();
        server.closeAllConnections();
    }
    return { address: gate.address, host, stop };
}

/** This build of the workbench insists on a remote; two places make it do without. Checked, since a new version moves them. */
function withoutRemote(text) {
    const remote = ',remoteAuthority:location.host}';
    const userData = /(get userRoamingDataHome\(\)\{return \w+\(\w+\.file\(this\.userDataPath\)\.with\(\{scheme:\w+\.)vscodeRemote\}/;
    if (!text.includes(remote) || !userData.test(text)) throw new Error('the workbench is not the version that this was written for');
    return text.replace(remote, '}').replace(userData, '$1vscodeUserData}');
}

/** Folders that are large and no place for rigs. */
const unwatched = new Set(['node_modules', '.git']);

/**
 * Watches a folder with all that is in it. Where Node watches a tree file by file, it loses sight of a file that another
 * program has replaced by a new one of the same name, as version control and many editors do: there each folder is
 * watched by itself, which sees both.
 *
 * @param tell what happened ('rename' or 'change') to which file, as seen from the top
 */
function watchTree(top, tell) {
    if (process.platform !== 'linux') {
        const whole = watch(top, { recursive: true }, (kind, file) => file && tell(kind, String(file)));
        whole.on('error', () => {});
        return whole;
    }
    const watchers = new Map();
    const drop = folder => {
        watchers.get(folder)?.close();
        watchers.delete(folder);
    };
    const add = folder => {
        if (watchers.has(folder)) return;
        try {
            const watcher = watch(path.join(top, folder), (kind, file) => {
                if (!file) return;
                const at = path.join(folder, String(file));
                if (watchers.has(at) && !existsSync(path.join(top, at))) drop(at);
                else if (kind === 'rename') addIfFolder(at);
                tell(kind, at);
            });
            watcher.on('error', () => drop(folder));
            watchers.set(folder, watcher);
            for (const entry of readdirSync(path.join(top, folder), { withFileTypes: true })) if (entry.isDirectory() && !unwatched.has(entry.name)) add(path.join(folder, entry.name));
        } catch {
            // It is gone already, or may not be read: then nothing in it is shown either.
        }
    };
    const addIfFolder = at => {
        try {
            // A link is not followed: it may lead outside.
            if (!unwatched.has(path.basename(at)) && lstatSync(path.join(top, at)).isDirectory()) add(at);
        } catch {
            // Gone again.
        }
    };
    add('');
    return { close: () => [...watchers.keys()].forEach(drop) };
}
/** The folder on disk, as the verbs that the workbench's file system asks for. Nothing outside it can be reached. */
function makeFolder(folder) {
    const top = realpathSync(folder);
    const name = path.basename(top);
    const waiting = new Set();
    const changes = [];
    let count = 0;
    let timer;

    const watcher = watchTree(top, (kind, file) => {
        const created = 2, deleted = 3, changed = 1;
        const type = !existsSync(path.join(top, String(file))) ? deleted : kind === 'rename' ? created : changed;
        if (changes.length >= KEPT_CHANGES) changes.shift();
        changes.push({ number: ++count, path: `/${name}/${String(file).split(path.sep).join('/')}`, type });
        clearTimeout(timer);
        timer = setTimeout(() => waiting.forEach(wake => wake()), 50);
    });
    const refusal = message => Object.assign(new Error(message), { code: 'OUTSIDE' });

    /** The real place of a path of the workbench, also of a file that is yet to be made. */
    async function place(at) {
        if (at !== `/${name}` && !at.startsWith(`/${name}/`)) throw Object.assign(new Error('no such folder'), { code: 'ENOENT' });
        if (at.split('/').includes('..')) throw refusal('no way up');
        let existing = path.join(top, path.normalize(`/${at.slice(name.length + 1)}`));
        let rest = '';
        for (;;) {
            try {
                existing = await realpath(existing);
                break;
            } catch {
                // A link to something that is not there yet: writing to it would make that.
                if (await lstat(existing).catch(() => undefined)) throw refusal('a link that leads nowhere');
                rest = path.join(path.basename(existing), rest);
                existing = path.dirname(existing);
            }
        }
        const real = path.join(existing, rest);
        if (real !== top && !real.startsWith(top + path.sep)) throw refusal('outside the folder');
        return real;
    }

    async function placeBelow(at) {
        const real = await place(at);
        if (real === top) throw refusal('the folder itself stays');
        return real;
    }

    const FILE = 1, FOLDER = 2;
    const verbs = {
        'GET stat': async at => {
            const found = await stat(await place(at));
            return { type: found.isDirectory() ? FOLDER : FILE, ctime: found.ctimeMs, mtime: found.mtimeMs, size: found.size };
        },
        'GET list': async at => {
            const entries = await readdir(await place(at), { withFileTypes: true });
            const shown = entries.filter(entry => entry.isFile() || entry.isDirectory());
            return shown.map(entry => [entry.name, entry.isDirectory() ? FOLDER : FILE]);
        },
        'GET file': async at => readFile(await place(at)),
        'PUT file': async (at, query, body) => {
            const file = await placeBelow(at);
            await mkdir(path.dirname(file), { recursive: true });
            await writeFile(file, body);
            return {};
        },
        'POST folder': async at => {
            await mkdir(await place(at), { recursive: true });
            return {};
        },
        'POST move': async (at, query) => {
            await rename(await placeBelow(at), await placeBelow(query.get('to') ?? ''));
            return {};
        },
        'DELETE file': async at => {
            await rm(await placeBelow(at), { recursive: true });
            return {};
        },
        // Answered when something changes. An open question also tells that a window is still there.
        'GET changes': async (at, query) => {
            const since = Number(query.get('since'));
            if (since === 0) return { number: count || 1, changes: [] };
            if (count <= since) {
                await new Promise(resolve => {
                    const wake = () => {
                        waiting.delete(wake);
                        clearTimeout(limit);
                        resolve();
                    };
                    const limit = setTimeout(wake, LONGEST_WAIT_MS);
                    waiting.add(wake);
                });
            }
            return { number: Math.max(count, since), changes: changes.filter(change => change.number > since) };
        },
    };
    return { name, verbs, isWatched: () => waiting.size > 0, stop: () => watcher.close() };
}

// The static files of VS Code's web workbench, out of three npm packages: 47 MB to download, about 40 MB kept, once.
// No script of theirs is run.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

/** Pinned, because serve.mjs adapts two places of exactly this version. */
export const editorVersion = '4.139.1';

const inside = 'package/lib/vscode';
const builtinExtensions = ['theme-defaults', 'theme-seti', 'json', 'markdown-basics', 'configuration-editing'];
const packages = [
    {
        name: `code-server@${editorVersion}`,
        integrity: 'sha512-fUYvJVdz4ZoVJfakGiGWXFMpF8K1ObsrpGvX17ZxNpKOzdNHs7lANT670JTr4ZhA8DnWqyvvmFG/d3HV9Yy6ew==',
        wanted: [
            'package/LICENSE',
            'package/ThirdPartyNotices.txt',
            `${inside}/out`,
            `${inside}/product.json`,
            ...builtinExtensions.map(name => `${inside}/extensions/${name}`),
        ],
    },
    // These two colour the text; the versions are those that the editor itself was built with.
    {
        name: 'vscode-oniguruma@1.7.0',
        integrity: 'sha512-L9WMGRfrjOhgHSdOYgCt/yRMsXzLDJSL7BPrOZt73gU0iWO4mpqzqQzOz5srxqTvMBaR0XZTSrVWo4j55Rc6cA==',
        wanted: ['package'],
        to: 'node_modules/vscode-oniguruma',
    },
    {
        name: 'vscode-textmate@9.3.2',
        integrity: 'sha512-n2uGbUcrjhUEBH16uGA0TvUfhWwliFZ1e3+pTjrkim1Mt7ydB41lV08aUvsi70OlzDWp6X7Bx3w/x3fAXIsN0Q==',
        wanted: ['package'],
        to: 'node_modules/vscode-textmate',
    },
];
/** Parts of the server side, of no use here. */
const unwanted = ['server-main.js', 'server-cli.js', 'nls.metadata.json', 'nls.keys.json'];

/** Where downloads are kept: outside the repository, so that every clone shares them. */
export function cacheFolder() {
    if (process.platform === 'win32') return path.join(process.env.LOCALAPPDATA ?? os.tmpdir(), 'rigwright-editor');
    return path.join(process.env.XDG_CACHE_HOME || path.join(os.homedir(), '.cache'), 'rigwright-editor');
}

/** Where the workbench is, or would be. */
export function editorFolder(cache = cacheFolder()) {
    return path.join(cache, `vscode-web-${editorVersion}`);
}

/** Whether the workbench is there already. */
export function hasEditor(cache = cacheFolder()) {
    return existsSync(path.join(editorFolder(cache), '.ready'));
}

/** Fetches the workbench if it is not there yet, and gives its folder. */
export async function fetchEditor(cache = cacheFolder()) {
    const target = editorFolder(cache);
    if (hasEditor(cache)) return target;
    mkdirSync(cache, { recursive: true });
    const work = mkdtempSync(path.join(cache, 'get-'));
    const result = path.join(work, 'result');
    try {
        await Promise.all(packages.map((one, i) => download(one, path.join(work, String(i)))));
        renameSync(path.join(work, '0', inside), result);
        for (const file of ['LICENSE', 'ThirdPartyNotices.txt']) renameSync(path.join(work, '0', 'package', file), path.join(result, file));
        for (const [i, { to }] of packages.entries()) {
            if (!to) continue;
            mkdirSync(path.dirname(path.join(result, to)), { recursive: true });
            renameSync(path.join(work, String(i), 'package'), path.join(result, to));
        }
        for (const file of unwanted) rmSync(path.join(result, 'out', file), { force: true });
        writeFileSync(path.join(result, '.ready'), editorVersion);
        rmSync(target, { recursive: true, force: true });
        renameSync(result, target);
    } catch (error) {
        // Another start may have fetched it meanwhile.
        if (!hasEditor(cache)) throw error;
    } finally {
        rmSync(work, { recursive: true, force: true });
    }
    return target;
}

async function download({ name, integrity, wanted }, folder) {
    mkdirSync(folder);
    const own = process.env.npm_execpath;
    const [program, first] = own ? [process.execPath, [own]] : [process.platform === 'win32' ? 'npm.cmd' : 'npm', []];
    await run(program, [...first, 'pack', name, '--ignore-scripts', '--silent'], folder);
    const archive = path.join(folder, `${name.replace('@', '-')}.tgz`);
    const found = `sha512-${createHash('sha512').update(readFileSync(archive)).digest('base64')}`;
    if (found !== integrity) throw new Error(`${name}: the download is not the one that was pinned`);
    await run('tar', ['-xzf', archive, '-C', folder, ...wanted], folder);
}

function run(program, args, cwd) {
    return new Promise((resolve, reject) => {
        const child = spawn(program, args, { cwd, stdio: ['ignore', 'ignore', 'pipe'], shell: program.endsWith('.cmd') });
        let words = '';
        child.stderr.on('data', data => (words += data));
        child.on('error', reject);
        child.on('exit', code => {
            if (code === 0) resolve();
            else reject(new Error(`${path.basename(program)}: ${words.trim() || `ended with ${code}`}`));
        });
    });
}

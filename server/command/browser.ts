/** A browser of the Chromium family that is on this machine: it turns pages into PDF and drawings into PNG. None is fetched. */
import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { CannotDo } from './command.js';

const usual = [
    '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome', '/usr/bin/google-chrome-stable', '/usr/bin/microsoft-edge', '/snap/bin/chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome', '/Applications/Chromium.app/Contents/MacOS/Chromium', '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
    ...['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap(v => (process.env[v] ? [path.join(process.env[v], 'Google/Chrome/Application/chrome.exe'), path.join(process.env[v], 'Microsoft/Edge/Application/msedge.exe')] : [])),
];
/** ms */
const MOST_TIME = 90_000;

/** @param told  what --browser says @throws CannotDo where there is none */
export function browserPath(told: string | undefined): string {
    if (told !== undefined) {
        if (existsSync(told)) return told;
        throw new CannotDo(`There is no browser at ${told}.`);
    }
    const found = usual.find(p => existsSync(p));
    if (found) return found;
    throw new CannotDo('For PDF and PNG a browser of the Chromium family is needed, and none stands in the usual places: name one with --browser PATH, or write the file as .html or .svg and print it yourself.');
}
/** Has a browser print or picture a page that stands by itself, into a file. */
async function made(browser: string, html: string, into: string, args: readonly string[]): Promise<void> {
    const folder = mkdtempSync(path.join(os.tmpdir(), 'rigwright-page-'));
    try {
        const page = path.join(folder, 'page.html');
        writeFileSync(page, html);
        const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
        await promisify(execFile)(browser, ['--headless', '--disable-gpu', '--hide-scrollbars', `--user-data-dir=${path.join(folder, 'profile')}`, ...sandbox, ...args, pathToFileURL(page).href], { timeout: MOST_TIME });
    } catch (e) {
        if (!existsSync(into)) throw new CannotDo(`${browser} did not make ${path.basename(into)}: ${(e as Error).message.split('\n')[0]}`);
    } finally {
        rmSync(folder, { recursive: true, force: true });
    }
    if (!existsSync(into)) throw new CannotDo(`${browser} did not make ${path.basename(into)}.`);
}
export const toPdf = (browser: string, html: string, into: string) => made(browser, html, into, ['--no-pdf-header-footer', `--print-to-pdf=${into}`]);
/** @param svg  a whole picture @param size  px */
export function toPng(browser: string, svg: string, size: readonly [width: number, height: number], into: string): Promise<void> {
    return made(browser, `<!doctype html><meta charset="utf-8"><style>body{margin:0}svg{display:block}</style>${svg}`, into, ['--force-device-scale-factor=2', `--window-size=${Math.ceil(size[0])},${Math.ceil(size[1])}`, `--screenshot=${into}`]);
}

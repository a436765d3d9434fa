/** A browser that is installed anyway, used without a window to turn pictures into PNG and pages into PDF: found in the usual places, started, and gone again. */
import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { CannotDo } from './command.js';

/** Under these names browsers of the Chromium family stand on the PATH. */
const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge', 'microsoft-edge-stable', 'brave-browser', 'vivaldi'];
/** ms after which it is given up. */
const PATIENCE = 60_000;
/** Device px for each px of the picture. */
const SHARPNESS = 2;

/** The usual places on one sort of machine. */
export function usualPlaces(platform: NodeJS.Platform, env: NodeJS.ProcessEnv): string[] {
    if (platform === 'win32') {
        const roots = [env.ProgramFiles, env['ProgramFiles(x86)'], env.LOCALAPPDATA].filter((r): r is string => !!r);
        return roots.flatMap(r => ['Google\\Chrome\\Application\\chrome.exe', 'Chromium\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe', 'BraveSoftware\\Brave-Browser\\Application\\brave.exe'].map(p => `${r}\\${p}`));
    }
    const onPath = (env.PATH ?? '').split(':').filter(d => d.startsWith('/')).flatMap(d => names.map(n => `${d}/${n}`));
    if (platform === 'darwin') {
        return [...['Google Chrome', 'Chromium', 'Microsoft Edge', 'Brave Browser'].flatMap(n => ['/Applications', `${env.HOME ?? ''}/Applications`].map(d => `${d}/${n}.app/Contents/MacOS/${n}`)), ...onPath];
    }
    return [...onPath, ...['/usr/bin', '/usr/local/bin', '/snap/bin', '/opt/google/chrome'].flatMap(d => names.map(n => `${d}/${n}`))];
}
/**
 * Where a browser stands.
 *
 * @param given  as the maker names it; the usual places if left out
 * @throws CannotDo where there is none
 */
export function browserAt(given?: string, exists: (file: string) => boolean = existsSync, platform = process.platform, env = process.env): string {
    if (given !== undefined) {
        if (!exists(given)) throw new CannotDo(`There is no browser at ${given}.`);
        return given;
    }
    const found = usualPlaces(platform, env).find(exists);
    if (!found) throw new CannotDo('PNG and PDF need a browser of the Chromium family, and none was found in the usual places: say where one stands by --browser PATH, or write SVG or HTML and print that.');
    return found;
}
/** What keeps a browser from asking, remembering and calling home. */
function flags(folder: string): string[] {
    return [
        '--headless', '--disable-gpu', '--hide-scrollbars', '--no-first-run', '--no-default-browser-check', '--disable-extensions', '--disable-sync', '--disable-background-networking', '--disable-component-update',
        `--user-data-dir=${path.join(folder, 'profile')}`,
        // A browser refuses to keep its own walls up for the root of a container.
        ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    ];
}
/** Runs a browser on a page of ours in a folder that goes away again. */
async function withPage<T>(browser: string, page: string, more: (folder: string) => readonly string[], read: (folder: string) => T): Promise<T> {
    const folder = mkdtempSync(path.join(tmpdir(), 'rigwright-'));
    try {
        const file = path.join(folder, 'page.html');
        writeFileSync(file, page);
        await new Promise<void>((resolve, reject) => {
            execFile(browser, [...flags(folder), ...more(folder), pathToFileURL(file).href], { timeout: PATIENCE, cwd: folder }, (error, _, err) => {
                if (error) reject(new CannotDo(`${browser} did not do it: ${(err.trim().split('\n').at(-1) || error.message).slice(0, 200)}`));
                else resolve();
            });
        });
        return read(folder);
    } finally {
        rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    }
}
/** A picture as PNG, twice as fine as its own px. */
export async function pngOf(svg: string, browser: string): Promise<Buffer> {
    const [, width, height] = /<svg [^>]*?viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
    if (!width) throw new CannotDo('The picture does not tell its size.');
    const page = `<!doctype html><meta charset="utf-8"><body style="margin:0">${svg}`;
    return withPage(browser, page, folder => [`--screenshot=${path.join(folder, 'picture.png')}`, `--window-size=${Math.ceil(Number(width))},${Math.ceil(Number(height))}`, `--force-device-scale-factor=${SHARPNESS}`], folder => {
        const file = path.join(folder, 'picture.png');
        if (!existsSync(file)) throw new CannotDo(`${browser} made no picture.`);
        return readFileSync(file);
    });
}
/** A page that stands by itself as PDF, printed as its own style says. */
export async function pdfOf(html: string, browser: string): Promise<Buffer> {
    return withPage(browser, html, folder => ['--no-pdf-header-footer', `--print-to-pdf=${path.join(folder, 'page.pdf')}`], folder => {
        const file = path.join(folder, 'page.pdf');
        if (!existsSync(file)) throw new CannotDo(`${browser} printed no page.`);
        return readFileSync(file);
    });
}

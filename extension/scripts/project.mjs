// Where things are, and whether what was made from the sources is still theirs. Node's built-ins only: this runs
// before anything is installed.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

if (!import.meta.dirname) {
    console.error(`Rigwright needs Node 20.11 or newer; this is ${process.versions.node}.`);
    process.exit(1);
}

/** The root of the repository. */
export const root = path.resolve(import.meta.dirname, '..', '..');
/** The folder of the editor extension. */
export const extensionFolder = path.join(root, 'extension');
/** The bundles, each with the source that it starts from. */
export const bundles = {
    server: { entry: 'server/main-stdio.ts', file: 'server/out/stdio.cjs', kind: 'node' },
    worker: { entry: 'server/main-worker.ts', file: 'server/out/worker.js', kind: 'worker' },
    command: { entry: 'server/command/main.ts', file: 'server/out/rigwright.cjs', kind: 'node' },
    desktop: { entry: 'extension/desktop.ts', file: 'extension/out/desktop.cjs', kind: 'node' },
    browser: { entry: 'extension/browser.ts', file: 'extension/out/browser.cjs', kind: 'browser' },
    panel: { entry: 'extension/panel/panel.ts', file: 'extension/out/panel.js', kind: 'page' },
};
/** The server's bundles travel with the extension. */
export const copies = [
    { from: 'server/out/stdio.cjs', to: 'extension/out/stdio.cjs' },
    { from: 'server/out/worker.js', to: 'extension/out/worker.js' },
];
/** The packed extension. */
export const vsix = path.join(extensionFolder, 'rigwright.vsix');

const stampFile = path.join(extensionFolder, 'out', 'sources.sha256');
const sourceFolders = ['language', 'server', 'extension'];
const notSources = new Set(['out', 'node_modules']);
const sourceFile = /\.(ts|mjs|js|json|langium|md|svg|png|rig)$/;

/** A fingerprint of all that the bundles and the packed extension are made from. */
export function fingerprint() {
    const hash = createHash('sha256');
    const add = file => hash.update(path.relative(root, file)).update('\0').update(readFileSync(file)).update('\0');
    const walk = folder => {
        const entries = readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
        for (const entry of entries) {
            const at = path.join(folder, entry.name);
            if (entry.isDirectory() && !notSources.has(entry.name)) walk(at);
            else if (entry.isFile() && sourceFile.test(entry.name)) add(at);
        }
    };
    for (const folder of sourceFolders) walk(path.join(root, folder));
    for (const file of ['package.json', 'package-lock.json']) add(path.join(root, file));
    return hash.digest('hex');
}

/** Whether every bundle is there and made from the sources as they are. */
export function isBuilt() {
    const made = [...Object.values(bundles).map(bundle => bundle.file), ...copies.map(copy => copy.to)];
    if (!existsSync(stampFile) || !made.every(file => existsSync(path.join(root, file)))) return false;
    return readFileSync(stampFile, 'utf8') === fingerprint();
}

/** Where the fingerprint of the last build is kept. */
export { stampFile };

/** Whether every package of the lock file is installed in the version that it names. */
export function isInstalled() {
    const kept = path.join(root, 'node_modules', '.package-lock.json');
    if (!existsSync(kept)) return false;
    const wanted = JSON.parse(readFileSync(path.join(root, 'package-lock.json'), 'utf8')).packages;
    const found = JSON.parse(readFileSync(kept, 'utf8')).packages;
    return Object.entries(wanted).every(([name, { version, optional }]) => name === '' || optional || found[name]?.version === version);
}

/** Runs npm in the root of the repository; under `npm run` the very npm that is running. */
export function npm(...args) {
    const own = process.env.npm_execpath;
    const [program, first] = own ? [process.execPath, [own]] : [process.platform === 'win32' ? 'npm.cmd' : 'npm', []];
    execFileSync(program, [...first, ...args], { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], shell: program.endsWith('.cmd') });
}

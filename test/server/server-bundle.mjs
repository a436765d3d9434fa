// The language server and the command line as one file each: the built one if it is fresh, else bundled into a temporary folder.
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import { bundles, isBuilt, root } from '../../extension/scripts/project.mjs';

/** Path of the language server's bundle. */
export const serverBundle = () => bundled('server');
/** Path of the command's bundle; the server that it starts lies beside it. */
export async function commandBundle() {
    await bundled('server');
    return bundled('command');
}

const made = new Map();
function bundled(name) {
    if (!made.has(name)) made.set(name, isBuilt() ? path.join(root, bundles[name].file) : bundle(name));
    return made.get(name);
}
let folder;
async function bundle(name) {
    if (!folder) {
        folder = mkdtempSync(path.join(os.tmpdir(), 'rigwright-bundle-'));
        process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
        // Another user of this machine may run it: tests that need one who is not root.
        chmodSync(folder, 0o755);
    }
    const outfile = path.join(folder, path.basename(bundles[name].file));
    await build({ ...options(name), outfile });
    return outfile;
}
/** Every file that goes into the server's bundle, relative to the root of the repository. */
export async function serverInputs() {
    const { metafile } = await build({ ...options('server'), write: false, metafile: true, outfile: 'stdio.cjs' });
    return Object.keys(metafile.inputs);
}
function options(name) {
    return {
        entryPoints: [path.join(root, bundles[name].entry)], absWorkingDir: root, bundle: true, platform: 'node', format: 'cjs', target: 'node20', logLevel: 'silent',
        alias: { mathjs: path.join(root, 'node_modules/mathjs/lib/esm/type/unit/Unit.js') },
    };
}

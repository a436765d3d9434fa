// The language server as one file: the built one if it is fresh, else bundled into a temporary folder.
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import { bundles, isBuilt, root } from '../../extension/scripts/project.mjs';

let made;
/** Path of the bundle. */
export async function serverBundle() {
    if (made) return made;
    if (isBuilt()) return (made = path.join(root, bundles.server.file));
    const folder = mkdtempSync(path.join(os.tmpdir(), 'rigwright-server-'));
    process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
    const outfile = path.join(folder, 'stdio.cjs');
    await build({ ...options(), outfile });
    return (made = outfile);
}
/** Every file that goes into the bundle, relative to the root of the repository. */
export async function serverInputs() {
    const { metafile } = await build({ ...options(), write: false, metafile: true, outfile: 'stdio.cjs' });
    return Object.keys(metafile.inputs);
}
function options() {
    return {
        entryPoints: [path.join(root, bundles.server.entry)], absWorkingDir: root, bundle: true, platform: 'node', format: 'cjs', target: 'node20', logLevel: 'silent',
        alias: { mathjs: path.join(root, 'node_modules/mathjs/lib/esm/type/unit/Unit.js') },
    };
}

/** The language server over stdio, for the desktop editor and any other. */
import './engine-settings.js';
import '../language/grammar/polyfill.js';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import path from 'node:path';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { cancelAtOnce } from './editor/cancel.js';
import { serve } from './editor/serve.js';

/** Larger files are no rig texts, MB. */
const LARGEST = 16;
/** A folder with more files than this is not looked through for the rig of a page. */
const MOST_NEIGHBOURS = 200;

function readFile(uri: string): string | undefined {
    try {
        const file = fileURLToPath(uri);
        const about = statSync(file);
        return about.isFile() && about.size < LARGEST * 1e6 ? readFileSync(file, 'utf8') : undefined;
    } catch {
        return undefined;
    }
}
function rigFilesBeside(uri: string): string[] {
    try {
        const folder = path.dirname(fileURLToPath(uri));
        const names = readdirSync(folder).filter(name => name.endsWith('.rig')).sort();
        return names.length > MOST_NEIGHBOURS ? [] : names.map(name => pathToFileURL(path.join(folder, name)).href);
    } catch {
        return [];
    }
}

// Without a word about the way, it is stdio: and nothing but the protocol may be written there.
if (!process.argv.some(a => /^--(?:stdio|node-ipc|socket|pipe)/.test(a))) process.argv.push('--stdio');
serve(createConnection(ProposedFeatures.all, cancelAtOnce), { nextTurn: setImmediate, readFile, rigFilesBeside });

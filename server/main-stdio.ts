/** The language server over stdio, for the desktop editor and any other. */
import '../language/grammar/polyfill.js';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createConnection, ProposedFeatures, StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver/node';
import { serve } from './editor/serve.js';

/** A few turns of the event loop: enough to take in what a burst of typing has already sent. */
function afterDraining(run: () => void, turns = 3): void {
    setImmediate(() => (turns > 1 ? afterDraining(run, turns - 1) : run()));
}
const connection = process.argv.some(a => a === '--stdio' || a.startsWith('--node-ipc') || a.startsWith('--socket') || a.startsWith('--pipe'))
    ? createConnection(ProposedFeatures.all)
    : createConnection(ProposedFeatures.all, new StreamMessageReader(process.stdin), new StreamMessageWriter(process.stdout));

serve(connection, {
    afterDraining,
    readFile: uri => {
        try {
            return readFileSync(fileURLToPath(uri), 'utf8');
        } catch {
            return undefined;
        }
    },
});

/** The language server in a web worker, for the browser editor. */
import '../language/grammar/polyfill.js';
import { BrowserMessageReader, BrowserMessageWriter, createConnection, ProposedFeatures } from 'vscode-languageserver/browser';
import { serve } from './editor/serve.js';

const channel = new MessageChannel();
const queue: (() => void)[] = [];
channel.port1.onmessage = () => queue.shift()?.();
function afterDraining(run: () => void, turns = 3): void {
    queue.push(() => (turns > 1 ? afterDraining(run, turns - 1) : run()));
    channel.port2.postMessage(0);
}
const self_ = self as unknown as DedicatedWorkerGlobalScope;
serve(createConnection(ProposedFeatures.all, new BrowserMessageReader(self_), new BrowserMessageWriter(self_)), { afterDraining });

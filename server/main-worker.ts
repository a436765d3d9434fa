/** The language server in a web worker, for the browser editor. */
import '../language/grammar/polyfill.js';
import { BrowserMessageReader, BrowserMessageWriter, createConnection, ProposedFeatures } from 'vscode-languageserver/browser';
import { cancelAtOnce } from './editor/cancel.js';
import { serve } from './editor/serve.js';

// A turn of the event loop, without a timer: a message to oneself comes after those that have already arrived.
const channel = new MessageChannel();
const queue: (() => void)[] = [];
channel.port1.onmessage = () => queue.shift()?.();
function nextTurn(run: () => void): void {
    queue.push(run);
    channel.port2.postMessage(0);
}
const worker = self as unknown as DedicatedWorkerGlobalScope;
serve(createConnection(ProposedFeatures.all, new BrowserMessageReader(worker), new BrowserMessageWriter(worker), cancelAtOnce), { nextTurn });

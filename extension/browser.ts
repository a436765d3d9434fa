// The editor in a browser: the server runs in a web worker.
import * as vscode from 'vscode';
import { BrowserMessageReader, BrowserMessageWriter, LanguageClient } from 'vscode-languageclient/browser';
import { activateRigwright } from './client.js';

let client: Awaited<ReturnType<typeof activateRigwright>> | undefined;
let worker: Worker | undefined;

/** Called by the editor when the first rig is opened. */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
    // A worker made from a Blob may be started on every page; one made from the extension's own address is refused
    // where the extension comes from another host than the page.
    const code = await vscode.workspace.fs.readFile(vscode.Uri.joinPath(context.extensionUri, 'out', 'worker.js'));
    const address = URL.createObjectURL(new Blob([code as BlobPart], { type: 'text/javascript' }));
    context.subscriptions.push({
        dispose() {
            worker?.terminate();
            URL.revokeObjectURL(address);
        },
    });

    // A function that gives reader and writer, not a Worker: a plain Worker cannot be started a second time, and the
    // Worker class of the editor's extension host is not the one that the client would compare with.
    const startServer = async () => {
        worker?.terminate();
        worker = new Worker(address, { name: 'rigwright' });
        return { reader: new BrowserMessageReader(worker), writer: new BrowserMessageWriter(worker) };
    };
    client = await activateRigwright(context, {
        kind: 'browser',
        createClient: options => new LanguageClient('rigwright', 'Rigwright', startServer, options),
    });
}

/** Called by the editor before it ends. */
export async function deactivate(): Promise<void> {
    await client?.stop();
    worker?.terminate();
}

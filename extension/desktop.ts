// The desktop editor: the server runs as a process of its own, by the editor's own Node.
import type * as vscode from 'vscode';
import { LanguageClient, TransportKind } from 'vscode-languageclient/node';
import { activateRigwright } from './client.js';
import options from './server-process.json' with { type: 'json' };

let client: Awaited<ReturnType<typeof activateRigwright>> | undefined;

/** Called by the editor when the first rig is opened. */
export async function activate(context: vscode.ExtensionContext): Promise<void> {
    // Room for what one analysis makes: it then dies young, and a long rig takes half the memory and less time. One thread beside
    // the server's own, and one store of memory for both: more do not make it faster and take 20 MB.
    const server = { module: context.asAbsolutePath('out/stdio.cjs'), transport: TransportKind.stdio, options };
    client = await activateRigwright(context, {
        kind: 'desktop',
        createClient: options => new LanguageClient('rigwright', 'Rigwright', { run: server, debug: server }, options),
    });
}

/** Called by the editor before it ends; waits for the server to leave. */
export function deactivate(): Promise<void> | undefined {
    return client?.stop();
}

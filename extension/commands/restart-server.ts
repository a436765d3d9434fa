import * as vscode from 'vscode';
import { State } from 'vscode-languageclient';
import type { Rigwright } from '../client.js';

/** Ends the server, in whatever state it is, and starts a fresh one; the open rigs are handed to it again. */
export async function restartServer({ client, log }: Rigwright): Promise<void> {
    if (client.state === State.Running) {
        // A server that hangs does not answer the farewell; the new one must not wait for it.
        await client.stop(2000).catch(error => log.warn(`the old server did not leave in order: ${error}`));
    }
    try {
        await client.start();
        void vscode.window.showInformationMessage('The Rigwright server was started again.');
    } catch (error) {
        log.error(error instanceof Error ? error : String(error));
        const choice = await vscode.window.showErrorMessage(
            'The Rigwright server does not start. Reloading the window may help.', 'Reload the Window', 'Open the Log');
        if (choice === 'Reload the Window') await vscode.commands.executeCommand('workbench.action.reloadWindow');
        if (choice === 'Open the Log') log.show();
    }
}

import * as vscode from 'vscode';
import type { Rigwright } from '../client.js';
import { checkFolderRequest } from '../protocol.js';
import { readTextFile } from '../read-text-file.js';

/** Hands every rig of the folder to the server, tells the counts in one line and opens the Problems view. */
export async function checkFolder({ client, today }: Rigwright): Promise<void> {
    const uris = await vscode.workspace.findFiles('**/*.rig', '**/node_modules/**');
    if (!uris.length) {
        void vscode.window.showInformationMessage('There are no rigs (files that end in .rig) in this folder.');
        return;
    }
    const summary = await vscode.window.withProgress({ location: vscode.ProgressLocation.Window, title: 'Checking the rigs' }, async () => {
        uris.sort((a, b) => a.path.localeCompare(b.path));
        const texts = await Promise.all(uris.map(readTextFile));
        const files = uris.flatMap((uri, i) => {
            const read = texts[i];
            return 'text' in read ? [{ uri: client.code2ProtocolConverter.asUri(uri), text: read.text }] : [];
        });
        return client.sendRequest(checkFolderRequest, { files, on: today() });
    });
    await vscode.commands.executeCommand('workbench.actions.view.problems');
    const counts = [count(summary.errors, 'error'), count(summary.warnings, 'warning'), count(summary.hints, 'hint')].join(', ');
    // Short enough for the one line that a notification shows.
    const caution = summary.errors + summary.warnings ? '' : ' Silence proves nothing.';
    void vscode.window.showInformationMessage(`${count(summary.files, 'file')} checked: ${counts}.${caution}`);
}

function count(n: number, what: string): string {
    return `${n === 0 ? 'no' : n} ${what}${n === 1 ? '' : 's'}`;
}

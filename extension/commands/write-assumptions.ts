import * as vscode from 'vscode';
import type { Rigwright } from '../client.js';
import { assumptionsRequest } from '../protocol.js';

/** Writes what is assumed for the rig on screen into its text. One undo takes it out again. */
export async function writeAssumptions({ client }: Rigwright): Promise<void> {
    const document = vscode.window.activeTextEditor?.document;
    if (document?.languageId !== 'rig') {
        void vscode.window.showInformationMessage('Open a rig first; then ask again.');
        return;
    }
    const version = document.version;
    const answer = await client.sendRequest(assumptionsRequest, { uri: client.code2ProtocolConverter.asUri(document.uri) });
    const edit = await client.protocol2CodeConverter.asWorkspaceEdit(answer);
    if (!edit || edit.size === 0) {
        void vscode.window.showInformationMessage('Nothing is assumed in this rig that the text could say.');
    } else if (document.version !== version) {
        void vscode.window.showInformationMessage('The text has changed meanwhile; ask again.');
    } else if (await vscode.workspace.applyEdit(edit)) {
        void vscode.window.showInformationMessage('The assumptions are in the text now; undo takes them out.');
    } else {
        void vscode.window.showWarningMessage('The text could not be changed.');
    }
}

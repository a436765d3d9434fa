import * as vscode from 'vscode';
import type { Rigwright } from '../client.js';
import { explainRequest } from '../protocol.js';

/**
 * Shows the page about what is under the cursor, or about a name: of a rule, a kind of part, a property, a unit or a
 * quantity.
 */
export async function explain({ client, pages }: Rigwright, name?: unknown): Promise<void> {
    const editor = vscode.window.activeTextEditor;
    if (typeof name === 'string') {
        const page = await client.sendRequest(explainRequest, { name });
        if (page) await pages.show(page);
        else void vscode.window.showInformationMessage(`There is no page about ${name}.`);
    } else if (editor?.document.languageId === 'rig') {
        const page = await client.sendRequest(explainRequest, {
            uri: client.code2ProtocolConverter.asUri(editor.document.uri),
            position: client.code2ProtocolConverter.asPosition(editor.selection.active),
        });
        if (page) await pages.show(page);
        else void vscode.window.showInformationMessage('Nothing to explain here: put the cursor on a word, a number or a warning.');
    } else {
        void vscode.window.showInformationMessage('Open a rig and put the cursor on a word, a number or a warning; then ask again.');
    }
}

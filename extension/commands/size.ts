import * as vscode from 'vscode';
import type { Rigwright } from '../client.js';
import { waysRequest } from '../protocol.js';

/**
 * Offers the single numbers that can be changed so that an expectation holds, and writes the one that is chosen. Asks for
 * the expectation where none is handed over.
 */
export async function size({ client }: Rigwright, handed?: unknown): Promise<void> {
    const document = vscode.window.activeTextEditor?.document;
    if (document?.languageId !== 'rig') {
        void vscode.window.showInformationMessage('Open a rig first; then ask again.');
        return;
    }
    const expectation = typeof handed === 'string' ? handed : await vscode.window.showInputBox({
        title: 'Size a number', prompt: 'What shall hold?', placeHolder: 'stack.volts-per-cell < 2.1 V',
    });
    if (!expectation?.trim()) return;
    const version = document.version;
    const answer = await vscode.window.withProgress({ location: vscode.ProgressLocation.Window, title: 'Looking for numbers that would do' }, () =>
        client.sendRequest(waysRequest, { uri: client.code2ProtocolConverter.asUri(document.uri), expectation }));
    if (!answer) return;
    if ('cannot' in answer) {
        void vscode.window.showInformationMessage(answer.cannot);
        return;
    }
    if (!answer.answer.length) {
        void vscode.window.showInformationMessage('It holds as it stands, or no single number is enough.');
        return;
    }
    const choice = await vscode.window.showQuickPick(answer.answer.map(way => ({
        label: `${way.input}: ${way.text}`, description: `now ${way.now}; gives ${way.gives}`, detail: way.raises.length ? `Then it tells ${way.raises.join(', ')}` : undefined, way,
    })), { title: `So that ${expectation}`, placeHolder: 'One number is changed, the rest of the rig stays as it is' });
    if (!choice?.way.edit) return;
    if (document.version !== version) {
        void vscode.window.showInformationMessage('The text has changed meanwhile; ask again.');
        return;
    }
    const edit = await client.protocol2CodeConverter.asWorkspaceEdit(choice.way.edit);
    if (!edit || !(await vscode.workspace.applyEdit(edit))) void vscode.window.showWarningMessage('The text could not be changed.');
}

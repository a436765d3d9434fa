import * as vscode from 'vscode';
import type { Rigwright } from '../client.js';
import { sweepableRequest, sweepRequest } from '../protocol.js';

/** Asks what varies and which numbers to look at, and shows them as a table with a curve. */
export async function sweep({ client, pages }: Rigwright): Promise<void> {
    const editor = vscode.window.activeTextEditor;
    if (editor?.document.languageId !== 'rig') {
        void vscode.window.showInformationMessage('Open a rig first; then ask again.');
        return;
    }
    const uri = client.code2ProtocolConverter.asUri(editor.document.uri);
    const found = await client.sendRequest(sweepableRequest, { uri, position: client.code2ProtocolConverter.asPosition(editor.selection.active) });
    if (!found) return;
    const over = await vscode.window.showInputBox({
        title: 'Sweep a number', prompt: 'What varies, and between which values? Two of them with ; between.', placeHolder: 'stack.gap: 1..6 mm', value: found.over,
    });
    if (!over?.trim()) return;
    const chosen = await vscode.window.showQuickPick(found.numbers.map(n => ({ label: n.name, description: n.now, detail: n.meaning })), {
        title: 'Sweep a number', placeHolder: 'Which numbers do you want to see?', canPickMany: true, matchOnDetail: true,
    });
    if (!chosen?.length) return;
    const answer = await client.sendRequest(sweepRequest, { uri, over: over.split(';').map(t => t.trim()).filter(Boolean), of: chosen.map(c => c.label) });
    if (answer && 'answer' in answer) await pages.show(answer.answer, editor.document.uri);
    else if (answer) void vscode.window.showInformationMessage(answer.cannot);
}

import * as vscode from 'vscode';
import type { Rigwright } from '../client.js';
import { templatesRequest } from '../protocol.js';
import type { Template } from '../protocol.js';

/** Lets the maker choose a template and a file name, and opens the new rig; without a folder, as an unsaved text. */
export async function newRig({ client }: Rigwright): Promise<void> {
    const templates = await client.sendRequest(templatesRequest, {});
    const choice = await vscode.window.showQuickPick(
        templates.map(template => ({ label: template.title, detail: template.description, template })),
        { title: 'Start a rig', placeHolder: 'Which is nearest to yours?', matchOnDetail: true });
    if (!choice) return;

    const folder = vscode.workspace.workspaceFolders?.[0]?.uri;
    const uri = folder && await askForFile(folder, choice.template);
    if (folder && !uri) return;
    if (uri) await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(choice.template.text));
    const document = uri
        ? await vscode.workspace.openTextDocument(uri)
        : await vscode.workspace.openTextDocument({ language: 'rig', content: choice.template.text });
    await vscode.window.showTextDocument(document);
}

async function askForFile(folder: vscode.Uri, template: Template): Promise<vscode.Uri | undefined> {
    let free = `${template.name}.rig`;
    for (let i = 2; await exists(vscode.Uri.joinPath(folder, free)); i++) free = `${template.name}-${i}.rig`;
    const name = await vscode.window.showInputBox({
        title: 'Start a rig',
        prompt: 'What shall the file be called?',
        value: free,
        valueSelection: [0, free.length - '.rig'.length],
        validateInput: async text => {
            if (!text.trim() || /[\\/:*?"<>|]/.test(text)) return 'Give a plain file name, for example torch.rig';
            return await exists(fileIn(folder, text)) ? `${fileName(text)} is already there; choose another name` : undefined;
        },
    });
    return name === undefined ? undefined : fileIn(folder, name);
}

function fileName(text: string): string {
    return text.trim().endsWith('.rig') ? text.trim() : `${text.trim()}.rig`;
}

function fileIn(folder: vscode.Uri, text: string): vscode.Uri {
    return vscode.Uri.joinPath(folder, fileName(text));
}

async function exists(uri: vscode.Uri): Promise<boolean> {
    try {
        await vscode.workspace.fs.stat(uri);
        return true;
    } catch {
        return false;
    }
}

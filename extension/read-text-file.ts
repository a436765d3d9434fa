import * as vscode from 'vscode';

/** No rig and no log of readings is longer; what is longer was named by mistake. */
const LONGEST_BYTES = 8_000_000;

/**
 * The text of a file, for the server's imports: from the editor if it is open there, else from its file system.
 * A folder, a device, something very long or something that is not there counts as missing.
 */
export async function readTextFile(uri: vscode.Uri): Promise<{ text: string } | { missing: true }> {
    const open = vscode.workspace.textDocuments.find(document => document.uri.toString() === uri.toString());
    if (open) return { text: open.getText() };
    try {
        const { type, size } = await vscode.workspace.fs.stat(uri);
        if (!(type & vscode.FileType.File) || size > LONGEST_BYTES) return { missing: true };
        return { text: new TextDecoder().decode(await vscode.workspace.fs.readFile(uri)) };
    } catch {
        return { missing: true };
    }
}

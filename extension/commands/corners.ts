import * as vscode from 'vscode';
import type { Rigwright } from '../client.js';
import { cornersRequest } from '../protocol.js';

/** Shows the rig on its coldest and hottest day, at low current, with full and empty cylinder, after idle days. */
export async function corners({ client, pages }: Rigwright): Promise<void> {
    const document = vscode.window.activeTextEditor?.document;
    const page = document?.languageId === 'rig' ? await client.sendRequest(cornersRequest, { uri: client.code2ProtocolConverter.asUri(document.uri) }) : null;
    if (page) await pages.show(page, document!.uri);
    else void vscode.window.showInformationMessage('Open a rig first; then ask again.');
}

import * as vscode from 'vscode';
import type { Rigwright } from '../client.js';
import { gather, lastCommit, type Installed } from '../last-commit.js';
import { changesRequest, compareOpenRequest, variantsRequest, type AboutFiles, type Page } from '../protocol.js';

const TWO_OPEN = 'Compare Two Open Rigs';

function openRig(): vscode.TextDocument | undefined {
    const document = vscode.window.activeTextEditor?.document;
    if (document?.languageId === 'rig') return document;
    void vscode.window.showInformationMessage('Open a rig first; then ask again.');
    return undefined;
}
async function show({ pages, client }: Rigwright, told: ({ answer: Page } & AboutFiles) | { cannot: string } | null): Promise<void> {
    if (told && 'answer' in told) await pages.show(told.answer, ...told.about.map(uri => client.protocol2CodeConverter.asUri(uri)));
    else void vscode.window.showInformationMessage(told?.cannot ?? 'This file is not known yet; ask again in a moment.');
}

/** The text on screen, saved or not, beside the last commit. Where there is none, two open rigs can be compared instead. */
export async function changes(rigwright: Rigwright): Promise<void> {
    const document = openRig();
    if (!document) return;
    const { client } = rigwright;
    const commit = await lastCommit(vscode.extensions.getExtension('vscode.git') as Installed<vscode.Uri> | undefined, document.uri);
    if ('cannot' in commit) {
        if ((await vscode.window.showInformationMessage(commit.cannot, TWO_OPEN)) === TWO_OPEN) await compareOpen(rigwright);
        return;
    }
    const uri = client.code2ProtocolConverter.asUri(document.uri);
    await show(rigwright, await gather(then => client.sendRequest(changesRequest, { uri, then: [...then], name: commit.name }), file => commit.text(client.protocol2CodeConverter.asUri(file))));
}
/** The rig on screen beside another one that is open. */
export async function compareOpen(rigwright: Rigwright): Promise<void> {
    const document = openRig();
    if (!document) return;
    const others = vscode.workspace.textDocuments.filter(d => d.languageId === 'rig' && d.uri.scheme !== 'git' && d.uri.toString() !== document.uri.toString());
    if (!others.length) {
        void vscode.window.showInformationMessage('Only one rig is open. Open the other one beside it; then ask again.');
        return;
    }
    const label = (d: vscode.TextDocument) => vscode.workspace.asRelativePath(d.uri);
    const chosen = await vscode.window.showQuickPick(others.map(d => ({ label: label(d), document: d })), { title: 'Compare two open rigs', placeHolder: `What was before ${label(document)}?` });
    if (!chosen) return;
    const asUri = (d: vscode.TextDocument) => rigwright.client.code2ProtocolConverter.asUri(d.uri);
    await show(rigwright, await rigwright.client.sendRequest(compareOpenRequest, { before: asUri(chosen.document), after: asUri(document) }));
}
/** The rig as it is written beside its variants. */
export async function variants(rigwright: Rigwright): Promise<void> {
    const document = openRig();
    if (document) await show(rigwright, await rigwright.client.sendRequest(variantsRequest, { uri: rigwright.client.code2ProtocolConverter.asUri(document.uri) }));
}

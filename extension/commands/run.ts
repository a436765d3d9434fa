import * as vscode from 'vscode';
import type { Rigwright } from '../client.js';
import { faultsRequest, runRequest, scenariosRequest, type Page, type Tried } from '../protocol.js';

const USUAL = 'A usual day';

function openRig(): vscode.Uri | undefined {
    const document = vscode.window.activeTextEditor?.document;
    if (document?.languageId === 'rig') return document.uri;
    void vscode.window.showInformationMessage('Open a rig first; then ask again.');
    return undefined;
}
async function show({ pages }: Rigwright, told: Tried<Page> | null, about: vscode.Uri): Promise<void> {
    if (told && 'answer' in told) await pages.show(told.answer, about);
    else if (told) void vscode.window.showInformationMessage(told.cannot);
}

/** Follows the rig through a day, or through one of its scenarios. */
export async function run(rigwright: Rigwright): Promise<void> {
    const about = openRig();
    if (!about) return;
    const { client } = rigwright;
    const uri = client.code2ProtocolConverter.asUri(about);
    const scenarios = (await client.sendRequest(scenariosRequest, { uri })) ?? [];
    const chosen = scenarios.length ? await vscode.window.showQuickPick([USUAL, ...scenarios], { placeHolder: 'What shall it go through?' }) : USUAL;
    if (chosen) await show(rigwright, await client.sendRequest(runRequest, { uri, scenario: chosen === USUAL ? undefined : chosen }), about);
}
/** Breaks one thing after the other. */
export async function faults(rigwright: Rigwright): Promise<void> {
    const about = openRig();
    if (!about) return;
    const uri = rigwright.client.code2ProtocolConverter.asUri(about);
    const told = await vscode.window.withProgress({ location: vscode.ProgressLocation.Notification, title: 'Breaking one thing after the other', cancellable: true },
        (_, token) => rigwright.client.sendRequest(faultsRequest, { uri }, token).catch(() => null));
    await show(rigwright, told, about);
}

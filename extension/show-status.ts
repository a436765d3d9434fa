import * as vscode from 'vscode';
import { State } from 'vscode-languageclient';
import type { BaseLanguageClient } from 'vscode-languageclient';
import type { StartOptions } from './protocol.js';

/** The language status item: whether the server is up, and the way to its log or to a restart. */
export function showStatus(client: BaseLanguageClient, kind: StartOptions['client']): vscode.Disposable {
    const item = vscode.languages.createLanguageStatusItem('rigwright.status', { language: 'rig' });
    item.name = 'Rigwright';

    const show = (state: State) => {
        item.busy = state === State.Starting;
        const isUp = state === State.Running || state === State.Starting;
        item.severity = isUp ? vscode.LanguageStatusSeverity.Information : vscode.LanguageStatusSeverity.Warning;
        if (state === State.Running) {
            item.text = 'Rigwright: working things out as you type';
            item.detail = kind === 'desktop' ? 'in a process of its own' : 'in this browser';
            item.command = { command: 'rigwright.openLog', title: 'Open the Log' };
        } else if (state === State.Starting) {
            item.text = 'Rigwright: starting';
            item.detail = undefined;
            item.command = { command: 'rigwright.openLog', title: 'Open the Log' };
        } else {
            item.text = 'Rigwright: the server is not running, so nothing is checked';
            item.detail = undefined;
            item.command = { command: 'rigwright.restartServer', title: 'Restart the Server' };
        }
    };
    show(client.state);
    return vscode.Disposable.from(item, client.onDidChangeState(({ newState }) => show(newState)));
}

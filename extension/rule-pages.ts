import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { explainRequest } from './protocol.js';
import type { Page } from './protocol.js';

const SCHEME = 'rigwright-page';

/**
 * Pages as read-only documents. `rigwright-page:/rule/NAME`, the address behind a finding's name, is answered by the
 * server; a page that was asked for by place in a text is kept here until it is asked for again.
 */
export class RulePages implements vscode.TextDocumentContentProvider, vscode.Disposable {
    private readonly kept = new Map<string, string>();
    private readonly changed = new vscode.EventEmitter<vscode.Uri>();
    private readonly subscriptions: vscode.Disposable[];
    readonly onDidChange = this.changed.event;

    constructor(private readonly client: BaseLanguageClient) {
        this.subscriptions = [
            this.changed,
            vscode.workspace.registerTextDocumentContentProvider(SCHEME, this),
            vscode.workspace.onDidOpenTextDocument(document => {
                if (document.uri.scheme === SCHEME && document.languageId !== 'markdown') {
                    void vscode.languages.setTextDocumentLanguage(document, 'markdown');
                }
            }),
        ];
    }

    dispose(): void {
        for (const subscription of this.subscriptions) subscription.dispose();
    }

    /** Shows a page beside the text, laid out where the editor can do that, else as the plain words. */
    async show(page: Page): Promise<void> {
        const name = page.title.trim().replace(/[^\p{L}\p{N}. -]+/gu, ' ').trim() || 'page';
        const uri = vscode.Uri.from({ scheme: SCHEME, path: `/${name}.md` });
        this.kept.set(uri.path, page.markdown);
        this.changed.fire(uri);
        const layout = 'markdown.showPreviewToSide';
        if ((await vscode.commands.getCommands(true)).includes(layout)) {
            await vscode.commands.executeCommand(layout, uri);
        } else {
            await vscode.window.showTextDocument(uri, { viewColumn: vscode.ViewColumn.Beside, preview: true, preserveFocus: true });
        }
    }

    async provideTextDocumentContent(uri: vscode.Uri): Promise<string> {
        const kept = this.kept.get(uri.path);
        if (kept !== undefined) return kept;
        const name = decodeURIComponent(uri.path.split('/').pop() ?? '').replace(/\.md$/, '');
        const page = await this.client.sendRequest(explainRequest, { name });
        return page?.markdown ?? `There is no page about ${name}.\n`;
    }
}

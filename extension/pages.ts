import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { markdownToHtml } from './markdown-to-html.js';
import { explainRequest } from './protocol.js';
import type { Page } from './protocol.js';

const SCHEME = 'rigwright-page';
const VIEW = 'rigwright.page';

/** A page that was asked for, and the texts that it is about, if it is about some: it is old as soon as one of them changes. */
interface Kept {
    readonly markdown: string;
    readonly about: readonly string[];
    readonly old?: boolean;
}
const OLD = ' (old text)';

/**
 * Pages as read-only editors. `rigwright-page:/rule/NAME`, the address behind a finding's name, is answered by the
 * server; a page that was asked for by its place in a text is kept here, under its title.
 */
export class Pages implements vscode.CustomReadonlyEditorProvider, vscode.FileSystemProvider, vscode.Disposable {
    private readonly kept = new Map<string, Kept>();
    private readonly changed = new vscode.EventEmitter<vscode.FileChangeEvent[]>();
    private readonly registered: vscode.Disposable;
    readonly onDidChangeFile = this.changed.event;

    constructor(private readonly client: BaseLanguageClient) {
        this.registered = vscode.Disposable.from(
            this.changed,
            vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => contentChanges.length && this.grewOld(document.uri.toString())),
            vscode.window.registerCustomEditorProvider(VIEW, this),
            // So that the address also opens as a plain text, and where the editor asks whether it is there.
            vscode.workspace.registerFileSystemProvider(SCHEME, this, { isReadonly: true, isCaseSensitive: true }),
        );
    }

    dispose(): void {
        this.registered.dispose();
    }

    /** Shows a page beside the text, and leaves the cursor in the text. `about`: the texts whose numbers stand on it. */
    async show(page: Page, ...about: readonly vscode.Uri[]): Promise<void> {
        const title = page.title.trim().replace(/[^\p{L}\p{N}. -]+/gu, ' ').trim() || 'page';
        const uri = vscode.Uri.from({ scheme: SCHEME, path: `/${title}` });
        this.kept.set(uri.path, { markdown: page.markdown, about: about.map(uri => uri.toString()) });
        this.changed.fire([{ type: vscode.FileChangeType.Changed, uri }]);
        const beside = { viewColumn: vscode.ViewColumn.Beside, preview: true, preserveFocus: true };
        await vscode.commands.executeCommand('vscode.openWith', uri, VIEW, beside);
    }

    private grewOld(about: string): void {
        for (const [path, kept] of this.kept) {
            if (!kept.about.includes(about) || kept.old) continue;
            this.kept.set(path, { ...kept, old: true });
            this.changed.fire([{ type: vscode.FileChangeType.Changed, uri: vscode.Uri.from({ scheme: SCHEME, path }) }]);
        }
    }

    // ---- as an editor

    openCustomDocument(uri: vscode.Uri): vscode.CustomDocument {
        return { uri, dispose() {} };
    }

    async resolveCustomEditor({ uri }: vscode.CustomDocument, panel: vscode.WebviewPanel): Promise<void> {
        // No scripts. The one command is our own, for links from page to page.
        panel.webview.options = { enableScripts: false, enableCommandUris: ['rigwright.explain'], localResourceRoots: [] };
        const draw = async () => (panel.webview.html = asDocument(title(uri), await this.markdown(uri)));
        const following = this.onDidChangeFile(changes => {
            if (changes.some(change => change.uri.path === uri.path)) void draw();
        });
        panel.onDidDispose(() => following.dispose());
        await draw();
    }

    private async markdown(uri: vscode.Uri): Promise<string> {
        const kept = this.kept.get(uri.path);
        // Said in the heading, so that nothing below it moves.
        if (kept) return kept.old ? kept.markdown.replace(/^# .*/, heading => heading + OLD) : kept.markdown;
        const page = await this.client.sendRequest(explainRequest, { name: title(uri) });
        return page?.markdown ?? `There is no page about ${title(uri)}.`;
    }

    // ---- as files that can only be read

    watch(): vscode.Disposable {
        return { dispose() {} };
    }

    stat(): vscode.FileStat {
        return { type: vscode.FileType.File, ctime: 0, mtime: Date.now(), size: 1, permissions: vscode.FilePermission.Readonly };
    }

    async readFile(uri: vscode.Uri): Promise<Uint8Array> {
        return new TextEncoder().encode(await this.markdown(uri));
    }

    readDirectory(): [string, vscode.FileType][] {
        return [];
    }

    createDirectory(uri: vscode.Uri): never {
        throw vscode.FileSystemError.NoPermissions(uri);
    }

    writeFile(uri: vscode.Uri): never {
        throw vscode.FileSystemError.NoPermissions(uri);
    }

    delete(uri: vscode.Uri): never {
        throw vscode.FileSystemError.NoPermissions(uri);
    }

    rename(uri: vscode.Uri): never {
        throw vscode.FileSystemError.NoPermissions(uri);
    }
}

function title(uri: vscode.Uri): string {
    return uri.path.split('/').pop() ?? '';
}

/** A link from page to page runs our own command; one to the web opens only when it is clicked. */
function whereTo(address: string): string | undefined {
    if (address.startsWith(`${SCHEME}:`)) {
        const name = decodeURIComponent(address.split('/').pop() ?? '');
        return `command:rigwright.explain?${encodeURIComponent(JSON.stringify([name]))}`;
    }
    return /^https?:/.test(address) ? address : undefined;
}

function asDocument(name: string, markdown: string): string {
    const nonce = Array.from(crypto.getRandomValues(new Uint8Array(16)), byte => byte.toString(16).padStart(2, '0')).join('');
    const words = name.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
    return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${words}</title>
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'nonce-${nonce}'">
<style nonce="${nonce}">
body { max-width: 46em; padding: 0.5em 1.5em 2em; color: var(--vscode-foreground); background: var(--vscode-editor-background);
    font: 14px/1.55 var(--vscode-font-family, sans-serif); }
h1 { font-size: 1.5em; font-weight: 600; } h2 { font-size: 1.15em; margin-top: 1.6em; } h3 { font-size: 1em; }
code { font-family: var(--vscode-editor-font-family, monospace); font-size: 0.95em; color: inherit; background: none; }
pre { padding: 0.7em 1em; overflow-x: auto; background: var(--vscode-textCodeBlock-background);
    border: 1px solid var(--vscode-contrastBorder, transparent); border-radius: 3px; line-height: 1.4; }
table { border-collapse: collapse; } th, td { padding: 0.25em 1em 0.25em 0; text-align: left; vertical-align: top;
    border-bottom: 1px solid var(--vscode-editorWidget-border, currentColor); }
a { color: var(--vscode-textLink-foreground); } blockquote { margin-left: 0; padding-left: 1em; border-left: 3px solid currentColor; }
hr { border: 0; border-top: 1px solid currentColor; opacity: 0.4; }
</style>
</head>
<body><main>
${markdownToHtml(markdown, whereTo)}
</main></body>
</html>`;
}

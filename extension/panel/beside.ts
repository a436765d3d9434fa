// The panel beside a rig: follows the cursor, hands turned numbers to the server, writes them into the text when told to. Its page may run
// our one script and nothing else, and it reaches no network.
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { panelRequest, panelWriteRequest } from '../protocol.js';
import type { FromPage, PictureView, ToPage, Turning } from './messages.js';

const VIEW = 'rigwright.panel';
/** The cursor may wander: the panel follows when it rests, ms. */
const RESTS = 60;

export class BesidePanel implements vscode.Disposable {
    private panel: vscode.WebviewPanel | undefined;
    private readonly listening: vscode.Disposable[] = [];
    private about: vscode.TextEditor | undefined;
    private turning: Turning | undefined;
    private picture: string | undefined;
    private theme = 'dark';
    private paper = '';
    /** The page has told that it listens; what is said before is lost. */
    private ready = false;
    /** Somebody asks for the part in the drawing. */
    private look = false;
    private waiting: ReturnType<typeof setTimeout> | undefined;
    /** Questions are asked one after the other; what was asked meanwhile is asked once, as it stands then. */
    private asking = false;
    private again = false;

    constructor(private readonly client: BaseLanguageClient, private readonly extension: vscode.Uri, private readonly memory: vscode.Memento) {}

    dispose(): void {
        this.panel?.dispose();
    }

    /** @param drawing  with the part under the cursor in view in the flow drawing */
    show(drawing = false): void {
        const editor = vscode.window.activeTextEditor;
        if (editor?.document.languageId === 'rig') this.about = editor;
        if (!this.about) {
            void vscode.window.showInformationMessage('Open a rig first; then ask again.');
            return;
        }
        if (drawing) {
            this.picture = 'drawing';
            this.look = true;
        }
        if (this.panel) {
            this.panel.reveal(undefined, true);
            this.soon();
            return;
        }
        const media = vscode.Uri.joinPath(this.extension, 'out');
        const panel = vscode.window.createWebviewPanel(VIEW, 'Rig Panel', { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true }, { enableScripts: true, localResourceRoots: [media], retainContextWhenHidden: true });
        this.panel = panel;
        panel.webview.html = pageOf(panel.webview.asWebviewUri(vscode.Uri.joinPath(media, 'panel.js')).toString());
        this.listening.push(
            panel.webview.onDidReceiveMessage((message: FromPage) => void this.heard(message)),
            vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => textEditor.document.languageId === 'rig' && this.follow(textEditor)),
            vscode.window.onDidChangeActiveTextEditor(editor => editor?.document.languageId === 'rig' && this.follow(editor)),
            vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
                if (document !== this.about?.document || !contentChanges.length) return;
                // The numbers of the text are others now: what was turned is let go.
                this.turning = undefined;
                this.soon();
            }),
        );
        panel.onDidDispose(() => {
            for (const l of this.listening.splice(0)) l.dispose();
            clearTimeout(this.waiting);
            this.panel = undefined;
            this.turning = undefined;
            this.ready = false;
        });
    }

    private follow(editor: vscode.TextEditor): void {
        if (editor.document !== this.about?.document) this.turning = undefined;
        this.about = editor;
        this.soon();
    }
    private soon(): void {
        clearTimeout(this.waiting);
        this.waiting = setTimeout(() => void this.ask(), RESTS);
    }
    private async ask(): Promise<void> {
        if (!this.panel || !this.ready || !this.about) return;
        if (this.asking) {
            this.again = true;
            return;
        }
        this.asking = true;
        try {
            do {
                this.again = false;
                const { document, selection } = this.about;
                const told = await this.client.sendRequest(panelRequest, {
                    uri: this.client.code2ProtocolConverter.asUri(document.uri), position: this.client.code2ProtocolConverter.asPosition(selection.active), turning: this.turning, theme: this.theme, paper: this.paper, picture: this.picture,
                }).catch(() => null);
                await this.tell({ sort: 'panel', panel: told, look: this.look });
                this.look = false;
            } while (this.again && this.panel);
        } finally {
            this.asking = false;
        }
    }
    private async tell(message: ToPage): Promise<void> {
        await this.panel?.webview.postMessage(message);
    }
    private async heard(message: FromPage): Promise<void> {
        switch (message.sort) {
            case 'ready': case 'theme':
                ({ theme: this.theme, paper: this.paper } = message);
                if (message.sort === 'ready') {
                    this.ready = true;
                    const view = this.memory.get<PictureView>(VIEW);
                    if (view) await this.tell({ sort: 'view', view });
                }
                return this.ask();
            case 'view':
                await this.memory.update(VIEW, message.view);
                return;
            case 'turn':
                this.turning = message.turning;
                return this.ask();
            case 'release':
                this.turning = undefined;
                return this.ask();
            case 'picture':
                this.picture = message.name;
                return this.ask();
            case 'explain':
                await vscode.commands.executeCommand('rigwright.explain', message.rule);
                return;
            case 'goTo':
                return this.reveal(vscode.Uri.parse(message.uri), new vscode.Position(message.line, 0));
            case 'part':
                return this.toPart(message.name);
            case 'write':
                return this.write(message.turning);
        }
    }
    private async write(turning: Turning): Promise<void> {
        if (!this.about) return;
        const edit = await this.client.sendRequest(panelWriteRequest, { uri: this.client.code2ProtocolConverter.asUri(this.about.document.uri), turning });
        if (!edit) return;
        this.turning = undefined;
        await vscode.workspace.applyEdit(await this.client.protocol2CodeConverter.asWorkspaceEdit(edit));
    }
    /** The place of a part, as the outline has it. */
    private async toPart(name: string): Promise<void> {
        if (!this.about) return;
        const { uri } = this.about.document;
        const outline = await vscode.commands.executeCommand<vscode.DocumentSymbol[] | undefined>('vscode.executeDocumentSymbolProvider', uri);
        const find = (symbols: readonly vscode.DocumentSymbol[]): vscode.DocumentSymbol | undefined => {
            for (const s of symbols) {
                const found = s.name === name ? s : find(s.children);
                if (found) return found;
            }
            return undefined;
        };
        const found = find(outline ?? []);
        if (found) await this.reveal(uri, found.selectionRange.start);
    }
    private async reveal(uri: vscode.Uri, at: vscode.Position): Promise<void> {
        const column = vscode.window.visibleTextEditors.find(e => e.document.uri.toString() === uri.toString())?.viewColumn ?? vscode.ViewColumn.One;
        await vscode.window.showTextDocument(uri, { viewColumn: column, selection: new vscode.Range(at, at) });
    }
}

function pageOf(script: string): string {
    const nonce = Array.from(crypto.getRandomValues(new Uint8Array(16)), byte => byte.toString(16).padStart(2, '0')).join('');
    return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>Rig Panel</title>
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'nonce-${nonce}'; script-src 'nonce-${nonce}'">
<style nonce="${nonce}">
body { padding: 0 1.4em 2em; color: var(--vscode-foreground); background: var(--vscode-editor-background); font: 13px/1.5 var(--vscode-font-family, sans-serif); }
h1 { font-size: 1.25em; font-weight: 600; margin: 1.1em 0 0.1em; }
h2 { font-size: 1em; font-weight: 600; margin: 1.9em 0 0.5em; }
h2 small { font-weight: 400; opacity: 0.75; }
header { position: sticky; top: 0; z-index: 1; padding: 0.1em 0 0.6em; background: var(--vscode-editor-background); border-bottom: 1px solid var(--vscode-editorWidget-border, currentColor); }
.state { margin: 0; min-height: 1.5em; }
.hands { margin: 0.5em 0 0; min-height: 2.1em; display: flex; gap: 0.6em; align-items: center; flex-wrap: wrap; }
.quiet, footer { color: var(--vscode-descriptionForeground); }
footer { margin-top: 2.5em; font-size: 0.92em; }
button { font: inherit; padding: 0.25em 0.9em; border: 1px solid var(--vscode-button-border, transparent); border-radius: 2px; color: var(--vscode-button-secondaryForeground); background: var(--vscode-button-secondaryBackground); cursor: pointer; }
button:disabled { opacity: 0.55; cursor: default; }
button.link { padding: 0; border: 0; background: none; color: var(--vscode-textLink-foreground); text-decoration: underline; margin-left: 0.5em; }
button:focus-visible, input:focus-visible, select:focus-visible { outline: 2px solid var(--vscode-focusBorder); outline-offset: 2px; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; }
th { font-weight: 400; text-align: left; padding: 0.1em 1.4em 0.1em 0; min-width: 14em; }
td { padding: 0.1em 0; white-space: nowrap; }
td.figure { text-align: right; min-width: 4.5em; }
td.unit { padding-left: 0.4em; font-size: 0.9em; min-width: 4em; }
td.spread { padding-left: 0.8em; font-size: 0.9em; color: var(--vscode-descriptionForeground); min-width: 7em; }
td.was { padding-left: 1em; font-size: 0.9em; min-width: 8em; }
tr.moved td.figure { font-weight: 600; }
.turn { display: grid; grid-template-columns: 11em 7em; column-gap: 1em; max-width: 34em; padding: 0.35em 0 0.35em 0.7em; border-left: 3px solid transparent; }
.turn.turned { border-left-color: var(--vscode-focusBorder); }
.turn output { text-align: right; font-variant-numeric: tabular-nums; }
.turn input { grid-column: 1 / -1; width: 100%; margin: 0.2em 0 0; accent-color: var(--vscode-textLink-foreground); }
ul { list-style: none; padding: 0; margin: 0; max-width: 48em; }
li { display: flex; gap: 0.7em; padding: 0.3em 0; }
li.error .mark { color: var(--vscode-editorError-foreground, var(--vscode-errorForeground)); }
li.warning .mark { color: var(--vscode-editorWarning-foreground); }
li.gone .words { opacity: 0.8; text-decoration: line-through; }
li b { font-weight: 600; }
section.picture { scroll-margin-top: 9em; }
section.picture > label { margin-right: 1em; }
.tools { display: inline-flex; gap: 0.4em; flex-wrap: wrap; margin: 0.3em 0; }
.tools button { min-width: 2.2em; padding: 0.1em 0.7em; }
.tools button[aria-pressed="true"] { text-decoration: underline; text-underline-offset: 0.25em; }
.layers { display: flex; flex-wrap: wrap; gap: 0.1em 1em; margin: 0.3em 0 0.5em; padding: 0; border: 0; }
.layers legend { float: left; padding: 0; margin-right: 1em; }
.layers label { display: inline-flex; align-items: center; gap: 0.35em; }
.layers input { margin: 0; accent-color: var(--vscode-textLink-foreground); }
.drawing { overflow: auto; scrollbar-gutter: stable; max-height: 50vh; border: 1px solid var(--vscode-editorWidget-border, transparent); cursor: grab; }
.drawing.held { cursor: grabbing; user-select: none; }
.drawing:focus-visible { outline: 2px solid var(--vscode-focusBorder); outline-offset: 1px; }
.drawing svg { display: block; }
.drawing text { user-select: none; }
.drawing [data-part] { cursor: pointer; }
.drawing .walked { fill: none; stroke: var(--vscode-focusBorder); stroke-width: 2; stroke-dasharray: 5 3; vector-effect: non-scaling-stroke; pointer-events: none; }
.walk { min-height: 2.6em; margin: 0.3em 0 0; }
.drawing .pointer { fill: none; stroke: var(--vscode-textLink-foreground); stroke-width: 2.4; vector-effect: non-scaling-stroke; pointer-events: none; }
select { font: inherit; color: var(--vscode-dropdown-foreground); background: var(--vscode-dropdown-background); border: 1px solid var(--vscode-dropdown-border); margin: 1.2em 0 0.4em 0.4em; }
</style>
</head>
<body><main id="panel"></main>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;
}

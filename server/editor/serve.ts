/**
 * A connection -> the language server. Keeps texts in step, works out what an edit touched once the burst of typing has
 * drained, and publishes all findings of a text in one go, with its version.
 */
import { TextDocumentSyncKind, type Connection, type InitializeParams, type InitializeResult, type ServerCapabilities } from 'vscode-languageserver';
import { toDiagnostic } from './convert.js';
import { allFeatures } from './features.generated.js';
import { House } from './house.js';

export interface Surroundings {
    /** Runs something after what has already arrived was taken in. */
    readonly afterDraining: (run: () => void) => void;
    /** Reads a file where the client cannot: the desktop over stdio. */
    readonly readFile?: (uri: string) => string | undefined;
}
export const version = '0.1.0';

export function serve(connection: Connection, surroundings: Surroundings): House {
    const house = new House();
    const published = new Map<string, string>();
    let clientReads = false;
    let waiting = false;
    const edited = new Set<string>();

    house.failed = error => connection.console.error(`Rigwright could not work a text out: ${error instanceof Error ? error.stack : String(error)}`);
    house.wanted = uri => {
        if (uri.startsWith('rigwright-library:')) return;
        if (clientReads) {
            void connection.sendRequest<{ text?: string; missing?: boolean }>('rigwright/readFile', { uri }).then(
                answer => house.learn(uri, answer?.text) && publishSoon(), () => {});
        } else {
            const text = surroundings.readFile?.(uri);
            if (text !== undefined) queueMicrotask(() => house.learn(uri, text) && publishSoon());
        }
    };

    connection.onInitialize((params: InitializeParams): InitializeResult => {
        house.client = params.capabilities;
        const options = (params.initializationOptions ?? {}) as { today?: string; client?: string };
        clientReads = options.client === 'desktop' || options.client === 'browser';
        if (options.today) house.setSettings({ ...house.settings, today: options.today });
        const capabilities: ServerCapabilities = { textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental } };
        for (const feature of allFeatures) Object.assign(capabilities, feature.capabilities(params.capabilities));
        return { capabilities, serverInfo: { name: 'rigwright', version } };
    });
    connection.onDidChangeConfiguration(({ settings }) => {
        const own = (settings?.rigwright ?? {}) as { today?: string; hints?: boolean };
        const today = own.today?.trim();
        house.setSettings({ today: today && /^\d{4}-\d{2}-\d{2}$/.test(today) ? today : house.settings.today && today === undefined ? house.settings.today : undefined, hints: own.hints ?? true });
        publishSoon();
        if (house.client.workspace?.inlayHint?.refreshSupport) connection.languages.inlayHint.refresh().catch(() => {});
    });
    connection.onDidOpenTextDocument(({ textDocument: d }) => {
        house.open(d.uri, d.text, d.version);
        edited.add(d.uri);
        publishSoon();
    });
    connection.onDidChangeTextDocument(({ textDocument: d, contentChanges }) => {
        house.change(d.uri, d.version, contentChanges);
        edited.add(d.uri);
        publishSoon();
    });
    connection.onDidCloseTextDocument(({ textDocument: d }) => {
        house.close(d.uri);
        published.delete(d.uri);
        connection.sendDiagnostics({ uri: d.uri, diagnostics: [] }).catch(() => {});
        publishSoon();
    });
    connection.onDidChangeWatchedFiles(({ changes }) => {
        for (const c of changes) {
            if (c.type === 3) house.learn(c.uri, undefined);
            else house.forget(c.uri);
        }
        publishSoon();
    });

    function publishSoon(): void {
        if (waiting) return;
        waiting = true;
        surroundings.afterDraining(() => {
            waiting = false;
            publish();
        });
    }
    function publish(): void {
        const seen = new Set<string>();
        for (const root of house.roots()) {
            const analysis = house.analysis(root);
            if (!analysis) continue;
            const byFile = new Map<string, typeof analysis.findings[number][]>();
            for (const page of analysis.rig.pages) if (house.doc(page.file)) byFile.set(page.file, []);
            for (const f of analysis.findings) byFile.get(f.span.file)?.push(f);
            for (const [uri, findings] of byFile) {
                if (seen.has(uri)) continue;
                // A library is judged by itself when it is open; its readers do not repeat that.
                seen.add(uri);
                const diagnostics = findings.map(f => toDiagnostic(f, house));
                const key = JSON.stringify(diagnostics);
                if (published.get(uri) === key && !edited.has(uri)) continue;
                published.set(uri, key);
                connection.sendDiagnostics({ uri, version: house.doc(uri)?.version, diagnostics }).catch(() => {});
            }
        }
        for (const uri of [...published.keys()]) {
            if (seen.has(uri)) continue;
            published.delete(uri);
            connection.sendDiagnostics({ uri, diagnostics: [] }).catch(() => {});
        }
        edited.clear();
    }
    for (const feature of allFeatures) feature.register(connection, house);
    house.republish = publishSoon;
    connection.listen();
    return house;
}

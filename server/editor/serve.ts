/**
 * A connection -> the language server. Keeps texts in step, works out what an edit touched once the burst of typing has
 * drained, and publishes all findings of a text in one go, with its version.
 */
import {
    DidChangeWatchedFilesNotification, PositionEncodingKind, TextDocumentSyncKind,
    type Connection, type Diagnostic, type InitializeParams, type InitializeResult, type ServerCapabilities,
} from 'vscode-languageserver';
import { toDiagnostic } from './convert.js';
import { allFeatures } from './features.generated.js';
import { House } from './house.js';
import { version } from './version.js';

export interface Surroundings {
    /** Runs something after one turn of the event loop, in which one message that has arrived is taken in. */
    readonly nextTurn: (run: () => void) => void;
    /** Reads a file where the client does not: an ordinary editor over stdio. Undefined if there is none. */
    readonly readFile?: (uri: string) => string | undefined;
    /** Rig files in the folder of a file, itself included. */
    readonly rigFilesBeside?: (uri: string) => string[];
}
/** Turns without a new edit after which a burst of typing has been taken in: no timer, no delay for a single key. */
const QUIET_TURNS = 3;
/** Edits that never stop coming are told in between all the same, ms. */
const LONGEST_BURST = 50;
/** How long findings wait for a file that was asked for, ms: told without it, they would flicker. */
const PATIENCE = 400;
/** Clients that watch no files: how often, at most, files that are used are looked at again, ms. */
const LOOK_AGAIN = 2000;

interface Options {
    today?: string;
    hints?: boolean;
    faults?: boolean;
    client?: string;
}
const isoDate = (text: unknown) => (typeof text === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(text.trim()) ? text.trim() : undefined);

/** Registers everything on a connection and listens. */
export function serve(connection: Connection, surroundings: Surroundings): House {
    const house = new House();
    const published = new Map<string, readonly Diagnostic[]>();
    const edited = new Set<string>();
    const awaited = new Map<string, number>();
    let given: Options = {};
    let clientReads = false;
    let clientWatches = false;
    let pulls = false;
    let soon = false;
    let quietTurns = 0;
    let lookedAt = 0;

    house.failed = error => {
        try {
            connection.console.error(`Rigwright could not work a text out: ${error instanceof Error ? error.stack : String(error)}`);
        } catch {
            // The client has gone.
        }
    };
    house.wanted = uri => {
        if (uri.startsWith('rigwright-library:')) return;
        if (!clientReads) return void learn(uri, surroundings.readFile?.(uri));
        awaited.set(uri, Date.now());
        connection.sendRequest<{ text?: string; missing?: boolean } | null>('rigwright/readFile', { uri }).then(answer => answer?.text, () => undefined).then(text => {
            awaited.delete(uri);
            learn(uri, text);
            publishSoon();
        });
    };
    house.neighbours = uri => (uri.startsWith('file:') ? surroundings.rigFilesBeside?.(uri) ?? [] : []);
    const learn = (uri: string, text: string | undefined) => {
        if (house.learn(uri, text)) publishSoon();
    };

    connection.onInitialize((params: InitializeParams): InitializeResult => {
        house.client = params.capabilities;
        given = (params.initializationOptions ?? {}) as Options;
        house.ownClient = clientReads = given.client === 'desktop' || given.client === 'browser';
        const { publishDiagnostics, diagnostic } = params.capabilities.textDocument ?? {};
        // Push is what every client understands; told twice, findings would stand twice.
        pulls = !publishDiagnostics && !!diagnostic;
        configure({});
        const capabilities: ServerCapabilities = {
            positionEncoding: PositionEncodingKind.UTF16,
            textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: { includeText: false } },
        };
        for (const feature of allFeatures) merge(capabilities as Record<string, unknown>, feature.capabilities(params.capabilities));
        return { capabilities, serverInfo: { name: 'rigwright', version } };
    });
    connection.onInitialized(() => {
        clientWatches = clientReads;
        if (clientWatches || !house.client.workspace?.didChangeWatchedFiles?.dynamicRegistration) return;
        connection.client.register(DidChangeWatchedFilesNotification.type, { watchers: [{ globPattern: '**/*.rig' }] }).then(() => (clientWatches = true), () => {});
    });
    connection.onDidChangeConfiguration(({ settings }) => {
        const own = settings?.rigwright as Options | undefined;
        if (own || !house.client.workspace?.configuration) return reconfigure(own ?? {});
        connection.workspace.getConfiguration('rigwright').then((answer: Options | null) => reconfigure(answer ?? {}), () => {});
    });
    /** Settings hold over what was given at the start; an empty date means the day of the machine. */
    function configure(own: Options): void {
        const said = own.today !== undefined ? own.today : given.today;
        house.setSettings({ today: isoDate(said), hints: own.hints ?? given.hints ?? true, faults: own.faults ?? given.faults ?? true });
    }
    function reconfigure(own: Options): void {
        configure(own);
        publishSoon();
        refreshViews();
    }

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
        edited.delete(d.uri);
        publishSoon();
    });
    connection.onDidSaveTextDocument(() => {
        lookedAt = 0;
        publishSoon();
    });
    connection.onDidChangeWatchedFiles(({ changes }) => {
        for (const c of changes) {
            if (c.type === 3) house.learn(c.uri, undefined);
            house.forget(c.uri);
        }
        publishSoon();
    });

    // ---- findings -------------------------------------------------------------------------------------------------

    function publishSoon(): void {
        quietTurns = 0;
        if (soon) return;
        soon = true;
        const begun = Date.now();
        const turn = () => {
            if (++quietTurns < QUIET_TURNS && Date.now() < begun + LONGEST_BURST) return surroundings.nextTurn(turn);
            soon = false;
            try {
                publish();
            } catch (error) {
                house.failed(error);
            }
        };
        surroundings.nextTurn(turn);
    }
    function publish(): void {
        lookAgain();
        const told = new Map<string, Diagnostic[]>();
        for (const root of house.roots()) {
            const analysis = house.analysis(root);
            const mine = new Map<string, Diagnostic[]>();
            for (const file of house.filesOf(root)) if (house.doc(file)) mine.set(file, []);
            for (const f of analysis ? house.findingsOf(analysis) : []) mine.get(f.span.file)?.push(toDiagnostic(f, house));
            // A file that is used by several rigs is told once: as a rig of its own if it is on screen, else by the first.
            for (const [file, diagnostics] of mine) if (file === root || !told.has(file)) told.set(file, diagnostics);
        }
        const wait = waiting();
        if (wait) {
            setTimeout(publishSoon, wait);
            return;
        }
        let others = false;
        for (const [uri, diagnostics] of told) {
            const was = published.get(uri);
            if (!edited.has(uri)) {
                if (was && JSON.stringify(was) === JSON.stringify(diagnostics)) continue;
                others ||= !!was;
            }
            published.set(uri, diagnostics);
            if (!pulls) send(uri, diagnostics);
        }
        for (const uri of [...published.keys()]) {
            if (told.has(uri)) continue;
            published.delete(uri);
            if (!pulls) send(uri, []);
        }
        // Other pages of the same rig show numbers that this edit changed; the editor asks by itself only for the edited one.
        if (others || house.openDocs().some(d => !edited.has(d.uri) && [...edited].some(e => house.rootOf(e) === house.rootOf(d.uri)))) refreshViews();
        edited.clear();
        house.told();
    }
    function send(uri: string, diagnostics: Diagnostic[]): void {
        connection.sendDiagnostics({ uri, version: house.doc(uri)?.version, diagnostics }).catch(() => {});
    }
    /** How long to wait for files that are on their way, ms. */
    function waiting(): number {
        const newest = Math.max(0, ...awaited.values());
        return newest ? Math.max(0, newest + PATIENCE - Date.now()) : 0;
    }
    function lookAgain(): void {
        if (clientReads || clientWatches || !surroundings.readFile || Date.now() < lookedAt + LOOK_AGAIN) return;
        lookedAt = Date.now();
        for (const uri of house.closedUris()) if (uri.startsWith('file:')) house.learn(uri, surroundings.readFile(uri));
    }
    function refreshViews(): void {
        const can = house.client.workspace;
        const quietly = (asked: Promise<void>) => asked.catch(() => {});
        if (can?.inlayHint?.refreshSupport) quietly(connection.languages.inlayHint.refresh());
        if (can?.codeLens?.refreshSupport) quietly(connection.sendRequest('workspace/codeLens/refresh'));
        if (pulls && can?.diagnostics?.refreshSupport) connection.languages.diagnostics.refresh();
    }

    for (const feature of allFeatures) feature.register(connection, house);
    house.republish = publishSoon;
    connection.listen();
    return house;
}
/** Capabilities of several features may share a branch, as `workspace`. */
function merge(into: Record<string, unknown>, more: object): void {
    for (const [key, value] of Object.entries(more)) {
        if (value && typeof value === 'object' && !Array.isArray(value) && into[key] && typeof into[key] === 'object') merge(into[key] as Record<string, unknown>, value);
        else into[key] = value;
    }
}

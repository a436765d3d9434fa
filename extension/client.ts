// What the desktop and the browser share: everything but how the server is started.
// This folder never reads the server's insides: it knows it by protocol.ts alone. It opens no connection to anywhere
// and runs nothing that comes from the folder on screen.
import * as vscode from 'vscode';
import { RevealOutputChannelOn } from 'vscode-languageclient';
import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient';
import { checkFolder } from './commands/check-folder.js';
import { changes, compareOpen, variants } from './commands/compare.js';
import { corners } from './commands/corners.js';
import { explain } from './commands/explain.js';
import { newRig } from './commands/new-rig.js';
import { openLog } from './commands/open-log.js';
import { panel, showInDrawing } from './commands/panel.js';
import { restartServer } from './commands/restart-server.js';
import { faults, run } from './commands/run.js';
import { size } from './commands/size.js';
import { sweep } from './commands/sweep.js';
import { writeAssumptions } from './commands/write-assumptions.js';
import { Pages } from './pages.js';
import { BesidePanel } from './panel/beside.js';
import { readFileRequest } from './protocol.js';
import type { StartOptions } from './protocol.js';
import { readTextFile } from './read-text-file.js';
import { showStatus } from './show-status.js';
import { traceChannel } from './trace-channel.js';

/** How the two kinds of editor differ. */
export interface Host {
    kind: StartOptions['client'];
    createClient(options: LanguageClientOptions): BaseLanguageClient | Promise<BaseLanguageClient>;
}

/** What a command may use. */
export interface Rigwright {
    client: BaseLanguageClient;
    log: vscode.LogOutputChannel;
    pages: Pages;
    beside: BesidePanel;
    /** The date of the setting `rigwright.today`, or nothing if it is empty or no date. */
    today(): string | undefined;
}

type Command = (rigwright: Rigwright, ...args: unknown[]) => unknown;

const commands: Record<string, Command> = {
    'rigwright.newRig': newRig,
    'rigwright.checkFolder': checkFolder,
    'rigwright.explain': explain,
    'rigwright.size': size,
    'rigwright.sweep': sweep,
    'rigwright.corners': corners,
    'rigwright.run': run,
    'rigwright.faults': faults,
    'rigwright.changes': changes,
    'rigwright.compareOpen': compareOpen,
    'rigwright.variants': variants,
    'rigwright.panel': panel,
    'rigwright.showInDrawing': showInDrawing,
    'rigwright.writeAssumptions': writeAssumptions,
    'rigwright.restartServer': restartServer,
    'rigwright.openLog': openLog,
};

/** Starts the server and registers everything that the manifest promises. */
export async function activateRigwright(context: vscode.ExtensionContext, host: Host): Promise<BaseLanguageClient> {
    // A channel of our own: the client's own one would vanish when the server is stopped.
    const log = vscode.window.createOutputChannel('Rigwright', { log: true });
    const watcher = vscode.workspace.createFileSystemWatcher('**/*.rig');
    const client = await host.createClient({
        documentSelector: [{ language: 'rig' }],
        synchronize: { configurationSection: 'rigwright', fileEvents: watcher },
        initializationOptions: (): StartOptions => ({ today: today(), client: host.kind }),
        outputChannel: log,
        traceOutputChannel: traceChannel(log, context.subscriptions),
        revealOutputChannelOn: RevealOutputChannelOn.Never,
    });
    log.info(`Rigwright ${context.extension.packageJSON.version}, ${host.kind}, in ${vscode.env.appName} ${vscode.version}`);
    const pages = new Pages(client);
    const beside = new BesidePanel(client, context.extensionUri, context.globalState);
    const rigwright: Rigwright = { client, log, pages, beside, today };

    context.subscriptions.push(log, watcher, pages, beside, showStatus(client, host.kind));
    context.subscriptions.push(client.onRequest(readFileRequest, ({ uri }) => readTextFile(vscode.Uri.parse(uri))));
    for (const [name, command] of Object.entries(commands)) {
        context.subscriptions.push(vscode.commands.registerCommand(name, (...args: unknown[]) => withApology(rigwright, command, args)));
    }
    // A server that cannot start has been told by the client; the commands stay, so that a restart can be asked for.
    await client.start().catch(error => log.error(error));
    return client;
}

function today(): string | undefined {
    const text = vscode.workspace.getConfiguration('rigwright').get<string>('today', '').trim();
    return /^\d{4}-\d{2}-\d{2}$/.test(text) ? text : undefined;
}

/** A command that fails says so in one sentence; the details go to the log. */
async function withApology(rigwright: Rigwright, run: Command, args: unknown[]): Promise<void> {
    try {
        await run(rigwright, ...args);
    } catch (error) {
        rigwright.log.error(error instanceof Error ? error : String(error));
        const choice = await vscode.window.showErrorMessage(
            'Rigwright could not do that. The log says more; restarting the server often helps.', 'Restart the Server', 'Open the Log');
        if (choice === 'Restart the Server') await vscode.commands.executeCommand('rigwright.restartServer');
        if (choice === 'Open the Log') rigwright.log.show();
    }
}

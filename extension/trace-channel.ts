import * as vscode from 'vscode';

const SETTING = 'rigwright.trace.server';

/**
 * The log as the client wants it for what it hears and says. The client writes that only where the log's level is
 * `trace`, which people can set by hand but an extension cannot; here the level follows the setting.
 */
export function traceChannel(log: vscode.LogOutputChannel, subscriptions: vscode.Disposable[]): vscode.LogOutputChannel {
    const changed = new vscode.EventEmitter<vscode.LogLevel>();
    const level = () => (vscode.workspace.getConfiguration().get(SETTING, 'off') === 'off' ? log.logLevel : vscode.LogLevel.Trace);
    subscriptions.push(
        changed,
        log.onDidChangeLogLevel(() => changed.fire(level())),
        vscode.workspace.onDidChangeConfiguration(event => {
            if (event.affectsConfiguration(SETTING)) changed.fire(level());
        }),
    );
    return Object.create(log, {
        logLevel: { get: level },
        onDidChangeLogLevel: { value: changed.event },
        trace: { value: (message: string, ...more: unknown[]) => log.info(message, ...more) },
    });
}

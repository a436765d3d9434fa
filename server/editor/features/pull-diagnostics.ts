import { DocumentDiagnosticReportKind } from 'vscode-languageserver';
import { toDiagnostic } from '../convert.js';
import type { Feature } from '../feature.js';

/** Findings on request: the answer is for the text as it is now. */
const pullDiagnostics: Feature = {
    name: 'pull-diagnostics',
    // Push is what every client understands; told both ways, each finding would stand twice.
    capabilities: client => (client.textDocument?.diagnostic && !client.textDocument.publishDiagnostics ? { diagnosticProvider: { identifier: 'rigwright', interFileDependencies: true, workspaceDiagnostics: false } } : {}),
    register(connection, house) {
        let n = 0;
        const last = new Map<string, { key: string; id: string }>();
        connection.languages.diagnostics.on(({ textDocument: { uri }, previousResultId }) => {
            const items = house.findingsIn(uri).map(f => toDiagnostic(f, house));
            const key = JSON.stringify(items);
            let known = last.get(uri);
            if (known?.key !== key) last.set(uri, (known = { key, id: String(++n) }));
            return previousResultId === known.id ? { kind: DocumentDiagnosticReportKind.Unchanged, resultId: known.id } : { kind: DocumentDiagnosticReportKind.Full, resultId: known.id, items };
        });
    },
};
export default pullDiagnostics;

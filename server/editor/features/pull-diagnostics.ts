/** Findings on request: the answer is for the text as it is now. */
import { DocumentDiagnosticReportKind } from 'vscode-languageserver';
import { toDiagnostic } from '../convert.js';
import type { Feature } from '../feature.js';

const pullDiagnostics: Feature = {
    name: 'pull-diagnostics',
    // Push is what every client understands; pull is answered, and announced only to clients that cannot be pushed to.
    capabilities: client => (client.textDocument?.diagnostic && !client.textDocument.publishDiagnostics ? { diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false } } : {}),
    register(connection, house) {
        let n = 0;
        const ids = new Map<string, { key: string; id: string }>();
        connection.languages.diagnostics.on(({ textDocument, previousResultId }) => {
            const items = house.findingsIn(textDocument.uri).map(f => toDiagnostic(f, house));
            const key = JSON.stringify(items);
            let known = ids.get(textDocument.uri);
            if (known?.key !== key) ids.set(textDocument.uri, (known = { key, id: String(++n) }));
            return previousResultId === known.id ? { kind: DocumentDiagnosticReportKind.Unchanged, resultId: known.id } : { kind: DocumentDiagnosticReportKind.Full, resultId: known.id, items };
        });
    },
};
export default pullDiagnostics;

/** Our findings and fixes as the protocol's diagnostics and edits. */
import type { Diagnostic, TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import type { Finding } from '../../language/index.js';
import type { Fix } from '../../language/rig/rig.js';
import type { House } from './house.js';

const severities = { error: 1, warning: 2, hint: 3 } as const;

/** Address of the page of a rule, which the editor opens by itself. */
export function rulePageUri(rule: string): string {
    return `rigwright-page:/rule/${rule}`;
}
export function toDiagnostic(finding: Finding, house: House): Diagnostic {
    return {
        range: house.linesOf(finding.span.file).range(finding.span), severity: severities[finding.severity], code: finding.rule,
        codeDescription: { href: rulePageUri(finding.rule) }, source: 'rigwright', message: finding.message,
        relatedInformation: finding.related.length ? finding.related.map(r => ({ location: house.location(r.span), message: r.message })) : undefined,
    };
}
export function toWorkspaceEdit(fix: Pick<Fix, 'edits'>, house: House): WorkspaceEdit {
    const changes: Record<string, TextEdit[]> = {};
    for (const e of fix.edits) (changes[e.span.file] ??= []).push({ range: house.linesOf(e.span.file).range(e.span), newText: e.text });
    return { changes };
}

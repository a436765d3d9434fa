/** Our findings and fixes as the protocol's diagnostics and edits. */
import type { Diagnostic, TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { Finding, Fix } from '../../language/index.js';
import type { House } from './house.js';

const severities = { error: 1, warning: 2, hint: 3 } as const;
const UNNECESSARY = 1;
/** Lines that can go: an editor shows them faded. */
const idle = new Set(['permission-unused']);

/** Address of the page of a rule, which our own extension opens by itself. */
export function rulePageUri(rule: string): string {
    return `rigwright-page:/rule/${rule}`;
}
/** A finding as the client can show it; related places and tags only where it announced them. */
export function toDiagnostic(finding: Finding, house: House): Diagnostic {
    const can = house.client.textDocument?.publishDiagnostics ?? house.client.textDocument?.diagnostic;
    const diagnostic: Diagnostic = {
        range: house.linesOf(finding.span.file).range(finding.span), severity: severities[finding.severity], code: finding.rule, source: 'rigwright', message: finding.message,
    };
    if (house.ownClient) diagnostic.codeDescription = { href: rulePageUri(finding.rule) };
    if (can?.relatedInformation && finding.related.length) diagnostic.relatedInformation = finding.related.map(r => ({ location: house.location(r.span), message: r.message }));
    if (can?.tagSupport && idle.has(finding.rule)) diagnostic.tags = [UNNECESSARY];
    return diagnostic;
}
/** Edits in the plain form that every client takes. */
export function toWorkspaceEdit(fix: Pick<Fix, 'edits'>, house: House): WorkspaceEdit {
    const changes: Record<string, TextEdit[]> = {};
    for (const e of fix.edits) (changes[e.span.file] ??= []).push({ range: house.linesOf(e.span.file).range(e.span), newText: e.text });
    return { changes };
}

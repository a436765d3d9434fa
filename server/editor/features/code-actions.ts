/** Fixes of findings, the assumed value into the text, a quantity in another unit, a value with a name, the page of a rule. */
import { CodeActionKind, type CodeAction } from 'vscode-languageserver';
import { raisedBy, type Analysis, type Finding } from '../../../language/index.js';
import { additionTo } from '../../../language/rules/fixes.js';
import { measures } from '../../../language/units/dimension.js';
import { digits } from '../../../language/units/format.js';
import { fromSi, unitOf } from '../../../language/units/unit.js';
import { walk } from '../../../language/values/parse-value.js';
import type { Fix } from '../../../language/rig/rig.js';
import { toDiagnostic, toWorkspaceEdit } from '../convert.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { pageIn, spotAt } from '../spot.js';

const FIX_ALL = `${CodeActionKind.SourceFixAll}.rigwright`;

const codeActions: Feature = {
    name: 'code-actions',
    capabilities: () => ({ codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.Refactor, CodeActionKind.RefactorRewrite, CodeActionKind.RefactorExtract, CodeActionKind.SourceFixAll, FIX_ALL] } }),
    register(connection, house) {
        connection.onCodeAction(({ textDocument, range, context }) => actionsAt(house, textDocument.uri, range, context.only));
    },
};
export default codeActions;

type Range = { start: { line: number; character: number }; end: { line: number; character: number } };
export function actionsAt(house: House, uri: string, range: Range, only?: readonly string[]): CodeAction[] {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri);
    const doc = house.doc(uri);
    if (!analysis || !page || !doc) return [];
    const wants = (kind: string) => !only || only.some(o => kind === o || kind.startsWith(`${o}.`));
    const start = doc.lines.offset(range.start);
    const end = doc.lines.offset(range.end);
    const here = analysis.findings.filter(f => f.span.file === uri && f.span.start <= end && start <= f.span.end);
    const actions: CodeAction[] = [];
    if (wants(CodeActionKind.QuickFix)) {
        for (const f of here) actions.push(...fixesOf(house, analysis, f));
        for (const rule of new Set(here.map(f => f.rule))) actions.push({ title: `Explain ${rule}`, kind: CodeActionKind.QuickFix, command: { title: `Explain ${rule}`, command: 'rigwright.explain', arguments: [rule] } });
    }
    if (wants(FIX_ALL) && only?.some(o => o.startsWith(CodeActionKind.Source))) {
        const all = keepingFixes(analysis.findings.filter(f => f.span.file === uri));
        if (all.edits.length) actions.push({ title: 'Fix everything that keeps the meaning', kind: FIX_ALL, edit: toWorkspaceEdit(all, house) });
    }
    if (wants(CodeActionKind.Refactor)) actions.push(...refactors(house, analysis, uri, start));
    return actions;
}
/** Fixes of a finding, each tried: one that raises an error is not offered; what else it raises stands in its title. */
function fixesOf(house: House, analysis: Analysis, f: Finding): CodeAction[] {
    const actions: CodeAction[] = [];
    for (const fix of f.fixes.slice(0, 4)) {
        const raised = raisedBy(fix, analysis, u => house.doc(u)?.text, { today: house.today });
        if (raised.some(r => r.severity === 'error')) continue;
        const raises = [...new Set(raised.map(r => r.rule))];
        actions.push({
            title: raises.length ? `${fix.title} (then tells ${raises.slice(0, 2).join(', ')}${raises.length > 2 ? ' …' : ''})` : fix.title, kind: CodeActionKind.QuickFix, diagnostics: [toDiagnostic(f, house)],
            isPreferred: fix.preferred && !raises.length && f.fixes.length === 1 ? true : undefined, edit: toWorkspaceEdit(fix, house),
        });
    }
    return actions;
}
/** All fixes that keep the meaning, without those that overlap. */
export function keepingFixes(findings: readonly Finding[]): Fix {
    const edits: Fix['edits'][number][] = [];
    for (const f of findings) {
        const fix = f.fixes.find(x => x.keepsMeaning);
        if (fix && !fix.edits.some(e => edits.some(o => o.span.file === e.span.file && o.span.start < e.span.end && e.span.start < o.span.end))) edits.push(...fix.edits);
    }
    return { title: 'Fix everything that keeps the meaning', edits, keepsMeaning: true };
}
function refactors(house: House, analysis: Analysis, uri: string, offset: number): CodeAction[] {
    const page = pageIn(analysis, uri)!;
    const spot = spotAt(page, offset);
    const actions: CodeAction[] = [];
    const { part, entry } = spot;
    const live = part && analysis.rig.parts.get(part.name) === part;
    if (entry?.value && spot.in === 'value') {
        for (const sequence of entry.value.list) {
            for (const node of sequence) {
                walk(node, n => {
                    if (n.is !== 'quantity' || offset < entry.span.start + n.start || offset > entry.span.start + n.end || n.unit.text === 'AWG' || n.unit.mark) return;
                    const si = n.value * n.unit.factor + n.unit.offset;
                    const others = [...new Set(Object.values(measures).filter(m => m.dimension === n.unit.dimension).flatMap(m => m.units))].filter(u => u !== n.unit.text && unitOf(u)?.dimension === n.unit.dimension && !unitOf(u)!.currency);
                    const span = { file: uri, start: entry.span.start + n.start, end: entry.span.start + n.end };
                    for (const u of others.slice(0, 5)) {
                        const text = `${digits(fromSi(si, unitOf(u)!), 6)} ${u}`;
                        if (/e/.test(text.split(' ')[0])) continue;
                        actions.push({ title: `Write it as ${text}`, kind: CodeActionKind.RefactorRewrite, edit: toWorkspaceEdit({ edits: [{ span, text }] }, house) });
                    }
                    let name = `${part!.name}-${entry.key}`.replace(/[^\p{L}\p{N}-]+/gu, '-');
                    while (analysis.rig.parts.has(name) || analysis.rig.lets.has(name)) name += '-2';
                    const at = firstBlock(page.text);
                    actions.push({ title: `Name this value ${name}`, kind: CodeActionKind.RefactorExtract, edit: toWorkspaceEdit({ edits: [{ span: { file: uri, start: at, end: at }, text: `let ${name} = ${page.text.slice(span.start, span.end)}\n\n` }, { span, text: name }] }, house) });
                });
            }
        }
    }
    if (live && part.kind && spot.in === 'header') {
        const edits = Object.values(part.kind.properties).filter(p => p.assume && analysis.workings.given(part, p.name).status === 'assumed').map(p => ({ key: p.name, value: p.assume!.value, because: p.assume!.because }));
        if (edits.length) {
            const first = additionTo(analysis.rig, part, edits[0].key, edits[0].value);
            if (first) {
                const text = edits.map(e => additionTo(analysis.rig, part, e.key, `${e.value}${first.text.includes('\n') ? `   # assumed: ${e.because}` : ''}`)!.text).join('');
                actions.push({ title: `Write what is assumed of ${part.name} into the text`, kind: CodeActionKind.RefactorRewrite, edit: toWorkspaceEdit({ edits: [{ span: first.span, text }] }, house) });
            }
        }
    }
    return actions;
}
/** Where a named value may stand: before the first part, below the title and what is used. */
function firstBlock(text: string): number {
    const m = /^(?:[ \t]*(?:rig|library|use|let)\b.*\n|[ \t]*#.*\n|[ \t]*\r?\n)*/.exec(text);
    return m ? m[0].length : 0;
}

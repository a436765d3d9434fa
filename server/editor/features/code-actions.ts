/** Fixes of findings, assumed values into the text, a quantity in another unit, a name for a value, the page of a rule. */
import { CodeActionKind, type CodeAction } from 'vscode-languageserver';
import type { Analysis, Finding, Fix } from '../../../language/index.js';
import { walk } from '../../../language/values/parse-value.js';
import { assumedOf, writeInto } from '../assumptions.js';
import { toDiagnostic, toWorkspaceEdit } from '../convert.js';
import { otherUnits } from '../convert-units.js';
import type { Feature } from '../feature.js';
import type { House, Range, Sight } from '../house.js';
import { spotAt } from '../spot.js';

const FIX_ALL = `${CodeActionKind.SourceFixAll}.rigwright`;
/** Each fix is tried on the whole rig before it is offered: no more than these for one finding. */
const MOST_FIXES = 4;
const MOST_FINDINGS = 8;

const codeActions: Feature = {
    name: 'code-actions',
    capabilities: () => ({
        codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite, CodeActionKind.RefactorExtract, CodeActionKind.SourceFixAll, FIX_ALL] },
    }),
    register(connection, house) {
        connection.onCodeAction(({ textDocument, range, context }) => actionsAt(house, textDocument.uri, range, context.only));
    },
};
export default codeActions;

/** @param only kinds that are asked for; without them, everything but what is for the whole file */
export function actionsAt(house: House, uri: string, range: Range, only?: readonly string[]): CodeAction[] {
    const sight = house.sight(uri);
    if (!sight) return [];
    const { doc, analysis } = sight;
    const wants = (kind: string) => !only?.length || only.some(o => kind === o || kind.startsWith(`${o}.`) || o === '');
    const start = doc.lines.offset(range.start);
    const end = doc.lines.offset(range.end);
    const mine = analysis.findings.filter(f => f.span.file === uri);
    const here = mine.filter(f => f.span.start <= end && start <= f.span.end).slice(0, MOST_FINDINGS);
    const actions: CodeAction[] = [];
    if (wants(CodeActionKind.QuickFix)) {
        for (const f of here) actions.push(...fixesOf(house, analysis, f));
        for (const f of here) actions.push(...guessesOf(house, analysis, f));
        if (house.ownClient) {
            for (const f of here.filter(f => f.rule === 'expectation-not-met')) {
                const e = analysis.rig.expects.find(e => e.valueSpan.file === f.span.file && e.valueSpan.start <= f.span.start && f.span.end <= e.valueSpan.end);
                if (!e?.value || e.when) continue;
                const title = 'Size a number so that it holds';
                actions.push({ title, kind: CodeActionKind.QuickFix, diagnostics: [toDiagnostic(f, house)], command: { title, command: 'rigwright.size', arguments: [e.value.text] } });
            }
            for (const rule of new Set(here.map(f => f.rule))) {
                const diagnostics = here.filter(f => f.rule === rule).map(f => toDiagnostic(f, house));
                const title = `Explain ${rule}`;
                actions.push({ title, kind: CodeActionKind.QuickFix, diagnostics, command: { title, command: 'rigwright.explain', arguments: [rule] } });
            }
        }
    }
    if (only?.some(o => o.startsWith(CodeActionKind.Source)) && wants(FIX_ALL)) {
        const all = keepingFixes(house, analysis, mine);
        if (all.edits.length) actions.push({ title: all.title, kind: FIX_ALL, edit: toWorkspaceEdit(all, house) });
    }
    if (wants(CodeActionKind.RefactorRewrite)) actions.push(...rewritings(house, sight, start), ...assumptionsHere(house, sight, start));
    if (wants(CodeActionKind.RefactorExtract)) actions.push(...namings(house, sight, start, end));
    return actions;
}

// ---- fixes --------------------------------------------------------------------------------------------------------

/** Fixes of a finding, each tried: one that raises an error is not offered; what else it raises stands in its title. */
function fixesOf(house: House, analysis: Analysis, f: Finding): CodeAction[] {
    const sound = f.fixes.slice(0, MOST_FIXES)
        .map(fix => ({ fix, raised: house.raisedBy(fix, analysis) }))
        .filter(({ raised }) => !raised.some(r => r.severity === 'error'));
    return sound.map(({ fix, raised }) => {
        const raises = [...new Set([...raised.map(r => r.rule), ...(fix.raises ?? [])])];
        return {
            title: raises.length ? `${fix.title} (then it tells ${raises.slice(0, 2).join(', ')}${raises.length > 2 ? ' …' : ''})` : fix.title,
            kind: CodeActionKind.QuickFix,
            diagnostics: [toDiagnostic(f, house)], edit: toWorkspaceEdit(fix, house),
            ...(fix.preferred && !raises.length && sound.length === 1 ? { isPreferred: true } : {}),
        };
    });
}
/** A finding that rests on a guess: the guess as a line to correct. */
function guessesOf(house: House, analysis: Analysis, f: Finding): CodeAction[] {
    return f.rests.slice(0, 2).flatMap(label => {
        const part = analysis.rig.parts.get(label.slice(0, label.indexOf('.')));
        const key = label.slice(label.indexOf('.') + 1).split('.')[0];
        const wanted = part && assumedOf(analysis, part).find(a => a.key === key);
        const edit = wanted && writeInto(analysis, part, [wanted]);
        if (!edit) return [];
        return [{
            title: `Write the assumed ${part.name}.${key}: ${wanted.value} into the text, to be corrected`, kind: CodeActionKind.QuickFix,
            diagnostics: [toDiagnostic(f, house)], edit: toWorkspaceEdit({ edits: [edit] }, house),
        }];
    });
}
/** All fixes that keep the meaning, those left out that overlap another, or that would raise an error. */
export function keepingFixes(house: House, analysis: Analysis, findings: readonly Finding[]): Fix {
    const edits: Fix['edits'][number][] = [];
    const overlaps = (e: Fix['edits'][number]) => edits.some(o => o.span.file === e.span.file && o.span.start <= e.span.end && e.span.start <= o.span.end);
    for (const f of findings) {
        const fix = f.fixes.find(x => x.keepsMeaning);
        if (fix && !fix.edits.some(overlaps)) edits.push(...fix.edits);
    }
    const all: Fix = { title: 'Fix everything that keeps the meaning', edits, keepsMeaning: true };
    return edits.length && house.raisedBy(all, analysis).some(r => r.severity === 'error') ? { ...all, edits: [] } : all;
}

// ---- rewriting ----------------------------------------------------------------------------------------------------

function rewritings(house: House, { page }: Sight, offset: number): CodeAction[] {
    const spot = spotAt(page, offset);
    const values = [spot.in === 'value' ? spot.entry : undefined, ...page.lets, ...page.expects.map(e => ({ span: e.valueSpan, value: e.value }))];
    const value = values.find(e => e?.value && e.span.start <= offset && offset <= e.span.end);
    if (!value?.value) return [];
    return otherUnits(value.value, value.value.text, offset - value.span.start).map(r => ({
        title: `Write it as ${r.text}`, kind: CodeActionKind.RefactorRewrite,
        edit: toWorkspaceEdit({ edits: [{ span: { file: page.file, start: value.span.start + r.start, end: value.span.start + r.end }, text: r.text }] }, house),
    }));
}
function assumptionsHere(house: House, { analysis, page }: Sight, offset: number): CodeAction[] {
    const { part, in: where } = spotAt(page, offset);
    if (!part || where !== 'header') return [];
    const wanted = assumedOf(analysis, part);
    const edit = writeInto(analysis, part, wanted);
    if (!edit) return [];
    return [{
        title: `Write what is assumed of ${part.name} into the text`, kind: CodeActionKind.RefactorRewrite,
        edit: toWorkspaceEdit({ edits: [edit] }, house),
    }];
}
/** A quantity, or a selected expression, becomes a named value above. */
function namings(house: House, { analysis: { rig }, page }: Sight, start: number, end: number): CodeAction[] {
    const { part, entry, in: where } = spotAt(page, start);
    if (!part || !entry?.value || where !== 'value' || page.sort === 'library') return [];
    let found: { start: number; end: number } | undefined;
    for (const sequence of entry.value.list) {
        for (const node of sequence) {
            const [from, to] = [start - entry.span.start, end - entry.span.start];
            walk(node, n => {
                const sum = from < to && n.is === 'operation' && ['+', '-', '*', '/'].includes(n.op) && n.start === from && n.end === to;
                if (n.start <= from && to <= n.end && (n.is === 'quantity' || sum)) found = n;
            });
        }
    }
    if (!found) return [];
    const base = `${part.name}-${entry.key}`.replace(/[^\p{L}\p{N}]+/gu, '-');
    let name = base;
    for (let n = 2; rig.parts.has(name) || rig.lets.has(name); n++) name = `${base}-${n}`;
    const span = { file: page.file, start: entry.span.start + found.start, end: entry.span.start + found.end };
    const { at, before, after } = afterTitle(page.text);
    return [{
        title: `Give this value a name: ${name}`, kind: CodeActionKind.RefactorExtract,
        edit: toWorkspaceEdit({
            edits: [
                { span: { file: page.file, start: at, end: at }, text: `${before}let ${name} = ${page.text.slice(span.start, span.end)}${after}` },
                { span, text: name },
            ],
        }, house),
    }];
}
/** Where a named value may stand, below the title, what is used and other named values; and how it is set off. */
function afterTitle(text: string): { at: number; before: string; after: string } {
    const eol = text.includes('\r\n') ? '\r\n' : '\n';
    let at = text.startsWith('\ufeff') ? 1 : 0;
    let word = '';
    for (let start = at; start < text.length;) {
        const found = text.indexOf('\n', start);
        const next = found < 0 ? text.length : found + 1;
        const line = text.slice(start, next).trim();
        const statement = /^(?:rig|library|use|let)\b/.exec(line);
        if (!statement && line && !line.startsWith('#')) break;
        if (statement) {
            at = next;
            word = statement[0];
        }
        start = next;
    }
    const rest = text.slice(at);
    return { at, before: word && word !== 'let' ? eol : '', after: /^[ \t]*\r?\n/.test(rest) ? eol : eol + eol };
}

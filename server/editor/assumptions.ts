/** Edits that write assumed values into the text: for one value, for a part, for all that a rig rests on. */
import { assumptionRows } from '../../language/reference/quantities.js';
import type { Analysis } from '../../language/index.js';
import type { Fix, Part, Span } from '../../language/rig/rig.js';

interface Wanted {
    readonly key: string;
    readonly value: string;
    readonly because: string;
}
/** What is assumed of a part, whether a number rests on it or not. */
export function assumedOf(analysis: Analysis, part: Part): Wanted[] {
    if (part.implied || part.pattern || analysis.rig.parts.get(part.name) !== part) return [];
    return Object.values(part.kind?.properties ?? {}).flatMap(p => {
        const given = p.assume && analysis.workings.given(part, p.name);
        return given?.status === 'assumed' ? [{ key: p.name, value: p.assume!.value, because: p.assume!.because }] : [];
    });
}
/** Writes values into a part's block, after what stands there; opens a block where there is none. */
export function writeInto(analysis: Analysis, part: Part, wanted: readonly Wanted[]): { span: Span; text: string } | undefined {
    const page = analysis.rig.pages.find(p => p.file === part.file);
    if (!page || part.implied || !wanted.length || page.file.startsWith('rigwright-library:')) return undefined;
    const inLine = wanted.map(w => `${w.key}: ${w.value}`).join('   ');
    const at = (offset: number, text: string) => ({ span: { file: part.file, start: offset, end: offset }, text });
    if (!part.inside) return at(part.span.end, ` { ${inLine} }`);
    const block = page.text.slice(part.inside.start, part.inside.end);
    if (!block.includes('\n')) {
        const end = part.inside.start + block.trimEnd().length;
        return at(end, `${block.trim() ? '   ' : ' '}${inLine}${block.trimEnd() === block ? ' ' : ''}`);
    }
    const eol = block.includes('\r\n') ? '\r\n' : '\n';
    const last = [...part.entries.values()].at(-1);
    const lineStart = last ? page.text.lastIndexOf('\n', last.keySpan.start - 1) + 1 : 0;
    const indent = last ? /^[ \t]*/.exec(page.text.slice(lineStart, last.keySpan.start))![0] || '  ' : '  ';
    const lines = wanted.map(w => `${eol}${indent}${`${w.key}: `.padEnd(18)}${w.value}   # assumed: ${w.because}`).join('');
    if (!last) return at(part.inside.start, lines);
    // After the last value, its comment included.
    const from = Math.max(last.span.end, last.keySpan.end);
    const end = page.text.indexOf('\n', from);
    const rest = page.text.slice(from, end < 0 ? undefined : end).trimEnd();
    const closes = end < 0 || end >= part.inside.end;
    // A } behind the last value must not end up in the comment.
    return closes ? at(part.inside.start + block.trimEnd().length, lines + eol) : at(from + rest.length, lines);
}
/** Everything that is assumed and that a number rests on, written into the blocks that stand in the text. */
export function writeAll(analysis: Analysis): Fix | undefined {
    const byPart = new Map<Part, Wanted[]>();
    for (const row of assumptionRows(analysis.workings)) {
        const dot = row.name.indexOf('.');
        const part = analysis.rig.parts.get(row.name.slice(0, dot));
        if (!part || part.implied || !row.value) continue;
        const list = byPart.get(part);
        const wanted = { key: row.name.slice(dot + 1), value: row.value, because: row.because };
        if (list) list.push(wanted);
        else byPart.set(part, [wanted]);
    }
    const edits = [...byPart].map(([part, wanted]) => writeInto(analysis, part, wanted)).filter(e => !!e);
    return edits.length ? { title: 'Write what is assumed into the text', edits } : undefined;
}

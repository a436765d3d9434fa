/** How a number came about: formula in words, inputs with their values and origin, recursively, with source and range. */
import type { Result } from '../quantities/workings.js';
import { showInput, showResult, showSpread } from './values.js';

export interface WorkingOptions {
    /** How many steps down; 1 shows the inputs, 2 theirs as well. */
    readonly depth?: number;
    readonly markdown?: boolean;
}

/** The working of a result as lines of Markdown, or of plain text. */
export function workingOf(result: Result, { depth = 2, markdown = true }: WorkingOptions = {}): string {
    const lines: string[] = [];
    const strong = (s: string) => (markdown ? `**${s}**` : s);
    const q = result.quantity;
    const spread = showSpread(result);
    lines.push(`${strong(`${result.part.name}.${q.name}`)} = ${strong(showResult(result))}${spread ? ` ${spread}` : ''}`);
    lines.push('', q.meaning, '', `${markdown ? '*' : ''}How:${markdown ? '*' : ''} ${q.formula}`);
    if (q.range) lines.push(`${markdown ? '\n*' : ''}Holds for:${markdown ? '*' : ''} ${q.range}`);
    lines.push(`${markdown ? '\n*' : ''}Source:${markdown ? '*' : ''} ${q.source}`);
    for (const r of result.remarks) lines.push('', r);
    if (result.missing.length) lines.push('', `Not known, because ${list(result.missing)} ${result.missing.length > 1 ? 'are' : 'is'} not given.`);
    const inputs = inputLines(result, depth, '', new Set([result]));
    if (inputs.length) lines.push('', 'From:', '', ...inputs);
    return lines.join('\n');
}
function inputLines(result: Result, depth: number, indent: string, seen: Set<Result>): string[] {
    return result.inputs.flatMap(i => {
        const line = `${indent}- ${showInput(i)}`;
        if (!i.result || depth <= 1 || seen.has(i.result)) return [line];
        seen.add(i.result);
        return [line, ...inputLines(i.result, depth - 1, `${indent}  `, seen)];
    });
}
function list(names: readonly string[]): string {
    return names.length < 2 ? names[0] ?? '' : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

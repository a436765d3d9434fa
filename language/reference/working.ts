/** How a number came about: formula in words, inputs with their values and origin, step by step, with source and range. */
import type { Input, Result } from '../quantities/workings.js';
import type { Rig } from '../rig/rig.js';
import { originOf, resultText, showInputValue, showShares } from './values.js';

export interface WorkingOptions {
    /** How many steps down; 1 shows the inputs, 2 theirs as well. */
    readonly depth?: number;
    /** Markdown; plain text if false. */
    readonly markdown?: boolean;
    /** Where inputs are stated is told by line if the rig is given. */
    readonly rig?: Rig;
}

/** Lines of what the ± of a number comes from. */
const MOST_SHARES = 8;
/** Column at which the origin of a value stands in plain text. */
const ORIGIN_COLUMN = 46;

/** The working of a result as Markdown. */
export function workingOf(result: Result, options: WorkingOptions = {}): string {
    const { depth = 2, markdown = true, rig } = options;
    if (!markdown) return workingText(result, options);
    const { quantity: q } = result;
    const shares = showShares(result, MOST_SHARES);
    return [
        `**${heading(result)}**`, q.meaning, `*How:* ${q.formula}`, q.range && `*Holds for:* ${q.range}`, `*Source:* ${q.source}`, ...result.remarks, unknown(result),
        shares.length && `*Its ± comes from:* ${shares.join('; ')}`,
        steps(result, depth, rig).map(s => `${'  '.repeat(s.level)}- ${s.name}${s.value && ` = ${s.value}`}${s.origin && ` (${s.origin})`}`).join('\n'),
    ].filter(Boolean).join('\n\n');
}
/** The working of a result as plain text, for a terminal. */
export function workingText(result: Result, { depth = 3, rig }: WorkingOptions = {}): string {
    const { quantity: q } = result;
    const lines = steps(result, depth, rig).map(s => {
        const left = `  ${'  '.repeat(s.level)}${s.name}${s.value && ` = ${s.value}`}`;
        return s.origin ? `${left.padEnd(ORIGIN_COLUMN)}  ${s.origin}` : left;
    });
    const shares = showShares(result, MOST_SHARES);
    return [
        `${heading(result)}\n${q.meaning}`,
        [`How        ${q.formula}`, q.range && `Holds for  ${q.range}`, `Source     ${q.source}`].filter(Boolean).join('\n'),
        ...result.remarks, unknown(result), lines.length && ['From', ...lines].join('\n'), shares.length && ['Its ± comes from', ...shares.map(s => `  ${s}`)].join('\n'),
    ].filter(Boolean).join('\n\n');
}
function heading(result: Result): string {
    return `${result.part.name}.${result.quantity.name} = ${resultText(result)}`;
}
function unknown({ missing }: Result): string {
    return missing.length ? `Not known, because ${list(missing)} ${missing.length > 1 ? 'are' : 'is'} not given.` : '';
}

interface Step { level: number; name: string; value: string; origin: string }
/** Every input once, as near to the result as it occurs; elsewhere it is only counted. */
function steps(result: Result, depth: number, rig: Rig | undefined): Step[] {
    const shown = new Set<string>([`${result.part.name}.${result.quantity.name}`]);
    const out: Step[] = [];
    const visit = (inputs: readonly Input[], level: number) => {
        const fresh = inputs.filter(i => !i.doubt && !shown.has(i.label));
        for (const i of fresh) shown.add(i.label);
        for (const i of fresh) {
            out.push({ level, name: i.label, value: showInputValue(i), origin: i.result ? `worked out: ${i.result.quantity.formula}` : i.given ? originOf(i.given, rig) : '' });
            for (const remark of i.result?.remarks ?? []) out.push({ level: level + 1, name: remark, value: '', origin: '' });
            if (i.result && level + 1 < depth) visit(i.result.inputs, level + 1);
        }
        const again = inputs.filter(i => !i.doubt).length - fresh.length;
        if (again > 0 && level > 0) out.push({ level, name: `${fresh.length ? 'and ' : ''}${again} that ${again > 1 ? 'have their' : 'has its'} line elsewhere in this list`, value: '', origin: '' });
    };
    visit(result.inputs, 0);
    return out;
}
function list(names: readonly string[]): string {
    return names.length < 2 ? names[0] ?? '' : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** The working of a number in a few lines of Markdown, for a window beside the cursor. The whole one is in language/reference. */
import { digits } from '../../language/units/format.js';
import { unitOf } from '../../language/units/unit.js';
import { resultText, showFact, showResult, showShares } from '../../language/reference/values.js';
import type { Input, Result } from '../../language/quantities/workings.js';

const MOST_INPUTS = 8;
const MOST_SHARES = 3;

/** Meaning, formula, inputs with their values, source: at most eight lines. */
export function compactWorking(result: Result): string {
    const { quantity: q, part } = result;
    const name = `${part.name}.${q.name}`;
    if (result.value !== result.value) return [`**${name}** is not known yet${whyUnknown(result)}.`, q.meaning].join('  \n');
    const lines = [`**${name} ≈ ${resultText(result)}**`, q.meaning, `*How:* ${q.formula}`];
    const inputs = readInputs(result);
    if (inputs.length) lines.push(`*From:* ${inputs.slice(0, MOST_INPUTS).map(inputText).join(', ')}${inputs.length > MOST_INPUTS ? ` and ${inputs.length - MOST_INPUTS} more` : ''}`);
    const shares = showShares(result, MOST_SHARES);
    if (shares.length) lines.push(`*± from:* ${shares.join('; ')}`);
    lines.push(...result.remarks.slice(0, 2));
    lines.push(`*Source:* ${q.source}${q.range ? `. Holds for ${q.range}` : ''}`);
    return lines.join('  \n');
}
/** One line of it. */
export function shortWorking(result: Result): string {
    const name = `${result.part.name}.${result.quantity.name}`;
    return result.value === result.value ? `**${name} ≈ ${resultText(result)}**: ${result.quantity.formula}` : `**${name}** is not known yet${whyUnknown(result)}`;
}
function whyUnknown(result: Result): string {
    const { missing } = result;
    return missing.length ? `: ${missing.slice(0, 3).join(', ')}${missing.length > 3 ? ' …' : ''} ${missing.length > 1 ? 'are' : 'is'} not given` : '';
}
/** Numbers that went in, those that a person can look up first. */
function readInputs(result: Result): Input[] {
    return result.inputs.filter(i => !i.doubt && (i.value === i.value || i.text !== undefined));
}
function inputText(input: Input): string {
    return `${input.label} ${inputValue(input)}${input.status === 'assumed' ? ' (assumed)' : ''}`;
}
function inputValue(input: Input): string {
    if (input.result) return showResult(input.result);
    if (input.text !== undefined) return input.text;
    const fact = input.given?.facts.get(input.key.includes('.') ? input.key.slice(input.key.indexOf('.') + 1) : '');
    if (fact && (fact.amount || fact.sizes)) return showFact(fact);
    const unit = unitOf(input.unit);
    return unit ? `${digits((input.value - unit.offset) / unit.factor, 4)} ${unit.text}` : digits(input.value, 4);
}
/** Keeps a text to a number of lines; says that there is more. */
export function atMost(text: string, lines: number): string {
    const all = text.split('\n');
    return all.length <= lines ? text : `${all.slice(0, lines - 1).join('\n').trimEnd()}\n…`;
}

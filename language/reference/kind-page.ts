/** Pages about a kind of part and about a quantity, as Markdown. */
import { quantityOf } from '../quantities/index.js';
import type { Quantity } from '../quantities/define.js';
import { measures } from '../units/dimension.js';
import { exampleOf, type Kind, type Property } from '../vocabulary/define.js';

/** Every part may have these; they would only make each page longer. */
const everywhere = new Set(['note', 'source', 'price', 'only-in']);

/** Properties of a kind without those that every part may have. */
export function ownProperties(kind: Kind): Property[] {
    return Object.values(kind.properties).filter(p => !everywhere.has(p.name));
}
/** Whether every part may have a property of this name. */
export function isEverywhere(name: string): boolean {
    return everywhere.has(name);
}
const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

export function unitOfDeclared(q: Quantity): string {
    return q.unit ?? measures[q.measure].units[0];
}
/** A quantity: meaning, how it is worked out, source, where it holds. */
export function quantityText(q: Quantity): string {
    const of = typeof q.of === 'string' ? [q.of] : q.of;
    const unit = unitOfDeclared(q);
    return [
        `**${of.map(k => `${k}.${q.name}`).join(', ')}** (worked out${unit ? `, in ${unit}` : ''})`, q.meaning,
        `How: ${q.formula}`, q.range && `Holds for: ${q.range}`, `Source: ${q.source}`,
    ].filter(Boolean).join('\n\n');
}
/** A part of a kind as it may be written; numbers to be changed, and the first of the words where one must be chosen. */
function sample(kind: Kind): string {
    const lines = kind.template!.map(l => ({ key: l.slice(0, l.indexOf(':')), value: exampleOf({ example: l.slice(l.indexOf(':') + 1).trim() }) })).filter(l => l.value);
    const name = kind.single || kind.always ? '' : ` ${kind.name}-1`;
    return `${kind.name}${name} {\n${lines.map(l => `  ${`${l.key}:`.padEnd(18)}${l.value}`).join('\n')}\n}`;
}
/** A kind of part: what it is, what can be said of it, what is worked out for it. */
export function kindPage(kind: Kind): string {
    const properties = ownProperties(kind);
    const quantities = [...quantityOf(kind.name).values()];
    const table = (head: readonly string[], rows: readonly (readonly string[])[]) =>
        [head, head.map(() => '---'), ...rows].map(r => `| ${r.map(cell).join(' | ')} |`).join('\n');
    const unsaid = (p: Property) => (p.assume ? `${p.assume.value} (${p.assume.because})` : p.neverAssumed ? 'never assumed' : '');
    return [
        `# ${kind.name}`, kind.doc,
        kind.called.length > 0 && `Called ${kind.called.join(', ')} as well; the word here is ${kind.name}.`,
        kind.template && kind.template.length > 0 && `For instance:\n\n\`\`\`rig\n${sample(kind)}\n\`\`\``,
        kind.on.length && `Stands on paths of ${kind.on.join(', ')}.`,
        kind.single && kind.on.length && `Where there is one, it needs no name: \`${kind.name} { }\`.`,
        properties.length && table(['property', 'what it is', 'if not said'], properties.map(p => [p.name, p.doc, unsaid(p)])),
        kind.statement && 'Takes dotted keys as well, as `stack.voltage: 24.1 V`: a line about another part.',
        quantities.length && table(['worked out', 'what it is', 'unit'], quantities.map(q => [q.name, q.meaning, unitOfDeclared(q)])),
        kind.states.length && `States: ${kind.states.join(', ')}.`,
        kind.events.length && `What can befall it: ${kind.events.join(', ')}.`,
    ].filter(Boolean).join('\n\n');
}

/** The whole reference as one Markdown text, made from the declarations: parts, properties, quantities, units, rules. */
import { allQuantities } from '../quantities/index.js';
import { allRules } from '../rules/index.js';
import { measures } from '../units/dimension.js';
import { unitTable } from '../units/table.js';
import { kinds } from '../vocabulary/index.js';
import { frameWords } from './frame-words.js';
import { kindPage, ownProperties, quantityText } from './kind-page.js';
import { runReference } from './run-reference.js';
import { exampleOf, formOf } from './property-text.js';

const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const table = (head: readonly string[], rows: readonly (readonly string[])[]) =>
    [head, head.map(() => '---'), ...rows].map(r => `| ${r.map(cell).join(' | ')} |`).join('\n');

/** The handbook: what the editor and `rigwright explain` show, in one text. */
export function handbook(): string {
    const groups = [...new Set([...kinds.values()].map(k => k.group))];
    const families = [...new Set(allRules.map(r => r.family))];
    return [
        '# Handbook',
        'Made from the declarations in the code: the same words that the editor and `rigwright explain` show.',
        '*This is arithmetic on a description. Local codes and licensed practice decide.*',
        '# Words of the language',
        table(['word', 'what it does'], Object.entries(frameWords)),
        ...groups.flatMap(group => [
            `# Parts: ${group}`,
            ...[...kinds.values()].filter(k => k.group === group).flatMap(kind => [
                kindPage(kind).replace(/^# /, '## '),
                ownProperties(kind).length ? table(['property', 'written', 'for instance'], ownProperties(kind).map(p => [p.name, formOf(p), exampleOf(p)])) : '',
            ]),
        ]),
        '# Quantities',
        ...[...kinds.keys()].map(k => ({ k, own: allQuantities.filter(q => (typeof q.of === 'string' ? q.of : q.of[0]) === k) }))
            .filter(({ own }) => own.length).flatMap(({ k, own }) => [`## ${k}`, ...own.map(quantityText)]),
        runReference().replace(/^#/gm, '##').replace('## run', '# Runs'),
        '# Units',
        table(['unit', 'name', 'prefixes'], unitTable.map(u => [u.spellings.replaceAll(' ', ', '), u.name, u.prefixes ?? ''])),
        table(['what', 'units of the trade, the usual one first'], Object.values(measures).filter(m => m.units[0]).map(m => [m.says, m.units.join(', ')])),
        ...families.flatMap(family => [
            `# Rules: ${family}`,
            table(['rule', 'usually', 'what', 'source'], allRules.filter(r => r.family === family).map(r => [r.name, r.severity, r.summary, r.source])),
        ]),
    ].filter(Boolean).join('\n\n') + '\n';
}

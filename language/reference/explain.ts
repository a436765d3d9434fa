/** A page about anything that has a name here: a rule, a kind of part, a property, a quantity, a unit, a word of the frame. */
import { allQuantities, quantityOf } from '../quantities/index.js';
import { allRules, rulePage, ruleNamed } from '../rules/index.js';
import { measures } from '../units/dimension.js';
import { unitOf, unitSpellings } from '../units/unit.js';
import { stages } from '../rig/rig.js';
import { digits } from '../units/format.js';
import { momentary } from '../vocabulary/momentary.js';
import { kinds } from '../vocabulary/index.js';
import type { Kind, Property, SlotType } from '../vocabulary/define.js';
import type { Quantity } from '../quantities/define.js';

export interface Explanation {
    readonly title: string;
    readonly markdown: string;
}
const caution = '\n\n---\n\n*This is arithmetic on a description. Local codes and licensed practice decide.*';

/** Explains a name; undefined if nothing has it. */
export function explain(name: string): Explanation | undefined {
    const wanted = name.trim();
    const rule = ruleNamed(wanted);
    if (rule) return { title: wanted, markdown: `${rulePage(wanted) ?? `# ${wanted}\n\n${rule.summary}`}\n\n## Source\n\n${rule.source}\n\nUsually: ${rule.severity}. Family: ${rule.family}.${rule.guardsLife ? ' A life can hang on it.' : ''}${caution}` };
    const kind = kinds.get(wanted);
    if (kind) return { title: wanted, markdown: kindPage(kind) };
    const [part, ...rest] = wanted.split('.');
    const key = rest.join('.');
    const owner = kinds.get(part);
    if (owner && key) {
        const property = owner.properties[key];
        const quantity = quantityOf(part).get(key);
        const pieces = [quantity && quantityText(quantity), property && propertyText(property)].filter(Boolean);
        if (pieces.length) return { title: wanted, markdown: `# ${wanted}\n\n${pieces.join('\n\n')}` };
        if (momentary.has(key)) return { title: wanted, markdown: `# ${wanted}\n\n${momentary.get(key)!.doc} It can be sensed, read and logged.` };
    }
    const everywhere = [...kinds.values()].filter(k => k.properties[wanted] && !['note', 'source', 'price', 'only-in'].includes(wanted));
    const quantities = allQuantities.filter(q => q.name === wanted);
    if (everywhere.length || quantities.length) {
        const list = everywhere.map(k => `- **${k.name}.${wanted}**: ${k.properties[wanted].doc}`);
        return { title: wanted, markdown: `# ${wanted}\n\n${[...quantities.map(quantityText), list.join('\n')].filter(Boolean).join('\n\n')}` };
    }
    const unit = unitOf(wanted);
    if (unit) {
        const same = Object.entries(measures).filter(([, m]) => m.dimension === unit.dimension);
        const others = [...new Set(same.flatMap(([, m]) => m.units))].filter(u => u && u !== wanted && unitOf(u)?.dimension === unit.dimension);
        return {
            title: wanted,
            markdown: `# ${wanted}\n\n${unit.name}${same.length ? `: ${same[0][1].says}` : ''}.\n\n${unit.offset ? `0 ${wanted} is ${digits(unit.offset, 6)} K.` : `1 ${wanted} is ${digits(unit.factor, 6)} in SI units.`}${unit.mark ? ` It is a ${unit.mark} pressure.` : unit.dimension === measures.pressure.dimension ? ' Without a mark it is read as gauge: above the air outside.' : ''}${others.length ? `\n\nOther units of this sort: ${others.slice(0, 12).join(', ')}.` : ''}`,
        };
    }
    if (frame[wanted]) return { title: wanted, markdown: `# ${wanted}\n\n${frame[wanted]}` };
    if (stages.includes(wanted as never)) return { title: wanted, markdown: `# ${wanted}\n\nA stage of a rig: ${stages.join(', ')}. It stands on the title line and decides what may be asked for: a sketch is asked for its next decision, a built rig for its tests.` };
    return undefined;
}
/** Every name that `explain` knows, for completion and 'did you mean'. */
export function explainable(): string[] {
    return [...new Set([...allRules.map(r => r.name), ...kinds.keys(), ...[...kinds.values()].flatMap(k => Object.keys(k.properties)), ...allQuantities.map(q => q.name), ...unitSpellings(), ...Object.keys(frame), ...stages])];
}

const frame: Readonly<Record<string, string>> = {
    rig: 'The first line: `rig "Title", drawn`. The stage says how far it is.',
    library: 'First line of a file of patterns: `library "Title"`. A pattern is in no rig until `like` names it.',
    use: '`use "parts.rig"` reads another file beside this one; `use parts` a library shipped with Rigwright.',
    let: '`let spare = 0.9 * bag.rating` names a value.',
    path: '`path hydrogen: stack -> h2-column -> bag` says what is joined to what, in order. Media: hydrogen, oxygen, lye, water, current. A branch is a line that starts or ends at a part that already stands on one. Ends: outdoors, room, plugged, tap, drain, mains.',
    expect: '`expect stack.voltage < 30 V` is your own requirement, checked as you type. `between 1.9 V and 2.2 V` is read too. Expectations over time (`always`, `within 2 s`, `if … lost:`) are read; nothing is worked out from them yet.',
    allow: '`allow rule-name on part until 2027-01-31 by name because "reason"` turns a rule down. One that guards life leaves a reminder.',
    like: '`column o2-column like h2-column { }` copies the properties of another part of the same kind; what stands in the braces differs.',
    none: '`rcd: none` says that there is no such thing. Rules answer it, unlike silence.',
    unknown: '`fire-card: unknown` says that somebody looked and could not find out. It counts as not said, and keeps the line as a reminder.',
};

function slotText(type: SlotType): string {
    if (typeof type === 'object') {
        if ('words' in type) return `${type.words.slice(0, 14).join(', ')}${type.words.length > 14 ? ' …' : ''}${type.open ? ', or another word' : ''}`;
        if ('part' in type) return type.part.length ? `the name of a ${type.part.join(' or ')}` : 'the name of a part';
        return `${['', 'a size', 'a x b', 'a x b x c'][type.size]} in ${measures[type.of].units[0]}`;
    }
    const simple: Record<string, string> = { count: 'a whole number', 'yes-no': 'yes or no', text: 'words', date: 'a date', clock: 'a time of day', quantity: 'part.quantity', condition: 'names, joined by or / and', sensed: 'a value of what is sensed', thread: 'a thread', any: 'anything' };
    return simple[type] ?? `${measures[type as keyof typeof measures].says}${measures[type as keyof typeof measures].units[0] ? ` (${measures[type as keyof typeof measures].units.slice(0, 4).join(', ')})` : ''}`;
}
/** What may stand in a property, its default and its reason. */
export function propertyText(p: Property): string {
    const form = p.items.map(item => item.map(a => (typeof a === 'string' ? a.replace(/\?$/, '') : a.slot ? `*${a.slot}*` : slotText(a.type))).join(' ')).join(', ');
    const slots = p.items.flatMap(item => item).filter((a): a is Exclude<typeof a, string> => typeof a !== 'string' && !!a.slot);
    return [
        p.doc, '', `Written: ${form}${p.rows ? ', and so on' : ''}.`, ...slots.map(s => `- *${s.slot}*: ${slotText(s.type)}`),
        p.assume ? `\nIf not said: ${p.assume.value} (${p.assume.because}${p.assume.spread ? `, ${p.assume.spread}` : ''}).` : p.neverAssumed ? '\nNever assumed: a check waits until it is said.' : '',
        p.usual ? `\nUsually ${p.usual}.` : '', p.fact ? '\nA fact: no fix changes it.' : '',
    ].filter(Boolean).join('\n');
}
function quantityText(q: Quantity): string {
    return `**${typeof q.of === 'string' ? q.of : q.of[0]}.${q.name}** (worked out, in ${q.unit ?? measures[q.measure].units[0]})\n\n${q.meaning}\n\nHow: ${q.formula}\n\nSource: ${q.source}${q.range ? `\n\nHolds for: ${q.range}` : ''}`;
}
function kindPage(kind: Kind): string {
    const props = Object.values(kind.properties).filter(p => !['note', 'source', 'price', 'only-in'].includes(p.name));
    const qs = [...quantityOf(kind.name).values()];
    return [
        `# ${kind.name}`, '', kind.doc, '', kind.on.length ? `Stands on paths of ${kind.on.join(', ')}.` : '',
        props.length ? '\n| property | what it is | if not said |\n|---|---|---|' : '', ...props.map(p => `| ${p.name} | ${p.doc.replaceAll('|', '\\|')} | ${p.assume?.value ?? (p.neverAssumed ? 'never assumed' : '')} |`),
        qs.length ? '\n| worked out | what it is | unit |\n|---|---|---|' : '', ...qs.map(q => `| ${q.name} | ${q.meaning.replaceAll('|', '\\|')} | ${q.unit ?? measures[q.measure].units[0]} |`),
        kind.states.length ? `\nStates: ${kind.states.join(', ')}.` : '', kind.events.length ? `\nWhat can befall it: ${kind.events.join(', ')}.` : '',
    ].filter(l => l !== '' || true).join('\n');
}
/** The whole handbook: kinds, quantities, rules, units. */
export function handbook(): string {
    const groups = [...new Set([...kinds.values()].map(k => k.group))];
    const families = [...new Set(allRules.map(r => r.family))];
    return [
        '# Handbook', '', 'Made from the declarations in the code; what the editor and `rigwright explain` show.', '',
        ...groups.flatMap(g => [`# Parts: ${g}`, '', ...[...kinds.values()].filter(k => k.group === g).map(k => kindPage(k).replace(/^# /, '## ')), '']),
        ...families.flatMap(f => [`# Rules: ${f}`, '', '| rule | severity | what | source |', '|---|---|---|---|', ...allRules.filter(r => r.family === f).map(r => `| ${r.name} | ${r.severity} | ${r.summary} | ${r.source} |`), '']),
    ].join('\n');
}

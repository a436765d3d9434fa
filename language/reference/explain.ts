/** A page about anything that has a name here: a rule, a kind of part, a property, a quantity, a unit, a word of the language. */
import { allQuantities, quantityOf } from '../quantities/index.js';
import { allRules, ruleNamed, rulePage } from '../rules/index.js';
import type { Rule } from '../rules/define.js';
import { unitSpellings } from '../units/unit.js';
import { measures } from '../units/dimension.js';
import { nearest } from '../values/nearest.js';
import type { Kind } from '../vocabulary/define.js';
import { kindCalled, kinds } from '../vocabulary/index.js';
import { materials } from '../vocabulary/materials.js';
import { momentary } from '../vocabulary/momentary.js';
import { frameWords } from './frame-words.js';
import { runReference } from './run-reference.js';
import { isEverywhere, kindPage, quantityText } from './kind-page.js';
import { propertyText } from './property-text.js';
import { unitPage } from './unit-page.js';

export { propertyText };

export interface Explanation {
    readonly title: string;
    readonly markdown: string;
}
/** Beneath every page about a danger. */
const caution = '*This is arithmetic on a description. Local codes and licensed practice decide.*';

/**
 * Explains a name: `relief-missing`, `stack`, `stack.gap`, `gap`, `stack.voltage`, `kPa`, `path`, `drawn`.
 *
 * @returns its page, or undefined if nothing has that name
 */
export function explain(name: string): Explanation | undefined {
    const title = name.trim();
    const markdown = pageOf(title);
    return markdown === undefined ? undefined : { title, markdown };
}
function pageOf(name: string): string | undefined {
    const rule = ruleNamed(name);
    if (rule) return ruleText(rule);
    const kind = kinds.get(name);
    if (kind) return kindPage(kind);
    const dot = name.indexOf('.');
    const owner = dot > 0 ? kinds.get(name.slice(0, dot)) : undefined;
    if (owner) return memberPage(owner, name.slice(dot + 1));
    const called = kindCalled(name);
    if (called) return kindPage(called);
    if (name === 'run' || name === 'faults') return runReference(name);
    return sharedPage(name) ?? unitPage(name) ?? (Object.hasOwn(frameWords, name) ? `# ${name}\n\n${frameWords[name]}` : wordPage(name));
}
function ruleText(rule: Rule): string {
    const facts = [
        `Usually: ${rule.severity}. Family: ${rule.family}.`,
        rule.from && ` Told from stage ${rule.from} on.`,
        rule.guardsLife && ' A life can hang on it: turned down, it leaves a reminder.',
    ].filter(Boolean).join('');
    const page = rulePage(rule.name)?.trim() ?? `# ${rule.name}\n\n${rule.summary}\n\n## Why it matters\n\n${rule.why}`;
    return [page, '## Source', rule.source, facts, '---', caution].join('\n\n');
}
/** `kind.name`: a property, a quantity, a value that can be seen at a moment, or several of them. */
function memberPage(owner: Kind, key: string): string | undefined {
    const property = Object.hasOwn(owner.properties, key) ? owner.properties[key] : undefined;
    const quantity = quantityOf(owner.name).get(key);
    const seen = momentary.get(key);
    const pieces = [
        property && propertyText(property), quantity && quantityText(quantity),
        !property && !quantity && seen && `${seen.doc} It can be sensed, read and logged.`,
    ].filter(Boolean);
    return pieces.length ? [`# ${owner.name}.${key}`, ...pieces].join('\n\n') : undefined;
}
/** A name by itself: what it is wherever it occurs. */
function sharedPage(name: string): string | undefined {
    if (isEverywhere(name)) return `# ${name}\n\n${propertyText(kinds.get('stack')!.properties[name])}\n\nEvery part may have it.`;
    const owners = [...kinds.values()].filter(k => Object.hasOwn(k.properties, name));
    const quantities = allQuantities.filter(q => q.name === name);
    const seen = momentary.get(name);
    if (!owners.length && !quantities.length) return seen ? `# ${name}\n\n${seen.doc} It can be sensed, read and logged.` : undefined;
    if (owners.length === 1 && !quantities.length) return `# ${owners[0].name}.${name}\n\n${propertyText(owners[0].properties[name])}`;
    const byDoc = new Map<string, Kind[]>();
    for (const k of owners) byDoc.set(k.properties[name].doc, [...(byDoc.get(k.properties[name].doc) ?? []), k]);
    const list = [...byDoc].map(([doc, of]) => `- **${of.map(k => `${k.name}.${name}`).join(', ')}**: ${doc}`);
    return [`# ${name}`, ...quantities.map(quantityText), list.length && list.join('\n')].filter(Boolean).join('\n\n');
}

/** Words that may stand as a value, with the properties they stand in. A material of the table may stand wherever one is asked for. */
const valueWords = new Map<string, string[]>();
for (const k of kinds.values()) {
    for (const p of Object.values(k.properties)) {
        for (const atom of p.items.flat()) {
            if (typeof atom === 'string' || typeof atom.type !== 'object' || !('words' in atom.type)) continue;
            for (const word of atom.type.words) {
                const at = `${k.name}.${p.name}`;
                const list = valueWords.get(word) ?? [];
                if (!list.includes(at)) valueWords.set(word, [...list, at]);
            }
        }
    }
}
/** A word that is a value: what it is, if it is a material, and where it may stand. */
function wordPage(name: string): string | undefined {
    const places = valueWords.get(name);
    const material = materials.get(name);
    if (!places && !material) return undefined;
    const docs = new Map<string, string[]>();
    for (const at of places ?? []) {
        const [kind, key] = at.split('.');
        const { doc } = kinds.get(kind)!.properties[key];
        docs.set(doc, [...(docs.get(doc) ?? []), at]);
    }
    return [`# ${name}`, material?.doc, docs.size > 0 && 'A word that may stand in:', [...docs].map(([doc, of]) => `- **${of.join(', ')}**: ${doc}`).join('\n')].filter(Boolean).join('\n\n');
}

/** Every name that `explain` knows by itself, without the dotted ones; each once. */
export function explainable(): string[] {
    return [...new Set([
        ...allRules.map(r => r.name), ...kinds.keys(), ...[...kinds.values()].flatMap(k => Object.keys(k.properties)), ...allQuantities.map(q => q.name),
        ...momentary.keys(), ...unitSpellings(), ...Object.values(measures).flatMap(m => m.units).filter(Boolean), ...Object.keys(frameWords), 'run', 'faults',
        ...valueWords.keys(), ...materials.keys(),
    ])];
}
/** The name that was probably meant: `stack.gep` -> `stack.gap`; undefined if none is near. */
export function nearestExplainable(name: string): string | undefined {
    const dot = name.indexOf('.');
    if (dot <= 0) return nearest(name, explainable());
    const owner = kinds.get(name.slice(0, dot)) ?? kinds.get(nearest(name.slice(0, dot), kinds.keys()) ?? '');
    if (!owner) return undefined;
    const key = name.slice(dot + 1);
    const near = nearest(key, [...Object.keys(owner.properties), ...quantityOf(owner.name).keys(), ...momentary.keys()]);
    return near && `${owner.name}.${near}`;
}

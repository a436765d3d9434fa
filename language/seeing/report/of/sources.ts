/** Where the laws behind the numbers and the limits behind the findings come from, and how well that is known. */
import { references, type Reference } from '../../../physics/references.js';
import { assumptionRows, isKeyNumber } from '../../../reference/quantities.js';
import { cut, defineSection, heading, spaced, table, words } from '../define.js';
import type { Block, Row } from '../page.js';

const MOST = 60;
const NAMED = 5;
/** What says nothing of where something comes from. */
const own = /^(?:definition|as [a-z-]+|.* as named there|geometry|sum|arithmetic|mass balance|balance of .*|nameplate|the language)?$/;
const unpublished = /common practice|own choice|no source|by judgement/;

export default defineSection({
    name: 'sources', title: 'Sources', order: 160, lead: 'What the numbers and findings above rest on, so that a specialist can look it up and disagree.',
    make: a => {
        const published = new Map<Reference, Set<string>>();
        const named = new Map<string, Set<string>>();
        const lore = new Set<string>();
        const note = (text: string, by: string) => {
            if (own.test(text)) return;
            const found = cited(text);
            for (const r of found) add(published, r, by);
            if (unpublished.test(text)) lore.add(by);
            else if (!found.length) add(named, text, by);
        };
        for (const r of a.results) {
            if (!isKeyNumber(r) || a.hidden.has(r.part.name)) continue;
            note(r.quantity.source, spaced(r.quantity.name));
            for (const { root } of r.spread.shares) if (root.sort === 'law') note(root.source, root.label);
        }
        for (const row of assumptionRows(a.workings)) if (!a.hidden.has(row.name.split('.')[0])) note(row.source, row.name);
        for (const f of a.analysis.findings) note(f.source, f.rule);
        const papers = cut([...published].sort(([x], [y]) => (x.authors < y.authors ? -1 : 1)), MOST, left => `And ${left} more.`);
        const others = cut([...named].sort(([x], [y]) => (x.toLowerCase() < y.toLowerCase() ? -1 : 1)), MOST, left => `And ${left} more.`);
        const blocks: Block[] = [
            ...(papers.shown.length ? [heading('Published'), ...table(['author, title, and how it is known here', 'used for'], papers.shown.map(([r, by]): Row => [[`${r.authors}${r.year ? ` (${r.year})` : ''}: ${r.title}.`, known[r.known]], some(by)])), ...papers.rest] : []),
            ...(others.shown.length ? [heading('Laws, tables and rules by their name'), ...table(['as named', 'used for'], others.shown.map(([text, by]): Row => [text, some(by)])), ...others.rest] : []),
            ...(lore.size ? [heading('Without a published source'), words(`What makers know and nobody published, or a choice made here: ${[...lore].slice(0, MOST).join(', ')}${lore.size > MOST ? ` and ${lore.size - MOST} more` : ''}.`)] : []),
        ];
        return blocks.length ? blocks : [words('Nothing was worked out that rests on a source.')];
    },
});
function add<K>(to: Map<K, Set<string>>, key: K, by: string): void {
    const list = to.get(key);
    if (list) list.add(by);
    else to.set(key, new Set([by]));
}
const some = (by: ReadonlySet<string>) => `${[...by].slice(0, NAMED).join(', ')}${by.size > NAMED ? ` and ${by.size - NAMED} more` : ''}`;
const known: Readonly<Record<Reference['known'], string>> = {
    read: 'Its own text or table was read.', 'second-hand': 'Second-hand: taken from somebody else\'s copy of it.', 'from memory': 'From memory: not seen in print when it was written down.',
};
/** References named in a text: by year and first author, or by a person alone where no year is named; of several those with the most authors named. */
function cited(text: string): Reference[] {
    const years: readonly string[] = text.match(/\b(?:18|19|20)\d\d\b/g) ?? [];
    const found = (Object.values(references) as Reference[]).flatMap(r => {
        const names = r.authors.split(',').map(n => n.trim().split(' ')[0]).filter(n => /^\p{Lu}[\p{L}-]{3,}$/u.test(n));
        const score = names.filter(n => text.split(/[^\p{L}-]+/u).includes(n)).length;
        const isPerson = /^\S+ \p{Lu}\./u.test(r.authors);
        const fits = names.length > 0 && text.includes(names[0]) && (years.length ? r.year !== null && years.includes(String(r.year)) : isPerson);
        return score && fits ? [{ r, score }] : [];
    });
    const most = Math.max(...found.map(f => f.score));
    return years.length > 1 ? found.map(f => f.r) : found.filter(f => f.score === most).map(f => f.r);
}

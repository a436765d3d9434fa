/** A comparison as sections of a page: for a review comment, a page beside the text, or the terminal. */
import { caution } from '../../reference/caution.js';
import { nearPlace, nearText } from '../../rules/near.js';
import { cut, list, table, words } from '../report/define.js';
import type { Block, Cell, Report } from '../report/page.js';
import type { Comparison, Moved } from './compare.js';
import { gravity, type Placed } from './findings.js';

const percent = (share: number) => (share === share ? `${share > 0 ? '+' : '−'}${Math.abs(100 * share) >= 1000 ? Math.round(Math.abs(100 * share)) : Math.abs(100 * share).toPrecision(2).replace(/\.0$/, '')} %` : '');
const MOST = 25;
const many = (n: number, one: string, more = `${one}s`) => `${n === 0 ? 'no' : n} ${n === 1 ? one : more}`;
/** What a number means, up to the end of the first sentence; nothing where it only points to another one. */
export const firstSentence = (text: string): string => (/^(?:The same|That )/.test(text) ? '' : /^.*?\.(?=\s|$)/.exec(text)?.[0] ?? text);
/** 'stack, line 40'. */
const where = (p: Placed) => `${p.part ? `${p.part}, ` : ''}line ${p.line}`;
/** A finding with its place and rule. */
export const findingCell = (p: Placed): Cell => [`${p.finding.severity}: ${p.finding.message}`, `${where(p)} (${p.finding.rule})`];
/** '1 error, 2 warnings and 3 hints'. */
export function counted(all: readonly Placed[]): string {
    const parts = (['error', 'warning', 'hint'] as const).flatMap(s => {
        const n = all.filter(p => p.finding.severity === s).length;
        return n ? [many(n, s)] : [];
    });
    return parts.length > 1 ? `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}` : parts[0] ?? 'nothing';
}
/** What of it stops a check: new errors, and what became one. */
export function newErrors({ findings }: Comparison): number {
    return findings.come.filter(p => p.finding.severity === 'error').length + findings.other.filter(o => o.after.finding.severity === 'error' && o.before.finding.severity !== 'error').length;
}
/** Whether nothing differs that counts. */
export function isNothing(c: Comparison): boolean {
    return !c.added.length && !c.removed.length && !c.changed.length && !c.moved.length && !c.appeared.length && !c.vanished.length && !c.findings.come.length && !c.findings.gone.length && !c.findings.other.length;
}

/** @param names  what is compared, as the reader knows it: 'shed.rig at HEAD', 'shed.rig now' */
export function comparisonReport(c: Comparison, names: readonly [before: string, after: string]): Report {
    const { come, gone } = c.findings;
    const graver = c.findings.other.filter(o => gravity[o.after.finding.severity] > gravity[o.before.finding.severity]);
    const milder = c.findings.other.filter(o => gravity[o.after.finding.severity] < gravity[o.before.finding.severity]);
    const reworded = c.findings.other.filter(o => o.after.finding.severity === o.before.finding.severity && o.after.finding.severity !== 'hint');
    const hints = c.findings.other.length - graver.length - milder.length - reworded.length;
    const errors = newErrors(c);
    const subtitle = [`From ${names[0]} to ${names[1]}.`];
    if (c.before !== c.after) subtitle.push(`The title was "${c.before}".`);
    subtitle.push(isNothing(c) ? 'Nothing that counts differs: words, notes and order at most.' : `${errors ? `${many(errors, 'new error')}: look at these first.` : 'No new error.'} New: ${counted(come)}. Gone: ${counted(gone)}.`);
    return {
        title: `${c.after || 'A rig'}: what the change does`, subtitle, caution,
        sections: isNothing(c) ? [] : [
            { name: 'findings', title: 'Findings', lead: 'What came with the change, what went, and what is now nearer to a limit. That nothing is told does not make a rig free of danger.', blocks: [
                ...under('New:', come.map(findingCell), 'None is new.'),
                ...under('Graver than before:', graver.map(o => becameCell(o.before, o.after))),
                ...under('Gone:', gone.map(findingCell)),
                ...under('Milder than before:', milder.map(o => becameCell(o.before, o.after))),
                ...under('Still there, with other numbers:', reworded.map(o => [`${o.after.finding.severity}: ${o.after.finding.message}`, `before: ${o.before.finding.message}`, `${where(o.after)} (${o.after.finding.rule})`])),
                ...(hints ? [words(`${many(hints, 'hint')} ${hints === 1 ? 'tells' : 'tell'} other numbers than before.`, 'quiet')] : []),
                ...under('Nearer to a limit, and not over it:', c.nearer.map(({ near, before }) => [`${nearPlace(near)}: ${nearText(near)}${before ? '' : ', not near before'}`, `(${near.rule})`])),
            ] },
            { name: 'changed', title: 'What was changed', lead: 'Parts, values, joints and requirements, not lines of text.', blocks: changedBlocks(c) },
            { name: 'short', title: 'In short', lead: 'The numbers by which a rig is known, moved or not.', blocks: c.headlines.length ? table(['number', 'before', 'after', 'moved'], c.headlines.map(h => [h.name, h.before ?? '(not known)', h.moved ? h.after ?? '(not known)' : 'the same', h.moved ? percent(h.share) : '']), [1, 2, 3]) : [words('None of them is known.')] },
            { name: 'moved', title: 'Other numbers that moved', lead: 'The weightiest first. A move that is smaller than its ± may not show on a meter.', blocks: movedBlocks(c) },
            { name: 'again', title: 'To be tested again', lead: 'What was shown before the change does not speak for these any more.', blocks: c.again.length
                ? list(c.again.map(a => [a.what, a.stale.length ? `no longer shown by ${a.stale.join(', ')}` : ''])) : [words('Nothing, as far as the text tells.')] },
        ].filter(s => s.blocks.length),
    };
}
function under(head: string, items: readonly Cell[], none?: string): Block[] {
    return items.length ? [words(head, 'strong'), ...list(items)] : none ? [words(none)] : [];
}
const becameCell = (before: Placed, after: Placed): Cell => [`${after.finding.severity}, was ${before.finding.severity}: ${after.finding.message}`, `${where(after)} (${after.finding.rule})`];

function changedBlocks(c: Comparison): Block[] {
    const { shown, rest } = cut(c.changed, 2 * MOST, left => `And ${left} more.`);
    return [
        ...(c.added.length ? [words(`Added: ${c.added.join(', ')}.`)] : []), ...(c.removed.length ? [words(`Taken away: ${c.removed.join(', ')}.`)] : []),
        ...table(['what', 'before', 'after'], shown.map(x => [[x.name, x.like.length ? `with it, being like it: ${x.like.join(', ')}` : ''], x.before ?? '(not said)', x.after ?? '(not said)'])), ...rest,
        ...(c.changed.length || c.added.length || c.removed.length ? [] : [words('Nothing that the rig is made of: words and notes at most.')]),
    ];
}
/** A number with those that moved alike: 'h2-column.level, also o2-column.level'. */
export const twinned = (m: Pick<Moved, 'name' | 'twins'>): string => (m.twins.length ? `${m.name}, also ${m.twins.join(', ')}` : m.name);
function movedBlocks(c: Comparison): Block[] {
    const short = new Set(c.headlines.map(h => h.name));
    const others = c.moved.filter(m => m.twins.length || !short.has(m.name));
    if (!others.length && !c.appeared.length && !c.vanished.length) return [words(`No ${c.moved.length ? 'other ' : ''}number moved by more than half a percent.`)];
    const { shown, rest } = cut(others, MOST, left => `And ${left} more that weigh less.`);
    return [
        ...table(['number', 'before', 'after', 'moved'], shown.map(m => [[twinned(m), firstSentence(m.meaning)], m.before, m.after, [percent(m.share), m.within ? 'less than its ±' : '']]), [1, 2, 3]), ...rest,
        ...(c.appeared.length ? [words(`Known only now: ${c.appeared.slice(0, MOST).join(', ')}${c.appeared.length > MOST ? ` and ${c.appeared.length - MOST} more` : ''}.`)] : []),
        ...(c.vanished.length ? [words(`No longer known: ${c.vanished.slice(0, MOST).join(', ')}${c.vanished.length > MOST ? ` and ${c.vanished.length - MOST} more` : ''}.`)] : []),
    ];
}

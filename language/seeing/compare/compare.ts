/** Two rigs side by side: consequences, not characters. What was changed, which numbers moved, which findings went and came, what is to be tested again. */
import type { Analysis, Finding, Near } from '../../index.js';
import type { Result } from '../../quantities/workings.js';
import { caution } from '../../reference/caution.js';
import { resultsOf } from '../../reference/quantities.js';
import { showResult, showSpread } from '../../reference/values.js';
import type { Part } from '../../rig/rig.js';
import { nearText } from '../../rules/near.js';
import type { Block, Report } from '../report/page.js';

export interface Changed {
    /** 'stack.gap' */
    readonly name: string;
    readonly before: string | undefined;
    readonly after: string | undefined;
}
export interface Moved {
    readonly name: string;
    readonly meaning: string;
    readonly before: string;
    readonly after: string;
    /** Of the earlier one; NaN where that is 0 or unknown. */
    readonly share: number;
    /** Half of what the ± leaves open is more than the move. */
    readonly within: boolean;
}
export interface Comparison {
    readonly before: string;
    readonly after: string;
    readonly added: readonly string[];
    readonly removed: readonly string[];
    readonly changed: readonly Changed[];
    readonly moved: readonly Moved[];
    /** Numbers that are known in one of both only. */
    readonly appeared: readonly string[];
    readonly vanished: readonly string[];
    readonly come: readonly Finding[];
    readonly gone: readonly Finding[];
    readonly nearer: readonly Near[];
    /** What was tested, or would be, before the change: to be done again. */
    readonly again: readonly string[];
}
/** Share of a number below which it counts as not moved. */
const STILL = 0.005;
/** Parts whose points are tested by making them act. */
const acting = new Set(['switch', 'trip', 'analyser', 'detector', 'relief-valve', 'timer', 'seal']);
/** Parts that a leak test covers. */
const tight = new Set(['stack', 'column', 'tube', 'tee', 'bubbler', 'bag', 'gasometer', 'cylinder', 'valve', 'check-valve', 'compressor', 'dryer', 'filter', 'scrubber', 'trap']);

const statementOf = (p: Part) => !!p.kind?.statement;
const texts = (p: Part) => new Map([...p.entries].map(([key, e]) => [key, e.value?.text?.replace(/\s+/g, ' ').trim() ?? '']));

export function compare(before: Analysis, after: Analysis): Comparison {
    const [was, is] = [before, after].map(a => new Map([...a.rig.parts.values()].map(p => [p.name, p])));
    const added = [...is.keys()].filter(n => !was.has(n));
    const removed = [...was.keys()].filter(n => !is.has(n));
    const changed: Changed[] = [];
    for (const [name, p] of is) {
        const q = was.get(name);
        if (!q) continue;
        const [now, then] = [texts(p), texts(q)];
        if (p.kindWord !== q.kindWord) changed.push({ name, before: q.kindWord, after: p.kindWord });
        for (const key of new Set([...then.keys(), ...now.keys()])) if (now.get(key) !== then.get(key)) changed.push({ name: `${name}.${key}`, before: then.get(key), after: now.get(key) });
    }
    const paths = (a: Analysis) => new Set(a.rig.paths.flatMap(p => p.stops.slice(1).map((s, i) => `${p.medium}: ${p.stops[i].name} -> ${s.name}`)));
    const [pathsBefore, pathsAfter] = [paths(before), paths(after)];
    for (const p of pathsAfter) if (!pathsBefore.has(p)) changed.push({ name: 'path', before: undefined, after: p });
    for (const p of pathsBefore) if (!pathsAfter.has(p)) changed.push({ name: 'path', before: p, after: undefined });

    const known = (a: Analysis) => new Map(resultsOf(a.workings).filter(r => r.value === r.value).map(r => [`${r.part.name}.${r.quantity.name}`, r]));
    const [numbersBefore, numbersAfter] = [known(before), known(after)];
    const moved: (Moved & { weight: number })[] = [];
    for (const [name, now] of numbersAfter) {
        const then = numbersBefore.get(name);
        if (!then || !differ(then, now)) continue;
        const share = now.value / then.value - 1;
        const half = Math.max(now.high - now.value, now.value - now.low) || 0;
        // A number at the line end weighs more than one that only others read.
        moved.push({ name, meaning: now.quantity.meaning, before: `${showResult(then)} ${showSpread(then)}`.trim(), after: `${showResult(now)} ${showSpread(now)}`.trim(), share: Number.isFinite(share) ? share : NaN, within: Math.abs(now.value - then.value) < half, weight: Math.abs(Number.isFinite(share) ? share : 1) * (now.quantity.shownAt === undefined ? 0.1 : 1) });
    }
    moved.sort((a, b) => b.weight - a.weight || (a.name < b.name ? -1 : 1));

    const told = (a: Analysis) => new Map(a.findings.map(f => [`${f.rule} ${standsIn(a, f)} ${f.severity}`, f]));
    const [findingsBefore, findingsAfter] = [told(before), told(after)];
    const nearBefore = new Map(before.near.map(n => [`${n.rule} ${n.part}`, n]));
    return {
        before: before.rig.title, after: after.rig.title, added, removed, changed, moved: moved.map(({ weight: _, ...m }) => m),
        appeared: [...numbersAfter.keys()].filter(n => !numbersBefore.has(n)), vanished: [...numbersBefore.keys()].filter(n => !numbersAfter.has(n)),
        come: [...findingsAfter].filter(([k]) => !findingsBefore.has(k)).map(([, f]) => f), gone: [...findingsBefore].filter(([k]) => !findingsAfter.has(k)).map(([, f]) => f),
        nearer: after.near.filter(n => {
            const then = nearBefore.get(`${n.rule} ${n.part}`);
            return !then || Math.abs(n.left) < Math.abs(then.left) - 0.005;
        }),
        again: testsAgain(added, changed, is),
    };
}
function differ(a: Result, b: Result): boolean {
    if (a.quantity.measure === 'temperature') return Math.abs(a.value - b.value) > 0.2;
    return Math.abs(a.value - b.value) > STILL * Math.max(Math.abs(a.value), Math.abs(b.value));
}
function standsIn({ rig }: Analysis, f: Finding): string {
    for (const p of rig.parts.values()) if (p.span.file === f.span.file && p.span.start <= f.span.start && f.span.start <= p.span.end) return p.name;
    return '';
}
/** What a change makes old: tests of points that act, of tightness, of the separators, and the reading that shifted the curve. */
function testsAgain(added: readonly string[], changed: readonly Changed[], parts: ReadonlyMap<string, Part>): string[] {
    const out = new Set<string>();
    const names = new Map<string, Changed[]>();
    for (const c of changed) {
        const [name] = c.name.split('.');
        names.set(name, [...(names.get(name) ?? []), c]);
    }
    for (const name of [...added, ...names.keys()]) {
        const part = parts.get(name);
        if (!part || statementOf(part)) continue;
        const kind = part.kind?.name ?? part.kindWord;
        const touched = names.get(name)?.some(c => !/\.(price|place|note|shop)$/.test(c.name)) ?? true;
        if (!touched) continue;
        if (acting.has(kind)) out.add(`${name}: made to act at its point, and seen to stop what it should`);
        if (tight.has(kind)) out.add(`leak test of what ${name} belongs to`);
        if (kind === 'separator' || kind === 'stack') out.add('separators: pressure test wet, and purity of both gases at low and full current');
        if (kind === 'stack' || kind === 'lye' || kind === 'separator') out.add('a reading of volts, amperes and temperature: the old one is of another stack');
        if (kind === 'contactor' || kind === 'relay') out.add(`${name}: every guard that it serves made to act`);
        if (kind === 'supply' || kind === 'fuse' || kind === 'leads') out.add('polarity and current at the stack, before any gas is kept');
    }
    if (names.has('path')) out.add('leak test and purge of every line that was joined anew');
    return [...out].sort();
}

const percent = (share: number) => (share === share ? `${share > 0 ? '+' : '−'}${Math.abs(100 * share).toPrecision(2).replace(/\.0$/, '')} %` : '');
const MOST = 25;
/** As sections of a page: for a review comment, a page, or the terminal. */
export function comparisonReport(c: Comparison, names: readonly [before: string, after: string]): Report {
    const words = (text: string): Block => ({ is: 'words', text });
    const rows = (c.moved.length ? [{ is: 'table' as const, head: ['number', 'before', 'after', 'moved', ''], numbers: [1, 2, 3], rows: c.moved.slice(0, MOST).map(m => [m.name, m.before, m.after, percent(m.share), m.within ? 'within its ±' : '']) }] : [words('No number moved by more than half a percent.')]);
    const finding = (f: Finding) => `${f.severity}: ${f.message} (${f.rule})`;
    const errors = c.come.filter(f => f.severity === 'error').length;
    return {
        title: `${c.after || 'A rig'}: what the change does`, subtitle: [`${names[0]} against ${names[1]}. ${errors ? `${errors} new ${errors === 1 ? 'error' : 'errors'}.` : 'No new error.'} ${c.gone.length} findings gone, ${c.come.length} new.`], caution,
        sections: [
            { name: 'findings', title: 'Findings', lead: 'What came with the change, what went, and what is now nearer to a limit.', blocks: [
                ...(c.come.length ? [words('New:'), { is: 'list' as const, items: c.come.map(finding) }] : [words('None is new.')]),
                ...(c.gone.length ? [words('Gone:'), { is: 'list' as const, items: c.gone.map(finding) }] : []),
                ...(c.nearer.length ? [words('Nearer to a limit, and not over it:'), { is: 'list' as const, items: c.nearer.map(n => `${n.part}: ${nearText(n)} (${n.rule})`) }] : []),
            ] },
            { name: 'changed', title: 'What was changed', lead: 'Parts, values and joints, not lines of text.', blocks: [
                ...(c.added.length ? [words(`Added: ${c.added.join(', ')}.`)] : []), ...(c.removed.length ? [words(`Taken away: ${c.removed.join(', ')}.`)] : []),
                ...(c.changed.length ? [{ is: 'table' as const, head: ['what', 'before', 'after'], rows: c.changed.slice(0, 2 * MOST).map(x => [x.name, x.before ?? '', x.after ?? '']) }] : c.added.length || c.removed.length ? [] : [words('Nothing that the rig is made of: words and notes at most.')]),
            ] },
            { name: 'moved', title: 'Numbers that moved', lead: 'The weightiest first; a move within its ± may be none.', blocks: [
                ...rows, ...(c.moved.length > MOST ? [words(`And ${c.moved.length - MOST} more.`)] : []),
                ...(c.appeared.length ? [words(`Known only now: ${c.appeared.slice(0, MOST).join(', ')}.`)] : []), ...(c.vanished.length ? [words(`No longer known: ${c.vanished.slice(0, MOST).join(', ')}.`)] : []),
            ] },
            { name: 'again', title: 'To be tested again', lead: 'What was shown before the change holds no longer for these.', blocks: c.again.length ? [{ is: 'list', items: c.again }] : [words('Nothing, as far as the text tells.')] },
        ],
    };
}

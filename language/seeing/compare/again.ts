/** What a change makes old: tests of points that act, of tightness, of the separators, and the reading that shifted the curve. */
import type { Analysis } from '../../index.js';
import type { Part } from '../../rig/rig.js';
import { covers } from '../../rules/records.js';
import type { View } from '../../quantities/view.js';

export interface Again {
    /** What is to be done. */
    readonly what: string;
    /** Records in the text that showed it before the change: 'trips-act of 2026-05-16'. */
    readonly stale: readonly string[];
}
/** Parts whose points are tested by making them act. */
const acting: ReadonlySet<string> = new Set(['switch', 'trip', 'analyser', 'detector', 'relief-valve', 'timer', 'seal']);
/** Parts that a leak test covers. */
const tight: ReadonlySet<string> = new Set(['stack', 'column', 'tube', 'tee', 'bubbler', 'bag', 'gasometer', 'cylinder', 'valve', 'check-valve', 'compressor', 'dryer', 'filter', 'scrubber', 'trap', 'cooler', 'seal', 'regulator', 'relief-valve']);
/** Says nothing of how a part works. */
const besides = /^(?:price|place|note|shop|source|label|secured|tested|sealed)$/;
const gases = ['hydrogen', 'oxygen'] as const;

/** @param touched  part by what was changed in it; undefined: it is new */
export function testsAgain(before: Analysis, after: Analysis, touched: ReadonlyMap<string, readonly string[] | undefined>, joined: boolean): Again[] {
    const { workings } = after;
    const date = (r: View | undefined) => r?.word('date') ?? '';
    const records = (kind: 'test' | 'reading') => workings.partsOf(kind).filter(r => !r.pattern);
    // A record with the change, or with a new date, was made for it.
    const isNew = (r: View) => date(before.workings.viewOf(r.name)) !== date(r);
    const told = (r: View) => (date(r) ? `${r.name} of ${date(r).slice(0, 10)}` : r.name);
    const old = (which: (r: View) => boolean, kind: 'test' | 'reading' = 'test') => records(kind).filter(r => !isNew(r) && which(r)).map(told);
    const anew = (which: (r: View) => boolean) => records('test').some(r => isNew(r) && r.word('result') !== 'failed' && which(r));
    const presses = (r: View) => r.said('pressure') && !covers(r, 'separator');
    const nextTo = (name: string) => new Set([name, ...gases.flatMap(g => workings.paths.neighbours(name, g)), ...workings.paths.neighbours(name, 'lye')]);

    const found: Again[] = [];
    const leaks: string[] = [];
    const kinds = new Set<string>();
    for (const [name, what] of touched) {
        const part = after.rig.parts.get(name);
        if (!part || part.kind?.statement || (what && !what.some(key => !besides.test(key)))) continue;
        const kind = kindOf(part);
        kinds.add(kind);
        const its = (r: View) => covers(r, name);
        if (acting.has(kind) && !anew(its)) found.push({ what: `${name}: made to act at its point, and seen to do what it should`, stale: old(its) });
        if (tight.has(kind) && !anew(r => presses(r) && [...nextTo(name)].some(n => covers(r, n)))) leaks.push(name);
        if (kind === 'contactor' || kind === 'relay') found.push({ what: `${name}: every guard that works through it made to act`, stale: old(its) });
    }
    if (leaks.length) {
        const near = new Set(leaks.flatMap(n => [...nextTo(n)]));
        found.push({ what: `leak test of what was opened: ${leaks.join(', ')}`, stale: old(r => presses(r) && [...near].some(n => covers(r, n))) });
    }
    const separator = (r: View) => covers(r, 'separator');
    if ((kinds.has('separator') || kinds.has('stack')) && !anew(separator)) found.push({ what: 'separators: pressed wet from one side, and the purity of both gases at low and at full current', stale: old(separator) });
    if (['stack', 'lye', 'separator'].some(k => kinds.has(k)) && !records('reading').some(isNew)) found.push({ what: 'volts, amperes and temperature read anew: earlier readings are of another stack', stale: old(() => true, 'reading') });
    if (['supply', 'fuse', 'leads'].some(k => kinds.has(k))) found.push({ what: 'polarity and current at the stack, before any gas is kept', stale: [] });
    if (joined) found.push({ what: 'every line that was joined anew: leak test, then purge', stale: [] });
    return found.sort((a, b) => b.stale.length - a.stale.length || (a.what < b.what ? -1 : 1));
}
const kindOf = (p: Part) => p.kind?.name ?? p.kindWord;

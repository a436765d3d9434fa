/** What records speak for, and how old they are: tests, purges, upkeep. */
import type { View } from '../quantities/view.js';

/** Mean length of a month, s: a twelfth of 365.25 days. */
export const MONTH = 2629800;
/** How a test was done, in the words of its record; '' where it does not say. */
export function how(record: View): string {
    return record.rows('with').map(row => row.get('')?.text ?? '').join(', ');
}

/** The record names the part, or a stretch of a gas path that it lies on. */
export function covers(record: View, name: string): boolean {
    return record.names('covers').includes(name) || record.rows('covers').some(row => [...row.values()].some(f => f.text === 'section' && f.names?.length === 2 &&
        (['hydrogen', 'oxygen'] as const).some(gas => record.paths.route(f.names![0], f.names![1], gas)?.includes(name))));
}
/** The date of the last test of a part that was passed, of those that count; undefined if none is on record, '' if it bears no date. */
export function lastPassed(v: View, counts: (test: View) => boolean = () => true): string | undefined {
    return v.all('test').filter(t => covers(t, v.name) && t.word('result') === 'passed' && counts(t)).map(t => t.word('date') ?? '').sort().at(-1);
}
/** Months from a date, or from the first of a month, to another; NaN where one is not known. */
export function monthsBetween(from: string | undefined, to: string | undefined): number {
    return from && to ? (Date.parse(to.slice(0, 10)) - Date.parse(from.slice(0, 10).padEnd(10, '-01'))) / 1000 / MONTH : NaN;
}

/** Records by their date, oldest first: dates are ISO, so they sort as text; one without a date counts as older than all. */
function byDate(records: readonly View[]): View[] {
    const date = (r: View) => r.word('date') ?? '';
    return [...records].sort((a, b) => (date(a) < date(b) ? -1 : date(a) > date(b) ? 1 : 0));
}
/** The newest of some records; undefined if there are none. */
export function newest(records: readonly View[]): View | undefined {
    return byDate(records).at(-1);
}
/** The oldest of some records, one without a date before all others; undefined if there are none. */
export function oldest(records: readonly View[]): View | undefined {
    return byDate(records)[0];
}

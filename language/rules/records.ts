/** Which of several records is the first, which the last: dates are ISO, so they sort as text; one without a date counts as older than all. */
import type { View } from '../quantities/view.js';

function byDate(records: readonly View[]): View[] {
    const date = (r: View) => r.word('date') ?? '';
    return [...records].sort((a, b) => (date(a) < date(b) ? -1 : date(a) > date(b) ? 1 : 0));
}
export function newest(records: readonly View[]): View | undefined {
    return byDate(records).at(-1);
}
export function oldest(records: readonly View[]): View | undefined {
    return byDate(records)[0];
}

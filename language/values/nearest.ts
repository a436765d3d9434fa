/** 'Did you mean': the nearest of some words, by the number of letters typed wrong, left out, added or swapped. */

/** @returns the nearest candidate, or undefined if none is near enough to be meant */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
    const list = [...candidates];
    const wanted = word.toLowerCase();
    const allowed = wanted.length <= 2 ? 0 : wanted.length <= 4 ? 1 : wanted.length <= 8 ? 2 : 3;
    let best: string | undefined;
    let distance = allowed + 1;
    for (const candidate of list) {
        const c = candidate.toLowerCase();
        if (Math.abs(c.length - wanted.length) > allowed) continue;
        const d = c === wanted ? 0 : wrongLetters(wanted, c, distance);
        if (d < distance) {
            distance = d;
            best = candidate;
            if (!d) break;
        }
    }
    if (best || wanted.length < 4) return best;
    // `stack.hydrogen` means one of the longer names that begin so: how much of it there is, if there is such a name.
    const longer = list.filter(c => c.toLowerCase().startsWith(`${wanted}-`)).sort((a, b) => a.length - b.length);
    return longer.find(c => c.endsWith('-rate')) ?? longer[0];
}

/** A message that offers the nearest word, if there is one; else it ends as `otherwise` says. */
export function offering(message: string, near: string | undefined, otherwise = '.'): string {
    return near ? `${message}; did you mean ${near}?` : `${message}${otherwise}`;
}

function wrongLetters(a: string, b: string, limit: number): number {
    let before: number[] = [];
    let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
    for (let i = 1; i <= a.length; i++) {
        const row = [i];
        let lowest = i;
        for (let j = 1; j <= b.length; j++) {
            let d = Math.min(previous[j] + 1, row[j - 1] + 1, previous[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1));
            if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) d = Math.min(d, before[j - 2] + 1);
            row.push(d);
            lowest = Math.min(lowest, d);
        }
        if (lowest >= limit) return limit;
        before = previous;
        previous = row;
    }
    return previous[b.length];
}

/** At most this many words are named for a beginning. */
const MOST_BEGUN = 3;
/** What a half-typed word may become: `pla is not finished: plate or plates?`; undefined if no word begins so. */
export function halfTyped(word: string, candidates: Iterable<string>): string | undefined {
    const wanted = word.toLowerCase();
    const begun = [...candidates].filter(c => c.length > word.length && c.startsWith(wanted));
    if (!begun.length) return undefined;
    const shown = begun.slice(0, MOST_BEGUN);
    const rest = begun.length > MOST_BEGUN ? ' …' : '';
    return `${word} is not finished: ${shown.length > 1 && !rest ? `${shown.slice(0, -1).join(', ')} or ${shown.at(-1)}` : shown.join(', ')}${rest}?`;
}

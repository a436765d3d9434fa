/** Sentences that several commands say. */
export const caution = 'This is arithmetic on your description. Local codes and licensed practice decide.';

/** '1 error', '2 errors', '0 hints'. */
export function many(n: number, word: string): string {
    return `${n} ${word}${n === 1 ? '' : 's'}`;
}

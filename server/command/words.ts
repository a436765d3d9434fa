/** Sentences that several commands say. */
export { caution } from '../../language/reference/caution.js';

/** '1 error', '2 errors', '0 hints'. */
export function many(n: number, word: string): string {
    return `${n} ${word}${n === 1 ? '' : 's'}`;
}

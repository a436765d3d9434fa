/** All symbols, by kind of part or by name of a path's end. */
import type { Symbol, Symbols } from './define.js';
import { electrical } from './electrical.js';
import { fittings } from './fittings.js';
import { ends, machines } from './machines.js';
import { vessels } from './vessels.js';

export const symbols: Symbols = { ...electrical, ...vessels, ...fittings, ...machines };
export { ends };
/** For a word that is no kind: a plain box with a question mark. */
export const unknown: Symbol = { half: 16, up: 12, down: 12, body: 'M-16-12H16V12H-16Z', letters: '?', after: 'our own' };

/** The figure of a kind; that of its sort, where it has one. */
export function symbolOf(kind: string, sort: string | undefined): Symbol {
    return own(symbols, `${kind}/${sort}`) ?? own(symbols, kind) ?? unknown;
}
export function symbolOfEnd(name: string): Symbol {
    return own(ends, name) ?? unknown;
}
const own = (of: Symbols, name: string): Symbol | undefined => (Object.hasOwn(of, name) ? of[name] : undefined);

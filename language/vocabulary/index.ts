/** Every kind of part, by name. The list itself is generated from the files in `kinds/`. */
import type { Kind } from './define.js';
import { allKinds } from './kinds.generated.js';

export const kinds: ReadonlyMap<string, Kind> = new Map(allKinds.map(k => [k.name, k]));

const byCalling = new Map(allKinds.flatMap(k => k.called.map(word => [word, k] as const)));
/** The kind that the trade calls by another word: tank for cylinder. */
export const kindCalled = (word: string): Kind | undefined => byCalling.get(word.toLowerCase());

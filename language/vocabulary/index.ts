/** Every kind of part, by name. The list itself is generated from the files in `kinds/`. */
import type { Kind } from './define.js';
import { allKinds } from './kinds.generated.js';

export const kinds: ReadonlyMap<string, Kind> = new Map(allKinds.map(k => [k.name, k]));

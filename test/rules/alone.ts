/** A rig with a single part in it, as its template begins it: nothing that it would take to be wrong is there yet. */
import { kinds } from '../../language/vocabulary/index.js';

const filled = (line: string) => line.replace(/\$\{\d+\|([^,|}]*)[^}]*\}/g, '$1').replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$\{?\d+\}?/g, '');
export const alone: readonly { readonly kind: string; readonly text: string }[] = [...kinds.values()].filter(k => !k.statement).flatMap(k => ['idea', 'built'].map(stage => ({
    kind: k.name, text: `rig "Alone", ${stage}\n${k.name}${k.single ? '' : ' lone'} {\n${(k.template ?? []).map(l => `  ${filled(l)}\n`).join('')}}\n`,
})));

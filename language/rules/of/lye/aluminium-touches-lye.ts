import { defineRule } from '../../define.js';
import { wettedParts } from '../../wetted-parts.js';

export default defineRule({
    name: 'aluminium-touches-lye',
    family: 'lye and materials',
    severity: 'error',
    summary: 'Aluminium, zinc or tin is wetted by lye.',
    why: 'Lye dissolves it and makes hydrogen while doing so, where nobody expects any. Anodising does not protect it.',
    source: '2 Al + 2 OH⁻ + 6 H2O gives 3 H2, published studies',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        for (const w of wettedParts(v)) {
            if (!/^(aluminium|aluminised-film|zinc|galvanised-steel|tin|copper-clad)$/.test(w.name)) continue;
            tell({
                at: w.at,
                message: `Lye dissolves ${w.name} and makes hydrogen while it does: ${w.what} of ${w.part.name} will be eaten through.`,
                fixes: w.own ? [{ title: 'Make it of PP', edits: [{ span: w.at, text: 'PP' }], preferred: true }] : [],
            });
        }
    },
});

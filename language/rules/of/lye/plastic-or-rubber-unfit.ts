import { defineRule } from '../../define.js';
import { wettedParts } from '../../wetted-parts.js';

export default defineRule({
    name: 'plastic-or-rubber-unfit',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'A plastic or rubber that lye destroys holds lye.',
    why: 'It crazes, swells or softens, and lets go without warning: hot lye over hands and floor.',
    source: 'tables of makers on chemical resistance, from memory',
    on: 'rig',
    check(v, tell) {
        for (const w of wettedParts(v)) {
            const m = w.material;
            if (!m || m.lyeUpToK !== 'never' || m.conducts) continue;
            const gasket = w.what === 'the gasket';
            const better = gasket ? 'EPDM' : 'PP';
            tell({
                at: w.at,
                message: `${m.doc.split(/(?<=\.) /).slice(0, 2).join(' ')} It is ${w.what} of ` +
                    `${w.part.name}${w.vessel ? ', and all the lye behind it comes out at once' : ''}.`,
                fixes: w.own ? [{ title: `Make it of ${better}`, edits: [{ span: w.at, text: better }], preferred: true }] : [],
            });
        }
    },
});

import { defineRule } from '../../define.js';

/** Words for what makes bubbles last: surfactants, alcohols and glycols, oils. */
const foams = /soap|detergent|surfactant|tenside|washing[- ]?up|wetting agent|alcohol|ethanol|methanol|isopropanol|propanol|\bIPA\b|spirit|glycol|glycerol|glycerine|\boils?\b|grease|gelatine|starch|sugar/i;
/** Agents against foam are oils and silicones themselves. */
const defoamers = /anti-?foam|defoam/i;
/** What is said not to be in it. */
const denied = /\b(no|not|without|free of|never)\b/i;
const rinsed = /rins|flush|wash(ed)? out/i;

export default defineRule({
    name: 'foam-likely',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'The lye holds, or its separators were wetted with, something that makes it foam.',
    why: 'Foam fills the room above the lye within minutes and goes out with the gas: lye in hoses, bubblers and the bag, and levels that no sight tube tells.',
    source: 'common practice, no source; oil and oxygen: EIGA Doc 33, from memory',
    on: 'lye',
    check(v, tell) {
        const said = textOf(v.given('additives').facts);
        const holds = denied.test(said) ? '' : said;
        if (holds && defoamers.test(holds)) {
            tell({ at: v.at('additives'), message: `"${holds}": agents against foam are oils or silicones; they go out with the oxygen as mist, and in oxygen they burn. Renew the lye instead.` });
        } else if (holds && foams.test(holds)) tell({ at: v.at('additives'), message: `"${holds}" makes the lye foam: it goes out with the gas, and on the oxygen side it is fuel. Renew the lye.` });
        for (const separator of v.all('separator')) {
            const how = textOf(separator.given('wetted-by').facts);
            if (!how || !foams.test(how) || rinsed.test(how)) continue;
            const steps = v.the('routine')?.rows('steps') ?? [];
            if (steps.some(r => rinsed.test(r.get('')?.text ?? ''))) continue;
            tell({ at: separator.at('wetted-by'), severity: 'hint', message: `${separator.name} is wetted with what foams ("${how}"), and no step rinses it: rinse twice with distilled water before the lye goes in.` });
        }
    },
});

const textOf = (facts: { get(key: string): { readonly text?: string } | undefined }) => facts.get('')?.text ?? '';

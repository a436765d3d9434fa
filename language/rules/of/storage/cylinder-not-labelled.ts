import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'cylinder-not-labelled',
    family: 'storage',
    severity: 'warning',
    summary: 'Nothing on the cylinder tells that hydrogen is in it, or it tells something else.',
    why: 'The next person, or the fire brigade, acts on what is written there.',
    source: 'contents legibly marked: 29 CFR 1910.253(b)(1)(ii); the label is the primary mark: EN 1089-3',
    on: 'cylinder',
    check(v, tell) {
        const label = v.word('label') ?? v.given('label').facts.get('')?.text;
        const text = v.said('label') ? label ?? '' : undefined;
        if (text !== undefined && text !== '' && !/hydrogen|wasserstoff|hydrog[eè]ne|idrogeno|hidr[oó]geno|\bH2\b/i.test(text)) tell({ at: v.at('label'), message: `${v.name} says ${text}, and hydrogen is in it.`, fixes: defined(setValue(v, 'label', '"HYDROGEN, flammable gas"', 'Label it as hydrogen')) });
        else if (text === undefined || v.says('label') === 'none') {
            if (tell.reached('built') || v.says('label') === 'none') tell({ at: v.at(v.part.entries.has('label') ? 'label' : undefined), message: `Nothing on ${v.name} tells that hydrogen is in it.`, fixes: defined(setValue(v, 'label', '"HYDROGEN, flammable gas"', 'Label it as hydrogen')) });
        }
    },
});

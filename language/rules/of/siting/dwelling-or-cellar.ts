import { defineRule } from '../../define.js';

export default defineRule({
    name: 'dwelling-or-cellar',
    family: 'siting',
    severity: 'error',
    summary: 'Gas is made where people live or sleep, or below ground.',
    why: 'A blast in a house takes the house. A cellar has no high opening, and people above it.',
    source: 'local building and fire codes decide; common practice, no source',
    guardsLife: true,
    on: 'site',
    check(v, tell) {
        const place = v.word('place') ?? '';
        if (!v.the('stack') && !v.the('cylinder')) return;
        if (['cellar', 'flat', 'attic'].includes(place)) tell({ at: v.at('place'), message: `Making or keeping hydrogen in a ${place} puts everybody in the building at risk. Choose a place outdoors or an open shelter, and ask the local authority.` });
        else {
            if (v.yes('attached-to-dwelling')) tell({ at: v.at('attached-to-dwelling'), severity: 'warning', message: 'The place is attached to a dwelling: gas finds its way through doors, ducts and wall plugs.' });
            if (v.yes('people-above')) tell({ at: v.at('people-above'), severity: 'warning', message: 'People are above: that is where hydrogen goes, and a blast too.' });
        }
    },
});

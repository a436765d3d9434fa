import { defineRule } from '../../define.js';

export default defineRule({
    name: 'balloon-indoors-or-public',
    family: 'use',
    severity: 'error',
    summary: 'A balloon with hydrogen near other people or indoors.',
    why: 'Children hold it to a candle. A litre of it burns skin and hair; a roomful takes the room.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'balloon',
    check(v, tell) {
        const who = v.the('purpose')?.word('audience') ?? '';
        if (['children', 'public', 'sale'].includes(who)) tell({ at: v.the('purpose')!.at('audience'), message: `Hydrogen balloons do not belong among ${who === 'sale' ? 'customers' : who}: take helium there.` });
        const place = v.the('site')?.word('place');
        if (place && !['outdoors', 'open-shelter'].includes(place)) tell({ at: v.at(), severity: 'warning', message: `${v.name} is filled in a ${place}: what escapes stays there.`, related: [{ span: v.the('site')!.at('place'), message: 'the place' }] });
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'no-headspace',
    family: 'circulation and levels',
    severity: 'error',
    summary: 'No room is left above the lye for gas and foam to part.',
    why: 'Lye goes out with the gas, into bubblers and the bag.',
    source: 'common practice, no source',
    on: 'column',
    check(v, tell) {
        const free = v.q('headspace');
        if (free <= 0) tell({ at: v.at('level'), message: `The level of ${show(v.num('level'), 'mm')} is above the top at ${show(v.num('height'), 'mm')}.` });
        else if (free < 0.06) tell({ at: v.at('level'), severity: 'warning', message: `${show(free, 'mm')} above the lye is little for foam; 60 mm and more is usual.` });
    },
});

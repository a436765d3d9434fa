import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'gas-velocity-carries-mist',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'The gas leaves a column so fast that it takes lye mist along.',
    why: 'The mist settles in hoses, bubblers and bag, and eats what is not made for it.',
    source: '2 m/s in the outlet: common practice, no source',
    under: ['supply-far-above-stack'],
    on: 'column',
    check(v, tell) {
        const speed = v.maybeQ('outlet-speed');
        const limit = v.yes('demister') ? 4 : 2;
        if (!v.said('outlet') || !tell.exceeds(speed, limit, 'm/s', v, 'outlet')) return;
        const bore = v.maybe('outlet') * Math.sqrt(speed / limit);
        const buy = [4, 5, 6, 8, 10, 12, 15, 20, 25].find(mm => mm / 1000 >= bore);
        tell({
            at: v.at('outlet'),
            message: `The gas leaves ${v.name} at ${show(speed, 'm/s', 2)} through ${show(v.maybe('outlet'), 'mm')}; above ${limit} m/s ` +
                'it lifts mist of lye along.',
            fixes: defined(buy ? setValue(v, 'outlet', `${buy} mm`, `Make the outlet ${buy} mm wide`) : undefined),
        });
    },
});

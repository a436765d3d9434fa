import { duration, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { runsAlone } from '../../place.js';
import { softReliefs } from '../../relief.js';

export default defineRule({
    name: 'full-bag-stops-nothing',
    family: 'buffer',
    severity: 'hint',
    summary: 'Nothing stops the stack when its bag is full; the seal alone lets the rest go.',
    why: 'The seal bubbles unnoticed: current is paid for gas that goes to waste, the seal loses its liquid, and it is the only thing between the bag and bursting.',
    source: 'common practice, no source',
    from: 'drawn',
    under: ['bag-overpressure', 'bag-never-empties'],
    on: ['bag', 'gasometer'],
    check(v, tell) {
        if (!v.the('stack') || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const relief = softReliefs(v)[0];
        if (!relief || !v.controls.sources().length) return;
        const stops = v.controls.stackStoppers();
        if (['volume', 'pressure'].some(q => v.controls.limits(stops, `${v.name}.${q}`, 'above').length)) return;
        const time = v.maybeQ('fill-time');
        const rate = v.the('stack')!.maybeQ('hydrogen-rate');
        tell({
            at: v.at(), severity: runsAlone(v) ? 'warning' : 'hint',
            message: `Nothing stops the stack when ${v.name} is full${time === time ? `, ${duration(time)} after it was empty` : ''}: from then on ${rate > 0 ? `${show(rate, 'NL/h')} leave` : 'the gas leaves'} by ${relief.view.name}, and nobody is told.`,
            related: [{ span: relief.view.at(), message: 'lets it out' }],
        });
    },
});

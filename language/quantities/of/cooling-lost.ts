/** What happens when the cooling fails on the hottest day: one failure at a time. */
import { defineModel, defineQuantity, type Model } from '../define.js';
import { HOT_DAY, hottestPoint, remembered, tunedMake, usable } from '../operating-point.js';
import { type OperatingPoint } from '../stack-solver.js';
import { sourceModel } from '../source.js';

const coolingLost: Model<OperatingPoint | undefined> = defineModel<OperatingPoint | undefined>({
    name: 'operating-point-uncooled', of: 'stack', meaning: 'The same on the hottest day of the site, with no cooling but that of the surfaces.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        if (make && !make.cooler) return q.model(hottestPoint);
        return usable(make, source) ? remembered({ ...make, cooler: undefined }, source!, q.the('site')?.num('hottest') ?? HOT_DAY, undefined, undefined, q.nearby(coolingLost)) : undefined;
    },
});

export default [
    defineQuantity({
        name: 'temperature-cooling-lost', of: 'stack', measure: 'temperature',
        meaning: 'Temperature after hours on the hottest day of the site with no cooling but that of the surfaces: water shut off, a hose kinked, a valve stuck.',
        formula: 'as stack.steady-temperature, without coolers', source: 'as stack.steady-temperature',
        work: q => q.model(coolingLost)?.temperature ?? NaN,
    }),
];

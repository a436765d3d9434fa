/** What happens when the cooling fails on the hottest day: one failure at a time. */
import { defineQuantity } from '../define.js';
import { HOT_DAY, remembered, tunedMake, usable } from '../operating-point.js';
import { sourceModel } from '../source.js';
import { WARMING_DOUBT } from './heat.js';

export default [
    defineQuantity({
        name: 'temperature-cooling-lost', of: 'stack', measure: 'temperature',
        meaning: 'Temperature after hours on the hottest day of the site with no cooling but that of the surfaces: water shut off, a hose kinked, a valve stuck.',
        formula: 'as stack.steady-temperature, without coolers', source: 'as stack.steady-temperature; ± 30 % of the rise',
        work: q => {
            const make = q.model(tunedMake);
            const source = q.model(sourceModel);
            if (!usable(make, source)) return NaN;
            const p = remembered({ ...make, cooler: undefined }, source!, q.the('site')?.num('hottest') ?? HOT_DAY);
            const spread = WARMING_DOUBT * (p.temperature - p.room);
            return { value: p.temperature, low: p.temperature - spread, high: p.temperature + spread };
        },
    }),
];

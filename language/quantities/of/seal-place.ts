/** A liquid seal at its own place: what it holds back in ordinary running. A seal on a bag sees less than one on a column. */
import { defineQuantity } from '../define.js';
import { easiestWay } from '../heads.js';

export default [
    defineQuantity({
        name: 'working-pressure', of: 'seal', measure: 'pressure', unit: 'kPa',
        meaning: 'Pressure of the gas at the place of this seal in ordinary running. The seal must open above it, or it lets gas out all the time.',
        formula: 'pressure of the bag or bell that it stands on, or the head of the easiest way past it', source: 'hydrostatics',
        work: q => {
            const media = q.paths.mediaOf(q.name);
            const gas = media.has('hydrogen') ? 'hydrogen' : media.has('oxygen') ? 'oxygen' : undefined;
            const place = gas && q.paths.to(q.name, gas)[0]?.from.name;
            if (!gas || !place) return NaN;
            const store = [place, ...q.paths.before(place, gas)].map(n => q.other(n)).find(v => v?.kind === 'bag' || v?.kind === 'gasometer');
            if (store) return store.kind === 'bag' ? store.num('own-pressure') : store.q('head');
            return easiestWay(q, place, gas, q.name)?.head ?? NaN;
        },
    }),
];

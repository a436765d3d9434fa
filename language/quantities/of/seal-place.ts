/** A liquid seal at its own place: what it holds back in ordinary running. A seal on a bag sees less than one on a column. */
import { MOLAR_MASS } from '../../physics/constants.js';
import { tubeFlow } from '../../physics/flow.js';
import { gasMoles } from '../../physics/gas-volume.js';
import { gasViscosity, idealGasDensity } from '../../physics/gases.js';
import { defineQuantity } from '../define.js';
import { easiestWay, ENTRY_AND_EXIT } from '../heads.js';
import { airPressureOf, ROOM } from '../surroundings.js';

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
    defineQuantity({
        name: 'relieves', of: 'seal', measure: 'gas-flow', unit: 'Nm3/h',
        meaning: 'Hydrogen that its pipe carries off, the liquid pushed out, at the pressure that the bag before it bears.',
        formula: 'friction in the pipe takes what the rating of the bag leaves above the depth', source: 'Hagen-Poiseuille and Blasius',
        work: q => {
            const bag = q.all('bag').find(b => q.paths.before(q.name, 'hydrogen').includes(b.name));
            const left = (bag?.num('rating') ?? NaN) - q.q('opens-at');
            if (left <= 0) return 0;
            const flow = tubeFlow(left, q.num('pipe.bore'), q.num('pipe.length'), idealGasDensity(MOLAR_MASS.hydrogen, ROOM, airPressureOf(q)), gasViscosity('hydrogen', ROOM), ENTRY_AND_EXIT);
            return gasMoles(flow, ROOM, airPressureOf(q));
        },
    }),
];

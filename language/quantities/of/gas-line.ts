/** What happens to the gas on its way: water that drops out, liquid drawn back, hydrogen through a wall, heat on a catalyst. */
import { recombinerRise } from '../../physics/combustion.js';
import { gasVolume } from '../../physics/gas-volume.js';
import { permeationThroughTube } from '../../physics/permeation.js';
import { condensate } from '../../physics/vapour.js';
import { defineQuantity } from '../define.js';
import { gasOf, tubeBore } from '../heads.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import type { View } from '../view.js';
import { hydrogenThrough } from '../walls.js';

/** Parts behind which the gas is as cold as the room, and as wet as that allows or drier. */
const cold: ReadonlySet<string> = new Set(['bubbler', 'scrubber', 'dryer', 'compressor', 'bag', 'gasometer']);
/** Parts through which nothing is drawn back, or behind which other gas follows first. */
const holds: ReadonlySet<string> = new Set(['check-valve', 'bag', 'gasometer', 'bubbler', 'scrubber', 'compressor']);

/** Names strictly between the stack and a part along its gas; undefined if that gas does not come from the stack. */
function wayFromStack(q: View): readonly string[] | undefined {
    const gas = gasOf(q);
    const stack = q.the('stack');
    return gas && stack && q.paths.route(stack.name, q.name, gas)?.slice(1, -1);
}

export default [
    defineQuantity({ name: 'water-caught', of: ['bubbler', 'scrubber', 'trap', 'cooler'], measure: 'mass-flow', unit: 'g/h', meaning: 'Water that drops out of the gas of the stack up to here, as it cools from the lye to 20 °C; none behind a part that has cooled it before.', formula: 'vapour over the lye - saturation at 20 °C, times the gas', source: 'Dalton; Balej 1985; IAPWS', work: q => {
        const way = wayFromStack(q);
        const stack = q.the('stack');
        if (!way || !stack) return NaN;
        if (way.some(n => cold.has(q.other(n)?.kind ?? '') || q.other(n)?.word('sort') === 'drain')) return 0;
        return condensate(stack.q('hydrogen-rate') * (gasOf(q) === 'oxygen' ? 0.5 : 1), q.the('lye')?.q('vapour-pressure') ?? NaN, airPressureOf(q), ROOM);
    } }),
    defineQuantity({ name: 'sucked-back', of: ['bubbler', 'scrubber'], measure: 'volume', meaning: 'Volume by which the warm wet gas in the column before it shrinks when the stack cools to the coldest of the site: as much liquid is drawn back. None behind a check valve or a bag.', formula: 'sum of shrinks-idle of the columns before it', source: 'ideal gas; Dalton; Balej 1985', work: q => {
        const way = wayFromStack(q);
        const stack = q.the('stack');
        if (!way || !stack) return NaN;
        if (way.some(n => holds.has(q.other(n)?.kind ?? ''))) return 0;
        return way.map(n => q.other(n)).filter((c): c is View => c?.kind === 'column').reduce((sum, c) => sum + c.q('shrinks-idle'), 0);
    } }),
    defineQuantity({ name: 'seepage', of: 'tube', measure: 'flow', unit: 'mL/h', meaning: 'Hydrogen at 20 °C that creeps out through its wall while it stands full of hydrogen at the pressure of the air. Tables of permeability scatter by a factor of two.', formula: 'permeability x 2π length / ln(outside / inside) x pressure', source: 'permeability of the table of materials, from memory', work: q => {
        const bore = tubeBore(q);
        const outside = q.sizes('size')?.[0] ?? NaN;
        return gasVolume(permeationThroughTube(hydrogenThrough(q), q.num('length'), bore, outside > bore ? outside : NaN, airPressureOf(q)), ROOM, airPressureOf(q));
    } }),
    defineQuantity({ name: 'rise', of: 'recombiner', measure: 'temperature-difference', meaning: 'How much it warms the hydrogen by burning all the oxygen in it, at the lowest current that is allowed.', formula: 'about 165 K for each per cent of oxygen, no heat lost', source: 'enthalpy of formation of steam; heat capacity of warm hydrogen', range: 'up to 3 % oxygen', work: q => recombinerRise(q.the('stack')?.q('oxygen-in-hydrogen-low') ?? NaN) }),
];

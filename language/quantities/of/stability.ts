/** How far the steady temperature is from being lost: on a stiff supply heat grows with warmth, and may outgrow what is lost. */
import { surfaceLoss, tippingPoint } from '../../physics/heat.js';
import { findRoot } from '../../physics/root.js';
import { defineModel, defineQuantity } from '../define.js';
import { hottestPoint, remembered, tunedMake, usable } from '../operating-point.js';
import { EMISSIVITY, HOTTEST } from '../stack-solver.js';
import { sourceModel } from '../source.js';
import type { View } from '../view.js';

/** K, from where and in which steps the end of stability is looked for, and coldest room that is thought of. Own choice. */
const LEAST_WARM = 283.15;
const STEP = 8;
const COLDEST_ROOM = 173.15;

interface Tipping {
    /** K, of the lye and of the room, and A, where the last steady temperature ends. NaN: none is lost below boiling. */
    readonly temperature: number;
    readonly room: number;
    readonly current: number;
}
const none: Tipping = { temperature: NaN, room: NaN, current: NaN };
export const tipping = defineModel<Tipping | undefined>({
    name: 'thermal-tipping', of: 'stack', meaning: 'Where the heat begins to grow faster than what is lost, and in which room that is reached.',
    solve(q) {
        const make = q.model(tunedMake);
        const source = q.model(sourceModel);
        const hot = q.model(hottestPoint);
        if (!usable(make, source) || !hot) return undefined;
        // Where something limits the current, warmth makes less heat, not more.
        if (!hot.runsAway && hot.limitedBy !== 'volts') return none;
        const at = (t: number) => remembered(make, source!, hot.room, t);
        const roomFor = (t: number) => {
            const p = at(t);
            const net = p.heat - p.cooling;
            return make.conductance === make.conductance
                ? t - net / (make.lossFactor * make.conductance)
                : findRoot(room => make.lossFactor * surfaceLoss(t, room, make.outside, make.outsideHeight, EMISSIVITY) - net, COLDEST_ROOM, t, 0.05);
        };
        const found = tippingPoint(roomFor, LEAST_WARM, HOTTEST, STEP);
        return found.room === found.room ? { ...found, current: at(found.temperature).current } : none;
    },
});
const reads = (q: View, read: (t: Tipping) => number) => {
    const t = q.model(tipping);
    return t ? read(t) : NaN;
};
const formula = 'growth of heat made with temperature = growth of heat lost';
const source = 'Semenov 1928, from memory, for the condition; heat and losses as stack.steady-temperature';

export default [
    defineQuantity({ name: 'thermal-margin', of: 'stack', measure: 'fraction', meaning: 'How far the stack is from running away on the hottest day: 100 % where warmth makes no more heat, 0 % where heat grows with the temperature as fast as it is lost, or no steady temperature is left.', formula: '1 - growth of heat made / growth of heat lost, with the temperature', source, work: q => q.model(hottestPoint)?.margin() ?? NaN }),
    defineQuantity({ name: 'runaway-room', of: 'stack', measure: 'temperature', meaning: 'Warmest room in which it still comes to rest; in a warmer one it heats up until vapour carries the heat off near boiling, or something limits the current. Unknown where no steady temperature is lost below boiling.', formula, source, work: q => reads(q, t => t.room) }),
    defineQuantity({ name: 'runaway-temperature', of: 'stack', measure: 'temperature', meaning: 'Temperature of the lye at which it tips: once warmer, in that room, it goes on heating.', formula, source, work: q => reads(q, t => t.temperature) }),
    defineQuantity({ name: 'runaway-current', of: 'stack', measure: 'current', meaning: 'Current at which it tips. A limit below this current keeps it from running away.', formula, source, work: q => reads(q, t => t.current) }),
];

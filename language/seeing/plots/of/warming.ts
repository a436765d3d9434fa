import { interpolate } from '../../../physics/interpolate.js';
import { coldStart, hottestPoint, remembered } from '../../../quantities/operating-point.js';
import { HOTTEST } from '../../../quantities/stack-solver.js';
import { duration, show } from '../../../units/format.js';
import { inUnit, lacking, running, six, spaced, told } from '../ask.js';
import { definePlot } from '../define.js';
import { sensedPoints } from '../set-points.js';
import { temperatureLevels } from '../temperature-levels.js';
import type { Line } from '../figure.js';

/** Temperatures at which heat made and lost are worked out on the way, and steps of the way. */
const KNOTS = 8;
const STEPS = 40;
/** Part of the way that is followed: the rest takes for ever. */
const FOLLOWED = 0.98;
/** Of which one says that it is warm. */
const NEARLY = 0.9;

export default definePlot({
    name: 'warming', order: 5, title: 'How soon it gets warm',
    meaning: 'Temperature of the lye after a start with everything as cold as the room, and where it comes to rest.',
    needs: 'a stack with its cells and wetted size, its lye, and what feeds it',
    show(asked) {
        const w = running(asked);
        if (typeof w === 'string') return w;
        const { stack, make, source, p } = w;
        const capacity = stack.q('heat-capacity-total');
        if (!(capacity > 0)) return lacking(stack, 'heat-capacity-total');
        const [cold, hot] = [stack.model(coldStart), stack.model(hottestPoint)];
        const rooms = [
            ...(cold && cold.room < p.room - 1 ? [{ name: 'coldest day', room: cold.room, stroke: 'dashed' as const, ink: 'water' as const }] : []),
            { name: `room of ${show(p.room, '°C')}`, room: p.room, stroke: 'solid' as const, ink: 'accent' as const },
            ...(hot && hot.room > p.room + 1 ? [{ name: 'hottest day', room: hot.room, stroke: 'dash-dot' as const, ink: 'current' as const }] : []),
        ];
        const ways = rooms.map(r => {
            // Where it comes to rest is the rig's own; on the way heat and loss are those of the stack at each temperature.
            const rest = remembered(make, source, r.room);
            const end = rest.runsAway ? HOTTEST : r.room + FOLLOWED * (rest.temperature - r.room);
            const knots = spaced(r.room, end, KNOTS);
            const net = knots.map(T => {
                const q = remembered(make, source, r.room, T);
                return q.heat - q.loss - q.cooling;
            });
            const kelvin = spaced(r.room, end, STEPS);
            const hours = [0];
            for (let i = 1; i < STEPS; i++) {
                const gain = interpolate(knots, net, (kelvin[i - 1] + kelvin[i]) / 2);
                hours.push(hours[i - 1] + (gain > 0 ? capacity * (kelvin[i] - kelvin[i - 1]) / gain : NaN) / 3600);
            }
            return { ...r, rest, hours, kelvin };
        });
        // By the curve itself: the rig's own time is that of a straight law, and heat grows or shrinks with warmth.
        const usual = ways.find(v => v.room === p.room)!;
        const nearly = usual.kelvin.findIndex(k => k - p.room >= NEARLY * (usual.rest.temperature - p.room));
        const lines: Line[] = ways.map(v => ({
            name: v.name, label: `${v.name}: ${v.rest.runsAway ? 'does not come to rest' : `rests at ${show(v.rest.temperature, '°C')}`}`, x: v.hours, y: v.kelvin.map(k => inUnit(k, '°C')), stroke: v.stroke, ink: v.ink,
        }));
        return {
            shape: { is: 'curves', x: { name: 'time since the start', unit: 'h', holds: [0] }, panes: [{ y: { name: 'lye', unit: '°C' }, lines, levels: temperatureLevels(stack, sensedPoints(asked.workings)), height: 280 }] },
            says: `In a room of ${show(p.room, '°C')} it rests at ${told(stack, 'temperature')}, within a tenth of that after ${duration(3600 * (usual.hours[nearly] ?? NaN))}; on the hottest day at ${told(stack, 'steady-temperature')}.`,
            notes: ['Followed to within a fiftieth of the whole warming. The heat capacity is good to ± 40 % unless it is stated: so is the time.', `stack.warm-up-time, ${duration(stack.q('warm-up-time'))}, takes heat and loss as straight; here they are worked out on the way.`, ...(stack.says('temperature') === 'stated' ? ['The text states a temperature of the stack; here it is left to settle.'] : [])],
            table: { columns: [{ name: 'day', unit: '' }, { name: 'time', unit: 'h' }, { name: 'lye', unit: '°C' }], rows: ways.flatMap(v => v.hours.map((h, i) => [v.name, six(h), six(inUnit(v.kelvin[i], '°C'))])) },
        };
    },
});

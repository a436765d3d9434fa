import { hottestPoint, remembered } from '../../../quantities/operating-point.js';
import { show } from '../../../units/format.js';
import { bounds, inUnit, running, six, spaced, told } from '../ask.js';
import { definePlot } from '../define.js';
import { sensedPoints } from '../set-points.js';
import { temperatureLevels } from '../temperature-levels.js';

/** Rooms that are looked at, and K beyond the coldest and the hottest of the site. */
const ROOMS = 9;
const BEYOND = 4;

export default definePlot({
    name: 'rooms', order: 6, title: 'Warm rooms and cold ones',
    meaning: 'Where temperature and current come to rest, over the temperature of the room.',
    needs: 'a stack with its cells and wetted size, its lye, and what feeds it',
    show(asked) {
        const w = running(asked);
        if (typeof w === 'string') return w;
        const { stack, make, source, p } = w;
        const hot = stack.model(hottestPoint);
        const site = stack.the('site');
        const low = Math.min(site?.maybe('coldest', p.room - 15) ?? p.room - 15, p.room) - BEYOND;
        const high = Math.max(hot?.room ?? p.room, p.room) + BEYOND;
        const rooms = [...spaced(low, high, ROOMS), p.room, ...(hot ? [hot.room] : [])].sort((a, b) => a - b).filter((r, i, all) => i === 0 || r - all[i - 1] > 0.2 || r === p.room || r === hot?.room);
        const rests = rooms.map(r => remembered(make, source, r));
        const settles = (k: number) => (rests[k].runsAway ? NaN : rests[k].temperature);
        const away = rests.some(q => q.runsAway);
        const celsius = rooms.map(r => inUnit(r, '°C'));
        const stated = stack.says('temperature') === 'stated';
        return {
            shape: {
                is: 'curves', x: { name: 'room', unit: '°C' },
                panes: [
                    {
                        y: { name: 'lye, after hours', unit: '°C' }, levels: temperatureLevels(stack, sensedPoints(asked.workings)), height: 220,
                        lines: [{ name: 'lye', label: 'lye at rest', x: celsius, y: rests.map((_, k) => inUnit(settles(k), '°C')), stroke: 'solid', ink: 'accent' }],
                        points: [
                            ...(stated || p.runsAway ? [] : [{ name: 'usual room', label: `usual room: ${show(p.temperature, '°C')}`, x: inUnit(p.room, '°C'), y: inUnit(p.temperature, '°C'), mark: 'dot' as const, ink: 'ink' as const, yBounds: bounds(stack, 'temperature', '°C') }]),
                            ...(hot && !hot.runsAway ? [{ name: 'hottest day', label: `hottest day: ${show(hot.temperature, '°C')}`, x: inUnit(hot.room, '°C'), y: inUnit(hot.temperature, '°C'), mark: 'ring' as const, ink: 'ink' as const, yBounds: bounds(stack, 'steady-temperature', '°C') }] : []),
                        ],
                    },
                    { y: { name: 'current', unit: 'A' }, height: 120, lines: [{ name: 'current', label: 'current', x: celsius, y: rests.map(q => q.current), stroke: 'dashed', ink: 'current' }] },
                ],
            },
            says: `In a room of ${show(p.room, '°C')} the lye rests at ${told(stack, 'temperature')}, on the hottest day (${show(hot?.room ?? NaN, '°C')}) at ${told(stack, 'steady-temperature')}.${away ? ' In the warmest rooms it does not come to rest below boiling.' : ''}`,
            notes: stated ? ['The text states a temperature of the stack; here it is left to settle.'] : [],
            table: { columns: [{ name: 'room', unit: '°C' }, { name: 'lye', unit: '°C' }, { name: 'current', unit: 'A' }], rows: rooms.map((_, k) => [six(celsius[k]), six(inUnit(settles(k), '°C')), six(rests[k].current)]) },
        };
    },
});

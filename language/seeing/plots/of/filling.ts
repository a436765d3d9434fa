import { against } from '../../../quantities/of/compressor.js';
import { airPressureOf, ROOM } from '../../../quantities/surroundings.js';
import { show } from '../../../units/format.js';
import { bounds, inUnit, lacking, restsOn, six, spaced, told } from '../ask.js';
import { definePlot } from '../define.js';
import type { Level, Line, Point, Stroke } from '../figure.js';
import { sensedPoints } from '../set-points.js';

const PRESSURES = 16;
/** Over the cut-off or rating, whichever is more, up to which it is looked at. */
const BEYOND = 1.1;
const strokes: readonly Stroke[] = ['solid', 'dashed', 'dash-dot', 'dotted'];

export default definePlot({
    name: 'filling', order: 8, title: 'Compressor over the pressure of the store',
    meaning: 'What is delivered and how hot the gas leaves, from the empty store to the full one.',
    needs: 'a compressor with its displacement and speed, and a cylinder with its rating or a switch that ends the filling',
    show({ workings, stack }) {
        const machines = workings.livePartsOf('compressor').slice(0, strokes.length);
        const [store] = workings.livePartsOf('cylinder');
        if (!machines.length) return 'No compressor is described.';
        if (!store) return 'No cylinder is described.';
        const [cutOff, rating] = [store.maybeQ('cut-off'), store.maybe('rating')];
        const highest = BEYOND * Math.max(...[cutOff, rating].filter(x => x === x));
        if (!(highest > 0)) return `${store.name} tells neither a rating nor a switch that ends its filling.`;
        const air = airPressureOf(store);
        const gauge = [...spaced(0, highest, PRESSURES), ...(cutOff === cutOff ? [cutOff] : [])].sort((a, b) => a - b);
        const done = machines.map(m => gauge.map(g => against(m, g + air, ROOM)));
        if (!done.some(d => d.some(a => a && a.flow === a.flow))) return lacking(machines[0], 'free-delivery');
        const bar = gauge.map(g => inUnit(g, 'bar'));
        const flow = (k: number) => done[k].map(a => inUnit(a?.flow ?? NaN, 'NL/h'));
        const warm = (k: number) => done[k].map(a => inUnit(a?.discharge ?? NaN, '°C'));
        // Compressors in one line deliver the same.
        const own = machines.filter((_, k) => k === 0 || flow(k).some((f, i) => Math.abs(f - flow(0)[i]) > 1e-6 * Math.abs(f)));
        const line = (k: number, y: readonly number[], what: string): Line => ({ name: `${machines[k].name} ${what}`, label: machines[k].name, x: bar, y, stroke: strokes[k], ink: k ? 'current' : 'accent' });
        const made = stack?.maybeQ('hydrogen-rate') ?? NaN;
        const uprights = [...(cutOff === cutOff ? [{ label: `ends at ${show(cutOff, 'bar')}`, x: inUnit(cutOff, 'bar') }] : []), ...(rating === rating ? [{ label: `rated ${show(rating, 'bar')}`, x: inUnit(rating, 'bar') }] : [])];
        // At the end of the filling the rig's own numbers, with their ±.
        const atEnd = (name: string, quantity: string, unit: string): Point[] => {
            const y = cutOff === cutOff ? machines[0].maybeQ(quantity) : NaN;
            return y === y ? [{ name, label: show(y, unit), x: inUnit(cutOff, 'bar'), y: inUnit(y, unit), mark: 'dot', ink: 'ink', yBounds: bounds(machines[0], quantity, unit) }] : [];
        };
        const trips: Level[] = sensedPoints(workings).filter(p => p.sort === 'trip' && machines.some(m => p.senses === `${m.name}.discharge-temperature`)).map(p => ({ label: `${p.part} ${p.says} ${show(p.at, '°C')}`, y: inUnit(p.at, '°C'), ink: 'error' }));
        const heat = machines.map((_, k) => warm(k)).some(y => y.some(v => v === v));
        return {
            shape: {
                is: 'curves', x: { name: `pressure in ${store.name}`, unit: 'bar', holds: [0] }, uprights,
                panes: [
                    { y: { name: 'delivered', unit: 'NL/h', holds: [0] }, height: 190, lines: own.map(m => line(machines.indexOf(m), flow(machines.indexOf(m)), 'delivers')), points: atEnd('delivered at the end', 'free-delivery', 'NL/h'), levels: made > 0 ? [{ label: `stack makes ${show(made, 'NL/h')}`, y: inUnit(made, 'NL/h') }] : [] },
                    ...(heat ? [{ y: { name: 'gas leaves at, drawn at 20 °C', unit: '°C' }, height: 150, lines: machines.map((_, k) => line(k, warm(k), 'leaves at')), points: atEnd('leaves at the end', 'discharge-temperature', '°C'), levels: trips }] : []),
                ],
            },
            says: machines.map(m => `${m.name} delivers ${told(m, 'free-delivery-start')} into an empty store and ${told(m, 'free-delivery')} at the end; its gas leaves at ${told(m, 'discharge-temperature')} then, ${told(m, 'discharge-temperature-hot')} on the hottest day.`).join(' '),
            notes: restsOn(machines[0], 'free-delivery'),
            table: {
                columns: [{ name: 'store', unit: 'bar' }, ...machines.flatMap(m => [{ name: `${m.name} delivers`, unit: 'NL/h' }, { name: `${m.name} leaves at`, unit: '°C' }])],
                rows: bar.map((b, i) => [six(b), ...machines.flatMap((_, k) => [six(flow(k)[i]), six(warm(k)[i])])]),
            },
        };
    },
});

import { lowLoad, takesAt, tunedMake } from '../../../quantities/operating-point.js';
import { impuritiesAt } from '../../../quantities/of/yield.js';
import type { View } from '../../../quantities/view.js';
import { show } from '../../../units/format.js';
import { inUnit, isLong, lacking, restsOn, running, six, spaced, told } from '../ask.js';
import { definePlot } from '../define.js';
import { sensedPoints } from '../set-points.js';
import type { Level, Line } from '../figure.js';

/** Currents that are looked at, and fewer where each costs a long stack. */
const LOADS = 9;
const FEW = 5;
/** Part of the working current from which, and up to which it is looked at. */
const [LEAST, MOST] = [0.15, 1.15];
/** Volume fraction: what can burn in the other gas, and the customary trip of hydrogen in oxygen [from memory]. */
const BURNS = 0.04;
const CLEAN = 0.02;

export default definePlot({
    name: 'purity', order: 7, title: 'How clean the gases are',
    meaning: 'Hydrogen in the oxygen and oxygen in the hydrogen over the current, warm: what crosses stays, what dilutes it shrinks.',
    needs: 'a stack with its cells, wetted size and separators, its lye, and what feeds it',
    show(asked) {
        const w = running(asked);
        if (typeof w === 'string') return w;
        const { stack, make, p } = w;
        if (!(stack.q('hydrogen-in-oxygen') > 0)) return lacking(stack, 'hydrogen-in-oxygen');
        const low = stack.model(lowLoad);
        const currents = [...spaced(LEAST * p.current, MOST * p.current, isLong(make) ? FEW : LOADS), p.current, ...(low && low.current < p.current ? [low.current] : [])].sort((a, b) => a - b);
        const read = (q: View | undefined) => {
            const made = q?.model(tunedMake);
            const all = currents.map(i => (q ? impuritiesAt(q, i === p.current && made === make ? p : takesAt(made, p.temperature, i)) : { hydrogenInOxygen: NaN, oxygenInHydrogen: NaN }));
            return [...all.map(a => a.hydrogenInOxygen), ...all.map(a => a.oxygenInHydrogen)];
        };
        const values = read(stack);
        const band = asked.workings.boundsAlong(stack.result('hydrogen-in-oxygen')!, there => read(there.viewOf(stack.name)));
        const n = currents.length;
        const percent = (x: number) => inUnit(x, '%');
        const least = Math.min(...values.filter(v => v > 0));
        const bandOf = (from: number) => band.slice(from, from + n).map(b => ({ low: percent(Math.max(least / 10, b.low)), high: percent(b.high) }));
        const lines: Line[] = [
            { name: 'hydrogen in oxygen', label: 'hydrogen in oxygen', x: currents, y: values.slice(0, n).map(percent), stroke: 'solid', ink: 'hydrogen', band: bandOf(0) },
            { name: 'oxygen in hydrogen', label: 'oxygen in hydrogen', x: currents, y: values.slice(n).map(percent), stroke: 'dashed', ink: 'oxygen' },
        ];
        const levels: Level[] = [
            { y: percent(BURNS), label: `can burn: ${show(BURNS, '%')}`, ink: 'error' }, { y: percent(CLEAN), label: `customary trip: ${show(CLEAN, '%')}`, ink: 'warning' },
            ...sensedPoints(asked.workings).filter(s => /\.(oxygen|hydrogen)$/.test(s.senses ?? '') && !s.senses!.startsWith('site.') && asked.workings.viewOf(s.part)?.kind === 'analyser' && s.sort !== 'relief' && !s.says.startsWith('resets'))
                .map(s => ({ y: percent(s.at), label: `${s.part} ${s.says} ${show(s.at, '%')} ${s.senses!.endsWith('.oxygen') ? 'oxygen' : 'hydrogen'}` })),
        ];
        return {
            shape: {
                is: 'curves', x: { name: 'current', unit: 'A', holds: [0] }, panes: [{ y: { name: 'in the dry gas', unit: '%', scale: 'log' }, lines, levels, height: 300 }],
                uprights: [{ label: 'working', x: p.current }, ...(low && low.current < 0.97 * p.current ? [{ label: 'lowest', x: low.current }] : [])],
            },
            says: `Hydrogen in the oxygen: ${told(stack, 'hydrogen-in-oxygen')} working, ${told(stack, 'hydrogen-in-oxygen-low')} at the lowest current; oxygen in the hydrogen: ${told(stack, 'oxygen-in-hydrogen')} and ${told(stack, 'oxygen-in-hydrogen-low')}. Laws of crossing are good to a factor of three: the band. Separators are taken as whole and wetted.`,
            notes: restsOn(stack, 'hydrogen-in-oxygen'),
            table: {
                columns: [{ name: 'current', unit: 'A' }, { name: 'hydrogen in oxygen', unit: '%' }, { name: 'low', unit: '%' }, { name: 'high', unit: '%' }, { name: 'oxygen in hydrogen', unit: '%' }, { name: 'low', unit: '%' }, { name: 'high', unit: '%' }],
                rows: currents.map((i, k) => [six(i), six(percent(values[k])), six(percent(Math.max(0, band[k].low))), six(percent(band[k].high)), six(percent(values[n + k])), six(percent(Math.max(0, band[n + k].low))), six(percent(band[n + k].high))]),
            },
        };
    },
});

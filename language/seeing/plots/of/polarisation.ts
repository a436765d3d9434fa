import { ownCurve, takesAt, tunedMake } from '../../../quantities/operating-point.js';
import { voltsAt } from '../../../quantities/source.js';
import { show } from '../../../units/format.js';
import { bounds, isLong, restsOn, six, spaced, told, worked } from '../ask.js';
import { definePlot } from '../define.js';
import type { Line, Point } from '../figure.js';

/** Currents at which the curve is worked out: closer where it bends, and fewer where each costs a long stack. */
const CURRENTS = 16;
const FEW = 7;
/** How far beyond the largest current that is known of the rig the curve goes. */
const BEYOND = 1.2;
/** A/m², what a curve goes up to where no current is known. Own choice. */
const USUAL_DENSITY = 2000;
const SOURCE_POINTS = 40;
/** Readings told by name; more are marked only. */
const MOST_NAMED = 6;

export default definePlot({
    name: 'polarisation', order: 1, title: 'Volts over amperes',
    meaning: 'What the stack asks for each current at its working temperature, what feeds it, and where the two meet.',
    needs: 'a stack with its cells and wetted size, its lye, and what feeds it',
    show(asked) {
        const w = worked(asked);
        if (typeof w === 'string') return w;
        const { stack, make, source, p } = w;
        const meets = p.current > 0;
        const readings = asked.workings.partsOf('reading').map(r => ({ name: r.name, volts: r.seen(`${stack.name}.voltage`), amps: r.seen(`${stack.name}.current`), kelvin: r.seen(`${stack.name}.temperature`) })).filter(r => r.volts > 0 && r.amps > 0);
        const own = (ownCurve(stack) ?? []).map(c => ({ name: 'own curve', volts: c.volts, amps: c.current, kelvin: c.temperature }));
        const known = [p.current, ...[...readings, ...own].map(r => r.amps), Number.isFinite(source.limit) && source.limit < 3 * p.current ? source.limit : 0];
        const most = BEYOND * (Math.max(...known) > 0 ? Math.max(...known) : Math.min(USUAL_DENSITY * make.area * make.groups, Number.isFinite(source.limit) ? source.limit : Infinity));
        const grid = spaced(0.18, 1, isLong(make) ? FEW : CURRENTS).map(s => s * s * most);
        // The current of the rig is one of them, so that the curve goes through its point.
        const currents = (meets ? [...grid.filter(i => Math.abs(i - p.current) > 0.02 * most), p.current] : grid).sort((a, b) => a - b);
        const volts = currents.map(i => takesAt(make, p.temperature, i)?.voltage ?? NaN);
        const result = stack.result('current')!;
        const band = asked.workings.boundsAlong(result, there => {
            const made = there.viewOf(stack.name)?.model(tunedMake);
            return currents.map(i => takesAt(made, p.temperature, i)?.voltage ?? NaN);
        });
        const line = source.currentAt
            ? spaced(0, source.open, SOURCE_POINTS).map(v => [source.currentAt!(v), v] as const).reverse()
            : [...spaced(0, Math.min(most, source.limit), SOURCE_POINTS).map(i => [i, voltsAt(source, i)] as const), ...(source.limit <= most ? [[source.limit, 0] as const] : [])];
        const from = Math.min(...volts.filter(v => v === v), ...readings.map(r => r.volts)) * 0.94;
        const shown = line.filter(([i, v], k) => i <= most && (v >= from || (line[k - 1]?.[1] ?? 0) >= from)).map(([i, v]) => [i, Math.max(v, from)] as const);
        const lines: Line[] = [
            { name: 'stack', label: `stack at ${show(p.temperature, '°C', 2)}`, x: currents, y: volts, stroke: 'solid', ink: 'accent', band },
            { name: 'supply', label: source.part, x: shown.map(s => s[0]), y: shown.map(s => s[1]), stroke: 'dashed', ink: 'current' },
        ];
        const at = (kelvin: number) => (kelvin === kelvin ? `, ${show(kelvin, '°C', 2)}` : '');
        const points: Point[] = [
            ...(meets ? [{ name: 'operating point', label: `${show(p.current, 'A')}, ${show(p.voltage, 'V')}`, x: p.current, y: p.voltage, mark: 'dot' as const, ink: 'ink' as const, xBounds: bounds(stack, 'current', 'A'), yBounds: bounds(stack, 'voltage', 'V') }] : []),
            ...readings.map((r, i) => ({ name: `reading ${r.name}`, label: i < MOST_NAMED ? `${r.name}${at(r.kelvin)}` : '', x: r.amps, y: r.volts, mark: 'ring' as const, ink: 'ink' as const })),
            ...own.map((r, i) => ({ name: `own curve ${i + 1}`, label: i === own.length - 1 ? `own curve${at(r.kelvin)}` : '', x: r.amps, y: r.volts, mark: 'square' as const, ink: 'ink' as const })),
        ];
        const each = (v: number) => six(v / make.cells);
        const limits = meets ? (p.limitedBy === 'current limit' ? `${source.part} limits the current` : 'its volts set the current') : `${source.part} has too few volts: no current flows`;
        return {
            shape: { is: 'curves', x: { name: 'current', unit: 'A', holds: [0] }, panes: [{ y: { name: 'volts of the stack', unit: 'V' }, lines, points, height: 300 }] },
            says: meets ? `${told(stack, 'current')} at ${told(stack, 'voltage')}, ${told(stack, 'volts-per-cell')} a cell; ${limits}. The band is what lye, surfaces, tolerances and assumptions leave open at this temperature.` : `${limits}.`,
            notes: [...(source.kind === 'pulses' ? ['The supply is not smoothed: means are shown.'] : []), ...(readings.some(r => Math.abs(r.kelvin - p.temperature) > 5) ? ['Readings stand as they were read, each at its own warmth.'] : []), ...restsOn(stack, 'voltage')],
            table: {
                columns: [{ name: 'what', unit: '' }, { name: 'current', unit: 'A' }, { name: 'stack', unit: 'V' }, { name: 'low', unit: 'V' }, { name: 'high', unit: 'V' }, { name: 'a cell', unit: 'V' }, { name: 'supply', unit: 'V' }],
                rows: [
                    ...currents.map((i, k) => ['stack', six(i), six(volts[k]), six(band[k].low), six(band[k].high), each(volts[k]), source.currentAt || i > source.limit ? undefined : six(voltsAt(source, i))]),
                    ...(source.currentAt ? shown.map(([i, v]) => ['supply', six(i), undefined, undefined, undefined, undefined, six(v)]) : []),
                    ...points.map(q => [q.name, six(q.x), six(q.y), six(q.yBounds?.[0] ?? NaN), six(q.yBounds?.[1] ?? NaN), each(q.y), undefined]),
                ],
            },
        };
    },
});

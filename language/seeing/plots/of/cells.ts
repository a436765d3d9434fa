import { lowLoad } from '../../../quantities/operating-point.js';
import type { OperatingPoint } from '../../../quantities/stack-solver.js';
import { digits, show } from '../../../units/format.js';
import { running, six, told } from '../ask.js';
import { definePlot } from '../define.js';
import type { Line } from '../figure.js';

/** Plates that are marked one by one. */
const MOST_MARKED = 60;

export default definePlot({
    name: 'cells', order: 4, title: 'Current of each plate',
    meaning: 'What goes through each plate of a group; what is missing up to the whole current passes by through the lye of ports and channels.',
    needs: 'a stack of two cells or more with its wetted size, its lye, and what feeds it',
    show(asked) {
        const w = running(asked);
        if (typeof w === 'string') return w;
        const { stack, make, p } = w;
        if (make.cells < 2) return 'One cell has no plate that current could pass by.';
        const low = stack.model(lowLoad);
        /** The end plates carry all of it. */
        const plates = (q: OperatingPoint) => [q.groupCurrent, ...q.ladder.plates, q.groupCurrent];
        const states = [{ name: 'working', q: p, stroke: 'solid' as const, ink: 'accent' as const }, ...(low && low.current < 0.99 * p.current ? [{ name: 'lowest current', q: low, stroke: 'dashed' as const, ink: 'current' as const }] : [])];
        const numbers = plates(p).map((_, i) => i + 1);
        const past = (q: OperatingPoint) => `${digits(100 * (1 - q.bypassEfficiency), 2)} % passes by`;
        const lines: Line[] = states.map(({ name, q, stroke, ink }) => ({ name, label: `${name}: ${past(q)}`, x: numbers, y: plates(q), stroke, ink, mark: numbers.length <= MOST_MARKED ? (name === 'working' ? 'dot' : 'ring') : undefined }));
        const worst = numbers[plates(p).indexOf(p.worstCell)] ?? numbers[numbers.length >> 1];
        return {
            shape: {
                is: 'curves', x: { name: 'plate, counted from plus', unit: '', scale: 'counted' },
                panes: [{
                    y: { name: `current of ${make.groups > 1 ? 'one group' : 'the plate'}`, unit: 'A', holds: [0] }, lines, height: 260,
                    levels: states.map(({ name, q }) => ({ y: q.groupCurrent, label: `whole, ${name}: ${show(q.groupCurrent, 'A')}` })),
                }],
            },
            says: `${told(stack, 'bypass-share')} of the current passes by a cell in the mean; plate ${worst} carries least, ${show(p.worstCell, 'A')} of ${show(p.groupCurrent, 'A')}.${p.reversed > 0 ? ` In ${p.reversed} plates the current runs backwards.` : ''}${low ? ` At the lowest current ${past(low)}.` : ''}`,
            table: { columns: [{ name: 'plate', unit: '' }, ...states.map(s => ({ name: s.name, unit: 'A' }))], rows: numbers.map((n, i) => [n, ...states.map(s => six(plates(s.q)[i]))]) },
        };
    },
});

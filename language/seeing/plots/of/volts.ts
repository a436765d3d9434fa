import { show } from '../../../units/format.js';
import { inUnit, restsOn, running, six, told } from '../ask.js';
import { definePlot } from '../define.js';
import type { Bar } from '../figure.js';

export default definePlot({
    name: 'volts', order: 2, title: 'Where the volts of a cell go',
    meaning: 'From the least voltage that splits water to what a cell takes: each loss a step.',
    needs: 'a stack with its cells and wetted size, its lye, and what feeds it',
    show(asked) {
        const w = running(asked);
        if (typeof w === 'string') return w;
        const { stack, p } = w;
        const reversible = stack.q('reversible-voltage');
        const steps: readonly (readonly [string, number, string?])[] = [
            ['pressure and bound water', p.rest - reversible], ['oxygen side', p.anode, 'overvoltage'], ['hydrogen side', p.cathode, 'overvoltage'],
            ['lye and separator', p.ohmic], ['bubbles', p.bubbles],
            ['surface, less what bypasses', p.cellVoltage - p.rest - p.anode - p.cathode - p.ohmic - p.bubbles, 'state of the plates'],
        ];
        const bars: Bar[] = [{ name: 'least that splits water', from: 0, to: reversible, told: show(reversible, 'V'), sort: 'sum' }];
        let at = reversible;
        for (const [name, step, note] of steps) {
            bars.push({ name, note, from: at, to: at + step, told: `${step < 0 ? '−' : '+'} ${show(Math.abs(inUnit(step, 'mV')), 'number', 3)} mV`, sort: 'step' });
            at += step;
        }
        bars.push({ name: 'a cell', from: 0, to: p.cellVoltage, told: told(stack, 'volts-per-cell'), sort: 'sum' });
        const enthalpy = stack.q('enthalpy-voltage');
        return {
            shape: { is: 'bars', x: { name: 'volts of one cell', unit: 'V', holds: [0] }, bars, uprights: enthalpy === enthalpy ? [{ label: `no heat at ${show(enthalpy, 'V')}`, x: enthalpy }] : [] },
            says: `A cell takes ${told(stack, 'volts-per-cell')} at ${show(p.groupCurrent, 'A')} and ${show(p.temperature, '°C')}. What lies above ${show(enthalpy, 'V')} becomes heat.`,
            notes: ['The last step is what the laws cannot tell apart: the state of the surfaces, an own curve or reading where there is one, and that plates in the middle carry less than all of the current.', ...restsOn(stack, 'volts-per-cell')],
            table: { columns: [{ name: 'part', unit: '' }, { name: 'volts', unit: 'V' }, { name: 'up to', unit: 'V' }], rows: bars.map(b => [b.name, six(b.to - b.from), six(b.to)]) },
        };
    },
});

import { HIGHER_HEATING_VALUE } from '../../../physics/constants.js';
import { digits, show } from '../../../units/format.js';
import { lacking, restsOn, running, six, told } from '../ask.js';
import { definePlot } from '../define.js';
import type { Bar } from '../figure.js';

export default definePlot({
    name: 'watts', order: 3, title: 'Where the watts go',
    meaning: 'From the plug to the gas: each loss a step.',
    needs: 'a stack with its cells and wetted size, its lye, and what feeds it',
    show(asked) {
        const w = running(asked);
        if (typeof w === 'string') return w;
        const { stack, source, p } = w;
        const plug = stack.q('plug-power');
        if (!(plug > 0)) return lacking(stack, 'plug-power');
        const power = stack.q('power');
        const way = p.current * p.current * source.leads + p.current * source.diodes;
        const gas = stack.q('hydrogen-rate') * HIGHER_HEATING_VALUE;
        const rest = p.heat - p.loss - p.cooling;
        const atRest = Math.abs(rest) < 0.02 * Math.abs(p.heat);
        const steps: readonly (readonly [string, number, string?])[] = [
            [`in ${source.part}`, plug - power - way], ['leads and diodes', way], ['warmth to the room', atRest ? p.heat - p.cooling : p.loss, 'stack, vessels, hoses'],
            ...(p.cooling > 0 ? [['coolers', p.cooling] as const] : []), ...(atRest ? [] : [['warms the lye', rest, 'not yet at rest'] as const]),
            ['vapour and lost gas', power - p.heat - gas],
        ];
        const share = (x: number) => `${show(x, 'W')}, ${digits(100 * x / plug, 2)} %`;
        const bars: Bar[] = [{ name: 'from the plug', note: source.part, from: 0, to: plug, told: share(plug), sort: 'sum' }];
        let left = plug;
        for (const [name, step, note] of steps) {
            bars.push({ name, note, from: left - step, to: left, told: share(step), sort: 'step' });
            left -= step;
        }
        bars.push({ name: 'in the hydrogen', note: 'higher heating value', from: 0, to: gas, told: share(gas), sort: 'sum' });
        return {
            shape: { is: 'bars', x: { name: 'power', unit: 'W', holds: [0] }, bars },
            says: `Of ${told(stack, 'plug-power')} from the plug ${digits(100 * gas / plug, 2)} % are found again in the hydrogen; the stack takes ${told(stack, 'power')} and keeps ${told(stack, 'heat')} as heat.`,
            notes: restsOn(stack, 'plug-power'),
            table: { columns: [{ name: 'part', unit: '' }, { name: 'power', unit: 'W' }, { name: 'of the plug', unit: '%' }], rows: bars.map(b => [b.name, six(b.to - b.from), six(100 * (b.to - b.from) / plug)]) },
        };
    },
});

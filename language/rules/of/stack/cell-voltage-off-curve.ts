import { defineRule } from '../../define.js';
import { benchReading, UNLIKELY } from '../../../quantities/operating-point.js';
import { show } from '../../../units/format.js';

const asks = (more: boolean) => (more ? 'A dry cell, a wider gap, old lye or a drop in the leads?' : 'A meter at the supply, fewer cells, or a shorted one?');

export default defineRule({
    name: 'cell-voltage-off-curve',
    family: 'stack',
    severity: 'warning',
    summary: 'A reading of the volts lies far from what this stack should show.',
    why: 'A dry cell, a wrong gap, old lye or a drop in the leads shows here first.',
    source: 'voltage model ± its own spread; 0.25 V a cell: common practice, no source',
    on: 'reading',
    check(v, tell) {
        const stack = v.the('stack');
        const volts = stack && v.part.entries.get(`${stack.name}.voltage`);
        const amount = volts && tell.workings.amountOf(volts);
        if (!stack || !volts || !amount) return;
        const bench = benchReading(stack);
        if (bench?.part.name === v.name) {
            if (Math.abs(bench.shift) > UNLIKELY) {
                tell({ at: volts.span, message: `${show(bench.read, 'V')} a cell was read; about ${show(bench.expected, 'V')} is expected at ${show(bench.current, 'A')}, so the numbers do not follow it. ${asks(bench.read > bench.expected)}` });
            }
            return;
        }
        const amps = v.part.entries.get(`${stack.name}.current`);
        const current = amps && tell.workings.amountOf(amps)?.si;
        const working = stack.q('current');
        if (current !== undefined && Math.abs(current - working) > 0.1 * working) return;
        const each = amount.si / stack.num('cells');
        const expected = stack.q('volts-per-cell');
        if (!(Math.abs(each - expected) > UNLIKELY)) return;
        tell({ at: volts.span, message: `${show(each, 'V')} a cell was read; about ${show(expected, 'V')} is expected at ${show(working, 'A')}. ${asks(each > expected)}` });
    },
});

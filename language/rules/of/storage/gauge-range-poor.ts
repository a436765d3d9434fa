import { append } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { freeName } from '../../path-fixes.js';
import { onStorePressure, reliefsOf } from '../../relief.js';
import { onceBuilt } from '../../stage.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'gauge-range-poor',
    family: 'storage',
    severity: 'hint',
    summary: 'No gauge shows the pressure of the cylinder, or its scale does not fit.',
    why: 'What cannot be read is not checked, and a dial that was pressed over its end lies from then on.',
    source: 'error as a share of the span by class: EN 837-1, from memory; up to three quarters of the scale under steady pressure: EN 837-2, from memory; from a quarter on, and 1.3 times the relief valve: common practice, no source',
    on: 'cylinder',
    check(v, tell) {
        const gauges = v.all('gauge').filter(g => g.names('on').some(n => n === v.name || onStorePressure(v, n)) || [g.word('on')].some(n => n !== undefined && (n === v.name || onStorePressure(v, n))));
        const line = v.paths.to(v.name, 'hydrogen').length > 0;
        if (!gauges.length) {
            const name = freeName(v, 'store-gauge');
            if (line) tell({ at: v.at(), severity: onceBuilt(tell, 'warning', 'hint'), message: `No gauge shows the pressure of ${v.name}.`, fixes: [append(v, `gauge ${name} { on: ${v.name} }`, 'Plan a gauge')] });
            return;
        }
        const off = v.maybeQ('cut-off');
        const set = Math.min(...reliefsOf(v).open.map(r => r.maybe('set', Infinity)));
        for (const g of gauges) {
            const end = g.bounds('range').high;
            const blur = end * g.maybe('class', 2.5) / 100;
            if (end < 1.3 * set && set < Infinity) tell({ at: g.at('range'), message: `${g.name} ends at ${show(end, 'bar')}; the relief valve opens at ${show(set, 'bar')}, and 1.3 times that is usual.` });
            else if (off < 0.25 * end) tell({ at: g.at('range'), message: `${show(off, 'bar')} on a scale to ${show(end, 'bar')} can be read to ± ${show(blur, 'bar', 2)} only.` });
        }
    },
});

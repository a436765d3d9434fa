import { defineRule } from '../../define.js';

export default defineRule({
    name: 'sensor-break-reads-normal',
    family: 'controls',
    severity: 'warning',
    summary: 'With its wire broken a sensor shows something that looks ordinary.',
    why: 'Whoever reads it goes on: a broken wire says "no pressure yet, keep pressing".',
    source: 'live zero of 4 to 20 mA and signals below 3.6 mA for a break: NAMUR NE 43, from memory',
    on: 'sensor',
    check(v, tell) {
        const quantity = (v.controls.sensed(v) ?? '').split('.')[1];
        if (!quantity) return;
        const high = ['temperature', 'pressure', 'volume', 'hydrogen', 'oxygen', 'current', 'voltage', 'discharge-temperature'].includes(quantity);
        const reads = v.word('if-wire-breaks');
        const asIfFine = high ? 'low' : 'high';
        const shown = reads === 'low' ? 'its lowest value' : reads === 'high' ? 'its highest value' : reads === 'last' ? 'the last value' : 'nothing new';
        if (reads === 'last' || reads === 'nothing' || reads === asIfFine) tell({ at: v.at('if-wire-breaks'), message: `With its wire broken ${v.name} shows ${shown}, which looks like an ordinary ${quantity}: what reads it goes on.` });
        else if (!reads && high && (v.bounds('output.voltage').low === 0 || v.bounds('output.current').low === 0)) tell({ at: v.at('output'), message: `The signal of ${v.name} begins at zero: a broken wire looks like the lowest ${quantity}, and what reads it goes on.` });
    },
});

import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';
import { lastPassed, MONTH, monthsBetween } from '../../records.js';


export default defineRule({
    name: 'detector-untrusted',
    family: 'controls',
    severity: 'hint',
    summary: 'Nothing shows that a gas detector or analyser was compared with a known gas lately, or its cell has come to its end.',
    why: 'Sensors drift and cells die without a sign. A galvanic cell at its end reads low, which looks like good gas.',
    source: '6 months: common practice, no source; performance of hydrogen detectors: ISO 26142, scope only',
    from: 'built',
    on: ['detector', 'analyser'],
    check(v, tell) {
        if (!tell.today) return;
        if (v.kind === 'analyser' && v.word('cell-fitted')) {
            const old = monthsBetween(v.word('cell-fitted'), tell.today);
            const life = v.num('cell-life') / MONTH;
            if (old > life) {
                const low = v.word('if-cell-dies') === 'low';
                tell({ at: v.at('cell-fitted'), severity: 'warning', message: `The cell of ${v.name} is ${digits(old, 2)} months old; ${digits(life, 2)} are its life${v.said('cell-life') ? '' : ' (assumed)'}${low ? '. At its end it reads low: bad gas looks good' : ''}.` });
                return;
            }
        }
        const compared = v.all('calibration').filter(c => c.seen(`${v.name}.reads`) === c.seen(`${v.name}.reads`)).map(c => c.word('date') ?? '');
        const last = [v.word('calibrated') ?? '', lastPassed(v) ?? '', ...compared].sort().at(-1);
        const months = monthsBetween(last, tell.today);
        if (!last) tell({ at: v.at(), message: `Nothing shows that ${v.name} was ever compared with a gas that is known.` });
        else if (months > 6) tell({ at: v.at(v.said('calibrated') ? 'calibrated' : undefined), message: `${v.name} was last compared with a known gas on ${last}, ${digits(months, 2)} months ago; 6 are usual.` });
    },
});

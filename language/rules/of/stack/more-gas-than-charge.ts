import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

/** Share by which a claim may be rounded up. Common practice, no source. */
const PRINT = 0.02;

export default defineRule({
    name: 'more-gas-than-charge',
    family: 'stack',
    severity: 'error',
    summary: 'More hydrogen is claimed or read than the charge can make.',
    why: 'Faraday\'s law is a ceiling. More than that is mixed gas, wet or warm gas, a wrong count of cells, or a wrong meter.',
    source: 'Faraday\'s law, CODATA 2018; ± of the meters of a reading; 2 % for a claim: common practice, no source',
    on: ['claim', 'reading'],
    check(v, tell) {
        const stack = v.the('stack');
        const entry = stack && v.part.entries.get(`${stack.name}.hydrogen-rate`);
        const over = v.maybeQ('hydrogen-over-charge');
        if (!stack || !entry || !(over > PRINT) || (v.kind === 'reading' && !((v.result('hydrogen-over-charge')?.low ?? NaN) > 0))) return;
        const said = v.seen(`${stack.name}.current`);
        const current = said === said ? said : stack.q('current');
        tell({ at: entry.span, message: `${show(current, 'A')} through ${digits(stack.q('cells-total'))} cells can make at most ${show(v.maybeQ('hydrogen-most'), 'NL/h')} of hydrogen; ${show(v.seen(`${stack.name}.hydrogen-rate`, 'gas-flow'), 'NL/h')} is stated. Mixed, wet or warm gas, or plates counted for cells?` });
    },
});

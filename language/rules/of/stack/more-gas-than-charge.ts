import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'more-gas-than-charge',
    family: 'stack',
    severity: 'error',
    summary: 'More hydrogen is claimed or read than the charge can make.',
    why: 'Faraday\'s law is a ceiling. More than that is mixed gas, wet or warm gas, a wrong count of cells, or a wrong meter.',
    source: 'Faraday\'s law, CODATA 2018; 2 % for the reading: common practice, no source',
    on: ['claim', 'reading'],
    check(v, tell) {
        const stack = v.the('stack');
        const entry = stack && v.part.entries.get(`${stack.name}.hydrogen-rate`);
        const value = entry && tell.workings.amountOf(entry);
        if (!stack || !entry || !value) return;
        const said = v.part.entries.get(`${stack.name}.current`);
        const current = (said && tell.workings.amountOf(said)?.si) ?? stack.q('current');
        const most = current * stack.q('cells-total') / (2 * 96485.33212);
        const rate = tell.workings.asGas(value);
        if (!(rate > most * 1.02)) return;
        tell({ at: entry.span, message: `${show(current, 'A')} through ${digits(stack.q('cells-total'))} cells can make at most ${show(most, 'NL/h')} of hydrogen; ${show(rate, 'NL/h')} is stated. Mixed, wet or warm gas, or plates counted for cells?` });
    },
});

import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'lead-voltage-drop',
    family: 'wiring',
    severity: 'warning',
    summary: 'The leads lose more than 3 % of the stack\'s voltage.',
    why: 'The lost volts are heat in the cable, and gas that is not made.',
    source: '3 %: common practice, no source',
    on: 'leads',
    check(v, tell) {
        const drop = v.q('drop');
        const volts = v.the('stack')?.q('voltage') ?? NaN;
        if (v.yes('sensed') || !tell.exceeds(drop, 0.03 * volts, 'V', v, 'section')) return;
        const areas = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70];
        const wanted = v.num('section') * 1e6 * drop / (0.03 * volts);
        const next = areas.find(a => a >= wanted);
        tell({ at: v.at('section'), message: `The leads lose ${show(drop, 'V')} of ${show(volts, 'V')} (${digits(100 * drop / volts, 2)} %), ${show(v.q('loss'), 'W')} of heat; 3 % is usual.`, fixes: defined(next ? setValue(v, 'section', `${next} mm2`, `Use ${next} mm2`) : undefined) });
    },
});

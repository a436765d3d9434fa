import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'transformer-duty-not-continuous',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'A source made for short use is loaded for hours.',
    why: 'Its rating holds for a share of ten minutes only. Loaded for hours its insulation ages, and the insulation keeps ' +
        'the stack apart from the mains.',
    source: 'continuous current = rated current x square root of the duty; duty cycle as in IEC 60974-1, from memory',
    on: ['transformer', 'supply'],
    check(v, tell) {
        const duty = v.maybe('duty', 1);
        const rated = v.kind === 'transformer' ? v.maybeQ('rated-secondary-current') : v.maybe('rated-current');
        const drawn = v.kind === 'transformer' ? v.maybeQ('winding-current') : v.the('stack')?.maybeQ('current') ?? NaN;
        const hours = v.the('routine')?.maybe('hours') ?? NaN;
        const lasting = rated * Math.sqrt(duty);
        if (!(duty < 1) || !tell.exceeds(drawn, lasting, 'A', v, 'duty')) return;
        tell({
            at: v.at('duty'),
            message: `For hours it bears about ${show(lasting, 'A', 2)} (${show(rated, 'A')} x √${digits(duty, 2)}); ` +
                `${show(drawn, 'A', 2)} is drawn${hours > 0 ? `, ${digits(hours * 24, 2)} h a day` : ''}.`,
        });
    },
});

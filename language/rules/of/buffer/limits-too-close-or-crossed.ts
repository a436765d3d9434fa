import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'limits-too-close-or-crossed',
    family: 'buffer',
    severity: 'error',
    summary: 'The two points of a switch are crossed or meet.',
    why: 'It chatters, or never acts; what it drives starts and stops many times a minute.',
    source: 'topology',
    on: 'switch',
    check(v, tell) {
        const makes = v.maybe('makes.value');
        const breaks = v.maybe('breaks.value');
        const side = v.word('breaks.side') ?? '';
        if (makes !== makes || breaks !== breaks || side === v.word('makes.side')) return;
        const gap = side === 'above' ? breaks - makes : makes - breaks;
        if (gap <= 0) tell({ at: v.at('makes'), message: `${v.name} breaks ${side} one point and makes on the same stretch: its two points are crossed.` });
        else if (gap < 0.02 * Math.abs(breaks) && !/temperature/.test(v.controls.sensed(v) ?? '')) tell({ at: v.at('makes'), severity: 'warning', message: `The two points of ${v.name} lie ${digits(100 * gap / Math.abs(breaks), 2)} % apart: it will chatter.` });
    },
});

import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'supply-below-useful-voltage',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'The supply gives so few volts for each cell that hardly any current flows.',
    why: 'Between about 1.2 V and 1.7 V plain electrodes pass only a few milliamperes for each square centimetre.',
    source: '1.7 V: common practice, no source',
    under: ['supply-below-reversible'],
    on: 'stack',
    check(v, tell) {
        const open = v.maybeQ('source-open-voltage');
        const cells = v.num('cells');
        const each = open / cells;
        if (!(each >= v.maybeQ('reversible-voltage')) || /activated/.test(v.word('electrode') ?? '') || !tell.fallsShort(each, 1.7, 'V', v, 'cells')) return;
        tell({
            at: v.at('cells'),
            message: `${show(open, 'V')} over ${digits(cells)} cells is ${show(each, 'V')} each: plain electrodes pass only a few mA/cm2 below 1.7 V.`,
            fixes: defined(setValue(v, 'cells', String(Math.max(1, Math.floor(open / 2))), `Use ${Math.max(1, Math.floor(open / 2))} cells, about 2 V for each`)),
        });
    },
});

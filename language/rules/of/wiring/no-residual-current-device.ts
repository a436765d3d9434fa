import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';
import { notGiven } from '../../stage.js';

export default defineRule({
    name: 'no-residual-current-device',
    family: 'wiring',
    severity: 'error',
    summary: 'Mains apparatus near lye and water without a residual-current device.',
    why: 'It cuts the mains within milliseconds when current takes the way through a person.',
    source: 'IEC 60364-4-41, 415.1 (30 mA), as referred to',
    guardsLife: true,
    on: 'site',
    check(v, tell) {
        const mains = v.all('supply').some(s => !['converter'].includes(s.word('sort') ?? '')) || v.all('transformer').length > 0;
        if (!mains || !v.the('stack')) return;
        if (v.says('rcd') === 'none') tell({ at: v.at('rcd'), message: 'Mains beside lye and water, and no residual-current device: one of 30 mA belongs there, fitted by an electrician.' });
        else if (v.num('rcd') > 0.0301) tell({ at: v.at('rcd'), severity: 'warning', message: `A residual-current device of ${show(v.num('rcd'), 'mA')} guards against fire, not people; 30 mA is the limit for that.` });
        else if (notGiven(v, 'rcd')) tell.cannotCheck(v, 'rcd', 'what cuts the mains when somebody touches it');
    },
});

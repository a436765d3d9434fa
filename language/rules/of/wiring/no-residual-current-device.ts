import type { View } from '../../../quantities/view.js';
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
        if (!v.the('stack') || !usesMains(v)) return;
        if (v.says('rcd') === 'none') tell({ at: v.at('rcd'), message: 'Mains beside lye and water, and no residual-current device: one of 30 mA belongs there, fitted by an electrician.' });
        else if (v.num('rcd') > 0.0301) tell({ at: v.at('rcd'), severity: 'warning', message: `A residual-current device of ${show(v.num('rcd'), 'mA')} guards against fire, not people; 30 mA is the limit for that.` });
        else if (notGiven(v, 'rcd')) tell.cannotCheck(v, 'rcd', 'what cuts the mains when somebody touches it');
    },
});

/** V, above which alternating current is no longer extra-low: IEC 60449, from memory. */
const LOW = 50;
/** Something of the rig runs on the mains: what feeds the stack, or what stands beside it. */
function usesMains(v: View): boolean {
    return v.all('supply').some(s => s.word('sort') !== 'converter') || v.all('transformer').length > 0
        || v.all('charger').some(c => c.word('sort') === 'mains')
        || v.all('feed').some(f => f.word('voltage.sort') === 'AC' && f.maybe('voltage') > LOW)
        // Its plate tells the voltage at which it must stand, at the least.
        || v.all('compressor').some(c => c.maybe('power') / c.maybe('current') > LOW);
}

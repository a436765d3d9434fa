import { materials } from '../../../vocabulary/materials.js';
import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'earthed-coil-in-lye',
    family: 'heat',
    severity: 'error',
    summary: 'A metal coil that is joined to earth stands in the lye of a live stack.',
    why: 'Current leaves the stack through it: the coil corrodes, makes gas inside the wrong column, and the lye is no ' +
        'longer kept apart from earth.',
    source: 'stray-current electrolysis above the reversible voltage of 1.2 V',
    guardsLife: true,
    on: 'cooler',
    check(v, tell) {
        const material = v.word('material') ?? '';
        if (!materials.get(material)?.conducts || ['fan', 'fins', 'none'].includes(v.word('sort') ?? '')) return;
        const stack = v.the('stack');
        const volts = stack?.maybeQ('voltage', stack.maybeQ('source-open-voltage', 2 * stack.maybe('cells'))) ?? NaN;
        const earthed = v.yes('earthed') === true;
        // Mains water in metal is earth unless somebody says otherwise.
        if (!(volts > 1.2) || !(earthed || (v.word('water-side') === 'mains' && !v.said('earthed')))) return;
        const own = v.says('material') === 'stated';
        tell({
            at: v.at('material'), severity: earthed ? 'error' : 'warning',
            message: earthed
                ? `${v.name} is of ${material} and earthed, in lye of a stack of ${show(volts, 'V')}: current leaves through it, ` +
                    'and gas forms on it in the wrong place.'
                : `${v.name} is of ${material} and carries mains water, which joins it to earth unless its hoses are long and of ` +
                    'plastic: say earthed: no if they are.',
            fixes: own ? [{ title: 'Make it of PP', edits: [{ span: v.at('material'), text: 'PP' }], preferred: true }] : [],
        });
    },
});

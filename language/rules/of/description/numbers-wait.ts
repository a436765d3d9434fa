import { defineRule } from '../../define.js';
import { sourceParts } from '../../../quantities/source.js';

export default defineRule({
    name: 'numbers-wait',
    family: 'the description',
    severity: 'hint',
    summary: 'Volts, gas and heat of the stack cannot be worked out, because something that they need is not described.',
    why: 'Without numbers most rules have nothing to go by: a short list of findings then says little.',
    source: 'reading of the text',
    on: 'stack',
    check(v, tell) {
        const current = v.said('current');
        const lacking = [
            !current && !sourceParts(v).length && !v.all('charger').length && `what feeds it (a supply, or ${v.name}.current)`,
            v.says('cells') === 'silent' && !v.said('plates') && 'cells',
            v.says('wetted') === 'silent' && 'wetted',
        ].filter((x): x is string => !!x);
        const list = lacking.length > 1 ? `${lacking.slice(0, -1).join(', ')} and ${lacking.at(-1)}` : lacking[0];
        if (list) tell({ at: v.at(), message: `Volts, gas and heat wait for ${list}.` });
    },
});

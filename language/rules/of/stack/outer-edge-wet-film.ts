import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'outer-edge-wet-film',
    family: 'stack',
    severity: 'hint',
    summary: 'Lye can lie on the outer edges of the plates.',
    why: 'A film of lye over the edges has all the volts of the stack across it: it eats the edges and makes hydrogen and oxygen together, in the open room beside hoses and sparks.',
    source: 'common practice, no source',
    on: 'stack',
    check(v, tell) {
        const edges = v.says('outer-edges') === 'assumed' ? undefined : v.word('outer-edges');
        if (edges === 'painted') return;
        const drip = v.all('incident').find(r => r.names('covers').includes(v.name) && WEPT.test(r.given('what').facts.get('')?.text ?? ''));
        const tray = v.the('tray');
        if (!drip && (edges !== 'in-tray' || tray?.yes('drained'))) return;
        const volts = v.maybeQ('voltage');
        tell({
            at: edges ? v.at('outer-edges') : v.at(), severity: drip ? 'warning' : 'hint',
            message: `${drip ? `The stack has wept (${drip.name})` : 'The plates stand over a tray without a drain'}: a film of lye over their edges has ${volts > 0 ? show(volts, 'V', 2) : 'the volts of the stack'} across it and makes both gases in the room. ` +
                'Rinse and dry the edges, and paint them.',
            related: drip ? [{ span: drip.at('what'), message: 'told here' }] : [],
            fixes: defined(setValue(v, 'outer-edges', 'painted', 'Paint the edges')),
        });
    },
});

const WEPT = /\b(weep|weeps|wept|drip|drips|dripped|leak|leaks|leaked|creep|creeps|crept|wet edge|salt)\b/i;

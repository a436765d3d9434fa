import { digits, show } from '../../../units/format.js';
import { materials } from '../../../vocabulary/materials.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'metal-manifold-bridges-cells',
    family: 'stack',
    severity: 'error',
    summary: 'A shared channel of metal joins cells of different voltage: it works as an electrode itself.',
    why: 'Metal in lye between points more than about 1.5 V apart splits water on its own surface, and fills one channel ' +
        'with both gases.',
    source: 'reversible voltage, LeRoy et al. 1980; 100 mm of hose: common practice, no source',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        const name = v.word('manifold.material');
        const hose = v.maybe('port-hose', 0);
        const volts = v.maybeQ('voltage', v.maybeQ('source-open-voltage', 2 * v.maybe('cells')));
        if (!name || !materials.get(name)?.conducts || !(volts > 1.5) || hose >= 0.1) return;
        const own = v.says('manifold') === 'stated';
        tell({
            at: v.atSlot('manifold.material'), severity: hose > 0 ? 'warning' : 'error',
            message: `A channel of ${name} joins ${digits(v.maybe('cells'))} cells, ${show(volts, 'V')} from end to end: it makes both ` +
                'gases inside itself. ' +
                `${hose > 0 ? `${show(hose, 'mm')} of hose at each port lessens that; 100 mm is usual.` : 'Plastic, or 100 mm of hose at each port, keeps it out of the way.'}`,
            fixes: own
                ? [{ title: 'Make the channel of PP', edits: [{ span: v.atSlot('manifold.material'), text: 'PP' }], preferred: true }]
                : [],
        });
    },
});

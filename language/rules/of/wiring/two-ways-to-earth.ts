import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { materials } from '../../../vocabulary/materials.js';

/** V, reversible voltage above which stray current splits water: LeRoy et al. 1980, rounded down. */
const SPLITS = 1.2;

export default defineRule({
    name: 'two-ways-to-earth',
    family: 'wiring',
    severity: 'error',
    summary: 'A pole of the stack is tied to earth, and so is metal that stands in its lye.',
    why: 'The volts between that pole and the metal then drive current through the lye to earth: gas forms in the wrong place, metal is eaten, and no fuse sees it.',
    source: 'stray-current electrolysis above the reversible voltage of 1.2 V',
    guardsLife: true,
    under: ['earthed-coil-in-lye'],
    on: 'rig',
    check(v, tell) {
        const pole = v.word('dc-earthed');
        const unknown = notGiven(v, 'dc-earthed');
        if (!unknown && pole !== 'plus' && pole !== 'minus' && pole !== 'middle') return;
        const stack = v.the('stack');
        const volts = (stack?.maybeQ('voltage', stack.maybeQ('source-open-voltage')) ?? NaN) * (pole === 'middle' ? 0.5 : 1);
        if (!stack || !(volts > SPLITS)) return;
        const earthed = v.rows('bonded').map(r => r.get('')?.text ?? '');
        const wet = [...v.all('column'), ...v.all('cooler')].find(p => materials.get(p.word('material') ?? '')?.conducts && (p.yes('earthed') || earthed.some(n => n.includes(p.name))));
        if (!wet) return;
        if (unknown) {
            tell.cannotCheck(v, 'dc-earthed', `whether current runs through the lye to earth at ${wet.name}`);
            return;
        }
        tell({
            at: v.at('dc-earthed'),
            message: `The ${pole} of the stack is earthed, and so is ${wet.name} of ${wet.word('material')} in its lye: up to ${show(volts, 'V')} drive current through the lye to earth.`,
            related: [{ span: wet.at('material'), message: 'the other way to earth' }],
            fixes: defined(setValue(v, 'dc-earthed', 'none', 'Let the direct current float')),
        });
    },
});

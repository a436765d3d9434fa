import { defineRule } from '../../define.js';
import { materials } from '../../../vocabulary/materials.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'plastic-or-rubber-unfit',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'The material does not bear warm lye.',
    why: 'It cracks, swells or dissolves, and lets lye and gas out where nobody looks.',
    source: 'table of materials of this project; makers\' own tables decide',
    on: ['column', 'tube', 'cooler', 'scrubber', 'bubbler', 'seal', 'link'],
    check(v, tell) {
        const key = ['bubbler', 'scrubber', 'seal'].includes(v.kind) ? 'body.material' : 'material';
        const m = v.word(key);
        const bears = m ? materials.get(m)?.lyeUpToK : undefined;
        const wet = ['column', 'cooler', 'link'].includes(v.kind) || v.paths.mediaOf(v.name).has('lye');
        if (!wet || bears === undefined || /^(aluminium|zinc|galvanised|copper|brass|bronze)/.test(m!)) return;
        const hot = v.the('stack')?.maybe('max-temperature', 333.15) ?? 333.15;
        if (bears === 'never') tell({ at: v.atSlot(key), message: `Lye destroys ${m}.` });
        else if (bears < hot) tell({ at: v.atSlot(key), message: `${m} bears lye to about ${show(bears, '°C')}; the stack may reach ${show(hot, '°C')}.` });
    },
});

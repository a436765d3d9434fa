import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'vents-side-by-side',
    family: 'siting',
    severity: 'warning',
    summary: 'The hydrogen vent and the oxygen vent end side by side.',
    why: 'At their mouths the two gases meet again.',
    source: '1 m to 3 m, silent below 1 L/h: common practice, no source',
    guardsLife: true,
    on: 'vent',
    check(v, tell) {
        const media = v.paths.mediaOf(v.name);
        const gas = media.has('hydrogen') ? 'hydrogen' : media.has('oxygen') ? 'oxygen' : undefined;
        const rate = v.the('stack')?.maybeQ('hydrogen-rate-room') ?? NaN;
        if (!gas || rate < 0.001 / 3600) return;
        const others = v.all('vent').filter(o => v.paths.mediaOf(o.name).has(gas === 'hydrogen' ? 'oxygen' : 'hydrogen'));
        if (!others.length) return;
        const distance = v.maybe('distance');
        if (distance < 1) {
            tell({ at: v.at('distance'), message: `The ${gas} vent ends ${show(distance, 'm')} from that of the other gas; 1 m is the least, 3 m better.`, fixes: defined(setValue(v, 'distance', v.word('distance.from') || v.names('distance').length ? `3 m from ${v.names('distance')[0] ?? others[0].name}` : '3 m', 'Lead it 3 m away')) });
        } else if (distance !== distance && gas === 'hydrogen' && others.every(o => o.maybe('distance') !== o.maybe('distance'))) tell.cannotCheck(v, 'distance', 'whether the two vents are far enough apart');
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'fuse-overloaded',
    family: 'wiring',
    severity: 'warning',
    summary: 'A fuse carries more for hours than it is made for.',
    why: 'It blows in the middle of a run, or ages at the edge and heats its holder; the next one put in is then a larger one, and the cable has no guard.',
    source: 'four fifths of the rating for continuous load: common practice, no source',
    on: 'fuse',
    check(v, tell) {
        const share = v.q('load-share');
        if (!tell.exceeds(share, 0.9, '%', v, 'rating')) return;
        const current = share * v.num('rating');
        tell({
            at: v.at('rating'), severity: share > 1 ? 'error' : 'warning',
            message: `${show(current, 'A')} passes ${v.name} of ${show(v.num('rating'), 'A')}: ${share > 1 ? 'it blows' : 'for hours four fifths of the rating is usual'}.`,
        });
    },
});

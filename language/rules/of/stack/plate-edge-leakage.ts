import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'plate-edge-leakage',
    family: 'stack',
    severity: 'warning',
    summary: 'Current can go round the edges of the plates instead of through the cells.',
    why: 'In a common bath, or where the gasket hardly covers the edge, lye joins one cell to the next; that current makes ' +
        'no gas where it should.',
    source: '5 mm: common practice, no source',
    on: 'stack',
    check(v, tell) {
        const bath = v.word('layout') === 'common-bath';
        const cover = v.maybe('edge-cover');
        const cells = v.maybe('cells');
        if (bath && cells > 1) {
            tell({
                at: v.at('layout'),
                message: `In a common bath part of the current runs round ${digits(cells - 1)} plates through the lye: often a fifth to a ` +
                    'third of it makes no gas.',
            });
        } else if (v.said('edge-cover') && cover < 0.005) {
            tell({
                at: v.at('edge-cover'),
                message: `The gasket covers ${show(cover, 'mm')} of the edge; 5 mm is the least that keeps lye from joining the cells ` +
                    'round it.',
                fixes: defined(setValue(v, 'edge-cover', '8 mm', 'Cover 8 mm of the edge')),
            });
        }
    },
});

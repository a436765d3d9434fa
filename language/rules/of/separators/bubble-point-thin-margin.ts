import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'bubble-point-thin-margin',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'The separators hold less than twice what can stand across them.',
    why: 'They age, stretch and tear; a margin of two is little enough.',
    source: 'common practice, no source',
    under: ['bubble-point-below-head'],
    on: 'stack',
    check(v, tell) {
        const point = v.q('bubble-point');
        const worst = v.q('separator-head-worst');
        const separator = v.the('separator');
        const margin = separator?.said('bubble-pressure') ? 1.5 : 2;
        if (!separator) return; // speed only
        const key = separator.said('bubble-pressure') ? 'bubble-pressure' : 'largest-pore';
        if (!tell.exceeds(worst, point / margin, 'kPa', separator, key)) return;
        tell({ at: separator.at(key), message: `${show(worst, 'kPa')} can stand across separators that hold ${show(point, 'kPa')}: a margin of ${digits(point / worst, 2)}, ${margin} is wanted.` });
    },
});

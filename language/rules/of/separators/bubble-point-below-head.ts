import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'bubble-point-below-head',
    family: 'separators and purity',
    severity: 'error',
    summary: 'The difference of heads can push gas through the wet separators.',
    why: 'Above the bubble point gas runs straight through the pores into the other gas.',
    source: 'Young-Laplace with the surface tension of water (IAPWS), full wetting',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        const point = v.q('bubble-point');
        const worst = v.q('separator-head-worst');
        const separator = v.the('separator');
        if (point !== point && separator && v.all('column').length + v.all('bag').length > 0) tell.cannotCheck(separator, 'bubble-pressure', 'what the separators hold back');
        if (!(worst >= point) || !separator) return;
        const key = separator.said('bubble-pressure') ? 'bubble-pressure' : 'largest-pore';
        tell({ at: separator.at(key), message: `These separators let gas through at ${show(point, 'kPa')}; ${show(worst, 'kPa')} can stand across them.`, related: [{ span: v.at(), message: 'the stack' }] });
    },
});

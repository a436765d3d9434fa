import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'separator-not-clamped-all-round',
    family: 'separators and purity',
    severity: 'error',
    summary: 'The separator does not overlap its window, or is hardly clamped.',
    why: 'Gas goes round its edge however fine its pores are.',
    source: 'geometry; 3 mm: common practice, no source',
    on: 'separator',
    check(v, tell) {
        const stack = v.the('stack');
        const sheet = v.sizes('size');
        const window = stack?.sizes('wetted');
        if (sheet && window && (sheet[0] <= window[0] || sheet[1] <= window[1]) && !(sheet[0] > window[1] && sheet[1] > window[0])) {
            tell({ at: v.at('size'), message: `A sheet of ${digits(sheet[0] * 1000)} x ${digits(sheet[1] * 1000)} mm does not overlap a window of ${digits(window[0] * 1000)} x ${digits(window[1] * 1000)} mm: both gases meet at its edge.`, related: [{ span: stack!.at('wetted'), message: 'the window' }] });
        }
        const edge = v.maybe('clamped');
        if (tell.fallsShort(edge, 0.003, 'mm', v, 'clamped')) tell({ at: v.at('clamped'), severity: 'warning', message: `An edge of ${show(edge, 'mm')} is hardly clamped; 3 mm is the least, 8 mm usual.` });
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'gap-too-wide-or-narrow',
    family: 'stack',
    severity: 'hint',
    summary: 'The gap between plate and separator is wider or narrower than serves.',
    why: 'A wide one costs volts all the time; in a narrow one, unless the electrode lies on the separator, bubbles bridge it and the current crowds.',
    source: 'Ohm; 1.5 to 6 mm for plates with a gap: common practice, no source',
    on: 'stack',
    check(v, tell) {
        const gap = v.maybe('gap');
        const open = v.says('electrode') !== 'assumed' && v.word('electrode') === 'mesh';
        if (gap > 0.006) {
            const lost = v.maybeQ('ohmic-voltage') + v.maybeQ('bubble-voltage', 0);
            tell({ at: v.at('gap'), message: `${show(gap, 'mm')} on each side is wide${lost > 0 ? `: lye, bubbles and separator take ${show(lost, 'V', 2)} of every cell` : ''}. 2 to 4 mm lets the bubbles rise and takes far less.` });
        } else if (gap > 0.0002 && gap < 0.0015 && !open) {
            tell({ at: v.at('gap'), message: `${show(gap, 'mm')} on each side is narrow for a plate with a gap: bubbles bridge it and stay. 1.5 mm or more lets them rise; or press a mesh onto the separator (0 mm).` });
        }
    },
});

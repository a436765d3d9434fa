import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'equaliser-too-large-or-small',
    family: 'circulation and levels',
    severity: 'hint',
    summary: 'The link between the columns is so wide that it mixes the two lyes, or so narrow that it lags and clogs.',
    why: 'Lye that changes sides carries dissolved gas over; a clogged link lets one side run dry.',
    source: '3 to 10 mm: common practice, no source',
    on: 'link',
    check(v, tell) {
        const bore = v.maybe('bore');
        if (!v.said('bore') || !(bore > 0.01005 || bore < 0.00295)) return;
        tell({
            at: v.at('bore'),
            message: bore > 0.01
                ? `A link of ${show(bore, 'mm')} turns the two columns into one mixer; 10 mm is the most that is usual.`
                : `A link of ${show(bore, 'mm')} follows slowly and clogs; 3 mm is the least that is usual.`,
            fixes: defined(setValue(v, 'bore', '6 mm', 'Make the link 6 mm wide')),
        });
    },
});

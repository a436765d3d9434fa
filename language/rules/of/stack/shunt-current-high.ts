import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'shunt-current-high',
    family: 'stack',
    severity: 'warning',
    summary: 'Too much current bypasses the cells through the lye in ports and channels.',
    why: 'That current makes no gas where it should; it makes heat, corrosion, and gas in the channels.',
    source: 'exact ladder of ports and channels; the limits 10 % and 25 % are common practice, no source',
    under: ['supply-below-reversible', 'supply-below-useful-voltage'],
    on: 'stack',
    check(v, tell) {
        const share = v.q('bypass-share');
        if (!tell.exceeds(share, 0.1, '%', v, 'port')) return;
        const assumed = v.says('port') === 'assumed';
        tell({
            at: v.at('port'), severity: assumed ? 'hint' : share > 0.25 ? 'error' : 'warning',
            message: `${digits(100 * share, 2)} % of the current (${show(v.q('bypass-current'), 'A')}) bypasses the cells through the lye in ports and channels; 10 % is the usual limit.`,
        });
    },
});

import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'test-date-lapsed',
    family: 'storage',
    severity: 'error',
    summary: 'The periodic test of the cylinder has run out.',
    why: 'Rust and fatigue are found by that test and by nothing else.',
    source: '49 CFR 180.209 table 1 (5 to 12 years by sort and service); ADR P200 and EN ISO 18119, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const date = v.word('test-date');
        if (!date || !tell.today) {
            if (!date && v.paths.to(v.name, 'hydrogen').length) tell.cannotCheck(v, 'test-date', `whether ${v.name} is in test`);
            return;
        }
        const interval = v.maybe('test-interval');
        const from = Date.parse(date.length === 7 ? `${date}-01` : date);
        const seconds = (Date.parse(tell.today) - from) / 1000;
        const years = (s: number) => digits(s / 31557600, 2);
        if (interval === interval) {
            if (seconds > interval) tell({ at: v.at('test-date'), message: `Last tested ${date}, and the test holds ${years(interval)} years: it must not be filled until a test body has seen it.` });
        } else if (seconds > 15 * 31557600) tell({ at: v.at('test-date'), message: `Last tested ${date}, ${years(seconds)} years ago; no usual interval is that long.` });
        else if (seconds > 5 * 31557600) tell.cannotCheck(v, 'test-interval', `whether ${v.name} is still in test`);
    },
});

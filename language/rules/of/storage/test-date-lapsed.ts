import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'test-date-lapsed',
    family: 'storage',
    severity: 'error',
    summary: 'The periodic test of the cylinder has run out.',
    why: 'Rust and fatigue are found by that test and by nothing else.',
    source: 'EN ISO 18119 for seamless, EN 1803 and local law for others, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const date = v.given('test-date').facts.get('')?.text;
        if (!date || !tell.today) return;
        const years = v.maybe('test-interval', 10 * 31557600) / 31557600;
        const end = Date.parse(date.length === 7 ? `${date}-01` : date) + years * 31557600000;
        if (!(Date.parse(tell.today) > end)) return;
        tell({ at: v.at('test-date'), message: `Last tested ${date}; after ${digits(years, 2)} years it must not be filled until a test body has seen it.` });
    },
});

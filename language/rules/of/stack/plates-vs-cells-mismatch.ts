import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'plates-vs-cells-mismatch',
    family: 'stack',
    severity: 'error',
    summary: 'The count of plates does not fit the count of cells.',
    why: 'One off changes volts and gas by several per cent, and the stack by a whole frame.',
    source: 'topology',
    on: 'stack',
    check(v, tell) {
        const plates = v.num('plates');
        const cells = v.num('cells');
        const groups = v.maybe('groups', 1);
        const wanted = groups * (cells + 1);
        const shared = v.word('feed') === 'middle' ? wanted - (groups - 1) : wanted;
        if (plates !== plates || plates === wanted || plates === shared) return;
        tell({ at: v.at('plates'), message: `${digits(plates)} plates make ${digits(plates / groups - 1)} cells${groups > 1 ? ' in each group' : ''}, not ${digits(cells)}; ${digits(cells)} cells take ${digits(wanted)} plates.` });
    },
});

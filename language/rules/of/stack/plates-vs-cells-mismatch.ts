import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'plates-vs-cells-mismatch',
    family: 'stack',
    severity: 'error',
    summary: 'The count of plates does not fit the count of cells, or only the plates are counted.',
    why: 'One off changes volts and gas by several per cent, and the stack by a whole frame.',
    source: 'topology',
    on: 'stack',
    check(v, tell) {
        const plates = v.num('plates');
        const cells = v.num('cells');
        const groups = v.maybe('groups', 1);
        const wanted = groups * (cells + 1);
        const shared = v.word('feed') === 'middle' ? wanted - (groups - 1) : wanted;
        if (cells !== cells && plates > groups && plates % groups === 0 && !v.part.entries.get('cells')?.broken) {
            const each = `${digits(plates / groups - 1)}${groups > 1 ? ' per group' : ''}`;
            tell({ at: v.at('plates'), severity: 'hint', message: `${digits(plates)} plates make ${each} ${each === '1' ? 'cell' : 'cells'}: say so, and the volts can be worked out.`, fixes: defined(setValue(v, 'cells', each, `Write cells: ${each}`)) });
            return;
        }
        if (cells !== cells || plates !== plates || plates === wanted || plates === shared) return;
        tell({ at: v.at('plates'), message: `${digits(plates)} plates make ${digits(plates / groups - 1)} cells${groups > 1 ? ' in each group' : ''}, not ${digits(cells)}; ${digits(cells)} cells take ${digits(wanted)} plates.` });
    },
});

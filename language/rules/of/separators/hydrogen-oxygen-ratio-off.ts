import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'hydrogen-oxygen-ratio-off',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'Hydrogen and oxygen were read in another ratio than two to one.',
    why: 'Water gives two to one. What differs has leaked, gone through a separator, or rusts the steel: a check of tightness that costs nothing.',
    source: 'stoichiometry; 5 %: common practice, no source',
    on: 'reading',
    check(v, tell) {
        const stack = v.the('stack');
        const [h, o] = ['hydrogen-rate', 'oxygen-rate'].map(q => stack && v.part.entries.get(`${stack.name}.${q}`));
        if (!h || !o) return;
        const [hydrogen, oxygen] = [h, o].map(e => {
            const amount = tell.workings.amountOf(e);
            return amount ? tell.workings.asGas(amount) : NaN;
        });
        const ratio = hydrogen / oxygen;
        if (!(ratio < 1.9 || ratio > 2.1)) return;
        tell({
            at: h.span,
            message: `${digits(ratio, 3)} times as much hydrogen as oxygen was read; water gives 2. ` + (ratio < 2
                ? 'Hydrogen leaks out, or goes through a separator into the oxygen.'
                : 'Oxygen leaks out, goes through a separator into the hydrogen, or new steel still takes it up.'),
            related: [{ span: o.span, message: 'the oxygen' }],
        });
    },
});

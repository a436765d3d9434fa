import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';
import { sourceModel } from '../../../quantities/source.js';

export default defineRule({
    name: 'supply-far-above-stack',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'A source without a current limit gives far more volts than the cells take: only wire and lye hold the current.',
    why: 'Lye conducts better as it warms, so a stiff source feeds its own heating until something gives way.',
    source: '2.5 V a cell: common practice, no source',
    on: 'stack',
    check(v, tell) {
        const source = v.model(sourceModel);
        const cells = v.num('cells');
        const current = v.maybeQ('current');
        if (!source || source.limited) return;
        // The crest of a pulse tells nothing by itself: what is above the cells lasts a part of each period, and the winding takes it.
        const loaded = source.kind === 'pulses' ? v.maybeQ('voltage', source.open) : source.open - source.resistance * (current > 0 ? current : 0);
        if (!tell.exceeds(loaded, 2.5 * cells, 'V', v, 'cells')) return;
        const from = v.other(source.part);
        tell({
            at: from?.at(from.kind === 'transformer' ? 'secondary' : 'voltage') ?? v.at('cells'),
            message: `${show(loaded, 'V')} on ${digits(cells)} cells is ${show(loaded / cells, 'V')} each, and nothing limits the current${current > 0 ? `: about ${show(current, 'A')} would flow` : ''}.`,
            related: [{ span: v.at('cells'), message: 'the cells in series' }],
        });
    },
});

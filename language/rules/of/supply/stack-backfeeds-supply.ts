import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { insertAfter } from '../../fixes.js';

export default defineRule({
    name: 'stack-backfeeds-supply',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'The charged stack can push current back into a supply that is switched off.',
    why: 'Plates with their two gases act as a battery for minutes to hours. The backward current wears them, and can harm ' +
        'the supply.',
    source: '1.2 to 1.5 V for each cell at first, from memory',
    on: ['supply', 'panels'],
    check(v, tell) {
        if (v.all('diode').length || (v.kind === 'panels' && (v.the('supply') || v.the('battery')))) return;
        const sort = v.word('sort');
        const back = v.yes('back-feeds');
        if (back === false || !(v.kind === 'panels' || back === true || sort === 'battery-charger')) return;
        const stack = v.the('stack');
        const cells = stack?.num('cells') ?? NaN;
        if (!(cells > 0) || v.all('rectifier').length) return;
        const link = v.paths.from(v.name, 'current')[0];
        const current = stack!.maybeQ('current');
        const held = stack!.result('held-voltage')!;
        const rating = [5, 10, 15, 20, 30, 40, 60, 80, 100, 150, 200].find(a => a >= 1.5 * current);
        const declared = insertAfter(v, `diode blocking { rating: ${rating} A }`, '');
        const onPath = link && { span: { ...link.from.span, start: link.from.span.end }, text: ' -> blocking' };
        const free = !v.written.parts.has('blocking');
        tell({
            at: v.part.entries.has('back-feeds') ? v.at('back-feeds') : v.at(),
            message: `Switched off, ${digits(cells)} cells hold ${show(held.low, 'V', 2)} to ${show(held.high, 'V', 2)} at first and ` +
                `push current back into ${v.name}; no diode stands between.`,
            fixes: rating && declared && free
                ? [{ title: `Put a diode for ${rating} A between`, edits: [...(onPath ? [onPath] : []), ...declared.edits] }]
                : [],
        });
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'wrong-efficiency-basis',
    family: 'stack',
    severity: 'hint',
    summary: 'An efficiency is claimed on a basis that does not fit, or on that of the voltage alone.',
    why: 'By the higher heating value, the lower one and the reversible voltage the same stack shows three figures, up to a fifth apart.',
    source: '3.54 and 3.00 kWh/m³, CODATA Key Values',
    under: ['efficiency-over-100'],
    on: 'claim',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack) return;
        const basis = v.word('basis');
        for (const [key, own] of BASES) {
            const entry = v.part.entries.get(`${stack.name}.${key}`);
            const claimed = entry && tell.workings.amountOf(entry)?.si;
            if (!entry || !(claimed! > 0)) continue;
            if (basis && EFFICIENCIES.has(basis) && basis !== own) {
                tell({ at: v.at('basis'), message: `${entry.key} counts by ${NAMES[own]}, the claim says ${NAMES[basis]}: the same stack shows another figure there.` });
            } else if (own === 'voltage') {
                const [high, low] = [stack.maybeQ('efficiency-hhv'), stack.maybeQ('efficiency-lhv')];
                const ours = high > 0 && low > 0 ? ` This rig comes to ${show(stack.q('voltage-efficiency'), '%')} so counted, ${show(high, '%')} by the higher and ${show(low, '%')} by the lower heating value.` : '';
                tell({ at: entry.span, message: `${show(claimed!, '%')} is a ratio of volts, not of energy: bypass and heat are not in it.${ours}` });
            }
        }
    },
});

const BASES = [['efficiency-hhv', 'HHV'], ['efficiency-lhv', 'LHV'], ['voltage-efficiency', 'voltage']] as const;
const EFFICIENCIES: ReadonlySet<string> = new Set(BASES.map(([, basis]) => basis));
const NAMES: Readonly<Record<string, string>> = { HHV: 'the higher heating value', LHV: 'the lower heating value', voltage: 'the voltage alone' };

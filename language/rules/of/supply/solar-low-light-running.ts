import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';
import { stackGuards } from '../../guards.js';

export default defineRule({
    name: 'solar-low-light-running',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'The stack follows the sun down to currents at which the gases spoil each other.',
    why: 'What leaks through the separators stays the same while the gas that dilutes it shrinks. Each morning, each evening and under each cloud the stack runs there.',
    source: 'impurity as worked out; running far under load was part of a fatal tank burst (Gangneung 2019, from memory)',
    under: ['supply-below-reversible', 'supply-below-useful-voltage'],
    on: 'panels',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack || v.the('battery') || !v.paths.after(v.name, 'current').includes(stack.name)) return;
        const kept = ['bag', 'gasometer', 'compressor', 'cylinder'].some(kind => v.all(kind).length);
        const clean = stack.maybeQ('lowest-clean-current');
        const severity = kept ? 'warning' : 'hint';
        // By their power or light the current at which it stops is not known here.
        if (stackGuards(v, `${v.name}.power`, 'below').length) return;
        const guards = stackGuards(v, `${stack.name}.current`, 'below');
        const points = [...guards.map(g => g.at), ...v.all('supply').map(s => s.maybe('lowest'))].filter(a => a > 0);
        const lowest = Math.max(...points);
        const foul = clean > 0 ? `below about ${show(clean, 'A', 2)} more than 2 % of hydrogen is in the oxygen` : 'at low current hydrogen and oxygen spoil each other';
        if (!points.length) {
            tell({ at: v.at(), severity, message: `The stack follows the sun down to nothing, and ${foul}. Nothing stops it there.` });
        } else if (lowest < clean) {
            const guard = guards.find(g => g.at === lowest);
            tell({ at: guard?.view.at(guard.view.kind === 'switch' ? 'breaks' : 'trips') ?? v.all('supply').find(s => s.maybe('lowest') === lowest)!.at('lowest'), severity, message: `It is stopped only below ${show(lowest, 'A', 2)}, but ${foul}.` });
        }
    },
});

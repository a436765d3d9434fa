import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'supply-efficiency-left-out',
    family: 'electrical supply',
    severity: 'hint',
    summary: 'An energy figure counts the stack alone; the plug pays more.',
    why: 'Supply, diodes and leads take their share, and it is the plug that is paid for. Figures of whole rigs and of stacks cannot be compared.',
    source: 'definition',
    under: ['efficiency-over-100'],
    on: 'claim',
    check(v, tell) {
        const stack = v.the('stack');
        const energy = stack && v.part.entries.get(`${stack.name}.energy-per-volume`);
        if (!stack || !energy || v.part.entries.has(`${stack.name}.plug-energy-per-volume`)) return;
        const claimed = tell.workings.amountOf(energy)?.si ?? NaN;
        const factor = stack.maybeQ('plug-power') / stack.maybeQ('power');
        if (!(claimed > 0 && factor > 1.02)) return;
        tell({ at: energy.span, message: `This counts the stack alone. With supply, leads and diodes of this rig ${show(claimed, 'kWh/m3')} at the stack is ${show(claimed * factor, 'kWh/m3')} at the plug.` });
    },
});

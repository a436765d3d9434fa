import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'bubbles-carried-under',
    family: 'separators and purity',
    severity: 'hint',
    summary: 'The lye sinks so fast in the column that fine bubbles go back to the stack with it.',
    why: 'Gas that comes back fills the gaps, takes the drive of the circulation, and where both lyes meet it reaches the other side.',
    source: 'Stokes 1851 for the rise of a bubble of 0.2 mm; the size: from memory',
    on: 'column',
    check(v, tell) {
        if (!v.the('stack') || !v.said('bore')) return;
        const down = v.maybeQ('down-speed');
        if (!(down > FASTEST_OF_FEW)) return; // speed only
        const rise = v.maybeQ('fine-bubble-rise');
        if (!tell.exceeds(down, rise, 'mm/s', v, 'bore')) return;
        const shared = v.the('link')?.word('shared');
        const meet = shared === 'returns' || shared === 'pumped-loop';
        const bore = Math.ceil(v.num('bore') * Math.sqrt(down / rise) * 200) * 5;
        tell({
            at: v.at('bore'), severity: meet ? 'warning' : 'hint',
            message: `The lye sinks at ${show(down, 'mm/s', 2)} here; bubbles of 0.2 mm rise at ${show(rise, 'mm/s', 2)} and go down with it${meet ? ' to the other side' : ''}. ` +
                `${bore <= WIDEST ? `From ${bore} mm of bore on they rise. ` : ''}Less flow, or a baffle before the return, does as well.`,
            fixes: defined(bore <= WIDEST ? setValue(v, 'bore', `${bore} mm`, `Make ${v.name} ${bore} mm wide`) : undefined),
        });
    },
});

/** m/s, slower than any bubble worth telling of: asked first, since the rise needs the warm lye. */
const FASTEST_OF_FEW = 0.005;
/** mm, the widest column that a maker finds as pipe. */
const WIDEST = 200;

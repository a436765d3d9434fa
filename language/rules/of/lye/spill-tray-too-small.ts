import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { append, defined, setValue } from '../../fixes.js';
import { freeName } from '../../path-fixes.js';

/** Volume of a tray over that of the lye that can run into it. Common practice (secondary containment), no source. */
const OVER = 1.1;

export default defineRule({
    name: 'spill-tray-too-small',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Nothing catches the lye when a hose or a joint gives way, or it does not hold all of it.',
    why: 'Cells and columns are joined: by one leak nearly all of the lye runs out. On a floor it goes under boards, onto wires and feet.',
    source: '110 % of what can run out: common practice, no source',
    on: 'lye',
    check(v, tell) {
        const trays = v.all('tray');
        const fill = v.maybe('fill');
        const volume = fill === fill ? fill : v.the('stack')?.maybeQ('lye-needed') ?? NaN;
        const wanted = `${digits(Math.ceil(OVER * volume * 1e4 - 1e-6) / 10, 3)} L`;
        if (!trays.length) {
            // A hint once it is built, since a tray is often so plain that nobody thinks of writing it.
            if (!tell.reached('built') || !v.the('stack')) return;
            tell({
                at: v.at('fill'), severity: 'hint', message: `No tray is named: by one leak ${volume > 0 ? `most of ${show(volume, 'L')} of lye` : 'most of the lye'} comes out.`,
                fixes: volume > 0 ? [append(v, `tray${freeName(v, 'tray') === 'tray' ? '' : ` ${freeName(v, 'tray')}`} { volume: ${wanted} }`, `Put a tray of ${wanted} under it`)] : [],
            });
            return;
        }
        // Only what is told of both can be compared: one tray of unknown size makes the sum unknown.
        const holds = trays.reduce((sum, t) => sum + t.maybe('volume'), 0);
        if (!tell.fallsShort(holds, 0.999 * OVER * fill, 'L', trays[0], 'volume')) return;
        tell({
            at: trays[0].at('volume'), related: [{ span: v.at('fill'), message: 'what can run out' }],
            message: `${trays.length > 1 ? 'The trays hold' : `${trays[0].name} holds`} ${show(holds, 'L')}; ${show(fill, 'L')} of lye can run out, and ${wanted} is wanted for it.`,
            fixes: defined(trays.length === 1 ? setValue(trays[0], 'volume', wanted, `Make it ${wanted}`) : undefined),
        });
    },
});

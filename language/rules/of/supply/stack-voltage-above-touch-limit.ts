import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'stack-voltage-above-touch-limit',
    family: 'electrical supply',
    severity: 'error',
    summary: 'The stack has more volts than bare wet parts may have within reach.',
    why: 'Skin wet with lye conducts well; a shock that would tickle through dry hands can stop a heart.',
    source: 'IEC 60364-4-41, 414.4.5 (60 V direct current in dry places, 30 V elsewhere, separated source), as quoted; 120 V ceiling IEC 61140, from memory',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        const open = v.maybeQ('source-open-voltage');
        const volts = Math.max(open === open ? open : 0, v.maybeQ('voltage', 0));
        const cover = v.word('cover');
        const covered = cover === 'fixed' || cover === 'interlocked';
        const at = v.part.entries.has('cover') ? v.at('cover') : v.at('cells');
        if (tell.exceeds(volts, 120, 'V', v, 'cells')) tell({ at, message: `${show(volts, 'V')} is above 120 V, the ceiling for extra-low direct voltage: this needs the protection of a mains circuit.` });
        else if (!covered && tell.exceeds(volts, 60, 'V', v, 'cells')) tell({ at, message: `${show(volts, 'V')} on bare wet plates is above 60 V; a fixed or interlocked cover is missing.`, fixes: defined(setValue(v, 'cover', 'interlocked', 'Plan an interlocked cover')) });
        else if (!covered && tell.exceeds(volts, 30, 'V', v, 'cells')) tell({ at, severity: 'warning', message: `${show(volts, 'V')} on bare wet plates is above 30 V, the limit outside dry places; a cover is missing.`, fixes: defined(setValue(v, 'cover', 'fixed', 'Plan a fixed cover')) });
    },
});

import { defineRule } from '../../define.js';
import { isIndoors, stores } from '../../place.js';
import { notGiven } from '../../stage.js';
import { show } from '../../../units/format.js';

/** m under the highest point. Common practice, no source. */
const HIGH_ZONE = 0.5;

export default defineRule({
    name: 'ordinary-fitting-high-up',
    family: 'wiring',
    severity: 'warning',
    summary: 'A lamp, heater, socket or motor of the ordinary sort hangs where hydrogen gathers.',
    why: 'Leaked hydrogen is first at the highest point, and there a switch, a starter or a hot lamp waits for it.',
    source: 'zones: IEC 60079-10-1, from memory; upper 0.5 m: common practice, no source',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        const place = v.word('place');
        if (!place || place === 'outdoors' || !v.the('stack')) return;
        if (notGiven(v, 'high-zone-fittings') && isIndoors(v) === true && stores(v).length) tell.cannotCheck(v, 'high-zone-fittings', 'whether something that sparks hangs where hydrogen gathers');
        const entry = v.part.entries.get('high-zone-fittings');
        const top = v.maybe('high-point');
        for (const row of v.rows('high-zone-fittings')) {
            const what = row.get('');
            const text = what?.text ?? what?.word ?? '';
            const height = row.get('height')?.number ?? NaN;
            if (!entry || !what || /\b(Ex|ATEX|IIC|IECEx)\b/.test(text) || height < top - HIGH_ZONE - 0.001) continue;
            const from = top - height;
            tell({
                at: { ...entry.span, start: entry.span.start + what.start, end: entry.span.start + (row.get('height')?.end ?? what.end) }, severity: place === 'open-shelter' ? 'hint' : 'warning',
                message: `${text} hangs ${from >= 0 ? `${show(from, 'm', 2)} under the highest point` : 'high up'}, where hydrogen gathers first; the upper ${show(HIGH_ZONE, 'm')} is for fittings of group IIC.`,
            });
        }
    },
});

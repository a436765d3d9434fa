import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

/** m. Common practice, no source. */
const NEAR = 1;

export default defineRule({
    name: 'loose-joint-near-gas',
    family: 'wiring',
    severity: 'warning',
    summary: 'The leads hang on clips or plugs that can slip off near gas.',
    why: 'A clip that slips while the current flows draws an arc, and beside a bubbler, vent or balloon there may be something to light.',
    source: '1 m: common practice, no source',
    guardsLife: true,
    on: 'leads',
    check(v, tell) {
        const ends = v.word('ends');
        if ((ends !== 'clip' && ends !== 'plug') || !v.the('stack')) return;
        const distance = v.maybe('distance-to-gas');
        if (!(distance < NEAR) && (ends === 'plug' || distance >= NEAR)) return;
        tell({
            at: v.at(distance < NEAR ? 'distance-to-gas' : 'ends'), severity: distance < NEAR ? 'warning' : 'hint',
            message: distance < NEAR ? `A ${ends} of ${v.name} sits ${show(distance, 'm')} from gas; what can slip off under current belongs ${show(NEAR, 'm')} away.`
                : `${v.name} hang on clips: one that slips under current draws an arc. How far is it to the nearest bubbler, vent or balloon?`,
            fixes: defined(setValue(v, 'ends', 'lug', 'Plan bolted lugs')),
        });
    },
});

import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { stackGuards } from '../../guards.js';

/** K by which a trip may lie above what the stack bears: how far a usual sensor is off. Common practice, no source. */
const OFF = 3;

export default defineRule({
    name: 'trip-above-limit',
    family: 'controls',
    severity: 'warning',
    summary: 'What stops the stack when it is hot acts only above what the stack bears.',
    why: 'It looks like a guard on every drawing, and the frames have softened before it speaks.',
    source: 'the limit that the text itself states; 3 K for the sensor: common practice, no source',
    from: 'drawn',
    under: ['no-over-temperature-trip', 'stack-overheats', 'set-point-out-of-reach'],
    on: 'stack',
    check(v, tell) {
        const limit = v.maybe('max-temperature');
        if (!v.said('max-temperature') || limit !== limit) return;
        const guards = stackGuards(v, `${v.name}.temperature`, 'above').filter(g => g.at === g.at);
        // Where one acts in time, another above it is a second line.
        if (!guards.length || guards.some(g => g.at <= limit + OFF)) return;
        const lowest = guards.reduce((a, b) => (b.at < a.at ? b : a)).view;
        const key = lowest.word('trips.side') ? 'trips' : 'breaks';
        const least = Math.floor(limit - 273.15);
        tell({
            at: lowest.at(key), message: `${lowest.name} acts at ${show(lowest.maybe(`${key}.value`), '°C', 3)}; ${v.name} bears ${show(limit, '°C', 3)}.`,
            related: [{ span: v.at('max-temperature'), message: 'what it bears' }], fixes: defined(setValue(lowest, key, `above ${least} °C`, `Let it act at ${least} °C`)),
        });
    },
});

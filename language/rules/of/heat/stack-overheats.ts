import type { View } from '../../../quantities/view.js';
import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { stackGuards } from '../../guards.js';

/** Thermal margin below which the edge is told, as a share: the losses are known to ± 30 %. */
const THIN = 0.3;
/** K over the room below which the margin is never thin: the current of cells doubles within 15 K at most. */
const LEAST_RISE = 15;
/** How a stack got so hot, where warmth feeds itself; nothing where it simply makes more heat than it can lose. */
function tips(v: View, room: number): string {
    const edge = v.maybeQ('runaway-room');
    return edge < room ? ` (warmth feeds itself: from about ${show(v.maybeQ('runaway-current'), 'A', 2)} on the heat outgrows the losses, until vapour carries it off)` : '';
}

export default defineRule({
    name: 'stack-overheats',
    family: 'heat',
    severity: 'error',
    summary: 'On the hottest day the stack settles above what its weakest wetted part bears.',
    why: 'Plastic softens, gaskets let go, mist grows, and hot lye comes out.',
    source: 'heat balance: LeRoy 1980, Churchill & Chu 1975, ± 30 % of the rise; 70 °C for improvised plastics: common ' +
        'practice, no source',
    on: 'stack',
    check(v, tell) {
        const hot = v.result('steady-temperature')!;
        const limit = v.num('max-temperature');
        const room = v.the('site')?.maybe('hottest') ?? 313.15;
        if (!tell.exceeds(hot.value, Math.min(limit, 343.15), '°C', v, 'max-temperature')) {
            // Warmth feeds itself only after a rise in which the current has about doubled: cooler stacks need not be asked.
            const margin = hot.value > room + LEAST_RISE ? v.maybeQ('thermal-margin') : 1;
            const edge = margin < THIN ? v.maybeQ('runaway-room') : NaN;
            if (edge === edge) {
                tell({
                    at: v.at(), severity: 'warning',
                    message: `On the hottest day it settles at about ${show(hot.value, '°C', 2)}, but near the edge: nothing limits the current, and ` +
                        `in a room above about ${show(edge, '°C', 2)} the heat grows faster than it is led away. A current limit below ` +
                        `${show(v.maybeQ('runaway-current'), 'A', 2)} keeps it from running away.`,
                });
            }
            return;
        }
        const assumed = v.says('max-temperature') === 'assumed';
        const above = hot.value > limit;
        const runsAway = hot.remarks.some(r => /No steady/.test(r));
        const at = assumed ? v.at() : v.at('max-temperature');
        const early = !tell.reached('drawn');
        const settles = runsAway
            ? `On the hottest day it finds no steady temperature below boiling${tips(v, room)}`
            : `On the hottest day it settles at about ${show(hot.value, '°C', 2)}${tips(v, room)}`;
        const than = above ? `${show(limit, '°C', 2)} is allowed${assumed ? ' (assumed)' : ''}` : '70 °C is warm for home-made joints';
        const guard = stackGuards(v, `${v.name}.temperature`, 'above').find(g => g.at <= limit + 0.5);
        if (guard) {
            if (above) {
                tell({
                    at,
                    severity: 'hint',
                    message: `${settles}; ${guard.view.name} stops it at ${show(guard.at, '°C', 2)}. Expect pauses on warm days.`,
                });
            }
            return;
        }
        const supply = v.the('supply');
        const current = v.maybeQ('current-hot');
        // A straight line to the room, a tenth less because surfaces that are less warm lose less for each kelvin.
        const allowed = Math.floor(2 * 0.9 * current * (limit - room) / (hot.value - room)) / 2;
        const less = above && supply?.said('current-limit') && allowed >= 1
            ? setValue(supply, 'current-limit', `${allowed} A`, `Limit the current to ${allowed} A`)
            : undefined;
        tell({
            at,
            // It may stay below, within its bounds: these are asked for last, since they cost most.
            severity: early ? 'hint' : !above || assumed || (!runsAway && hot.low <= Math.min(limit, 343.15)) ? 'warning' : 'error',
            message: `${settles}; ${than}.`,
            fixes: defined(less),
        });
    },
});

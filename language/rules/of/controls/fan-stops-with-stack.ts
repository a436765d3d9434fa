import { extracts } from '../../../quantities/surroundings.js';
import { defineRule } from '../../define.js';
import { isIndoors } from '../../place.js';

export default defineRule({
    name: 'fan-stops-with-stack',
    family: 'controls',
    severity: 'warning',
    summary: 'What trips the stack stops the fan of the room as well.',
    why: 'The gas that made it trip is in the room then, the lye goes on giving off gas for a while, and now nothing carries it out.',
    source: 'ventilation stays on after a trip: hydrogen best-practice pages (h2tools.org); 10 min: common practice, no source',
    guardsLife: true,
    on: 'fan',
    check(v, tell) {
        if (!extracts(v) || isIndoors(v) !== true) return;
        const own = v.controls.stoppers(v.name);
        const stack = v.controls.stackStoppers();
        // A timer between them lets the fan run on.
        if ([...own].some(n => v.other(n)?.kind === 'timer' && v.other(n)!.word('sort') === 'off-delay')) return;
        // Stop buttons have a rule of their own; what senses the fan itself may stop it.
        const trips = [...own].filter(n => stack.has(n) && ['trip', 'detector', 'analyser'].includes(v.other(n)?.kind ?? '') && v.controls.sensed(v.other(n)!)?.split('.')[0] !== v.name);
        if (!trips.length) return;
        const worst = trips.find(n => v.other(n)!.kind === 'detector') ?? trips[0];
        tell({
            at: v.at(v.said('needs') ? 'needs' : 'stopped-by'), severity: v.other(worst)!.kind === 'detector' ? 'error' : 'warning', related: [{ span: v.other(worst)!.at(), message: 'stops both' }],
            message: v.other(worst)!.kind === 'detector'
                ? `When ${worst} smells gas, it stops ${v.name} as well: the gas stays in the room.`
                : `When ${worst} trips, ${v.name} stops with the stack: what the lye still gives off stays in the room. Let it run on for 10 min or more.`,
        });
    },
});

import { gasOf } from '../../../quantities/heads.js';
import { duration, show } from '../../../units/format.js';
import { WATER_DENSITY } from '../../../quantities/surroundings.js';
import { defineRule } from '../../define.js';

/** s between two looks at a bubbler where nothing is planned, and the share of the gas room that may fill until then. Common practice, no source. */
const LOOK = 86400;
const ROOM_LEFT = 0.5;

export default defineRule({
    name: 'bubbler-level-drifts',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'The bubbler runs dry, or fills up, between one day and the next.',
    why: 'Dry gas carries its water off and it stops no flame any more. Wet gas drops water into it: the head of its side climbs, and in the end it spits.',
    source: 'vapour balance, IAPWS, Balej 1985; a look each day: common practice, no source',
    on: 'bubbler',
    check(v, tell) {
        if (!v.said('water') || v.word('level-shown') === 'switch') return;
        const daily = v.the('routine')?.maybe('hours') ?? NaN;
        const gas = gasOf(v);
        const running = LOOK * daily;
        // The last part before it that dries or wets the gas decides.
        const stack = v.the('stack');
        const way = stack && gas && v.paths.route(stack.name, v.name, gas);
        const dry = way?.slice(1, -1).reverse().map(n => v.other(n)?.kind).find(k => k === 'dryer' || k === 'bubbler' || k === 'scrubber') === 'dryer';
        if (dry) {
            const lasts = v.maybeQ('drying-time');
            if (lasts < running) tell({ at: v.at('water'), message: `Dry gas carries the water of ${v.name} off down to its least depth within ${duration(lasts)} of running; a day has ${duration(running)} of it.` });
            return;
        }
        const gained = v.maybeQ('water-caught') / WATER_DENSITY;
        const room = ROOM_LEFT * v.maybe('body.headspace');
        if (gained * running > room) {
            tell({
                at: v.atSlot('body.headspace'), severity: 'hint',
                message: `${show(gained, 'mL/h', 2)} of water drop out of the ${gas} into ${v.name}: half of the room over its liquid is full after ${duration(room / gained)} of running; a day has ${duration(running)} of it.`,
            });
        }
    },
});

/** What a run watches: the points of the control lines, what may hurt, and what is worth telling. Each is below zero until it happens. */
import { LOWER_LIMIT } from '../physics/ventilation.js';
import { show } from '../units/format.js';
import type { ControlLines, ControlState } from './control-lines.js';
import type { Draw, Plant } from './plant.js';
import { at, type WatchedOf } from './states.js';
import { nameOfCause } from './tell.js';

/** Pa below the air around it at which a low side counts as drawn empty. Common practice, no source. */
const DRAWN_EMPTY = -200;
/** Hydrogen in the room's air that counts as a danger: a quarter of what can burn. */
const ROOM_LIMIT = LOWER_LIMIT / 4;
/** Oxygen in the room's air that counts as a danger: limit as used by gas industry bodies. */
const ROOM_OXYGEN = 0.235;
/** Of the other gas in hydrogen or oxygen, mol/mol: what can burn begins near it. Common practice, no source: electrolysis plants trip at half of it. */
const MIXED = 0.04;
/** Pressure over the rating that a vessel may reach while one relief blows [asme-viii]; beyond it it is a hazard. */
const OVER_RATING = 1.1;
/** Pressure under its set point at which a relief valve shuts again, as a share. From memory: seven to ten hundredths is usual. */
export const RESEATS = 0.9;
/** Pa gauge at which nothing more can be drawn from a store. Own choice: the air's own pressure, nearly. */
const EMPTY = 500;
/** Of its own pressure, what a bag still presses with when a flame dies. Own choice. */
const DIES = 0.2;
/** K, lye that boils in a rig open to the air. */
const BOILS = 373.15;

/** Each hazard by its name, as the reference tells it. */
export const hazards = {
    'bag-over-rating': 'A bag at the pressure that it bears.',
    'drawn-empty': 'A low side drawn 0.2 kPa under the air around it, which comes in wherever it can.',
    'air-stored': 'Air pressed into the store through a bag that has burst.',
    'oxygen-in-hydrogen': 'Four parts of oxygen in a hundred of the hydrogen, as it leaves the stack, in the bag or in the store.',
    'hydrogen-in-oxygen': 'Four parts of hydrogen in a hundred of the oxygen.',
    'cylinder-over-rating': 'A cylinder a tenth over its rating.',
    'too-hot': 'Lye at the highest temperature that the stack bears, or at 100 °C.',
    'port-dry': 'A level down to the return port of its column.',
    'lye-carried': 'Lye up at the lid of a column: it leaves with the gas, into the line and what stands on it.',
    'link-bare': 'A level down to the mouth of the link: the gas of one side bubbles through it to the other.',
    'separators-pass': 'More between both sides than the wet separators hold.',
    'room-hydrogen': 'A quarter of what can burn in the air of the room, evenly mixed.',
    'ceiling-hydrogen': 'A quarter of what can burn in the upper third of the room.',
    'room-oxygen': 'Oxygen in the air of the room at 23.5 %: cloth and hair burn fiercely.',
    'held-motor': 'A compressor that stands still against more than it starts against.',
} as const;
export interface Hazard {
    /** s */
    readonly t: number;
    readonly name: keyof typeof hazards;
    /** The part that it befalls. */
    readonly part: string;
    readonly words: string;
}
export interface Watch {
    readonly value: WatchedOf;
    /** In words; worked out when it happens. */
    readonly tells: (() => string) | undefined;
    /** Told even where no contact moves by it. */
    readonly always?: boolean;
    /** Parts that gas passes by it. */
    readonly through?: readonly string[];
    /** The seal that blows by it. */
    readonly seal?: string;
    /** Nothing more can be drawn by it. */
    readonly ends?: boolean;
    readonly hazard?: { readonly name: Hazard['name']; readonly part: string; readonly words: () => string };
    /** What a part does by itself: fails so, or (undefined) is well again. */
    readonly becomes?: { readonly failure: string | undefined };
    readonly parts: readonly string[];
}
/** What a stretch begins with, for watches that hang on it. */
export interface Ahead {
    readonly state: ControlState;
    readonly draw: Draw | undefined;
    /** Hydrogen that the stack makes now, mol/s: purity counts only then. */
    readonly made: number;
    /** K of the lye when the stack stopped; undefined while it runs. */
    readonly stoppedAt: number | undefined;
}

export function watchesOf(plant: Plant, lines: ControlLines, { state, draw, made, stoppedAt }: Ahead): Watch[] {
    const out: Watch[] = lines.watched(state).map(({ device, point, limit, rises, of }) => {
        const sign = rises ? 1 : -1;
        const sensor = plant.sensor(of, device.view);
        return {
            value: m => {
                const value = sensor(m);
                return value === undefined ? -1 : sign * (value - limit);
            },
            tells: () => nameOfCause([device.name], device, point), parts: [device.name],
        };
    });
    const hazard = (name: Hazard['name'], part: string, words: () => string, value: WatchedOf) => out.push({ value, tells: undefined, hazard: { name, part, words }, parts: [part] });
    const { bag, store, sides, stack, room, dryer } = plant;
    for (const { part, failure, value, tells } of plant.feeding.watches(state)) out.push({ value, tells: () => tells, always: true, becomes: { failure }, parts: [part] });
    if (bag) {
        const { view } = bag;
        const rating = view.kind === 'bag' ? view.maybe('rating') : NaN;
        if (rating === rating) hazard('bag-over-rating', view.name, () => `${view.name} is stretched to ${show(rating, 'kPa')}, all that it bears`, m => bag.pressure(m) - rating);
        hazard('drawn-empty', view.name, () => `${view.name} is drawn empty: ${show(-DRAWN_EMPTY, 'kPa')} below the air, which comes in wherever it can`, m => DRAWN_EMPTY - bag.pressure(m));
        hazard('oxygen-in-hydrogen', view.name, () => `the gas in ${view.name} holds ${show(MIXED, '%')} oxygen: it can burn without air`, m => bag.mixture(m.x).oxygen - MIXED);
        if (draw?.from === 'bag' && bag.own > 0) out.push({ value: m => DIES * bag.own - bag.pressure(m), tells: () => 'the bag lies flat: the flame dies', ends: true, always: true, parts: [view.name] });
        if (bag.overflow) out.push({ value: m => bag.overfull(m), tells: () => `${view.name} stands at its top: gas leaves under its rim, ${bag.overflow === 'room' ? 'into the room' : 'outdoors'}`, always: true, parts: [view.name] });
        const opens = bag.opensAt(state);
        if (opens) out.push({ value: m => bag.pressure(m) - opens.head, tells: () => `${view.name} is full: gas leaves through ${opens.seal ?? 'its way out'}`, always: true, seal: opens.seal, through: opens.through, parts: [view.name] });
    }
    if (store) {
        const { view, rating } = store;
        if (rating > 0) hazard('cylinder-over-rating', view.name, () => `${view.name} stands at ${show(OVER_RATING * rating, 'bar')}, a tenth over its rating`, m => store.gauge(m) - OVER_RATING * rating);
        hazard('oxygen-in-hydrogen', view.name, () => `the gas in ${view.name} holds ${show(MIXED, '%')} oxygen: a spark inside it would burst it`, m => store.mixture(m).oxygen - MIXED);
        if (draw?.from === 'store') out.push({ value: m => EMPTY - store.gauge(m), tells: () => 'the store is empty: nothing more can be drawn', ends: true, always: true, parts: [view.name] });
        for (const r of store.reliefs) {
            const failed = state.failed.get(r.name);
            if (failed !== undefined && stuckReliefs.has(failed)) continue;
            out.push(store.open.has(r.name) ? { value: m => RESEATS * r.set - store.gauge(m), tells: () => '', parts: [r.name] } : { value: m => store.gauge(m) - r.set, tells: () => '', parts: [r.name] });
        }
    }
    for (const value of plant.pump?.line.watches() ?? []) out.push({ value, tells: () => '', parts: [plant.pump!.view.name] });
    if (dryer?.full) out.push({ value: dryer.full, tells: () => `${dryer.view.name} has taken up what it should: its desiccant wants changing`, always: true, parts: [dryer.view.name] });
    const most = stack.maybe('max-temperature');
    const limit = Math.min(most === most ? most : BOILS, BOILS);
    hazard('too-hot', stack.name, () => `the lye is at ${show(limit, '°C')}${limit < BOILS ? ', all that the stack bears' : ' and boils'}`, m => m.x[at.lye] - limit);
    for (const c of sides.columns) {
        const port = c.view.maybe('return-port');
        if (port === port) hazard('port-dry', c.view.name, () => `the lye in ${c.view.name} is down to its return port: gas goes down with it`, m => c.level - port - plant.level(c, m));
        const lid = c.view.maybe('height');
        if (lid > c.level) hazard('lye-carried', c.view.name, () => `the lye in ${c.view.name} is up at its lid and leaves with the gas`, m => plant.level(c, m) - lid);
        const mouth = sides.linkMouth;
        if (mouth > 0 && sides.linked(state)) hazard('link-bare', c.view.name, () => `the lye in ${c.view.name} is down to the mouth of the link: its gas goes through to the other side`, m => c.level - mouth - plant.level(c, m));
    }
    if (plant.holds < Infinity) hazard('separators-pass', stack.name, () => `the separators are pressed by ${show(plant.holds, 'kPa')}: gas breaks through them`, m => Math.abs(sides.difference(m)) - plant.holds);
    // What comes out at the start, at little current, is as impure as the numbers at rest tell of low load; that is for the rules.
    if (made > 0) {
        hazard('oxygen-in-hydrogen', stack.name, () => `the hydrogen leaves the stack with ${show(MIXED, '%')} oxygen in it`, m => (sides.impurity('hydrogen', m, plant.made(m)) ?? 0) - MIXED);
        hazard('hydrogen-in-oxygen', stack.name, () => `the oxygen leaves the stack with ${show(MIXED, '%')} hydrogen in it`, m => (sides.impurity('oxygen', m, plant.made(m)) ?? 0) - MIXED);
    }
    if (stoppedAt !== undefined) for (const { part, value } of sides.drawsBack(stoppedAt, state)) out.push({ value, tells: () => `the gas before ${part} has cooled and shrunk: its liquid is drawn back`, always: true, parts: [part] });
    if (room) {
        hazard('ceiling-hydrogen', 'site', () => `the air under the ceiling holds ${show(ROOM_LIMIT, '%')} hydrogen`, m => room.above(m) - ROOM_LIMIT);
        hazard('room-hydrogen', 'site', () => `the air of the room holds ${show(ROOM_LIMIT, '%')} hydrogen, evenly mixed; at the ceiling it is more`, m => room.share(m) - ROOM_LIMIT);
        hazard('room-oxygen', 'site', () => `the air of the room holds ${show(ROOM_OXYGEN, '%')} oxygen: cloth and hair burn fiercely in it`, m => room.oxygen(m) - ROOM_OXYGEN);
    }
    return out;
}
/** Reliefs that no pressure moves any more. */
export const stuckReliefs = new Set(['sticks shut', 'sticks open', 'outlet blocked']);

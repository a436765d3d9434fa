/** How often parts are usually tried that can fail without a sign, and how. Common practice, no source. */
export interface Trial {
    /** 'month', '6 months' */
    readonly each: string;
    readonly how: string;
}
const moved: Trial = { each: 'month', how: 'move what it senses past its point, and see it act' };
const dropped: Trial = { each: 'month', how: 'let it drop out, and see that what it feeds stops' };
const sensed: Trial = { each: '6 months', how: 'give it the gas that it watches for, and see the rig stop' };
const filled: Trial = { each: 'week', how: 'look at its liquid, and that it is not frozen or blocked' };
const swung: Trial = { each: '6 months', how: 'see it open and shut' };
const others: Trial = { each: 'month', how: 'see it do what it is there for' };
const trials: Readonly<Record<string, Trial>> = {
    trip: moved, switch: moved, analyser: sensed, detector: sensed, contactor: dropped, relay: dropped, 'solid-state-relay': dropped,
    seal: filled, bubbler: filled, scrubber: filled, valve: swung, unloader: swung,
    'relief-valve': { each: 'year', how: 'have it lifted at a bench' }, 'check-valve': { each: '6 months', how: 'see it hold with the pressure behind it and its inlet led outdoors' },
    fan: { each: 'month', how: 'feel its flow, and see the stack stop without it' }, cooler: { each: 'month', how: 'see water run through it' },
    timer: { each: 'month', how: 'see it act at its time' }, button: { each: 'month', how: 'see that it lets go' }, vent: { each: 'month', how: 'see that it is open: ice, insects, leaves' },
};
export const trialOf = (kind: string): Trial => trials[kind] ?? others;

/** A rig for runs: bag, compressor, store and the guards that such a one has; pieces of it are changed by the tests. Invented. */
import { analyseText } from '../../language/index.js';
import type { Workings } from '../../language/quantities/workings.js';

export const storing = `rig "A store to run", built

site { place: shed   volume: 24 m3   floor: 3 x 3.5 m   high-point: 2.5 m   openings: none   coldest: 20 °C   hottest: 20 °C   altitude: 0 m }
supply power { sort: switch-mode   voltage: 26 V   current-limit: 18 A   isolated: yes   needs: main, stack-contactor }
path current: power -> stack
lye { solute: KOH   strength: 30 wt%   fill: 5 L }
separator { material: PP-woven   thickness: 0.6 mm   largest-pore: 22 um }
stack { cells: 11   plate: nickel, 140 x 160 x 1 mm   wetted: 100 x 120 mm   gap: 2 mm each side   port: 1 of 5 mm, 90 mm long   max-temperature: 75 °C }
column h2-column { bore: 80 mm   height: 420 mm   level: 270 mm   return-port: 60 mm }
column o2-column { bore: 80 mm   height: 420 mm   level: 270 mm   return-port: 60 mm }
link { bore: 6 mm   depth: 240 mm }
path lye: h2-column -> stack.hydrogen
path lye: o2-column -> stack.oxygen
path lye: h2-column -> link -> o2-column
bubbler h2-bubbler { immersion: 110 mm }
bubbler o2-bubbler { immersion: 110 mm }
bag store-bag { volume: 70 L   rating: 2 kPa   own-pressure: 0.1 kPa   dead-volume: 2 L }
vent o2-vent { place: outdoors-wall   bore: 16 mm }
path hydrogen: stack -> h2-column -> h2-bubbler -> store-bag
path oxygen: stack -> o2-column -> o2-bubbler -> o2-vent -> outdoors
tee suction-tee
compressor { displacement: 9 cm3   speed: 2800 rpm   max-pressure: 16 bar   power: 160 W   needs: main, compressor-contactor }
unloader { orifice: 0.6 mm   if-unpowered: opens   shut-while: load-delay }
check-valve store-check { cracks-at: 3 kPa }
cylinder { volume: 22 L   rating: 16 bar   end-pressure: 1 bar }
relief-valve store-relief { set: 14 bar   capacity: 9 m3/h hydrogen }
tee discharge-tee
path hydrogen: store-bag -> suction-tee -> compressor -> discharge-tee -> store-check -> cylinder
path hydrogen: discharge-tee -> unloader -> suction-tee
path hydrogen: cylinder -> store-relief -> outdoors
feed control { voltage: 24 V DC }
button start-button
stop-button emergency { resets: by hand }
switch bag-full { senses: store-bag.volume   makes: above 55 L   breaks: below 48 L   if-wire-breaks: breaks }
switch bag-empty { senses: store-bag.volume   breaks: below 10 L   makes: above 16 L   if-wire-breaks: breaks }
switch cut-off { senses: cylinder.pressure   breaks: above 12 bar   makes: below 10 bar   if-wire-breaks: breaks }
trip bag-high { senses: store-bag.volume   trips: above 64 L   resets: by hand   if-wire-breaks: trips }
trip suction-low { senses: suction-tee.pressure   trips: below 0.05 kPa   resets: by hand   if-wire-breaks: trips }
trip high-high { senses: cylinder.pressure   trips: above 13 bar   resets: by hand   if-wire-breaks: trips }
timer load-delay { sort: on-delay   follows: compressor-contactor   time: 10 s }
timer rest { sort: minimum-off   follows: compressor-contactor   time: 5 min }
contactor main { latched-by: start-button   stopped-by: emergency, bag-high, suction-low, high-high }
contactor stack-contactor { needs: main }
contactor compressor-contactor { needs: main, bag-draw, rest   stopped-by: cut-off }
relay bag-draw { latched-by: bag-full   stopped-by: bag-empty }
`;
/** That rig, each text in it replaced by the one beside it; a text that is not there is a mistake of the test. */
export function textOf(changes: readonly (readonly [from: string, to: string])[] = [], text = storing): string {
    let changed = text;
    for (const [from, to] of changes) {
        if (!changed.includes(from)) throw new Error(`"${from}" does not stand in the rig`);
        changed = changed.replace(from, to);
    }
    return changed;
}
/** Its workings. */
export function workingsOf(changes: readonly (readonly [from: string, to: string])[] = [], text = storing): Workings {
    const changed = textOf(changes, text);
    const { workings, findings } = analyseText(changed, { today: '2026-06-15' });
    const unread = findings.filter(f => ['unknown-word', 'unfinished-line', 'value-not-understood', 'unknown-name'].includes(f.rule));
    if (unread.length) throw new Error(unread.map(f => f.message).join('\n'));
    return workings;
}
export const q = (w: Workings, name: string): number => {
    const [part, quantity] = name.split('.');
    return w.quantity(w.rig.parts.get(part)!, quantity)!.value;
};

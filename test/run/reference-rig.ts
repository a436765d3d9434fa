/** A rig whose times can be worked out by hand: round numbers in, closed forms out. Invented. */
import { storing, textOf } from './rigs.js';

/** Its inputs, SI, as the text below has them. */
export const inputs = {
    cells: 12, current: 20, volts: 25.2, capacity: 33.7e3, loss: 3.6, holds: 273.15 + 50,
    /** Of a column, m and m². */
    bore: 80e-3, headspace: 140e-3, port: 50e-3, linkMouth: 250e-3, area: Math.PI / 4 * 80e-3 ** 2,
    lyeDensity: 1280, bubblePoint: 14e3,
    /** m of water in the bubblers, Pa of the bag's own. */
    h2Bubbler: 150e-3, o2Bubbler: 160e-3, own: 100,
    /** m³: gas that can be drawn out of lines and column with the bag flat; the bag; where its switches stand, without those lines. */
    lines: 1.5e-3, bag: 60e-3, full: 50e-3, empty: 10e-3, bagRating: 3e3,
    /** m³/s that the compressor takes in. */
    delivery: 8e-6 * 2900 / 60 * 0.6, bypass: 0.3e-3,
    cylinder: 27e-3, rating: 16.5e5, cutOff: 14e5, highHigh: 15.7e5,
    room: 20, vent: 12 / 3600, kelvin: 293.15, air: 101325,
    /** Vapour that the gases carry off besides the water split, kg/s. */
    vapour: 10e-3 / 3600,
} as const;

// The line behind the compressor is as short as can be: the closed forms know none.
// What cannot be drawn out of a bag has no volume of its own in a rig text: bag and lines are one space of 61.5 L, and all switches stand 1.5 L higher.
export const reference = textOf([
    [storing.slice(storing.indexOf('site {'), storing.indexOf('tee suction-tee')), `site { place: shed   volume: 20 m3   floor: 3 x 2.8 m   high-point: 2.4 m   openings: none   coldest: 20 °C   hottest: 40 °C   altitude: 0 m }
supply power { sort: switch-mode   voltage: 34 V   current-limit: 20 A   isolated: yes   needs: main, stack-contactor }
path current: power -> stack
lye { solute: KOH   strength: 30 wt%   fill: 5 L }
separator { material: PP-woven   thickness: 0.6 mm   largest-pore: 24 um   bubble-pressure: 14 kPa }
stack {
  cells: 12   plate: nickel, 140 x 160 x 1 mm   wetted: 100 x 120 mm   gap: 2 mm each side   edge-cover: 30 mm   port: 1 of 3 mm, 200 mm long   max-temperature: 75 °C
  curve: 25.2 V at 20 A and 50 °C   heat-capacity: 33.7 kJ/K   heat-loss: 3.6 W/K
}
column h2-column { bore: 80 mm   height: 430 mm   level: 290 mm   return-port: 50 mm }
column o2-column { bore: 80 mm   height: 430 mm   level: 290 mm   return-port: 50 mm }
link { bore: 6 mm   depth: 250 mm }
cooler { length: 3 m   bore: 9 mm   water: 15 °C, 1 L/min, 2 bar }
valve water-valve { sort: solenoid   if-unpowered: shuts   open-while: cooling-call }
path lye: h2-column -> cooler -> stack.hydrogen
path lye: o2-column -> stack.oxygen
path lye: h2-column -> link -> o2-column
path water: tap -> water-valve -> cooler -> drain
bubbler h2-bubbler { immersion: 150 mm }
bubbler o2-bubbler { immersion: 160 mm }
seal h2-seal { fluid: water   depth: 250 mm   pipe: 20 mm bore, 2 m long }
seal o2-seal { fluid: water   depth: 250 mm   pipe: 20 mm bore, 2 m long }
seal bag-seal { fluid: water   depth: 200 mm   pipe: 20 mm bore, 2 m long }
bag store-bag { volume: 61.5 L   rating: 3 kPa   own-pressure: 0.1 kPa   dead-volume: 1.5 L }
vent o2-vent { place: outdoors-wall   bore: 16 mm }
tee h2-tee
tee o2-tee
tube h2-hose { bore: 8 mm }
tube bag-hose { bore: 8 mm }
path hydrogen: stack -> h2-column -> h2-tee -> h2-hose -> h2-bubbler -> bag-hose -> store-bag
path hydrogen: h2-tee -> h2-seal -> outdoors
path hydrogen: store-bag -> bag-seal -> outdoors
path oxygen: stack -> o2-column -> o2-tee -> o2-bubbler -> o2-vent -> outdoors
path oxygen: o2-tee -> o2-seal -> outdoors
fan { sort: extract   flow: 12 m3/h }
`],
    ['displacement: 9 cm3   speed: 2800 rpm   max-pressure: 16 bar', 'displacement: 8 cm3   speed: 2900 rpm   clearance: 0.0001   leak-back: 0.25   discharge-volume: 20 mL   max-pressure: 16.5 bar'],
    ['orifice: 0.6 mm', 'orifice: 0.3 mm'],
    ['volume: 22 L   rating: 16 bar', 'volume: 27 L   rating: 16.5 bar'],
    ['set: 14 bar   capacity: 9 m3/h', 'set: 16.5 bar   capacity: 9 m3/h'],
    ['makes: above 55 L   breaks: below 48 L', 'makes: above 51.5 L   breaks: below 45 L'],
    ['breaks: below 10 L   makes: above 16 L', 'breaks: below 11.5 L   makes: above 18 L'],
    ['breaks: above 12 bar   makes: below 10 bar', 'breaks: above 14 bar   makes: below 12 bar'],
    ['trips: above 64 L', 'trips: above 57 L'],
    ['trips: above 13 bar', 'trips: above 15.7 bar'],
    ['time: 10 s', 'time: 1 s'],
    ['contactor stack-contactor { needs: main }', 'contactor stack-contactor { needs: main, bag-pause }'],
    ['trip bag-high', `switch bag-pause { senses: store-bag.volume   breaks: above 54 L   makes: below 30 L   if-wire-breaks: breaks }
switch cooling-call { senses: stack.temperature   makes: above 50 °C   breaks: below 48 °C   if-wire-breaks: breaks }
switch stretched { senses: store-bag.pressure   makes: above 0.11 kPa   breaks: below 0.105 kPa }
switch at-empty { senses: store-bag.volume   makes: above 12.5 L   breaks: below 11.5 L }
trip hot-stack { senses: stack.temperature   trips: above 60 °C   resets: by hand   if-wire-breaks: trips }
trip h2-low { senses: h2-column.level   trips: below 245 mm   resets: by hand   if-wire-breaks: trips }
trip o2-low { senses: o2-column.level   trips: below 245 mm   resets: by hand   if-wire-breaks: trips }
detector gas-watch { senses: site.hydrogen   height: 2.3 m   trips: above 0.8 %   resets: by hand   if-wire-breaks: trips }
trip bag-high`],
    ['stopped-by: emergency, ', 'stopped-by: emergency, hot-stack, h2-low, o2-low, gas-watch, '],
]);

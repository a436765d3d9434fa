/**
 * Whole rigs that a careful maker could have built, drawn from a seed: every size varies within its usual limits, what hangs on
 * it follows. Nothing in them is wrong, so no rule has an error to tell. Figures are invented.
 */

import { Analyst } from '../../language/index.js';

export type Store = 'vented' | 'bag' | 'bell' | 'cylinder';
export type Source = 'switch-mode' | 'bench' | 'battery' | 'solar' | 'transformer';
export interface Whole {
    readonly text: string;
    readonly store: Store;
    readonly source: Source;
    readonly groups: 1 | 2;
}

/** Numbers from 0 to 1, the same for the same seed. */
export function drawing(seed: number): () => number {
    let state = (seed * 2654435761 + 12345) >>> 0;
    return () => {
        state = (Math.imul(state ^ (state >>> 15), 2246822519) + 0x9e3779b9) >>> 0;
        const x = Math.imul(state ^ (state >>> 13), 3266489917) >>> 0;
        return ((x ^ (x >>> 16)) >>> 0) / 2 ** 32;
    };
}
const figures = (x: number, n = 3) => Number(x.toPrecision(n));

/** One whole rig. A winding that no limit holds back is wound as a maker would: turn by turn, until the wanted current flows. */
export function wholeRig(seed: number): Whole {
    let [low, high] = [1.2, 2.6];
    let whole = drawn(seed, 1.8);
    if (whole.source !== 'transformer') return whole;
    const analyst = new Analyst(() => whole.text);
    for (let k = 0; k < 7; k++) {
        const each = (low + high) / 2;
        whole = drawn(seed, each);
        const { workings, rig } = analyst.analyse('rig.rig');
        if (workings.quantity(rig.parts.get('stack')!, 'current')!.value > whole.amperes) high = each;
        else low = each;
    }
    return whole;
}
/** @param each volts of the winding for each cell */
function drawn(seed: number, each: number): Whole & { readonly amperes: number } {
    const random = drawing(seed);
    const between = (low: number, high: number) => low + random() * (high - low);
    const whole = (low: number, high: number) => Math.round(between(low, high));
    const one = <T>(...of: readonly T[]) => of[Math.floor(random() * of.length)];

    const store = one<Store>('vented', 'bag', 'bell', 'cylinder', 'cylinder');
    const groups = random() < 0.25 ? 2 : 1;
    // Cells in series; two groups side by side make as much gas from half the volts.
    const cells = groups === 2 ? whole(5, 7) : whole(6, 13);
    const [width, height] = [whole(80, 120), whole(90, 130)];
    const amperes = figures(groups * between(0.085, 0.11) * width * height / 100);
    const volts = figures(2.32 * cells + 0.8 + between(0, 0.5));
    const gas = 0.418 * amperes * cells;
    const mouths = Math.max(2, Math.ceil(gas / 36));
    const solute = one('KOH', 'KOH', 'NaOH');
    const strength = solute === 'KOH' ? whole(25, 31) : whole(17, 21);
    const outdoors = store !== 'cylinder' && random() < 0.5;
    const place = outdoors ? one('open-shelter', 'outdoors') : 'shed';
    const hottest = whole(26, 33);
    const bore = whole(85, 105);
    const level = whole(270, 300);
    const head = whole(85, 100);
    const source = one<Source>('switch-mode', 'bench', 'battery', 'solar', 'transformer');
    const fuse = [10, 16, 20, 25, 32, 40, 50].find(a => a >= 1.35 * amperes) ?? 63;
    const section = amperes > 25 ? 16 : amperes > 15 ? 10 : 6;
    const name = one('Ana', 'Ivo', 'Mara', 'Tom');
    const bag = Math.max(60, Math.round(gas * between(0.9, 1.4) / 10) * 10);
    // A bell presses by its weight, and the oxygen must stand as much deeper.
    const bell = { volume: bag, diameter: figures((4 * bag / 1000 / Math.PI / between(0.9, 1.2)) ** (1 / 3)), pressure: between(300, 500) };
    const bellMass = figures(bell.pressure * Math.PI / 4 * bell.diameter ** 2 / 9.80665);
    const own = store === 'bell' ? Math.round(bell.pressure / 9.8) : store === 'vented' ? 0 : 8;
    const held = store === 'bell' ? 'bell' : 'store-bag';
    const used = Math.round(between(0.9, 1.4) * gas);
    const cutOff = figures(between(8.5, 10.5));
    const needs = 'main, stack-contactor';
    const lowest = figures(between(0.55, 0.8) * amperes, 2);
    const covered = ['h2-column', 'o2-column', ...(store === 'cylinder' ? ['scrubber'] : ['h2-bubbler']), 'o2-bubbler'];
    const bank = `battery bank { sort: LFP   voltage: ${figures(volts * 1.05)} V   capacity: ${whole(100, 250)} Ah   internal-resistance: 8 mohm   full: ${figures(volts * 1.12)} V   empty: ${figures(volts)} V   source: "nameplate" }
fuse bank-fuse { rating: ${Math.max(40, fuse)} A   dc-rating: 80 V   distance: 150 mm from bank }
isolator bank-switch { rating: ${Math.max(63, fuse)} A at 60 V DC   lockable: yes }
`;
    const converter = `supply power { sort: converter   voltage: ${volts} V   current-limit: ${amperes} A   rated-current: ${figures(1.3 * amperes)} A   ${source === 'solar' ? `lowest: ${lowest} A   ` : ''}isolated: yes   efficiency: 0.93   restarts-by-itself: no   needs: ${needs} }`;
    // Modules that in full sun give half as much again as the stack draws.
    const modules = Math.ceil(1.5 * volts * amperes / 350);
    const secondary = each * cells;
    const supplies: Readonly<Record<Source, () => string>> = {
        'switch-mode': () => `supply power { sort: switch-mode   voltage: ${volts} V   current-limit: ${amperes} A   rated-current: ${figures(1.3 * amperes)} A   isolated: yes   restarts-by-itself: yes   needs: ${needs} }`,
        bench: () => `supply power { sort: bench   voltage: ${volts} V   current-limit: ${amperes} A   rated-current: ${figures(1.3 * amperes)} A   isolated: yes   restarts-by-itself: no   needs: ${needs} }`,
        battery: () => bank + converter,
        solar: () => `panels roof { open-circuit: 40 V   short-circuit: 11 A   best: 33.5 V at 10.4 A   count: ${modules}   wiring: 1 in series, ${modules} in parallel   facing: south, 35° up   source: "nameplate" }
charger { sort: tracking   efficiency: 0.95   back-feeds: no }
${bank}${converter}
switch sun-enough { senses: roof.power   makes: above ${Math.ceil(1.3 * volts * lowest)} W for 2 min   breaks: below ${Math.ceil(0.8 * volts * lowest)} W for 30 s   if-wire-breaks: breaks }
switch bank-low { senses: bank.voltage   breaks: below ${figures(volts * 1.01)} V   makes: above ${figures(volts * 1.07)} V   if-wire-breaks: breaks }
timer settled { sort: on-delay   follows: stack-contactor   time: 60 s }
timer cloud-rest { sort: minimum-off   follows: stack-contactor   time: 10 min }
trip low-load { senses: stack.current   trips: below ${figures(0.95 * lowest)} A for 30 s   resets: by itself, when stack-contactor drops   armed-while: settled   if-wire-breaks: trips }`,
        transformer: () => `transformer power { sort: toroid   power: ${Math.ceil(3.9 * cells * amperes / 50) * 50} VA   secondary: ${figures(secondary)} V   secondary-unloaded: ${figures(1.06 * secondary)} V   soft-start: yes   needs: ${needs} }
rectifier bridge { circuit: bridge   forward-drop: 0.9 V   reverse-rating: 200 V   sink: ${amperes > 28 ? 0.3 : amperes > 20 ? 0.5 : amperes > 12 ? 0.7 : 1} K/W   source: "data sheet" }`,
    };
    const supply = supplies[source]();
    const path = { 'switch-mode': 'power', bench: 'power', battery: 'bank -> bank-fuse -> bank-switch -> power', solar: 'roof -> charger -> bank -> bank-fuse -> bank-switch -> power', transformer: 'power -> bridge' }[source];
    const bagFull = [0.84, 0.74].map(x => Math.round(x * bag));

    const low = store === 'vented' ? `
bubbler h2-bubbler { immersion: ${head} mm   minimum: 55 mm   nozzle: ${mouths} of 5 mm   water: 0.6 L   fluid: glycol 30 %   body: PP, 0.2 L headspace   lid: blow-off   level-shown: sight }
path hydrogen: stack -> h2-column -> h2-tee -> h2-bubbler -> h2-vent -> outdoors
path hydrogen: h2-tee -> h2-seal -> h2-vent
` : `
${store !== 'cylinder' ? `trap h2-trap { sort: reverse   volume: ${figures(between(0.6, 0.9))} L }
bubbler h2-bubbler { immersion: ${head} mm   minimum: 55 mm   nozzle: ${mouths} of 5 mm   water: 0.6 L   fluid: glycol 30 %   body: PP, 0.2 L headspace   lid: blow-off   level-shown: sight }
path hydrogen: stack -> h2-column -> h2-tee -> h2-trap -> h2-bubbler -> ${held}` : `scrubber { water: ${figures(between(0.8, 1.1))} L   enters: dip-tube   immersion: ${head} mm   demister: fibre   level-shown: sight   lid: blow-off }
valve vent-valve { sort: solenoid   bore: 12 mm   if-unpowered: opens   shut-while: first-vent   opened-by: oxygen-watch }
bubbler vent-bubbler { immersion: ${head} mm   minimum: 55 mm   nozzle: ${mouths} of 5 mm   water: 0.6 L   fluid: glycol 30 %   body: PP, 0.2 L headspace   lid: blow-off   level-shown: sight }
path hydrogen: stack -> h2-column -> h2-tee -> scrubber -> store-bag
path hydrogen: h2-tee -> vent-valve -> vent-bubbler -> h2-vent`}
path hydrogen: h2-tee -> h2-seal -> h2-vent -> outdoors
seal bag-seal { fluid: glycol 30 %   depth: ${head + whole(32, 40)} mm   pipe: 32 mm bore, 1.8 m long   level-shown: ${one('sight', 'switch')} }
path hydrogen: ${held} -> bag-seal -> h2-vent
${store === 'bell' ? `gasometer bell {
  volume:           ${bag} L
  diameter:         ${bell.diameter} m
  bell-mass:        ${bellMass} kg
  guides:           yes
  overflow:         outdoors
  dead-volume:      2 L
  place:            "${place === 'shed' ? 'outside, behind the shed' : 'under the open roof'}"
}` : `bag store-bag {
  volume:           ${bag} L
  rating:           2.4 kPa
  own-pressure:     0.1 kPa
  material:         PA-laminate
  thickness:        0.12 mm
  dead-volume:      2 L
  bonded:           insulating-film
  place:            "under the ridge"
}`}
`;
    const high = store !== 'cylinder' ? '' : `
# Pressed and kept
tee suction-tee
tee discharge-tee
compressor {
  sort:             hermetic-reciprocating
  displacement:     ${figures(Math.max(1.2, between(2.2, 3.4) * gas / 1000 / 60 / 2900 * 1e6 / 0.5))} cm3
  speed:            2900 rpm
  max-pressure:     22 bar
  shell-rating:     19 bar
  shell-volume:     2.6 L
  oil:              mineral, 260 mL
  start:            PTC
  starts-against:   0.3 bar
  min-off:          5 min
  power:            170 W
  current:          1.2 A
  locked-rotor:     8 A
  crankcase:        sealed
  listed-for-hydrogen: no
  source:           "nameplate"
  needs:            main, compressor-contactor
  start-gear-distance: ${figures(between(1.5, 2.5), 2)} m
  fan:              yes
}
unloader { orifice: 0.7 mm   rating: 25 bar   if-unpowered: opens   shut-while: load-delay }
filter oil-filter { sort: oil   returns-oil: yes   rating: 25 bar }
dryer { desiccant: sieve-3A   mass: ${whole(400, 700)} g   drain: yes   rating: 25 bar at 60 °C }
check-valve store-check { cracks-at: 3 kPa   rating: 40 bar }
cylinder {
  sort:             hydrogen
  volume:           ${whole(18, 27)} L
  rating:           20 bar
  specification:    "stamp on the shoulder"
  permitted-gas:    "hydrogen"
  test-date:        2025-03
  test-interval:    10 years
  previous:         new
  outlet:           "W 21.8 x 1/14 LH"
  source:           "stamp"
  place:            "outside wall, under the eaves, shaded"
  secured:          chained
  label:            "HYDROGEN"
  hand-valve:       yes
  end-pressure:     0.8 bar
}
relief-valve store-relief { set: ${figures(cutOff * 1.2)} bar   capacity: ${figures(between(7, 10), 2)} m3/h hydrogen   tested: 2026-02-10   sealed: yes   outlet: 12 mm bore, 2 m long }
gauge store-gauge { on: cylinder   range: 0..25 bar   class: 2.5 }
bleed line-bleed  { on: discharge-tee   outlet: outdoors }
tube high-line    { size: 6x1 mm   length: ${figures(between(1.5, 4), 2)} m   material: stainless-316L   rating: 200 bar   secured: yes }
valve outlet-valve { sort: hand   rating: 40 bar }
regulator { listed-for: hydrogen   inlet-rating: 60 bar   set: 0.8 bar   max-outlet: 2.5 bar   has-relief: none }
tee use-tee
relief-valve use-relief { set: 1.6 bar   capacity: 10 m3/h hydrogen   tested: 2026-02-10   sealed: yes   outlet: 12 mm bore, 2 m long }
arrestor { listed-for: hydrogen   distance: 0.6 m   drop: 2 kPa at ${used} L/h   rating: 5 bar }
burner { sort: diffusion   flow: ${used} L/h   tip: ${Math.max(3, Math.round(used / 60))} of 0.7 mm   flame-proof: thermocouple   rating: 4 bar }
vent relief-vent { place: outdoors-up   bore: 16 mm   mesh: yes   slope: 5 %   distance: 3 m from o2-vent }
path hydrogen: store-bag -> suction-tee -> compressor -> discharge-tee -> oil-filter -> dryer -> store-check -> high-line -> cylinder
path hydrogen: discharge-tee -> unloader -> suction-tee
path hydrogen: cylinder -> store-relief -> relief-vent -> outdoors
path hydrogen: cylinder -> outlet-valve -> regulator -> use-tee -> arrestor -> burner
path hydrogen: use-tee -> use-relief -> relief-vent
purge-point shell-purge { on: suction-tee }
purge-point store-purge { on: outlet-valve }
switch bag-start { senses: store-bag.volume   makes: above ${Math.round(0.7 * bag)} L   breaks: below ${Math.round(0.6 * bag)} L   if-wire-breaks: breaks   if-detached: breaks   enclosure: sealed-reed }
switch bag-empty { senses: store-bag.volume   breaks: below ${Math.round(0.15 * bag)} L   makes: above ${Math.round(0.24 * bag)} L   if-wire-breaks: breaks   if-detached: breaks   enclosure: sealed-reed }
switch cut-off   { senses: cylinder.pressure   breaks: above ${cutOff} bar ± 0.2 bar   makes: below ${figures(cutOff * 0.82)} bar ± 0.2 bar   if-wire-breaks: breaks   range: 2..16 bar   contact: 2 A at 24 V DC }
trip suction-low { senses: suction-tee.pressure   trips: below 0.06 kPa ± 0.01 kPa   resets: by hand   if-wire-breaks: trips }
trip high-high   { senses: cylinder.pressure   trips: above ${figures(cutOff * 1.12)} bar ± 0.2 bar   resets: by hand   if-wire-breaks: trips }
trip hot-discharge { senses: compressor.discharge-temperature   trips: above 130 °C   resets: by itself, below 80 °C   if-wire-breaks: trips }
timer load-delay { sort: on-delay      follows: compressor-contactor   time: ${whole(8, 15)} s }
timer rest       { sort: minimum-off   follows: compressor-contactor   time: 6 min }
timer draw-limit { sort: longest-on    follows: compressor-contactor   time: 40 min   resets: by hand }
timer first-vent { sort: on-delay      follows: main                   time: 10 min }
relay bag-draw   { latched-by: bag-start   stopped-by: bag-empty }
contactor compressor-contactor { needs: main, bag-draw, rest   stopped-by: cut-off, hot-discharge, draw-limit }
test high-side-tight { date: 2026-04-18   by: ${name}   covers: oil-filter, dryer, store-check, high-line, cylinder   with: nitrogen, then soap   pressure: ${cutOff} bar   lasted: 12 h   drop: 0.04 bar   result: passed }
test check-holds { date: 2026-04-18   by: ${name}   covers: store-check   with: nitrogen behind it, suction line led outdoors   pressure: 5 bar   lasted: 10 min   drop: 0.03 bar   result: passed }
test relief-lifts { date: 2026-02-10   by: "pressure service"   covers: store-relief, use-relief   with: nitrogen   result: passed }
`;
    const flame = store !== 'bag' && store !== 'bell' ? '' : `
valve flame-valve { sort: hand   bore: 8 mm }
arrestor { listed-for: hydrogen   distance: 0.4 m   drop: 0.02 kPa at ${used} L/h }
burner { sort: diffusion   flow: ${used} L/h   tip: ${Math.max(6, Math.round(used / 13))} of 0.8 mm   flame-proof: thermocouple }
path hydrogen: ${held} -> flame-valve -> arrestor -> burner
trip flame-out { senses: burner.temperature   trips: below 90 °C for 20 s   resets: by hand   if-wire-breaks: trips }
`;
    const bySun = source === 'solar' ? { needs: ', sun-enough, cloud-rest', stops: ', bank-low, low-load' } : { needs: '', stops: '' };
    const bagControls = store === 'vented' ? `contactor stack-contactor { needs: main${bySun.needs}   stopped-by: stack-off${bySun.stops} }\nbutton stack-off { sort: key }\n` : `
purge-point bag-purge { on: ${held} }
switch bag-full { senses: ${held}.volume   breaks: above ${bagFull[0]} L   makes: below ${bagFull[1]} L   if-wire-breaks: breaks   if-detached: breaks   contact: 0.2 A at 24 V DC   enclosure: sealed-reed }
trip bag-high { senses: ${held}.volume   trips: above ${Math.round(0.92 * bag)} L   resets: by hand   if-wire-breaks: trips   if-detached: trips   enclosure: sealed-reed }
contactor stack-contactor { needs: main${bySun.needs}   stopped-by: bag-full${bySun.stops} }
`;
    const trips = ['hot-stack', 'h2-level-low', 'o2-level-low', 'h2-level-high', 'o2-level-high', ...(store === 'vented' ? [] : ['bag-high']), ...(flame ? ['flame-out'] : []), ...(store === 'cylinder' ? ['suction-low', 'high-high'] : [])];
    const cooled = solute === 'NaOH' || amperes * cells > 110;
    const inside = place === 'shed';
    const text = `rig "Whole rig ${seed}", built

purpose { sort: ${store === 'vented' ? 'vent-only' : 'flame'}   audience: ${one('alone', 'others')}${store === 'vented' ? '' : `   use-pressure: ${store === 'cylinder' ? '0.8 bar' : '0.05 kPa'}   use-flow: ${used} L/h`} }
routine {
  hours:            ${whole(2, 6)} h/day
  starts:           1 per day
  attended:         ${store === 'cylinder' ? 'first hour, then every 30 min' : 'yes'}
  lowest-current:   ${lowest} A
  steps:            mix, wet separator, nitrogen purge, first fill, start, stop, ${store === 'cylinder' ? 'refill, discharge' : 'refill'}
  water-fill:       through dip tube, cold, every 4 h
  spent-lye:        "sealed can, county collection"
  plan:             trips each month, ${store === 'cylinder' ? 'check valve each 6 months, relief each year, dryer each month, ' : ''}bubblers each week, lye each year
  carried:          no
}
site {
  place:            ${place}
${inside ? `  volume:           ${whole(29, 34)} m3
  floor:            3 x 4.5 m
  openings:         ${figures(between(0.1, 0.15), 2)} m2 at 2.5 m, ${figures(between(0.1, 0.15), 2)} m2 at 0.15 m
  pockets:          no
  boxes-over-gas:   none
  high-zone-fittings: none
  attached-to-dwelling: no
  people-above:     no
` : ''}  high-point:       2.6 m
  coldest:          ${whole(3, 9)} °C
  hottest:          ${hottest} °C
  altitude:         ${whole(0, 600)} m
  humidity:         45 %..85 %
  neighbours:       ${whole(15, 40)} m
  air-intakes:      none
  ignition-sources: none
  combustibles:     none
  oxygen-cylinders: none
  rcd:              30 mA
  breaker:          16 A, curve C
  bonded:           bench${store === 'cylinder' ? ', cylinder, compressor, relief vent' : ', burner stand'}
  dc-earthed:       none
  eye-wash:         yes
  goggles:          yes
  gloves:           yes
  face-shield:      yes
  lock:             yes
  sign:             yes
  fire-card:        yes
  permission:       given 2026-02-24, "building office, by letter"
  insurer:          yes, 2026-03-02
  law:              EU
${source === 'solar' ? '  sun:              0 W/m2 at 05:30, 200 W/m2 at 08:00, 560 W/m2 at 10:30, 720 W/m2 at 13:00, 500 W/m2 at 15:30, 140 W/m2 at 18:00, 0 W/m2 at 20:00\n' : ''}}

# Current
${supply}
fuse main-fuse { rating: ${fuse} A   dc-rating: 80 V }
leads { length: ${figures(between(1, 2.5), 2)} m   section: ${section} mm2   ends: lug   keyed: yes   rating: 60 A }
diode blocking { rating: ${Math.max(30, Math.ceil(2 * amperes / 10) * 10)} A }
path current: ${path} -> main-fuse -> blocking -> leads -> stack

# Cells and lye
lye { solute: ${solute}   strength: ${strength} wt%   fill: ${figures(1.12 * (2 * Math.PI / 4 * (bore / 100) ** 2 * level / 100 + groups * cells * width * height * 4.5 / 1e6), 2)} L   water: distilled }
separator { material: composite   thickness: 0.5 mm   bubble-pressure: 160 kPa   area-resistance: 0.3 ohm·cm2   source: "maker's sheet"   clamped: ${whole(8, 11)} mm }
stack {
${groups === 2 ? `  groups:           2
  cells:            ${cells} per group
  feed:             middle
  plates:           ${2 * cells + 1}` : `  cells:            ${cells}`}
  plate:            nickel, ${width + 40} x ${height + 45} x 1 mm
  wetted:           ${width} x ${height} mm
  gap:              2 mm each side
  gasket:           EPDM, 3 mm to 2.4 mm
  edge-cover:       18 mm
  port:             1 of ${cells > 10 ? 4 : one(4, 4.5)} mm, ${whole(100, 130)} mm long
  manifold:         internal, PP, 14 mm
  end-board:        PP, 30 mm, span ${width} mm
  tie-rods:         10 of M8, 9 Nm, sleeved
  stud:             90 mm2, 50 mm plate path
  cover:            interlocked
  outer-edges:      painted
  frame-key:        notch
  plus-end:         left
  hydrogen-half:    right
  top-height:       520 mm
  max-temperature:  65 °C
}
column h2-column { bore: ${bore} mm   height: 480 mm   level: ${level} mm   return-port: 70 mm   outlet: 9 mm   demister: yes   sight: yes   material: PP   base-height: ${whole(600, 680)} mm   lid: 5 kPa, blow-off   fill-point: dip-tube }
column o2-column like h2-column
link { bore: 6 mm   depth: 240 mm   shared: none }
tray { volume: 9 L   drained: no }
${cooled ? `cooler h2-cooler { sort: tube-in-tube   length: 2.4 m   bore: 9 mm   water: ${whole(10, 16)} °C, 0.8 L/min, 2 bar   material: PP   earthed: no   position: return   water-side: closed-loop }
cooler o2-cooler like h2-cooler
valve water-valve { sort: solenoid   if-unpowered: shuts   open-while: cooling-call }
switch cooling-call { senses: stack.temperature   makes: above 54 °C   breaks: below 49 °C   if-wire-breaks: breaks }
path lye: h2-column -> h2-cooler -> stack.hydrogen
path lye: o2-column -> o2-cooler -> stack.oxygen
path water: tap -> water-valve -> h2-cooler -> o2-cooler -> drain` : `path lye: h2-column -> stack.hydrogen
path lye: o2-column -> stack.oxygen`}
path lye: h2-column -> link -> o2-column

# Gas
tee h2-tee
tee o2-tee
bubbler o2-bubbler { immersion: ${head + own} mm   minimum: 55 mm   nozzle: ${mouths} of 5 mm   water: 0.6 L   fluid: weak-lye   body: PP, 0.2 L headspace   lid: blow-off   level-shown: sight }
seal h2-seal { fluid: glycol 30 %   depth: ${head + 85 + (store === 'bell' ? own : 0)} mm   pipe: 25 mm bore, 2 m long   level-shown: sight }
seal o2-seal like h2-seal { fluid: weak-lye }
vent h2-vent { place: outdoors-up   bore: 25 mm   mesh: yes   slope: 4 %   distance: 3 m from o2-vent }
vent o2-vent { place: outdoors-wall   bore: 16 mm   mesh: yes   slope: 4 %   distance: 3 m from h2-vent }
path oxygen: stack -> o2-column -> o2-tee -> o2-bubbler -> o2-vent -> outdoors
path oxygen: o2-tee -> o2-seal -> outdoors
purge-point column-purge { on: h2-column }
${low}${high}${flame}
# Control
feed control { voltage: 24 V DC   fuse: 2 A }
${inside ? 'feed fan-line { voltage: 230 V AC   fuse: 4 A }\n' : ''}button start-button
stop-button emergency { resets: by hand   leaves-on: ${inside ? 'fan, ' : ''}gas-watch }
${bagControls}trip hot-stack { senses: stack.temperature   trips: above 62 °C ± 2 K   resets: by hand, below 50 °C   if-wire-breaks: trips }
trip h2-level-low { senses: h2-column.level   trips: below ${level - 50} mm   resets: by hand   if-wire-breaks: trips   if-detached: trips }
trip o2-level-low like h2-level-low { senses: o2-column.level }
trip h2-level-high like h2-level-low { trips: above ${level + 80} mm }
trip o2-level-high like h2-level-high { senses: o2-column.level }
${store === 'vented' ? '' : `analyser oxygen-watch { senses: ${store === 'cylinder' ? 'scrubber' : 'h2-bubbler'}.oxygen   alarm: above 0.5 %   trips: above 1 %   resets: by hand   if-wire-breaks: trips   if-unpowered: trips   if-cell-dies: reads low   cell-fitted: 2026-03   calibrated: 2026-06-01 }
`}detector gas-watch { senses: site.hydrogen   height: 2.5 m   place: ridge   sort: catalytic   alarm: above 0.4 %   trips: above 1 %   resets: by hand   if-wire-breaks: trips   if-unpowered: trips   calibrated: 2026-06-01${inside ? '   fed-from: fan-line' : ''} }
contactor main { latched-by: start-button   ${inside ? 'needs: fan-flow   ' : ''}stopped-by: emergency, gas-watch, ${store === 'vented' ? '' : 'oxygen-watch, '}${trips.join(', ')} }
${inside ? `fan { sort: extract   flow: ${whole(105, 140)} m3/h   place: 2.5 m   in-stream-motor: listed   fed-from: fan-line }
switch fan-flow { senses: fan.flow   makes: above 80 m3/h   breaks: below 60 m3/h   if-wire-breaks: breaks }
` : ''}horn { sounded-by: gas-watch.alarm${store === 'vented' ? '' : ', oxygen-watch.alarm'}${inside ? ', fan-flow   fed-from: fan-line' : ''} }

# On record
test low-side-tight { date: 2026-04-11   by: ${name}   covers: ${[...covered, ...(store === 'cylinder' ? ['vent-bubbler'] : [])].join(', ')}   with: nitrogen, both sides linked, bag and seals blanked   pressure: 1.7 kPa   lasted: 4 h   drop: 0.02 kPa   result: passed }
test separator-whole { date: 2026-04-11   by: ${name}   covers: separator   with: air, wet, hydrogen side alone   pressure: 2.6 kPa   lasted: 10 min   result: passed }
test trips-act { date: 2026-05-16   by: ${name}   covers: ${[...trips, ...(source === 'solar' ? ['low-load'] : []), ...(store === 'cylinder' ? ['hot-discharge'] : []), ...(store === 'vented' ? [] : ['oxygen-watch']), 'gas-watch', ...(inside ? ['fan-flow'] : [])].join(', ')}   with: float moved, gas let in, wire pulled off   result: passed }
purge first-purge { date: 2026-05-17   by: ${name}   covers: h2-column, ${covered[2]}${store === 'vented' ? '' : `, ${held}`}${store === 'cylinder' ? ', compressor, cylinder' : ''}   with: nitrogen   volumes: 5   oxygen-left: 0.6 % }

budget { tariff: ${figures(between(0.2, 0.4), 2)} EUR/kWh   life: 3000 h   other: 380 EUR }
`;
    return { text, store, source, groups, amperes };
}

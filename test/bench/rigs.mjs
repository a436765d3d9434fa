// Rig texts of a wanted size for benchmarks: one rig as it stands halfway, with two dozen findings, made longer by real parts at the
// density of the examples, some nine lines to a part.
import { readFileSync } from 'node:fs';
import path from 'node:path';

const examples = path.resolve(import.meta.dirname, '../../examples');
export const exampleText = name => readFileSync(path.join(examples, name), 'utf8');

/** A sketch of about 60 lines, a complete rig of about 200, and one of about 2 000 lines with 100 cells. */
export function rigOf(lines) {
    if (lines <= 60) return sketch();
    const base = complete(lines >= 1000 ? 100 : 12);
    const out = [base];
    let n = base.split('\n').length;
    for (let k = 1; n + 25 < lines; k++) {
        const block = lineOf(k);
        out.push(block);
        n += block.split('\n').length;
    }
    return out.join('\n');
}

function sketch() {
    return `rig "Bench of sixty lines", drawn

purpose { sort: flame   audience: alone }
site {
  place:            shed
  volume:           24 m3
  openings:         0.08 m2 at 2.4 m, 0.08 m2 at 0.2 m
  coldest:          4 °C
  hottest:          32 °C
  rcd:              30 mA
}

supply {
  sort:             bench
  voltage:          28 V
  current-limit:    10 A
  isolated:         yes
}
fuse  { rating: 16 A   dc-rating: 60 V }
leads { length: 1.5 m   section: 4 mm2 }
path current: supply -> fuse -> leads -> stack

lye {
  solute:           KOH
  strength:         26 wt%
  fill:             4 L
}
separator { material: composite   thickness: 0.5 mm   bubble-pressure: 190 kPa }
stack {
  cells:            12
  wetted:           90 x 110 mm
  gap:              2 mm each side
  plate:            nickel, 130 x 150 x 1 mm
  port:             1 of 4 mm, 70 mm long
}

column h2-column { bore: 70 mm   height: 380 mm   level: 230 mm   sight: yes }
column o2-column like h2-column
link { bore: 5 mm   depth: 200 mm }
path lye: h2-column -> stack.hydrogen
path lye: o2-column -> stack.oxygen
path lye: h2-column -> link -> o2-column

bubbler h2-bubbler { immersion: 90 mm   nozzle: 2 of 5 mm   lid: blow-off   level-shown: sight }
bubbler o2-bubbler like h2-bubbler
vent h2-vent { place: outdoors-up   bore: 16 mm   distance: 3 m from o2-vent }
vent o2-vent { place: outdoors-wall   bore: 12 mm   distance: 3 m from h2-vent }
path hydrogen: stack -> h2-column -> h2-bubbler -> h2-vent -> outdoors
path oxygen:   stack -> o2-column -> o2-bubbler -> o2-vent -> outdoors

trip hot-stack { senses: stack.temperature   trips: above 62 °C   resets: by hand   if-wire-breaks: trips }
contactor main { latched-by: start-button   stopped-by: hot-stack }
button start-button

expect stack.volts-per-cell between 1.8 V and 2.4 V
expect stack.hydrogen-rate > 30 NL/h
`;
}

function complete(cells) {
    return sketch().replace('Bench of sixty lines', 'Bench of many lines').replace('cells:            12', `cells:            ${cells}`).replace('voltage:          28 V', `voltage:          ${Math.round(cells * 2.3)} V`) + `
bag {
  volume:           80 L
  rating:           2.4 kPa
  own-pressure:     0.1 kPa
  material:         PA-laminate
}
compressor {
  sort:             hermetic-reciprocating
  displacement:     9 cm3
  speed:            2900 rpm
  power:            160 W
  needs:            draw
}
unloader { orifice: 0.6 mm   if-unpowered: opens }
check-valve store-check { cracks-at: 3 kPa   rating: 40 bar }
cylinder {
  volume:           20 L
  rating:           18 bar
  secured:          chained
  label:            "HYDROGEN"
}
relief-valve { set: 14 bar   capacity: 8 m3/h hydrogen }
switch bag-full  { senses: bag.volume   makes: above 60 L   breaks: below 50 L   if-wire-breaks: breaks }
switch bag-empty { senses: bag.volume   breaks: below 10 L   makes: above 16 L   if-wire-breaks: breaks }
switch cut-off   { senses: cylinder.pressure   breaks: above 11 bar   makes: below 9 bar   if-wire-breaks: breaks }
relay draw { latched-by: bag-full   stopped-by: bag-empty, cut-off }
tee suction-tee
tee discharge-tee
path hydrogen: h2-column -> bag -> suction-tee -> compressor -> discharge-tee -> store-check -> cylinder
path hydrogen: discharge-tee -> unloader -> suction-tee
path hydrogen: cylinder -> relief-valve -> h2-vent
let spare = 0.9 * cylinder.rating
budget { tariff: 0.28 EUR/kWh   life: 2500 h }
expect cylinder.fill-time < 12 h
expect budget.gas-cost < 8 EUR/m3
`;
}

/** One more line of hoses with its own tee, valve, trip, vent and a reading: 50 lines. */
function lineOf(k) {
    return `
# ---- line ${k} ----
# Branches off behind the bag, for another burner along the bench. Its hose is clipped every half metre
# and rises all the way; the valve stands where a hand reaches it from the door.
tee tee-${k}

## Bought with the others, not yet pressed.
tube hose-${k} {
  bore:             ${6 + (k % 5)} mm
  length:           ${(1 + (k % 7) * 0.3).toFixed(1)} m
  material:         PVC
  secured:          yes
  slope:            3 %
  label:            "line ${k}"
}

valve tap-${k} {
  sort:             hand
  bore:             8 mm
  rating:           10 bar
}

# Set on the bench against the good gauge, with air.
trip limit-${k} {
  senses:           tee-${k}.pressure
  trips:            above ${(0.5 + (k % 9) * 0.1).toFixed(1)} bar ± 0.05 bar
  resets:           by hand
  if-wire-breaks:   trips
  range:            0..2 bar
  enclosure:        sealed
  distance-to-gas:  0.6 m
}

vent vent-${k} {
  place:            outdoors-up
  bore:             10 mm
  mesh:             yes
  slope:            3 %
  height:           3 m
}
path hydrogen: bag -> tee-${k} -> hose-${k} -> tap-${k} -> vent-${k} -> outdoors

reading look-${k} {
  date:             2026-0${1 + (k % 9)}-1${k % 10}
  by:               Ada
  tee-${k}.pressure: ${(0.1 * (k % 5)).toFixed(1)} bar
}
expect hose-${k}.drop < 0.5 kPa
`;
}

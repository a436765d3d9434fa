/** Rigs to start from. Each reads without an error. */
export interface Template {
    readonly name: string;
    readonly title: string;
    readonly description: string;
    readonly text: string;
}
/** What the bench rig and the bag rig have alike, with what differs filled in. Plain text, so that it stays tidy as it stands. */
const outfit = `  rcd:              30 mA
  eye-wash:         yes
  goggles:          yes
  gloves:           yes`;
const wiring = (section: string) => `fuse  { rating: 16 A   dc-rating: 60 V }
leads { length: 1.5 m   section: ${section}   keyed: yes }
path current: supply -> fuse -> leads -> stack`;
const lyeAndSeparator = (strength: string, fill: string) => `lye {
  solute:           KOH
  strength:         ${strength}
  fill:             ${fill}
}
separator { material: composite   thickness: 0.5 mm   bubble-pressure: 150 kPa   clamped: 8 mm }`;
const stack = (cells: number, plate: string, wetted: string, portLength: string, more = '') => `stack {
  cells:            ${cells}
  plate:            nickel, ${plate}
  wetted:           ${wetted}
  gap:              2 mm each side
  port:             1 of 4 mm, ${portLength} long
  tie-rods:         8 of M8, 8 Nm, sleeved
  cover:            fixed${more}
}`;
const linkedColumns = (height: string, level: string, depth: string) => `column h2-column { bore: 75 mm   height: ${height}   level: ${level}   return-port: 60 mm   sight: yes }
column o2-column like h2-column
link { bore: 5 mm   depth: ${depth} }
path lye: h2-column -> stack.hydrogen
path lye: o2-column -> stack.oxygen
path lye: h2-column -> link -> o2-column`;

export const templates: readonly Template[] = [
    {
        name: 'sketch', title: 'A first sketch', description: 'Ten lines that already give numbers: supply, lye, stack, two bubblers.',
        text: `rig "My rig", idea

supply { sort: bench   voltage: 24 V   current-limit: 10 A }
lye    { solute: KOH   strength: 25 wt% }
stack  { cells: 10   wetted: 80 x 100 mm   port: 1 of 4 mm, 90 mm long }
bubbler h2-bubbler
bubbler o2-bubbler
path hydrogen: stack -> h2-bubbler -> burner
path oxygen:   stack -> o2-bubbler -> outdoors
expect stack.hydrogen-rate > 30 NL/h
`,
    },
    {
        name: 'lesson', title: 'Two cells for a lesson', description: 'Two cells on a small supply, both gases let go outdoors: nothing is kept.',
        text: `rig "Two cells", drawn

purpose { sort: vent-only   audience: children }

routine {
  hours:            1 h/day
  attended:         yes
  steps:            mix, wet separator, start, stop, drain
}

site {
  place:            room
  volume:           150 m3
  high-point:       2.9 m
  openings:         0.4 m2 at 2.9 m
  coldest:          17 °C
  hottest:          28 °C
${outfit}
}

supply { sort: bench   voltage: 5.5 V   current-limit: 2 A   isolated: yes }
fuse   { rating: 3 A }
leads  { length: 1 m   section: 1.5 mm2   ends: plug   keyed: yes }
path current: supply -> fuse -> leads -> stack

lye { solute: KOH   strength: 15 wt%   fill: 0.6 L }
separator { material: PP-woven   thickness: 0.5 mm   largest-pore: 60 µm   clamped: 6 mm }
stack {
  cells:            2
  plate:            nickel, 70 x 90 x 1 mm
  wetted:           45 x 60 mm
  gap:              3 mm each side
  port:             1 of 4 mm, 30 mm long
}

bubbler h2-bubbler { immersion: 60 mm   water: 0.3 L   lid: blow-off   level-shown: sight }
bubbler o2-bubbler like h2-bubbler
vent h2-vent { place: outdoors-wall   bore: 6 mm   distance: 2 m from o2-vent }
vent o2-vent { place: outdoors-wall   bore: 6 mm   distance: 2 m from h2-vent }
path hydrogen: stack -> h2-bubbler -> h2-vent -> outdoors
path oxygen:   stack -> o2-bubbler -> o2-vent -> outdoors

expect stack.hydrogen-rate between 1 NL/h and 2 NL/h
`,
    },
    {
        name: 'bench', title: 'A bench rig vented outdoors', description: 'Two columns, two bubblers, both gases let go outdoors: to learn and to measure.',
        text: `rig "Bench rig", drawn

purpose { sort: vent-only   audience: alone }

site {
  place:            shed
  volume:           25 m3
  high-point:       2.4 m
  openings:         0.1 m2 at 2.4 m, 0.1 m2 at 0.2 m
  coldest:          5 °C
  hottest:          32 °C
${outfit}
}

supply {
  sort:             bench
  voltage:          24 V
  current-limit:    10 A
  isolated:         yes
}
${wiring('4 mm2')}

${lyeAndSeparator('27 wt%', '3 L')}
${stack(10, '120 x 140 x 1 mm', '85 x 100 mm', '80 mm')}

${linkedColumns('400 mm', '240 mm', '200 mm')}

bubbler h2-bubbler { immersion: 90 mm   nozzle: 2 of 5 mm   water: 0.5 L   lid: blow-off   level-shown: sight }
bubbler o2-bubbler like h2-bubbler
vent h2-vent { place: outdoors-up   bore: 14 mm   mesh: yes   slope: 3 %   distance: 3 m from o2-vent }
vent o2-vent { place: outdoors-wall   bore: 12 mm   mesh: yes   slope: 3 %   distance: 3 m from h2-vent }
path hydrogen: stack -> h2-column -> h2-bubbler -> h2-vent -> outdoors
path oxygen:   stack -> o2-column -> o2-bubbler -> o2-vent -> outdoors

expect stack.volts-per-cell < 2.3 V
expect stack.separator-head < 0.5 kPa
`,
    },
    {
        name: 'bag', title: 'A rig with a gas bag', description: 'As the bench rig, with seals, a bag, its switch and its trip.',
        text: `rig "Bag rig", drawn

purpose { sort: flame   audience: alone   use-flow: 100 L/h }

site {
  place:            open-shelter
  high-point:       2.5 m
  coldest:          3 °C
  hottest:          34 °C
${outfit}
  ignition-sources: none
}

supply {
  sort:             bench
  voltage:          26 V
  current-limit:    12 A
  isolated:         yes
  needs:            main, stack-contactor
}
${wiring('6 mm2')}

${lyeAndSeparator('28 wt%', '3.5 L')}
${stack(11, '125 x 145 x 1 mm', '90 x 105 mm', '90 mm', '\n  max-temperature:  65 °C')}

${linkedColumns('420 mm', '250 mm', '210 mm')}

tee h2-tee
tee o2-tee
bubbler h2-bubbler { immersion: 90 mm   nozzle: 2 of 5 mm   water: 0.5 L   lid: blow-off   level-shown: sight }
bubbler o2-bubbler like h2-bubbler { immersion: 98 mm }
seal h2-seal  { depth: 190 mm   pipe: 18 mm bore, 1.5 m long   level-shown: sight }
seal o2-seal  like h2-seal
seal bag-seal { depth: 120 mm   pipe: 22 mm bore, 1.5 m long   level-shown: sight }
bag {
  volume:           80 L
  rating:           2.2 kPa
  material:         PA-laminate
  place:            "under the open ridge"
}
valve flame-valve { sort: hand }
arrestor { listed-for: hydrogen   distance: 0.4 m   drop: 0.03 kPa at 100 L/h }
burner   { sort: diffusion   flow: 100 L/h   flame-proof: thermocouple }
vent h2-vent { place: outdoors-up   bore: 20 mm   mesh: yes   slope: 4 %   distance: 3 m from o2-vent }
vent o2-vent { place: outdoors-wall   bore: 14 mm   mesh: yes   slope: 4 %   distance: 3 m from h2-vent }
path hydrogen: stack -> h2-column -> h2-tee -> h2-bubbler -> bag
path hydrogen: h2-tee -> h2-seal -> h2-vent -> outdoors
path hydrogen: bag -> bag-seal -> h2-vent
path hydrogen: bag -> flame-valve -> arrestor -> burner
path oxygen:   stack -> o2-column -> o2-tee -> o2-bubbler -> o2-vent -> outdoors
path oxygen:   o2-tee -> o2-seal -> outdoors
purge-point bag-purge { on: bag }

button start-button
stop-button emergency
switch bag-full { senses: bag.volume   breaks: above 66 L   makes: below 50 L   if-wire-breaks: breaks   if-detached: breaks }
trip bag-high   { senses: bag.volume   trips: above 73 L   resets: by hand   if-wire-breaks: trips   if-detached: trips }
trip hot-stack  { senses: stack.temperature   trips: above 62 °C   resets: by hand   if-wire-breaks: trips }
trip h2-low     { senses: h2-column.level   trips: below 200 mm   resets: by hand   if-wire-breaks: trips   if-detached: trips }
trip o2-low     { senses: o2-column.level   trips: below 200 mm   resets: by hand   if-wire-breaks: trips   if-detached: trips }
analyser oxygen-watch { senses: h2-bubbler.oxygen   alarm: above 0.5 %   trips: above 1 %   resets: by hand   if-wire-breaks: trips   if-unpowered: trips }
contactor main {
  latched-by:       start-button
  stopped-by:       emergency,
                    bag-high,
                    hot-stack,
                    h2-low,
                    o2-low,
                    oxygen-watch
}
contactor stack-contactor { needs: main   stopped-by: bag-full }

expect bag.fill-time > 15 min
expect stack.steady-temperature < 62 °C
`,
    },
];

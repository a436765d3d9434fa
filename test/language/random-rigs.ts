/**
 * Random rigs that somebody could build: every size within its usual range, parts joined as they belong together. What holds
 * for any sound rig is tried on them. Also how one property of any rig text is set otherwise.
 */
import fc from 'fast-check';
import { Analyst, Workings } from '../../language/index.js';
import { assemble } from '../../language/rig/assemble.js';
import type { Part } from '../../language/rig/rig.js';

const between = (low: number, high: number, figures = 3) => fc.double({ min: low, max: high, noNaN: true }).map(x => Number(x.toPrecision(figures)));
const whole = (min: number, max: number) => fc.integer({ min, max });
const maybe = <T>(a: fc.Arbitrary<T>) => fc.option(a, { nil: undefined });

const cellsAndLye = fc.record({
    solute: fc.constantFrom('KOH', 'NaOH'), strength: between(8, 34), fill: between(1, 12), cells: whole(1, 60), groups: fc.constantFrom(1, 1, 1, 2, 3),
    width: whole(30, 250), height: whole(40, 300), gap: fc.constantFrom(0, 1, 2, 2.5, 4, 6), plate: fc.constantFrom('nickel', 'stainless-316L', 'stainless-304'),
    electrode: fc.constantFrom('plain', 'plain', 'activated', 'highly-activated', 'mesh'),
    ports: fc.constantFrom(1, 1, 2), portBore: between(2, 8), portLength: whole(10, 200), channel: whole(9, 25),
    separator: fc.constantFrom('composite', 'PP-woven', 'PP-felt', 'none'), sheet: fc.constantFrom(0.3, 0.5, 1, 2), lossKnown: maybe(between(0.5, 20)), heldAt: maybe(whole(20, 85)),
});
/** Volts are given for each cell, amperes for each cm² of plate. */
const feeding = fc.record({
    source: fc.constantFrom('bench', 'bench', 'bench', 'battery', 'bare bridge', 'bridge and capacitor', 'panels'), volts: between(0.8, 3.2), density: between(0.005, 0.4),
    leads: between(0.3, 8), section: fc.constantFrom(2.5, 4, 6, 10, 25), diode: fc.boolean(),
});
const placeAndGas = fc.record({
    coldest: whole(-15, 15), spanOfHeat: whole(5, 35), altitude: whole(0, 3000), room: whole(6, 200), opening: between(0.005, 0.3, 2), fan: maybe(whole(20, 600)),
    column: whole(40, 160), level: whole(120, 350), immersion: whole(20, 200), oxygenImmersion: whole(20, 200), hose: whole(3, 12), hoseLength: between(0.3, 10), cooler: maybe(between(0.3, 6)),
    link: fc.constantFrom('none', 'none', 'returns', 'pumped-loop'), linked: fc.boolean(),
});
const store = maybe(fc.record({ bag: whole(20, 400), displacement: between(3, 20), power: whole(80, 800), clearance: between(2, 12), cylinder: whole(2, 50), cutOff: between(4, 18), tariff: between(0.05, 0.6), life: whole(500, 8000) }));

export const soundRig = fc.tuple(cellsAndLye, feeding, placeAndGas, store).map(([c, f, p, s]) => {
    const squareCentimetres = c.width * c.height / 100;
    const amperes = Number((f.density * squareCentimetres * c.groups).toPrecision(3));
    const volts = Number((f.volts * c.cells).toPrecision(3));
    const source: Record<string, string> = {
        bench: `supply { sort: bench   voltage: ${volts} V   current-limit: ${amperes} A   efficiency: 0.9 }`,
        battery: `battery { sort: LFP   voltage: ${volts} V   capacity: 100 Ah }`,
        'bare bridge': `transformer { sort: toroid   mains: 230 V 50 Hz   power: ${Math.ceil(volts * amperes)} VA   secondary: ${volts} V }\nrectifier { circuit: bridge   reverse-rating: 200 V   sink: 1.5 K/W }`,
        'bridge and capacitor': `transformer { sort: toroid   mains: 230 V 50 Hz   power: ${Math.ceil(volts * amperes)} VA   secondary: ${volts} V }\nrectifier { circuit: bridge   reverse-rating: 200 V   sink: 1.5 K/W }\ncapacitor { capacitance: 40 mF   rating: 250 V   bleed: 470 ohm }`,
        panels: `panels { open-circuit: ${Number((1.25 * volts).toPrecision(3))} V   short-circuit: ${amperes} A }`,
    };
    const first = f.source === 'bench' ? 'supply' : f.source === 'battery' ? 'battery' : f.source === 'panels' ? 'panels' : 'transformer -> rectifier';
    return `rig "Random, sound", built

site { place: shed   volume: ${p.room} m3   openings: ${p.opening} m2 at 2.3 m, ${p.opening} m2 at 0.2 m   coldest: ${p.coldest} °C   hottest: ${p.coldest + p.spanOfHeat} °C   altitude: ${p.altitude} m }
${source[f.source]}
fuse { rating: 40 A   dc-rating: 120 V }
leads { length: ${f.leads} m   section: ${f.section} mm2 }
${f.diode ? 'diode { rating: 60 A }\n' : ''}path current: ${first} -> fuse -> ${f.diode ? 'diode -> ' : ''}leads -> stack

lye { solute: ${c.solute}   strength: ${c.strength} wt%   fill: ${c.fill} L }
${c.separator === 'none' ? '' : `separator { material: ${c.separator}   thickness: ${c.sheet} mm   largest-pore: 20 um }\n`}stack {
  cells:     ${c.cells}
  groups:    ${c.groups}
  wetted:    ${c.width} x ${c.height} mm
  gap:       ${c.gap} mm
  plate:     ${c.plate}, ${c.width + 30} x ${c.height + 40} x 1 mm
  electrode: ${c.electrode}
  port:      ${c.ports} of ${c.portBore} mm, ${c.portLength} mm long
  manifold:  internal, PP, ${c.channel} mm
${c.lossKnown === undefined ? '' : `  heat-loss: ${c.lossKnown} W/K\n`}${c.heldAt === undefined ? '' : `  temperature: ${c.heldAt} °C\n`}}
${p.cooler === undefined ? '' : `cooler { sort: coil-in-column   length: ${p.cooler} m   bore: 8 mm   water: 15 °C, 1 L/min }\n`}${p.fan === undefined ? '' : `fan { sort: extract   flow: ${p.fan} m3/h }\n`}column h2-column { bore: ${p.column} mm   height: ${p.level + 150} mm   level: ${p.level} mm   return-port: ${Math.round(p.level / 3)} mm }
column o2-column like h2-column
${p.linked ? `link { bore: 6 mm   depth: ${p.level - 20} mm   shared: ${p.link} }\n` : ''}path lye: h2-column -> stack.hydrogen
path lye: o2-column -> stack.oxygen
${p.linked ? 'path lye: h2-column -> link -> o2-column\n' : ''}tube h2-hose { bore: ${p.hose} mm   length: ${p.hoseLength} m   material: PVC }
tube o2-hose like h2-hose
bubbler h2-bubbler { immersion: ${p.immersion} mm   water: 0.4 L   minimum: 10 mm }
bubbler o2-bubbler like h2-bubbler { immersion: ${p.oxygenImmersion} mm }
path oxygen: stack -> o2-column -> o2-hose -> o2-bubbler -> outdoors
${s === undefined ? 'path hydrogen: stack -> h2-column -> h2-hose -> h2-bubbler -> outdoors' : `path hydrogen: stack -> h2-column -> h2-hose -> h2-bubbler -> bag -> compressor -> dryer -> cylinder
bag { volume: ${s.bag} L   own-pressure: 0.1 kPa   rating: 2 kPa }
compressor { sort: hermetic-reciprocating   displacement: ${s.displacement} cm3   speed: 2900 rpm   power: ${s.power} W   clearance: ${s.clearance} % }
dryer { desiccant: sieve-13X   mass: 800 g }
cylinder { volume: ${s.cylinder} L   rating: 20 bar }
switch cut-off { senses: cylinder.pressure   breaks: above ${s.cutOff} bar   makes: below ${Number((0.8 * s.cutOff).toPrecision(3))} bar }
relief-valve { set: 19 bar   orifice: 3 mm }
path hydrogen: cylinder -> relief-valve -> outdoors
budget { tariff: ${s.tariff} EUR/kWh   life: ${s.life} h   other: 400 EUR }
routine { hours: 5 h/day }`}
`;
});

/** Rigs from the generator, always the same for a seed. */
export const someRigs = (count: number, seed: number) => fc.sample(soundRig, { numRuns: count, seed });
/** The same, but some of every kind of source. */
export function rigsOfEverySource(each: number, seed: number): string[] {
    const many = someRigs(100 * each, seed);
    const kinds = [/^supply/m, /^battery/m, /^panels/m, /^capacitor/m, /^rectifier(?![^]*^capacitor)/m];
    return kinds.flatMap(kind => many.filter(t => kind.test(t)).slice(0, each));
}
// One reader for all texts: what two of them have in common is read once.
let shown = '';
let others: (file: string) => string | undefined = () => undefined;
const reader = new Analyst(file => (file === 'a.rig' ? shown : others(file)));
const pageOf = (text: string) => {
    shown = text;
    return reader.page('a.rig')!;
};
/** Quantities of a text without the judgement of the rules: many times quicker. `other` gives the texts of other files. */
export function workingsOf(text: string, other: (file: string) => string | undefined = () => undefined): Workings {
    others = other;
    return new Workings(assemble(pageOf(text), file => reader.page(file)));
}

/** The first part of a kind in a text, written in it. */
export function partOf(text: string, kind: string): Part | undefined {
    return pageOf(text).parts.find(p => p.kind?.name === kind);
}
/** The text with one property of the first part of a kind set to a value; undefined where there is no such part to write in. */
export function withProperty(text: string, property: string, value: string): string | undefined {
    const [kind, key] = [property.slice(0, property.indexOf('.')), property.slice(property.indexOf('.') + 1)];
    const part = partOf(text, kind);
    if (!part?.inside) return undefined;
    const entry = part.entries.get(key);
    if (entry) return text.slice(0, entry.span.start) + value + text.slice(entry.span.end);
    // On a line of its own, and none but a space where the part stands on one line.
    return `${text.slice(0, part.inside.start)} ${key}: ${value}${text.includes('\n', part.inside.start) && text.slice(part.inside.start, part.inside.end).includes('\n') ? '\n' : '  '}${text.slice(part.inside.start)}`;
}

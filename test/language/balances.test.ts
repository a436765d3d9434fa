/**
 * What goes into a rig comes out of it: charge, hydrogen, oxygen, water and energy balance on random sound rigs, and absurd
 * ones are told and not choked on. Seeded; `RIGWRIGHT_RUNS` sets how many rigs.
 *
 * Sums of worked-out numbers are held to 1e-9. Where a number is found by iteration its own stated tolerance holds: the
 * current to 1e-5 of itself, the temperature to 0.02 K, the ladder to 1e-11 of its current.
 */
import { readFileSync, readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { FARADAY, GAS_CONSTANT, MOLAR_MASS } from '../../language/physics/constants.js';
import { lyeVapourPressure } from '../../language/physics/lye.js';
import { plateVoltage } from '../../language/physics/polarisation.js';
import { thermoneutralVoltageWithVapour } from '../../language/physics/water-splitting.js';
import { operatingPoint, tunedMake } from '../../language/quantities/operating-point.js';
import { solveStack } from '../../language/quantities/stack-solver.js';
import { sourceModel } from '../../language/quantities/source.js';
import { resultsOf } from '../../language/reference/quantities.js';
import { someRigs, soundRig, withProperty, workingsOf } from './random-rigs.js';

const runs = Number(process.env.RIGWRIGHT_RUNS ?? 48);
const settings = { numRuns: runs, seed: 20260615 };
const EXACT = 1e-9;
/** As a share of the larger, or of `scale` where both may vanish. */
const same = (a: number, b: number, share: number, what: string, scale = 0) => expect(Math.abs(a - b), `${what}: ${a} against ${b}`).toBeLessThanOrEqual(share * Math.max(Math.abs(a), Math.abs(b), scale));

function worked(text: string, workings = workingsOf(text)) {
    const { rig } = workings;
    const result = (name: string) => {
        const part = rig.parts.get(name.slice(0, name.indexOf('.')));
        return part && workings.quantity(part, name.slice(name.indexOf('.') + 1));
    };
    return { workings, rig, result, q: (name: string) => result(name)?.value ?? NaN, stack: workings.viewOf('stack')! };
}

function chargeBalances(w: ReturnType<typeof worked>): void {
    const p = w.stack.model(operatingPoint)!;
    const make = w.stack.model(tunedMake)!;
    const { ladder, groupCurrent: I } = p;
    const n = make.cells;
    expect(ladder.settled, 'the ladder settles').toBe(true);
    same(p.current, I * make.groups, EXACT, 'groups share the current');
    const channels = ladder.ports.length / n;
    for (let j = 0; j < n; j++) {
        let out = 0;
        for (let k = 0; k < channels; k++) out += ladder.ports[k * n + j];
        same((j === 0 ? I : ladder.plates[j - 1]) - (j === n - 1 ? I : ladder.plates[j]), out, EXACT, `charge at cell ${j + 1}`, I);
    }
    for (let k = 0; k < channels; k++) {
        let sum = 0;
        for (let j = 0; j < n; j++) {
            sum += ladder.ports[k * n + j];
            // A channel's ends are closed: what has entered runs on in it.
            same(sum, j === n - 1 ? 0 : ladder.segments[k * (n - 1) + j], EXACT, `charge in channel ${k + 1}`, I);
        }
    }
}
function gasBalances(w: ReturnType<typeof worked>): void {
    const p = w.stack.model(operatingPoint)!;
    const make = w.stack.model(tunedMake)!;
    // Every cell has one cathode: an end plate that carries it all, and the plates between.
    const made = make.groups * (p.groupCurrent + p.ladder.plates.reduce((a, b) => a + b, 0)) / (2 * FARADAY);
    const crossed = w.q('stack.crossover-share') * w.q('stack.current') * make.cells / (2 * FARADAY);
    const hydrogen = w.q('stack.hydrogen-rate');
    const scale = w.q('stack.current') * make.cells / (2 * FARADAY);
    // Where more crosses than is made nothing comes out.
    same(hydrogen, Math.max(0, made - crossed), EXACT, 'hydrogen: made less crossed is delivered', scale);
    same(w.q('stack.oxygen-rate'), hydrogen / 2, EXACT, 'oxygen is half of it');
    const gases = hydrogen * MOLAR_MASS.hydrogen + w.q('stack.oxygen-rate') * MOLAR_MASS.oxygen;
    same(w.q('stack.water-use'), gases, 1e-6, 'mass of the water split is that of its gases (molar masses are rounded to 1e-6)');
    // The moist volume holds dry gas and vapour at the pressure of the air; two thirds of the vapour leave with the hydrogen.
    const moist = w.q('site.air-pressure') * w.q('stack.hydrogen-rate-wet') / (GAS_CONSTANT * w.q('stack.temperature'));
    const vapour = w.q('stack.vapour-loss') / MOLAR_MASS.water;
    if (moist === moist) same(moist, hydrogen + vapour / 1.5, EXACT, 'moist hydrogen is dry gas and vapour');
    const columns = ['h2-column', 'o2-column'].map(name => w.workings.viewOf(name)!);
    const area = Math.PI / 4 * columns[0].num('bore') ** 2;
    const linked = w.rig.parts.has('link');
    const fallen = w.q('h2-column.level-fall') * 998 * area * (linked ? 2 : 1);
    if (fallen === fallen) {
        const gone = w.q('stack.water-use') + w.q('stack.vapour-loss');
        // Columns that do not share their lye fall by what their own side loses: not less than half of it, not more than all.
        if (linked) same(fallen, gone, EXACT, 'water gone is water split and carried off');
        else expect(fallen, 'water gone from one column').toBeLessThanOrEqual(gone * (1 + EXACT));
    }
    if (w.rig.parts.has('cylinder')) {
        if (hydrogen > 0) same(w.q('cylinder.fill-time') * hydrogen, w.q('cylinder.usable-gas'), EXACT, 'the cylinder holds what went in');
        same(w.q('stack.gas-per-day'), hydrogen * 5 / 24, EXACT, 'a day of five hours');
    }
}
function energyBalances(w: ReturnType<typeof worked>, text: string): void {
    const p = w.stack.model(operatingPoint)!;
    const make = w.stack.model(tunedMake)!;
    const source = w.stack.model(sourceModel)!;
    const I = p.groupCurrent;
    const volts = (i: number) => plateVoltage(p.cell, i / make.area);
    const inPlates = p.ladder.plates.reduce((sum, i) => sum + i * volts(i), 0) + I * volts(I);
    same(I * p.voltage, inPlates + p.ladder.channelHeat, 1e-8, 'power into a group: plates and channels (ladder to 1e-11 of its current, its volts to the slope of that)');
    same(w.q('stack.power'), p.voltage * p.current, EXACT, 'power');
    const moles = Math.max(0, make.groups * (I + p.ladder.plates.reduce((a, b) => a + b, 0))) / (2 * FARADAY);
    const vapour = Math.min(0.9 * make.pressure, lyeVapourPressure(make.solute, make.strength, p.temperature));
    same(p.voltage * p.current, 2 * FARADAY * moles * thermoneutralVoltageWithVapour(p.temperature, vapour, make.pressure) + p.heat, EXACT, 'power in: gas, vapour and heat', p.voltage * p.current);
    if (w.stack.says('temperature') !== 'stated' && !p.runsAway && p.temperature > p.room + 0.03) {
        const rest = (T: number) => { const s = solveStack(make, source, p.room, T); return s.heat - s.loss - s.cooling; };
        expect(rest(p.temperature - 0.03), 'steady: a little cooler it warms').toBeGreaterThanOrEqual(0);
        expect(rest(p.temperature + 0.03), 'steady: a little warmer it cools').toBeLessThanOrEqual(0);
    }
    const most = Number.isFinite(source.limit) ? source.limit : Math.min(20000 * make.area * make.groups, source.resistance > 0 ? source.open / source.resistance : Infinity);
    if (p.limitedBy === 'current limit') same(p.current, most, EXACT, 'the limit is what flows');
    else if (p.limitedBy === 'volts') {
        const left = (amperes: number) => {
            const stack = solveStack(make, source, p.room, p.temperature, amperes).voltage;
            return source.currentAt ? source.currentAt(stack) - amperes : source.open - source.diodes - (source.resistance + source.leads) * amperes - stack;
        };
        const near = Math.min(2e-5 * most, p.current / 2);
        expect(left(p.current - near), 'with a little less current the source has more to give').toBeGreaterThanOrEqual(0);
        expect(left(p.current + near), 'a little more is more than it has').toBeLessThanOrEqual(0);
    }
    const wires = (w.q('leads.drop') + (text.includes('\ndiode') ? 0.8 : 0)) * p.current;
    if (w.rig.parts.has('supply')) same(w.q('supply.working-voltage') * p.current, w.q('stack.power') + wires, EXACT, 'power at the terminals: stack, leads and diode');
    if (w.q('stack.hydrogen-rate') > 0) {
        same(w.q('stack.energy-per-volume') * w.q('stack.hydrogen-rate'), w.q('stack.power') * (101325 / (GAS_CONSTANT * 273.15)), EXACT, 'energy for each volume');
        if (text.includes('\nbudget')) same(w.q('budget.gas-cost'), w.q('budget.electricity-cost') + w.q('budget.parts-cost'), EXACT, 'cost');
    }
}
function numbersAreNumbers(w: ReturnType<typeof worked>): void {
    for (const r of resultsOf(w.workings)) {
        if (r.status === 'unknown') continue;
        const what = `${r.part.name}.${r.quantity.name} ${r.low} .. ${r.value} .. ${r.high}`;
        expect([r.value, r.low, r.high].every(Number.isFinite), what).toBe(true);
        expect(r.low <= r.value && r.value <= r.high, what).toBe(true);
    }
}
/** A, what counts as no current. */
const NOTHING = 1e-3;
const whyNone = new Set(['supply-below-reversible', 'supply-below-useful-voltage', 'numbers-wait', 'cannot-check-a-hazard', 'outside-usual-range', 'impossible-geometry']);

describe('random sound rigs', () => {
    it('balance, and every known number is a number', { timeout: 3_600_000 }, () => {
        let running = 0;
        let none = 0;
        let steady = 0;
        fc.assert(fc.property(soundRig, text => {
            const w = worked(text);
            numbersAreNumbers(w);
            // Plates that carry next to nothing hold no voltage: so little is no operating point.
            if (!(w.q('stack.current') > NOTHING)) {
                none++;
                expect(analyseText(text, { today: '2026-06-15' }).findings.filter(f => whyNone.has(f.rule)).map(f => f.rule), 'a finding says why no current flows').not.toEqual([]);
                return;
            }
            running++;
            if (w.stack.says('temperature') !== 'stated') steady++;
            chargeBalances(w);
            gasBalances(w);
            energyBalances(w, text);
        }), settings);
        expect(running, 'rigs that ran').toBeGreaterThan(runs / 2);
        expect(steady, 'rigs whose temperature was found').toBeGreaterThan(0);
        expect(running + none).toBeGreaterThanOrEqual(runs);
    });
    it('charge and numbers of the examples too', () => {
        const folder = new URL('../../examples/', import.meta.url);
        let tried = 0;
        for (const file of readdirSync(folder).filter(f => f.endsWith('.rig'))) {
            const w = worked(readFileSync(new URL(file, folder), 'utf8'));
            numbersAreNumbers(w);
            if (!w.rig.parts.has('stack') || !(w.q('stack.current') > 0)) continue;
            tried++;
            chargeBalances(w);
        }
        expect(tried).toBeGreaterThan(0);
    });
});

/** A property set to what cannot be. (A tariff below 0 can: power is given away at times.) */
const absurd: readonly (readonly [property: string, value: string])[] = [
    ['stack.cells', '0'], ['stack.cells', '-3'], ['stack.cells', '1000000'], ['stack.cells', '2.5'], ['stack.groups', '0'], ['stack.groups', '1000000'],
    ['stack.wetted', '0 x 0 mm'], ['stack.wetted', '-90 x 100 mm'], ['stack.wetted', '1e6 x 1e6 m'], ['stack.gap', '-1 mm'], ['stack.gap', '10 m'],
    ['stack.temperature', '0 K'], ['stack.temperature', '-300 °C'], ['stack.temperature', '5000 °C'], ['stack.port', '0 of 0 mm, 0 mm long'], ['stack.port', '1 of 0 mm, 60 mm long'], ['stack.port', '1 of -5 mm, 60 mm long'],
    ['stack.manifold', 'internal, PP, 0 mm'], ['stack.heat-loss', '-5 W/K'], ['lye.strength', '0 wt%'], ['lye.strength', '100 wt%'], ['lye.strength', '250 wt%'], ['lye.strength', '-20 wt%'], ['lye.fill', '0 L'],
    ['supply.voltage', '0 V'], ['supply.voltage', '-24 V'], ['supply.voltage', '1e9 V'], ['supply.voltage', '2 V'], ['supply.current-limit', '0 A'], ['supply.current-limit', '-5 A'], ['supply.efficiency', '0'],
    ['leads.length', '1e12 m'], ['leads.section', '0 mm2'], ['fuse.rating', '0 A'], ['cylinder.volume', '0 L'], ['cylinder.volume', '-5 L'], ['cylinder.rating', '0 bar'], ['bag.volume', '0 L'],
    ['compressor.displacement', '0 cm3'], ['compressor.clearance', '0'], ['compressor.clearance', '5000 %'], ['compressor.speed', '0 rpm'], ['site.altitude', '100 km'], ['site.volume', '0 m3'], ['site.hottest', '0 K'], ['site.coldest', '900 °C'],
    ['bubbler.immersion', '-5 mm'], ['bubbler.immersion', '0 mm'], ['column.bore', '0 mm'], ['column.level', '-10 mm'], ['column.return-port', '0 mm'], ['tube.bore', '0 mm'], ['tube.length', '-1 m'], ['separator.thickness', '0 mm'], ['separator.largest-pore', '0 um'],
    ['relief-valve.set', '0 bar'], ['relief-valve.orifice', '0 mm'], ['budget.life', '0 h'], ['dryer.mass', '0 g'], ['routine.hours', '90 h/day'], ['fan.flow', '-10 m3/h'],
];
const ordinary = `rig "To be made absurd", built
site { place: shed   volume: 40 m3   openings: 0.05 m2 at 2.3 m, 0.05 m2 at 0.2 m   coldest: 5 °C   hottest: 32 °C   altitude: 200 m }
supply { sort: bench   voltage: 28 V   current-limit: 10 A   efficiency: 0.9 }
fuse { rating: 16 A   dc-rating: 60 V }
leads { length: 1.5 m   section: 4 mm2 }
path current: supply -> fuse -> leads -> stack
lye { solute: KOH   strength: 26 wt%   fill: 4 L }
separator { material: PP-woven   thickness: 0.5 mm   largest-pore: 20 um }
stack { cells: 12   groups: 1   wetted: 90 x 110 mm   gap: 2 mm   plate: nickel, 130 x 150 x 1 mm   port: 1 of 5 mm, 60 mm long   manifold: internal, PP, 16 mm }
column h2-column { bore: 70 mm   height: 380 mm   level: 230 mm   return-port: 80 mm }
column o2-column like h2-column
path lye: h2-column -> stack.hydrogen
path lye: o2-column -> stack.oxygen
tube h2-hose { bore: 8 mm   length: 2 m   material: PVC }
bubbler h2-bubbler { immersion: 90 mm   water: 0.4 L   minimum: 10 mm }
bubbler o2-bubbler like h2-bubbler
path hydrogen: stack -> h2-column -> h2-hose -> h2-bubbler -> bag -> compressor -> dryer -> cylinder
path oxygen: stack -> o2-column -> o2-bubbler -> outdoors
bag { volume: 80 L   own-pressure: 0.1 kPa   rating: 2 kPa }
compressor { sort: hermetic-reciprocating   displacement: 8 cm3   speed: 2900 rpm   power: 150 W   clearance: 5 % }
dryer { desiccant: sieve-13X   mass: 800 g }
cylinder { volume: 20 L   rating: 20 bar }
switch cut-off { senses: cylinder.pressure   breaks: above 12 bar   makes: below 10 bar }
relief-valve { set: 19 bar   orifice: 3 mm }
path hydrogen: cylinder -> relief-valve -> outdoors
fan { sort: extract   flow: 100 m3/h }
budget { tariff: 0.3 EUR/kWh   life: 2000 h   other: 400 EUR }
routine { hours: 5 h/day }
`;
const plain = workingsOf(ordinary);
/** Numbers that do not hang on each other: whatever is made absurd, those of the other parts stay. */
const unrelated = ['site.air-pressure', 'cylinder.pressure-volume', 'leads.resistance', 'h2-bubbler.head', 'separator.pore-limit', 'compressor.displacement-flow', 'budget.parts-total', 'lye.molality'];
const told = (text: string) => analyseText(text, { today: '2026-06-15' }).findings.map(f => `${f.rule} ${f.message}`);

describe('absurd rigs', () => {
    const before = new Set(told(ordinary));
    it.each(absurd)('%s: %s is told, the rest stays, and it is quick', (property, value) => {
        const text = withProperty(ordinary, property, value)!;
        const start = performance.now();
        const { workings, findings } = analyseText(text, { today: '2026-06-15' });
        // A few milliseconds on a quiet machine; the bound catches what hangs.
        expect(performance.now() - start).toBeLessThan(3000);
        expect(findings.map(f => `${f.rule} ${f.message}`).filter(f => !before.has(f)), 'something is told that was not').not.toEqual([]);
        const w = worked(text, workings);
        numbersAreNumbers(w);
        const kind = property.slice(0, property.indexOf('.'));
        for (const name of unrelated) if (w.rig.parts.get(name.slice(0, name.indexOf('.')))?.kindWord !== kind && !(name === 'h2-bubbler.head' && kind === 'site')) expect(w.q(name), name).toBe(worked(ordinary, plain).q(name));
    });
    it.each(['lye', 'supply', 'stack', 'separator', 'site', 'cylinder', 'h2-column', 'compressor'])('without its %s it is told, and the rest stays', name => {
        const part = plain.rig.parts.get(name)!;
        const text = ordinary.slice(0, part.span.start) + ordinary.slice(part.span.end);
        const w = worked(text);
        expect(told(text).filter(f => !before.has(f))).not.toEqual([]);
        numbersAreNumbers(w);
        expect(w.q('leads.resistance')).toBe(worked(ordinary, plain).q('leads.resistance'));
    });
    it('many at once', { timeout: 3_600_000 }, () => {
        fc.assert(fc.property(fc.array(fc.constantFrom(...absurd), { minLength: 2, maxLength: 6 }), changes => {
            const start = performance.now();
            const { workings, findings } = analyseText(changes.reduce((text, [property, value]) => withProperty(text, property, value)!, ordinary), { today: '2026-06-15' });
            expect(performance.now() - start).toBeLessThan(3000);
            numbersAreNumbers(worked('', workings));
            expect(findings.length).toBeGreaterThan(0);
        }), { ...settings, numRuns: Math.ceil(runs / 2) });
    });
    it('changes of a sound rig are found in it', () => expect(someRigs(3, 1).every(t => withProperty(t, 'stack.cells', '7')?.includes('7'))).toBe(true));
});

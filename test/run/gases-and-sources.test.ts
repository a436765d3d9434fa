/** Gases that mix, warmth of a store, layers of a room, sun, battery and fuse: each against a closed form of its own inputs. */
import { describe, expect, it } from 'vitest';
import { hydrogenMoles, hydrogenPressure } from '../../language/physics/hydrogen.js';
import { oxygenClock } from '../../language/physics/ventilation.js';
import { fuseTime } from '../../language/physics/wiring.js';
import { clearLight, panelPower } from '../../language/quantities/source.js';
import { runWithFault } from '../../language/run/faults.js';
import { run, type RunResult } from '../../language/run/run.js';
import { usualDay, type Act, type Scenario } from '../../language/run/scenario.js';
import { q, storing, workingsOf } from './rigs.js';

const HOUR = 3600;
const DENSE = 101325 / (8.314462618 * 293.15);
const last = (r: RunResult, name: string) => r.series.find(s => s.name === name)!.values.at(-1)!;
const when = (r: RunResult, words: RegExp) => r.events.find(e => words.test(`${e.cause}: ${e.then.join(', ')}`))?.t ?? NaN;
type Works = ReturnType<typeof workingsOf>;
/** Nothing pressed unless it is told: a rig that stands. */
const standing = (w: Works, lasts: number, begins: readonly (readonly [string, number])[] = [], acts: readonly Act[] = [], more: Partial<Scenario> = {}): Scenario => ({ ...usualDay(w, lasts), acts, begins: new Map(begins), ...more });
const START: Act = { t: 0, part: 'start-button', what: 'pressed' };

describe('warmth of the store', () => {
    const w = workingsOf();
    it('a cylinder that is moved to a warm place ends at the pressure of its gas there', () => {
        const r = run(w, standing(w, 12 * HOUR, [['cylinder.pressure', 10e5]], [{ t: 60, part: 'cylinder', what: 'warms' }]));
        expect(last(r, 'cylinder.temperature')).toBeCloseTo(333.15, 1);
        const moles = hydrogenMoles(22e-3, 293.15, 10e5 + 101325);
        expect(last(r, 'cylinder.pressure')).toBeCloseTo(hydrogenPressure(22e-3, 333.15, moles) - 101325, -2);
        // Charles, within the little that hydrogen is not ideal.
        expect((last(r, 'cylinder.pressure') + 101325) / 1101325).toBeCloseTo(333.15 / 293.15, 3);
    });
    it('warms with the exponential of its steel, and stands in the sun as far above the air as it sheds what it takes up', () => {
        const sunny = workingsOf([['cylinder { volume: 22 L', 'cylinder { place: "south wall, in the sun"   volume: 22 L']]);
        const r = run(sunny, standing(sunny, 12 * HOUR, [['cylinder.pressure', 1e5]], [], { sun: () => 800 }));
        // 0.8 of the light on the face that looks at it, shed by 10 W/m²/K all round: surface over face is π.
        const rise = 800 * 0.8 / Math.PI / 10;
        expect(last(r, 'cylinder.temperature') - 293.15).toBeCloseTo(rise, 1);
        const width = (22e-3 / Math.PI) ** (1 / 3);
        const tau = (550 * 22e-3 * 470 + hydrogenMoles(22e-3, 293.15, 2e5) * 20.5) / (10 * Math.PI * width * width * 4.5);
        const i = r.times.findIndex(t => t > 1200);
        const warmed = r.series.find(s => s.name === 'cylinder.temperature')!.values[i] - 293.15;
        expect(warmed / (rise * (1 - Math.exp(-r.times[i] / tau)))).toBeCloseTo(1, 2);
        const shaded = workingsOf([['cylinder { volume: 22 L', 'cylinder { place: "shaded from the sun"   volume: 22 L']]);
        expect(last(run(shaded, standing(shaded, HOUR, [], [], { sun: () => 800 })), 'cylinder.temperature')).toBeCloseTo(293.15, 6);
    });
});

describe('the air of the room', () => {
    const hose: readonly (readonly [string, string])[] = [['path hydrogen: stack -> h2-column -> h2-bubbler -> store-bag', 'tube hose { bore: 8 mm }\npath hydrogen: stack -> h2-column -> h2-bubbler -> hose -> store-bag']];
    it('two layers that mix: their difference follows its exponential, and the upper one is the first in danger', () => {
        const w = workingsOf(hose);
        const r = runWithFault(w, { part: 'hose', what: 'comes off' }, 6 * HOUR);
        const rate = r.final.escaped / (r.ended.t - 600);
        const k = 0.5 / HOUR * (3 + 1.5);
        const difference = 3 * r.final['room-above'] - 1.5 * r.final['room-below'];
        // Warm from the start, what is made hardly changes.
        expect(difference / (3 * rate / k * (1 - Math.exp(-k * (r.ended.t - 600))))).toBeCloseTo(1, 2);
        expect(r.final['room-above'] + r.final['room-below']).toBeCloseTo(r.final.escaped, 6);
        const [ceiling, room] = ['ceiling-hydrogen', 'room-hydrogen'].map(name => r.hazards.find(h => h.name === name)?.t ?? NaN);
        expect(ceiling - 600).toBeLessThan(0.7 * (room - 600));
    });
    it('air that comes in low and goes out above carries off what the upper layer holds', () => {
        const w = workingsOf([...hose, ['feed control', 'fan extract { flow: 60 m3/h }\nfeed control']]);
        const r = runWithFault(w, { part: 'hose', what: 'comes off' }, 6 * HOUR);
        const rate = q(w, 'stack.hydrogen-rate');
        // At the end what leaves is what comes: the share above is one over the other.
        expect(r.final['room-above'] / (8 * DENSE) / (rate / DENSE / (60 / HOUR))).toBeCloseTo(1, 1);
    });
    it('a detector under the ceiling sees it before one on the wall', () => {
        const first = (place: string) => when(runWithFault(workingsOf(hose, `${storing.replace('stopped-by: emergency,', 'stopped-by: emergency, watch,')}detector watch { senses: site.hydrogen   place: ${place}   trips: above 0.4 %   resets: by hand }\n`), { part: 'hose', what: 'comes off' }, 6 * HOUR), /^watch trips/);
        expect(first('ridge')).toBeGreaterThan(600);
        expect(first('ridge') - 600).toBeLessThan(0.6 * (first('wall') - 600));
    });
    it('oxygen let into a shut room brings it to 23.5 % when the dilution law says', () => {
        const w = workingsOf([['path oxygen: stack -> o2-column -> o2-bubbler -> o2-vent -> outdoors', 'tube o2-hose { bore: 8 mm }\npath oxygen: stack -> o2-column -> o2-bubbler -> o2-hose -> o2-vent -> outdoors'], ['volume: 24 m3   floor: 3 x 3.5 m   high-point: 2.5 m', 'volume: 6 m3   floor: 1.6 x 1.5 m   high-point: 2.5 m'], ['cylinder { volume: 22 L', 'cylinder { volume: 400 L']]);
        const r = runWithFault(w, { part: 'o2-hose', what: 'comes off' }, 12 * HOUR);
        const expected = oxygenClock(6, q(w, 'stack.hydrogen-rate') / 2 / DENSE, 0.235);
        // The law lets the air that oxygen pushes out carry some of it away; a run keeps all of it: sooner by that share.
        expect((r.hazards.find(h => h.name === 'room-oxygen')!.t - 600) / expected).toBeGreaterThan(0.97);
        expect((r.hazards.find(h => h.name === 'room-oxygen')!.t - 600) / expected).toBeLessThan(1.01);
    });
});

describe('gases that mix', () => {
    it('a draw that does not end: drawn empty, then through the separators, then oxygen in what is stored', () => {
        const w = workingsOf([['bubbler o2-bubbler { immersion: 110 mm }', 'bubbler o2-bubbler { immersion: 120 mm }'], ['largest-pore: 22 um', 'largest-pore: 60 um']]);
        const sticking: Act = { t: 0, part: 'bag-empty', what: 'sticks made' };
        const day = usualDay(w, 3 * HOUR);
        const r = run(w, { ...day, acts: [{ t: 0, part: 'suction-low', what: 'fails to trip' }, sticking, ...day.acts] }, { warm: true });
        const order = r.hazards.map(h => `${h.name} ${h.part}`);
        const found = ['drawn-empty store-bag', 'separators-pass stack', 'oxygen-in-hydrogen store-bag', 'oxygen-in-hydrogen cylinder'].map(h => order.indexOf(h));
        expect(found).toEqual([...found].sort((a, b) => a - b));
        expect(found[0]).toBeGreaterThanOrEqual(0);
        // At the most all the oxygen of the stack comes with its hydrogen: a third.
        const most = Math.max(...r.series.find(s => s.name === 'store-bag.oxygen')!.values);
        expect(most).toBeGreaterThan(0.2);
        expect(most).toBeLessThan(0.34);
        expect(Math.abs(r.balance)).toBeLessThan(1e-6);
    });
    it('a burst bag under a compressor fills the store with air: four parts of nitrogen to one of oxygen', () => {
        const w = workingsOf([['stopped-by: emergency, bag-high, suction-low, high-high', 'stopped-by: emergency, high-high']]);
        const r = run(w, { ...usualDay(w, 2 * HOUR), acts: [START, { t: 1, part: 'bag-full', what: 'sticks made' }, { t: 1, part: 'bag-empty', what: 'sticks made' }, { t: 2, part: 'store-bag', what: 'bursts' }] }, { warm: true });
        expect(r.final['cylinder-nitrogen']).toBeGreaterThan(1);
        expect(r.final['cylinder-oxygen'] / r.final['cylinder-nitrogen']).toBeCloseTo(0.2095 / 0.7905, 2);
        expect(Math.abs(r.balance)).toBeLessThan(1e-6);
    });
    it('the bag comes to what leaves the stack', () => {
        const w = workingsOf();
        const r = run(w, usualDay(w, 8 * HOUR));
        expect(last(r, 'store-bag.oxygen') / q(w, 'stack.oxygen-in-hydrogen')).toBeGreaterThan(0.8);
        expect(last(r, 'store-bag.oxygen') / q(w, 'stack.oxygen-in-hydrogen')).toBeLessThan(1.3);
    });
    it('a torn separator under unequal heads sends hydrogen into the oxygen as a hole does, a sound one and equal heads do not', () => {
        const uneven: readonly (readonly [string, string])[] = [['bubbler o2-bubbler { immersion: 110 mm }', 'bubbler o2-bubbler { immersion: 10 mm }']];
        const torn = (changes: readonly (readonly [string, string])[]) => runWithFault(workingsOf(changes), { part: 'separator', what: 'torn' }, HOUR).hazards.find(h => h.name === 'hydrogen-in-oxygen');
        expect(torn([])).toBeUndefined();
        const hazard = torn(uneven)!;
        expect(hazard.t).toBeCloseTo(600, 0);
        const w = workingsOf(uneven);
        const difference = q(w, 'stack.hydrogen-head') - q(w, 'stack.oxygen-head');
        // Bernoulli through 0.5 mm, less the 0.68 kPa that the wet hole holds.
        const flow = 0.6 * Math.PI / 4 * 0.5e-3 ** 2 * Math.sqrt(2 * (difference - 680) / (2.016e-3 * DENSE));
        const into = flow / (flow + q(w, 'stack.hydrogen-rate') / 2 / DENSE);
        expect(into).toBeGreaterThan(0.04);
    });
    it('a loose joint before the bubbler takes more than one behind it, by the root of the pressures', () => {
        const lost = (part: string) => runWithFault(workingsOf([['path hydrogen: stack -> h2-column -> h2-bubbler -> store-bag', 'tube behind { bore: 8 mm }\npath hydrogen: stack -> h2-column -> h2-bubbler -> behind -> store-bag'], ['own-pressure: 0.1 kPa', 'own-pressure: 0.02 kPa'], ['trips: below 0.05 kPa', 'trips: below 0.001 kPa'], ['immersion: 110 mm }\nbubbler o2', 'immersion: 5 mm }\nbubbler o2']]), { part, what: 'leaks' }, 900).final.escaped;
        const before = 5e-3 * 998 * 9.80665 + 20;
        expect(lost('h2-column') / lost('behind')).toBeCloseTo(Math.sqrt(before / 20), 1);
    });
    it('a link that is blocked: the cathode takes two of water for each hydrogen, the anode gives one back', () => {
        const w = workingsOf([['cylinder { volume: 22 L', 'cylinder { volume: 900 L']]);
        const r = run(w, { ...usualDay(w, 2 * HOUR), acts: [START, { t: 0, part: 'link', what: 'blocked' }] });
        const area = Math.PI / 4 * 0.08 ** 2;
        const apart = last(r, 'o2-column.level') - last(r, 'h2-column.level');
        expect(apart / (3 * 18.015e-3 * r.final.made / 998 / area)).toBeCloseTo(1, 3);
    });
});

describe('what feeds the stack', () => {
    const sourceOf = (lines: string, path: string) => storing
        .replace('supply power { sort: switch-mode   voltage: 26 V   current-limit: 18 A   isolated: yes   needs: main, stack-contactor }\npath current: power -> stack', `${lines}\n${path}`)
        .replace('cylinder { volume: 22 L', 'cylinder { volume: 900 L');
    const converter = 'supply power { sort: converter   current-limit: 12 A   efficiency: 90 %   needs: main, stack-contactor }';
    const bank = (charge: string) => `battery bank { sort: LFP   capacity: 100 Ah   voltage: 25.6 V   charge: ${charge}   internal-resistance: 10 mohm }\n${converter}`;
    it('a battery empties by what its converter draws, and the stack stops with it', () => {
        const w = workingsOf([], sourceOf(bank('60 %'), 'path current: bank -> power -> stack'));
        const r = run(w, usualDay(w, 12 * HOUR));
        const t = when(r, /^bank is empty/);
        expect(last(r, 'bank.charge')).toBeCloseTo(0, 3);
        expect(r.events.find(e => /^bank is empty/.test(e.cause))!.then).toContain('the stack stops');
        // Cold lye wants more volts than the warm one that the numbers at rest are of.
        expect(t / (0.6 * 100 * HOUR / q(w, 'bank.working-current'))).toBeGreaterThan(0.9);
        expect(t / (0.6 * 100 * HOUR / q(w, 'bank.working-current'))).toBeLessThan(1);
        const energy = r.final['stack-energy'];
        expect(0.6 * 100 * HOUR * 25.6 * 0.9 / energy).toBeCloseTo(q(w, 'power.working-voltage') / q(w, 'stack.voltage'), 2);
    });
    it('panels fill it by the light of the hour', () => {
        const w = workingsOf([], sourceOf(`panels roof { open-circuit: 37 V   short-circuit: 11 A   best: 31 V at 10.4 A   count: 1   facing: south, 30° up }\ncharger { sort: tracking   efficiency: 94 % }\n${bank('10 %')}`, 'path current: roof -> charger -> bank -> power -> stack').replace('altitude: 0 m', 'altitude: 0 m   latitude: 48°'));
        const r = run(w, standing(w, 6 * HOUR));
        const [panels] = w.partsOf('panels');
        // From eight to fourteen, in quarters of an hour.
        let charge = 0.1 * 100 * HOUR;
        for (let t = 0; t < 6 * HOUR; t += 900) charge += 900 * 0.94 * w.unnoted(() => panelPower(panels, panels, clearLight(panels, panels, ((8 + (t + 450) / HOUR) / 24 - 0.5) * 2 * Math.PI))) / 25.6;
        expect(last(r, 'bank.charge') / (charge / (100 * HOUR))).toBeCloseTo(1, 2);
        const snow = run(w, standing(w, 6 * HOUR, [], [{ t: 0, part: 'roof', what: 'snowed over' }]));
        expect(last(snow, 'bank.charge')).toBeCloseTo(0.1, 6);
    });
    it('a stack on panels makes gas by day and none by night; under a cloud its gas is less pure', () => {
        const w = workingsOf([], sourceOf('panels roof { open-circuit: 37 V   short-circuit: 11 A   best: 31 V at 10.4 A   count: 1   facing: south, 30° up }', 'path current: roof -> stack').replace('altitude: 0 m', 'altitude: 0 m   latitude: 48°'));
        const light = (level: number) => run(w, { ...usualDay(w, HOUR), sun: () => level });
        const [bright, dim, dark] = [900, 90, 0].map(light);
        expect(dark.final.made).toBe(0);
        // Current goes nearly with the light as long as the stack's volts are below the best; less comes of it, since bypass takes its share first.
        expect(dim.final.made / bright.final.made).toBeGreaterThan(0.03);
        expect(dim.final.made / bright.final.made).toBeLessThan(0.12);
        expect(last(dim, 'store-bag.oxygen')).toBeGreaterThan(4 * last(bright, 'store-bag.oxygen'));
        const day = run(w, usualDay(w));
        expect(day.series.find(s => s.name === 'stack.current')!.values.some(i => i > 5)).toBe(true);
        // The day starts at eight; sixteen hours later it is midnight.
        const night = day.times.findIndex(t => t > 14 * HOUR);
        expect(day.series.find(s => s.name === 'stack.current')!.values[night]).toBe(0);
    });
    it('a limit that fails drives the current up until the fuse acts, as long after as its line says', () => {
        const limited = storing.replace('voltage: 26 V   current-limit: 18 A', 'voltage: 30 V   current-limit: 8 A').replace('path current: power -> stack', 'fuse line-fuse { rating: 10 A   dc-rating: 60 V }\npath current: power -> line-fuse -> stack');
        const w = workingsOf([], limited);
        const r = runWithFault(w, { part: 'power', what: 'limit fails' }, HOUR);
        const t = when(r, /^line-fuse blows/) - 600;
        const i = r.times.findIndex(x => x > 600);
        const current = r.series.find(s => s.name === 'stack.current')!.values;
        expect(current[i]).toBeGreaterThan(16);
        // Lye that warms meanwhile takes more: the fuse acts between what the first and the last current would make of it.
        const before = r.times.findLastIndex(x => x < 600 + t);
        expect(t).toBeLessThan(fuseTime(current[i] / 10) * 1.001);
        expect(t).toBeGreaterThan(fuseTime(current[before] / 10) * 0.999);
        expect(r.events.find(e => /^line-fuse blows/.test(e.cause))!.then).toContain('the stack stops');
        expect(runWithFault(w, { part: 'power', what: 'stops' }, HOUR).events.some(e => e.then.includes('the stack stops'))).toBe(true);
    });
    it('fuses for cables: none at 1.6 times their rating, an hour just above, a second at five times (IEC 60269-1, gG, from memory)', () => {
        expect(fuseTime(1.6)).toBe(Infinity);
        expect(fuseTime(1.6 + 1e-9)).toBeCloseTo(3600, 1);
        expect(fuseTime(5)).toBeCloseTo(1, 6);
    });
});

describe('devices that read wrong or wait', () => {
    it('a set point that drifts acts a tenth later', () => {
        const w = workingsOf();
        const r = run(w, { ...usualDay(w, 4 * HOUR), acts: [{ t: 0, part: 'bag-full', what: 'drifts' }, START] });
        const bag = r.series.find(s => s.name === 'store-bag.volume')!.values;
        expect(bag[r.times.findIndex(t => t >= when(r, /^bag-full makes/))]).toBeCloseTo(60.5e-3, 5);
    });
    it('an analyser with a dead cell never trips', () => {
        const watched = storing.replace('stopped-by: emergency,', 'stopped-by: emergency, watch,') + 'analyser watch { senses: suction-tee.oxygen   trips: above 1 %   resets: by hand }\n';
        const trips = (already: readonly { part: string; what: string }[]) => {
            const w = workingsOf([['largest-pore: 22 um', 'largest-pore: 60 um'], ['bag-high, suction-low, high-high', 'bag-high, high-high']], watched);
            return run(w, { ...usualDay(w, 2 * HOUR), acts: [START, { t: 1, part: 'bag-full', what: 'sticks made' }, { t: 1, part: 'bag-empty', what: 'sticks made' }] }, { warm: true, already }).tripped.includes('watch');
        };
        expect(trips([])).toBe(true);
        expect(trips([{ part: 'watch', what: 'cell dies' }])).toBe(false);
    });
    it('a switch that must see its point for a while waits for it, and starts again when it is lost', () => {
        const slow = workingsOf([['makes: above 55 L   breaks: below 48 L', 'makes: above 55 L for 2 min   breaks: below 48 L']]);
        const plain = workingsOf();
        const times = [slow, plain].map(w => when(run(w, usualDay(w, 3 * HOUR)), /compressor starts/));
        expect(times[0] - times[1]).toBeCloseTo(120, 1);
    });
    it('the gas over the lye shrinks after a stop, and draws the liquid of a bubbler back', () => {
        const w = workingsOf();
        const r = run(w, { ...usualDay(w, 6 * HOUR), acts: [START, { t: HOUR, part: 'emergency', what: 'pressed' }] }, { warm: true });
        const t = when(r, /the gas before o2-bubbler has cooled/);
        const lye = (at: number) => r.series[0].values[r.times.findIndex(x => x >= at)];
        expect(t).toBeGreaterThan(HOUR);
        // 30 wt% lye: 0.59 of the vapour pressure of water by Balej 1985; Antoine for water, from memory.
        const vapour = (kelvin: number) => 0.59 * 133.322 * 10 ** (8.07131 - 1730.63 / (kelvin - 273.15 + 233.426));
        const head = 0.11 * 998 * 9.80665;
        const [from, to] = [lye(HOUR), lye(t)];
        expect(((101325 + head - vapour(from)) * to / from + vapour(to) - 101325) / -head).toBeCloseTo(1, 0);
    });
});

describe('a burner', () => {
    const withBurner = (proof: string) => workingsOf([], `${storing}burner flame { flow: 200 L/h   flame-proof: ${proof} }\ntee bag-tee\npath hydrogen: store-bag -> bag-tee -> flame\n`);
    it('draws from the bag that feeds it, and dies as the bag lies flat', () => {
        const w = withBurner('none');
        const r = run(w, standing(w, 2 * HOUR, [['store-bag.volume', 40e-3]], [{ t: 60, part: 'flame', what: 'lit' }]));
        // From 40 L down to the 2 L that cannot be drawn.
        expect(when(r, /^the bag lies flat/) - 60).toBeGreaterThan(38 / 200 * HOUR);
        expect(when(r, /^the bag lies flat/) - 60).toBeLessThan(1.01 * 38 / 200 * HOUR);
        expect(r.final.used / DENSE).toBeCloseTo(38e-3, 4);
        expect(r.hazards).toEqual([]);
    });
    it('that goes out lets its gas into the room, unless something watches the flame', () => {
        const out = (proof: string) => {
            const w = withBurner(proof);
            return run(w, standing(w, HOUR, [['store-bag.volume', 40e-3]], [{ t: 0, part: 'flame', what: 'lit' }, { t: 120, part: 'flame', what: 'goes out' }])).final.escaped / DENSE;
        };
        expect(out('none')).toBeCloseTo(38e-3 - 200e-3 * 120 / HOUR, 4);
        expect(out('thermocouple')).toBe(0);
    });
    it('a bag that leaks until it is flat draws no air in by itself', () => {
        const w = workingsOf();
        const r = run(w, standing(w, 12 * HOUR, [['store-bag.volume', 40e-3]], [{ t: 0, part: 'store-bag', what: 'leaks' }]));
        expect(r.final['bag-nitrogen']).toBeLessThan(1e-3);
        expect(last(r, 'store-bag.pressure')).toBeCloseTo(0, 0);
    });
    it('one that leaks as much as is made lies flat at the pressure that drives as much through the hole, found in few steps', () => {
        const w = workingsOf([['own-pressure: 0.1 kPa', 'own-pressure: 1 kPa']]);
        const r = run(w, { ...usualDay(w, 12 * HOUR), acts: [START, { t: 60, part: 'store-bag', what: 'leaks' }] }, { warm: true });
        const i = r.times.length - 1;
        const made = (r.final.made - 0) / r.times[i];
        // A sharp hole of 1 mm: volume flow 0.6 A (2 p / density)^0.5 of hydrogen at 20 °C.
        const density = 2.01588e-3 * DENSE;
        const hole = 0.6 * Math.PI / 4 * 1e-6;
        expect(last(r, 'store-bag.pressure') / (density / 2 * (made / DENSE / hole) ** 2)).toBeCloseTo(1, 1);
        expect(Math.abs(r.balance)).toBeLessThan(1e-6);
        expect(r.times.length).toBeLessThan(2000);
    });
});

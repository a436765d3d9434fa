/**
 * Times of the reference rig against closed forms of its inputs, one failure at a time, with whatever would catch it out of action; and in
 * which order things happen. A tenth is allowed: the closed forms leave out the crossover and the little that bypasses the plates, take
 * the stack's volts as they are at 50 °C, and hydrogen as an ideal gas.
 */
import { describe, expect, it } from 'vitest';
import { faultsIn, singleFaultsIn } from '../../language/run/faults.js';
import { run, type RunOptions, type RunResult } from '../../language/run/run.js';
import { TOPPED_UP, usualDay, type Act } from '../../language/run/scenario.js';
import { inputs as i, reference } from './reference-rig.js';
import { q, textOf, workingsOf } from './rigs.js';

const HOUR = 3600;
const TENTH = 0.1;
const R = 8.314462618;
const FARADAY = 96485.33212;
const G = 9.80665;
const WATER = 998.2;
/** m³/mol, of hydrogen at 20 °C. From memory. */
const SECOND_VIRIAL = 14.5e-6;
/** mol/s and, at 20 °C, m³/s: all the current makes gas. */
const made = i.cells * i.current / (2 * FARADAY);
const flow = made * R * i.kelvin / i.air;
/** Pa over each side in ordinary running. */
const heads = { hydrogen: i.own + WATER * G * i.h2Bubbler, oxygen: WATER * G * i.o2Bubbler };

/** Whatever acts on levels and pressures of the low side, out of action. */
const blindLevels: NonNullable<RunOptions['already']> = [{ part: 'h2-low', what: 'fails to trip' }, { part: 'o2-low', what: 'fails to trip' }];
const noSeals: NonNullable<RunOptions['already']> = ['h2-seal', 'o2-seal', 'bag-seal'].map(part => ({ part, what: 'frozen' }));
const failing = (...parts: string[]) => parts.map(part => ({ part, what: 'fails to trip' }));
interface Given {
    readonly lasts: number;
    readonly acts?: readonly Act[];
    readonly begins?: Readonly<Record<string, number>>;
    readonly already?: NonNullable<RunOptions['already']>;
    readonly weather?: (t: number) => number;
    readonly changes?: Parameters<typeof textOf>[0];
    /** Nobody presses the start button. */
    readonly idle?: boolean;
    /** Nobody adds water. */
    readonly unfilled?: boolean;
}
function go({ lasts, acts = [], begins = {}, already = [], weather, changes = [], idle, unfilled }: Given): RunResult {
    const w = workingsOf(changes, reference);
    const day = usualDay(w, lasts);
    const usual = day.acts.filter(a => !(idle && a.what === 'pressed') && !(unfilled && a.what === TOPPED_UP));
    return run(w, { ...day, acts: [...usual, ...acts].sort((a, b) => a.t - b.t), begins: new Map(Object.entries({ 'stack.temperature': i.holds, ...begins })), ...(weather ? { weather } : {}) }, { already });
}
/** A rig whose store takes hours and days to fill. */
const endless = [['volume: 27 L   rating: 16.5 bar', 'volume: 900 L   rating: 16.5 bar']] as const;
const hazard = (r: RunResult, name: string, part?: string) => r.hazards.find(h => h.name === name && (!part || h.part === part))?.t ?? NaN;
const turned = (r: RunResult, name: string, on: boolean, after = 0) => r.switched.find(s => s.name === name && s.on === on && s.t > after)?.t ?? NaN;
const series = (r: RunResult, name: string) => r.series.find(s => s.name === name)!.values;
/** When a series first rises through a value, on a straight line between what is kept. */
function passes(r: RunResult, name: string, value: number): number {
    const v = series(r, name);
    const k = v.findIndex((x, n) => n > 0 && v[n - 1] < value && x >= value);
    return k < 0 ? NaN : r.times[k - 1] + (r.times[k] - r.times[k - 1]) * (value - v[k - 1]) / (v[k] - v[k - 1]);
}
function near(what: string, ours: number, closed: number): void {
    expect(Math.abs(ours / closed - 1), `${what}: ${ours}, closed form ${closed}`).toBeLessThan(TENTH);
}

describe('the reference rig in health', () => {
    const day = go({ lasts: 24 * HOUR, begins: { 'cylinder.pressure': 2e5 } });
    it('ends a day and a night with nothing tripped and no hazard', () => {
        expect(day.hazards).toEqual([]);
        expect(day.tripped).toEqual([]);
        expect(day.ended).toEqual({ t: 24 * HOUR, early: undefined });
        expect(day.starts).toBeGreaterThan(5);
    });
    it('fills its bag and draws it down in their times, and its store as fast as it makes', () => {
        const full = turned(day, 'compressor', true);
        const down = turned(day, 'compressor', false, full);
        near('filling', turned(day, 'compressor', true, down) - down, (i.full - i.empty) / flow);
        near('drawing', down - full, (i.full - i.empty) / (i.delivery - flow));
        // Over whole cycles: from the end of one draw to the end of another.
        const ends = day.switched.filter(s => s.name === 'compressor' && !s.on && s.t > 0).map(s => s.t).slice(0, 6);
        const [from, to] = [ends[0], ends[5]].map(t => series(day, 'cylinder.pressure')[day.times.indexOf(t)]);
        near('bar per hour', (to - from) / 1e5 / ((ends[5] - ends[0]) / HOUR), made * HOUR * R * i.kelvin / i.cylinder / 1e5);
    });
});

describe('the reference rig, one thing broken', () => {
    it('a bag-full switch that never makes: the slack, then the stretch to what the bag bears', () => {
        const r = go({ lasts: HOUR, begins: { 'store-bag.volume': i.full + i.lines }, already: [{ part: 'bag-full', what: 'sticks broken' }, { part: 'bag-pause', what: 'sticks made' }, ...failing('bag-high'), ...noSeals, ...blindLevels] });
        near('slack', turned(r, 'stretched', true), (i.bag - i.full) / flow);
        near('stretch', hazard(r, 'bag-over-rating') - turned(r, 'stretched', true), (i.bag + i.lines) * (i.bagRating - i.own) / i.air / flow);
    });
    const drawn = go({ lasts: HOUR, begins: { 'store-bag.volume': i.full + i.lines }, acts: [{ t: 1, part: 'bag-empty', what: 'sticks made' }], already: [...failing('suction-low'), ...blindLevels] });
    it('a bag-empty switch that never breaks: empty, then the space behind it drawn until the separators pass', () => {
        const empty = turned(drawn, 'at-empty', false);
        near('empty', hazard(drawn, 'drawn-empty') - empty, i.empty / (i.delivery - flow));
        // A pump of constant volume flow on a rigid space that is fed: an exponential towards the pressure at which both are equal.
        const even = i.air * flow / i.delivery;
        const passes = i.air + i.own - i.bubblePoint + (heads.oxygen - heads.hydrogen);
        near('separators', hazard(drawn, 'separators-pass') - hazard(drawn, 'drawn-empty'), i.lines / i.delivery * Math.log((i.air - 200 - even) / (passes - even)));
    });
    it('a bag-empty switch that never breaks, in this order: empty, under the air, through the separators', () => {
        const empty = turned(drawn, 'at-empty', false);
        expect(empty).toBeLessThan(hazard(drawn, 'drawn-empty'));
        expect(hazard(drawn, 'drawn-empty')).toBeLessThan(hazard(drawn, 'separators-pass'));
    });
    it('a bag-empty switch that never breaks: then the oxygen in what is pressed jumps', () => {
        const jumps = hazard(drawn, 'oxygen-in-hydrogen', 'store-bag');
        expect(jumps).toBeGreaterThan(hazard(drawn, 'separators-pass'));
        // The space behind the switch is 1.5 L: the oxygen of the stack fills a twenty-fifth of it within seconds.
        expect(jumps - hazard(drawn, 'separators-pass')).toBeLessThan(10);
    });
    it('a check valve that lets through: the store into the bag, at the speed of sound through the bypass', () => {
        const k = 1.405;
        const through = (bore: number, gauge: number) => 0.8 * Math.PI / 4 * bore ** 2 * (gauge + i.air) * Math.sqrt(k / (R * i.kelvin * 2.016e-3)) * (2 / (k + 1)) ** ((k + 1) / (2 * (k - 1)));
        for (const [gauge, bore] of [[14e5, i.bypass], [10e5, i.bypass], [14e5, 2e-3]] as const) {
            const r = go({ idle: true, lasts: 600, begins: { 'store-bag.volume': i.full + i.lines, 'cylinder.pressure': gauge }, acts: [{ t: 10, part: 'store-check', what: 'leaks back' }], changes: [['orifice: 0.3 mm', `orifice: ${bore * 1e3} mm`]] });
            near(`slack from ${gauge / 1e5} bar by ${bore * 1e3} mm`, turned(r, 'stretched', true) - 10, (i.bag - i.full) * i.air / (R * i.kelvin) / through(bore, gauge));
        }
    });
    const rises = (pascal: number) => pascal * i.cylinder / (R * i.kelvin) / made;
    const welded = (...already: NonNullable<RunOptions['already']>[number][]) => go({ lasts: 2 * HOUR, begins: { 'cylinder.pressure': i.cutOff }, already: [{ part: 'compressor-contactor', what: 'sticks made' }, ...failing('suction-low', 'high-high'), ...blindLevels, ...already] });
    it('a contactor that is welded: the store rises with both gases to its relief, or without it to a tenth over its rating', () => {
        const r = welded();
        // Drawn below what the separators hold, the oxygen of the stack comes along: half as much again.
        near('relief', r.events.find(e => e.acted.includes('store-relief'))!.t, rises(i.rating - i.cutOff) / 1.5);
        expect(r.hazards.some(h => h.name === 'cylinder-over-rating')).toBe(false);
        near('tenth over', hazard(welded({ part: 'store-relief', what: 'sticks shut' }), 'cylinder-over-rating'), rises(1.1 * i.rating - i.cutOff) / 1.5);
    });
    it('a cut-off that never breaks: bagful by bagful to the relief, which then lets out what is made', () => {
        const r = go({ lasts: 24 * HOUR, begins: { 'cylinder.pressure': i.cutOff, 'store-bag.volume': i.full + i.lines }, already: [{ part: 'cut-off', what: 'sticks made' }, ...failing('high-high')] });
        // Each draw brings what was in the bag and what is made meanwhile; between two draws nothing rises.
        const draw = (i.full - i.empty) / (i.delivery - flow);
        const each = draw * i.delivery * i.air / (R * i.kelvin);
        const needed = (i.rating - i.cutOff) * i.cylinder / (R * i.kelvin);
        const whole = Math.floor(needed / each);
        const lifts = r.events.find(e => e.acted.includes('store-relief'))!.t;
        near('relief', lifts, whole * (draw + (i.full - i.empty) / flow) + (needed - whole * each) / each * draw);
        near('relieved per hour', r.final.relieved / (24 - lifts / HOUR), made * HOUR);
    });
    it('a store warmed by 40 K with its room', () => {
        const r = go({ idle: true, lasts: 2 * HOUR, begins: { 'cylinder.pressure': i.cutOff }, weather: t => i.kelvin + 40 * Math.min(1, t / HOUR) });
        near('gauge', series(r, 'cylinder.pressure').at(-1)!, (i.cutOff + i.air) * (i.kelvin + 40) / i.kelvin - i.air);
    });
    it('a store that stands in a warm place is as full as one whose room is warm', () => {
        const r = go({ idle: true, lasts: 12 * HOUR, begins: { 'cylinder.pressure': i.cutOff }, acts: [{ t: 1, part: 'cylinder', what: 'warms' }] });
        near('gauge', series(r, 'cylinder.pressure').at(-1)!, (i.cutOff + i.air) * (i.kelvin + 40) / i.kelvin - i.air);
    });
    /** s until a shut side has pushed its lye down to the port: what the lye makes room for, and what the gas is pressed together by. */
    const toPort = (gas: number) => (i.area * i.port + i.area * (i.headspace + i.port) * 2 * i.port * i.lyeDensity * G / i.air) / gas;
    const shut = { o2: { t: 60, part: 'o2-vent', what: 'blocked' }, h2: { t: 60, part: 'h2-bubbler', what: 'blocked' } };
    it('a way out that is shut: the port of that side is bare first, twice as fast on the hydrogen side, and the separators hold longer', () => {
        for (const [side, part, gas] of [['o2', 'o2-column', flow / 2], ['h2', 'h2-column', flow]] as const) {
            const r = go({ lasts: HOUR, acts: [shut[side]], already: [...noSeals, ...blindLevels] });
            near(`${side} port`, hazard(r, 'port-dry') - 60, toPort(gas));
            expect(r.hazards[0]).toMatchObject({ name: 'port-dry', part });
        }
    });
    it('a way out that is shut, with the seals: neither side gets as far as that', () => {
        for (const side of ['o2', 'h2'] as const) {
            // Within an hour the water that is used does not matter; over a day it does, and the level trips are there for it.
            for (const [lasts, already] of [[HOUR, blindLevels], [24 * HOUR, []]] as const) {
                const r = go({ lasts, acts: [shut[side]], already });
                expect(r.hazards).toEqual([]);
                expect(r.events.flatMap(e => e.acted)).toContain(`${side}-seal`);
            }
        }
    });
    it('a column whose own outlet blocks is caught by its own low level and not at once by that of the other', () => {
        for (const [side, gas] of [['o2', flow / 2], ['h2', flow]] as const) {
            const r = go({ lasts: HOUR, acts: [{ t: 60, part: `${side}-column`, what: 'outlet blocked' }] });
            expect(r.tripped).toEqual([`${side}-low`]);
            expect(r.events.find(e => e.acted.includes(`${side}-low`))!.t - 60).toBeGreaterThan(0.5 * toPort(gas));
        }
    });
    it('a way out that is shut: then lye is at the other outlet, then the mouth of the link is bare; the separators would hold all that', () => {
        /** The same for any shift of the levels: by so much on both sides. */
        const toShift = (shift: number, gas: number) => (i.area * shift + i.area * (i.headspace + shift) * 2 * shift * i.lyeDensity * G / i.air) / gas;
        for (const [side, other, gas] of [['o2', 'h2', flow / 2], ['h2', 'o2', flow]] as const) {
            const r = go({ lasts: HOUR, acts: [shut[side]], already: [...noSeals, ...blindLevels] });
            expect(r.hazards.slice(0, 3).map(h => [h.name, h.part])).toEqual([['port-dry', `${side}-column`], ['lye-carried', `${other}-column`], ['link-bare', `${side}-column`]]);
            near('lye at the other outlet', hazard(r, 'lye-carried') - 60, toShift(i.headspace, gas));
            near('link bare', hazard(r, 'link-bare') - 60, toShift(i.linkMouth, gas));
        }
    });
    it('hot gas that shrinks after a stop draws the water of its bubbler back', () => {
        const r = go({ lasts: 24 * HOUR, acts: [{ t: 1, part: 'emergency', what: 'pressed' }], changes: endless });
        const told = r.events.find(e => /h2-bubbler/.test(e.cause) && /drawn back/.test(e.cause))!;
        const lye = series(r, 'stack.temperature')[r.times.findIndex(t => t >= told.t)];
        // From 50 °C, with 74 mbar of vapour over the lye (30 wt% at 50 °C): the gas is 1.47 kPa above the air at first and as much below it in the end.
        const head = heads.hydrogen - i.own;
        const vapour = (kelvin: number) => 7400 * Math.exp(-5200 * (1 / kelvin - 1 / i.holds));
        const dry = (i.air + head - vapour(i.holds)) / i.holds;
        let [low, high]: [number, number] = [i.kelvin, i.holds];
        while (high - low > 1e-6) {
            const middle = (low + high) / 2;
            if (dry * middle + vapour(middle) - i.air < -head) low = middle;
            else high = middle;
        }
        near('cooled by', i.holds - lye, i.holds - low);
    });
    it('cooling that stops, on the hottest day and at 20 °C', () => {
        // The first closed form is at 25.2 V all the time. In a run the volts fall as the lye warms and more vapour carries heat off, so it takes longer: by what
        // the numbers at rest say of the heat at both ends, with a straight line between them, an exponential again.
        const steady = i.current * (i.volts - i.cells * 1.481);
        const warm = (room: number, from: number, to: number, heat = steady, falls = 0) => {
            const ends = from + (heat - i.loss * (from - room)) / (i.loss + falls);
            return i.capacity / (i.loss + falls) * Math.log((ends - from) / (ends - to));
        };
        const heatAt = (celsius: number) => q(workingsOf([['heat-loss: 3.6 W/K', `heat-loss: 3.6 W/K   temperature: ${celsius} °C`]], reference), 'stack.heat');
        near('heat at 50', heatAt(50), steady);
        const stops = { begins: { 'stack.temperature': i.holds }, already: [{ part: 'cooler', what: 'water fails' }, ...failing('hot-stack')], changes: endless };
        const hot = go({ lasts: 24 * HOUR, weather: () => 313.15, ...stops });
        const falls = (heatAt(50) - heatAt(60)) / 10;
        const to60 = passes(hot, 'stack.temperature', 333.15);
        near('to 60', to60, warm(313.15, 323.15, 333.15, heatAt(50), falls));
        expect(to60).toBeGreaterThan(warm(313.15, 323.15, 333.15));
        // So much less heat that 70 °C is not reached: it ends where the heat has fallen to what the surfaces lose.
        expect(heatAt(70)).toBeLessThan(i.loss * 30);
        near('ends on the hottest day', series(hot, 'stack.temperature').at(-1)! - 313.15, 10 + (heatAt(50) - i.loss * 10) / (i.loss + falls));
        near('ends at 20', series(go({ lasts: 24 * HOUR, ...stops }), 'stack.temperature').at(-1)! - 293.15, 30 + (heatAt(50) - i.loss * 30) / (i.loss + falls));
    });
    it('no water added: the levels fall to their ports', () => {
        const fall = (2 * made * 18.015e-3 / 2 + i.vapour) / 1000 / (2 * i.area);
        near('port', hazard(go({ lasts: 8 * HOUR, changes: endless, already: blindLevels, unfilled: true }), 'port-dry'), i.port / fall);
    });
    const hole = (pascal: number) => 0.6 * Math.PI / 4 * 1e-3 ** 2 * Math.sqrt(2 * pascal / (i.air * 2.016e-3 / (R * i.kelvin)));
    it('a loose joint behind the bubbler leaves a quarter for the bag; before it nothing', () => {
        const filled = (part: string) => {
            const r = go({ lasts: 1200, acts: [{ t: 1e-3, part, what: 'leaks' }], begins: { 'store-bag.volume': 20e-3 } });
            return (series(r, 'store-bag.volume').at(-1)! - 20e-3) / 1200;
        };
        near('after, out of the hole', flow - filled('bag-hose'), hole(i.own));
        expect(hole(heads.hydrogen)).toBeGreaterThan(flow);
        near('before, all that is made', flow - filled('h2-hose'), flow);
    });
    const still: Act = { t: 0, part: 'fan', what: 'stops' };
    it('all that is made into a room without a fan: one and four percent', () => {
        for (const [part, what] of [['h2-hose', 'leaks'], ['h2-hose', 'comes off']]) {
            const r = go({ lasts: 0.04 * i.room / flow, acts: [still, { t: 0, part, what }], already: [...failing('gas-watch'), ...blindLevels], changes: endless });
            near(`${what}: 1 %`, hazard(r, 'room-hydrogen'), 0.01 * i.room / flow);
            near(`${what}: 4 %`, series(r, 'site.hydrogen').at(-1)!, 0.04);
        }
    });
    it('with its fan the room stays under the dilution law, and its upper air goes to the share of what leaks in what the fan takes', () => {
        for (const hours of [0.5, 2, 8]) {
            const r = go({ lasts: hours * HOUR, acts: [{ t: 0, part: 'h2-hose', what: 'comes off' }], already: [...failing('gas-watch'), ...blindLevels], changes: endless });
            // The fan draws from above, where most of it is: less stays than in a room that is stirred.
            expect(series(r, 'site.hydrogen').at(-1)!).toBeLessThan(flow / i.vent * (1 - Math.exp(-hours * HOUR * i.vent / i.room)));
            if (hours === 8) near('above', r.final['room-above'] * R * i.kelvin / i.air / (i.room / 3), flow / i.vent);
            // Without the bubbler's head the levels part at once; the room stays below its limit.
            expect(r.hazards.filter(h => h.part === 'site')).toEqual([]);
        }
    });
    it('oxygen that comes out indoors: 23.5 % of the room by what is made', () => {
        const r = go({ lasts: 20 * HOUR, acts: [still, { t: 0, part: 'o2-vent', what: 'comes off' }], already: blindLevels, changes: [...endless, ['vent o2-vent { place: outdoors-wall   bore: 16 mm }', 'tube o2-vent { bore: 16 mm }']] });
        // Each litre of oxygen takes the place of a litre of air.
        near('23.5 %', hazard(r, 'room-oxygen'), i.room / (flow / 2) * (0.235 - 0.2095) / (1 - 0.2095));
    });
});

describe('closed forms of single laws', () => {
    it('a store empties through a hole exponentially while the gas runs at the speed of sound', () => {
        const k = 1.405;
        const perSecond = 0.8 * Math.PI / 4 * 1e-3 ** 2 * Math.sqrt(k * R * i.kelvin / 2.016e-3) * (2 / (k + 1)) ** ((k + 1) / (2 * (k - 1))) / i.cylinder;
        for (const lasts of [10, 30, 90]) {
            const r = go({ idle: true, lasts, begins: { 'cylinder.pressure': 10e5 }, acts: [{ t: 0, part: 'cylinder', what: 'leaks' }] });
            const [from, to] = [10e5 + i.air, series(r, 'cylinder.pressure').at(-1)! + i.air];
            expect(to * (2 / (k + 1)) ** (k / (k - 1))).toBeGreaterThan(i.air);
            // An exponential of an ideal gas; hydrogen takes a little more room, so that there is less of it to go.
            // The gas works as it leaves and cools its steel by a degree or two, which the exponential does not know.
            expect(Math.abs((Math.log(from / to) - 2 * SECOND_VIRIAL / (R * i.kelvin) * (from - to)) / (perSecond * lasts) - 1)).toBeLessThan(0.02);
        }
    });
    it('lye cools to the room exponentially', () => {
        for (const hours of [1, 4, 16]) {
            const r = go({ idle: true, lasts: hours * HOUR, begins: { 'stack.temperature': 273.15 + 45 } });
            expect(series(r, 'stack.temperature').at(-1)! - i.kelvin).toBeCloseTo(25 * Math.exp(-hours * HOUR * i.loss / i.capacity), 4);
        }
    });
});

describe('the guards of the reference rig', () => {
    const found = faultsIn(workingsOf([], reference));
    const without = (name: string) => found.guards.find(g => g.name === name)!.without;
    it('each one taken away lets something through, or what stands behind it is known', () => {
        const lets = (name: string) => without(name).some(x => x.outcome === 'hazard' || x.outcome === 'escapes');
        expect(found.guards.filter(g => lets(g.name)).map(g => g.name).sort()).toEqual(['gas-watch', 'h2-low', 'o2-low', 'suction-low']);
        const behind: Readonly<Record<string, readonly string[]>> = { 'h2-seal': ['h2-low'], 'o2-seal': ['o2-low'], 'bag-high': ['h2-low'], 'high-high': ['store-relief'] };
        for (const [name, by] of Object.entries(behind)) {
            expect(without(name).length, name).toBeGreaterThan(0);
            expect([...new Set(without(name).flatMap(x => (x.outcome === 'caught' ? [x.caughtBy] : [])))].sort(), name).toEqual(by);
        }
        // Second in line: nothing reaches them first. With those before them out of action they are what is left.
        for (const name of ['bag-seal', 'store-relief']) expect(without(name), name).toEqual([]);
        // Without it the lye ends under 75 °C, all that this stack bears.
        expect([...new Set(without('hot-stack').map(x => x.outcome))]).toEqual(['unseen']);
    });
    it('the bag seal is what is left when switch, trip and level trips fail', () => {
        const bag = go({ lasts: HOUR, begins: { 'store-bag.volume': i.full + i.lines }, already: [{ part: 'bag-full', what: 'sticks broken' }, { part: 'bag-pause', what: 'sticks made' }, ...failing('bag-high'), ...blindLevels, { part: 'h2-seal', what: 'frozen' }] });
        expect(bag.events.flatMap(e => e.acted)).toContain('bag-seal');
        expect(bag.hazards.map(h => h.name)).not.toContain('bag-over-rating');
    });
    it('tells the time from what acts first to the hazard', () => {
        const leak = singleFaultsIn(workingsOf([['volume: 20 m3', 'volume: 12 m3']], reference)).faults.find(f => f.part === 'cylinder' && f.what === 'leaks')!;
        expect(leak).toMatchObject({ outcome: 'hazard', caughtBy: { name: 'gas-watch' } });
        expect(leak.left).toBeCloseTo(leak.hazard!.t - leak.caughtBy!.t, 9);
        expect(leak.left!).toBeGreaterThan(0);
        // Nobody is there in time.
        expect(leak.left!).toBeLessThan(600);
    });
});

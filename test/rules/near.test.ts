/**
 * Close to a limit: noted and not told at 95 % of it, silent at 85 %, told and not noted beyond. One number of a small rig at a time is
 * moved to a share of its limit; what a text can say is turned round where the limit is a least.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Analyst, analyseText } from '../../language/index.js';
import { allRules, rulePage } from '../../language/rules/index.js';
import { nearPlace, nearText, standing } from '../../language/rules/near.js';
import { unitOf } from '../../language/units/unit.js';

const figures = (x: number) => Number(x.toPrecision(6));
const power = 'supply { sort: bench   voltage: 30 V   current-limit: 20 A   isolated: yes }\n';
interface Case {
    readonly rule: string;
    readonly place: string;
    /** The rig with its number at a share of the limit, as far from good as that: 0.95 is near, 1.05 beyond. */
    readonly at: (share: number) => string;
}
const cases: readonly Case[] = [
    { rule: 'pump-dead-ends-separator', place: 'circulation-pump.shut-off-head', at: x => `separator { material: composite   bubble-pressure: 20 kPa }\nstack { cells: 12   wetted: 90 x 110 mm }\ncirculation-pump { flow: 2 L/min   shut-off-head: ${figures(10 * x)} kPa }` },
    { rule: 'connector-overloaded', place: 'leads.rating', at: x => `${power}leads { length: 1 m   section: 6 mm2   ends: plug   rating: ${figures(25 * (2 - x))} A }\nstack { cells: 12   wetted: 110 x 130 mm }\npath current: supply -> leads -> stack` },
    { rule: 'fuse-overloaded', place: 'fuse.rating', at: x => `${power}fuse { rating: ${figures(20 / (0.9 * x))} A   dc-rating: 58 V }\nstack { cells: 12   wetted: 110 x 130 mm }\npath current: supply -> fuse -> stack` },
    { rule: 'current-density-too-high', place: 'stack.wetted', at: x => `supply { sort: bench   voltage: 30 V   current-limit: ${figures(32 * x)} A }\nlye { solute: KOH   strength: 28 wt% }\nstack { cells: 10   wetted: 80 x 100 mm   plate: nickel }` },
    { rule: 'part-rated-below-relief', place: 'hose.rating', at: x => `cylinder { volume: 20 L   rating: 16 bar }\ntee branch\ntube hose { bore: 4 mm   length: 1 m   rating: ${figures(10 * (2 - x))} bar at 20 °C }\nrelief-valve { set: 10 bar   capacity: 8 m3/h hydrogen }\npath hydrogen: bag -> compressor -> check-valve -> hose -> branch -> cylinder\npath hydrogen: branch -> relief-valve -> outdoors` },
    { rule: 'regulator-wrong-kind', place: 'regulator.inlet-rating', at: x => `cylinder { volume: 20 L   rating: 16 bar }\nregulator { listed-for: hydrogen   inlet-rating: ${figures(16 * (2 - x))} bar   set: 0.03 bar }\npath hydrogen: cylinder -> regulator -> burner` },
    { rule: 'cut-off-above-rating', place: 'cut-off.breaks', at: x => `cylinder { volume: 20 L   rating: 12 bar }\nswitch cut-off { senses: cylinder.pressure   breaks: above ${figures(12 * x - 0.3)} bar ± 0.3 bar   makes: below 5 bar }` },
    { rule: 'heads-unequal', place: 'stack', at: x => `stack { cells: 8   wetted: 80 x 100 mm }\nseparator { material: composite   bubble-pressure: 150 kPa }\nbubbler h2-bubbler { immersion: ${figures(60 + 500 * x / 9.787)} mm }\nbubbler o2-bubbler { immersion: 60 mm }\npath hydrogen: stack -> h2-bubbler -> outdoors\npath oxygen: stack -> o2-bubbler -> outdoors` },
    { rule: 'separator-test-failed', place: 'second.oxygen', at: x => `${power}separator { material: composite   bubble-pressure: 150 kPa }\nstack { cells: 12   wetted: 80 x 100 mm }\ntest second { date: 2026-05-02   by: Ana   covers: separator   with: air, wet, hydrogen side alone   oxygen: ${figures(x)} %   result: passed }` },
    { rule: 'feed-water-not-pure', place: 'lye.water-conductivity', at: x => `lye { solute: KOH   strength: 28 wt%   water: distilled   water-conductivity: ${figures(10 * x)} µS/cm }` },
    { rule: 'stack-voltage-above-touch-limit', place: 'stack.cells', at: x => `supply { sort: bench   voltage: ${figures(30 * x)} V   current-limit: 8 A   isolated: yes }\nstack { cells: 12   wetted: 80 x 100 mm   cover: none }` },
    { rule: 'direct-current-arc', place: 'fuse.dc-rating', at: x => `${power}fuse { rating: 30 A   dc-rating: ${figures(0.999 * 30 * (2 - x))} V }\nstack { cells: 12   wetted: 110 x 130 mm }\npath current: supply -> fuse -> stack` },
    { rule: 'lye-carbonates', place: 'lye.carbonate', at: x => `lye { solute: KOH   strength: 28 wt%   carbonate: ${figures(10 * x)} % }` },
    { rule: 'stack-pressure-unrated', place: 'stack.test-pressure', at: x => `${power}stack { cells: 12   wetted: 80 x 100 mm   test-pressure: ${figures(1.5 * 0.979 / x)} kPa }\ncolumn h2-column { bore: 80 mm }\nbubbler deep { immersion: 100 mm }\npath hydrogen: stack -> h2-column -> deep -> outdoors` },
];
const rigOf = (lines: string) => `rig "Near", built\n\n${lines}\n`;
const read = (lines: string, rule: string) => {
    const { near, findings } = analyseText(rigOf(lines), { today: '2026-06-15' });
    return { near: near.filter(n => n.rule === rule), told: findings.filter(f => f.rule === rule) };
};

describe.each(cases.map(c => [c.rule, c] as const))('%s', (rule, { place, at }) => {
    it('is noted at 95 %, silent at 85 %, told beyond', () => {
        const close = read(at(0.95), rule);
        expect(close.told.map(f => f.message)).toEqual([]);
        expect(close.near.map(nearPlace)).toEqual([place]);
        expect(close.near[0].left).toBeCloseTo(0.05, 2);
        const far = read(at(0.85), rule);
        expect([far.near.map(nearText), far.told.map(f => f.message)]).toEqual([[], []]);
        const beyond = read(at(1.05), rule);
        expect(beyond.told.length).toBe(1);
        expect(beyond.near.map(nearText)).toEqual([]);
    });
});

describe('how near a number is', () => {
    it('counts from 20 °C where it is a temperature, from zero elsewhere', () => {
        expect(standing(273.15 + 128, 273.15 + 135, '°C', 'at most').left).toBeCloseTo(7 / 115, 6);
        expect(standing(273.15 - 27, 273.15 - 30, '°C', 'at least').left).toBeCloseTo(3 / 50, 6);
        expect(standing(9, 10, 'bar', 'at most')).toEqual({ over: false, left: 0.1 });
        expect(standing(11, 10, 'bar', 'at least')).toEqual({ over: false, left: 0.1 });
    });
    it('is over from the first figure that counts, and nothing where a number is not known', () => {
        expect(standing(10.0005, 10, 'bar', 'at most')).toEqual({ over: false, left: 0 });
        expect(standing(10.01, 10, 'bar', 'at most').over).toBe(true);
        expect(standing(9.99, 10, 'bar', 'at least').over).toBe(true);
        for (const [a, b] of [[NaN, 1], [1, NaN], [NaN, NaN], [1, Infinity], [0, Infinity]]) {
            const { over, left } = standing(a, b, 'bar', 'at most');
            expect(over || left <= 0.1, `${a} of ${b}`).toBe(false);
        }
    });
    it('is told in units that there are', () => {
        const folder = new URL('../../language/rules/of/', import.meta.url);
        const units = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(f => f.endsWith('.ts'))
            .flatMap(f => [...readFileSync(new URL(f, folder), 'utf8').matchAll(/tell\.(?:exceeds|fallsShort)\(.*?, '([^']*)', /g)].map(m => [f, m[1]] as const));
        expect(units.filter(([, u]) => u && !unitOf(u)).map(([f, u]) => `${f}: ${u}`)).toEqual([]);
        expect(new Set(units.map(([f]) => f)).size).toBeGreaterThan(70);
    });
});

describe('notes', () => {
    it('of every page have numbers, a part that is there, and never more than a tenth left', () => {
        let notes = 0;
        for (const rule of allRules) {
            for (const [, text] of (rulePage(rule.name) ?? '').matchAll(/^```rig\n([\s\S]*?)^```$/gm)) {
                const { near, rig } = analyseText(text, { today: '2026-06-15' });
                for (const n of near) {
                    notes++;
                    expect(rig.parts.has(n.part), `${n.rule} at ${n.part}`).toBe(true);
                    expect(n.left >= 0 && n.left <= 0.1001, `${n.rule}: ${nearText(n)}`).toBe(true);
                    expect(nearText(n)).not.toMatch(/NaN|Infinity/);
                }
            }
        }
        expect(notes).toBeGreaterThan(50);
    });
    const caseOf = (rule: string) => cases.find(c => c.rule === rule)!.at(0.95);
    const notesOf = (text: string, rule: string) => analyseText(text, { today: '2026-06-15' }).near.filter(n => n.rule === rule).length;
    it('wait for the stage from which the rule speaks', () => {
        const text = rigOf(caseOf('separator-test-failed'));
        expect([notesOf(text, 'separator-test-failed'), notesOf(text.replace(', built', ', drawn'), 'separator-test-failed')]).toEqual([1, 0]);
    });
    it('are left out with what follows from a cause that is told', () => {
        const text = rigOf(caseOf('heads-unequal'));
        const torn = text.replace('150 kPa', '0.3 kPa');
        expect(analyseText(torn, { today: '2026-06-15' }).findings.map(f => f.rule)).toContain('bubble-point-below-head');
        expect([notesOf(text, 'heads-unequal'), notesOf(torn, 'heads-unequal')]).toEqual([1, 0]);
    });
    it('are left out where the rule is', () => {
        const text = rigOf(caseOf('feed-water-not-pure'));
        expect([notesOf(text, 'feed-water-not-pure'), notesOf(`${text}weigh feed-water-not-pure as nothing because "rain"\n`, 'feed-water-not-pure'), notesOf(`${text}weigh feed-water-not-pure as warning\n`, 'feed-water-not-pure')]).toEqual([1, 0, 1]);
    });
    it('are kept from edit to edit, and go with the number that made them', () => {
        const lines = (rating: number, note: string) => rigOf(`${note}cylinder { volume: 20 L   rating: 16 bar }\nregulator { listed-for: hydrogen   inlet-rating: ${rating} bar   set: 0.03 bar }\npath hydrogen: cylinder -> regulator -> burner`);
        let text = lines(16.5, '');
        const keeping = new Analyst(() => text);
        const notes = () => keeping.analyse('a.rig', { today: '2026-06-15' }).near.filter(n => n.rule === 'regulator-wrong-kind').map(n => `${nearPlace(n)} ${nearText(n)}`);
        expect(notes()).toEqual(['regulator.inlet-rating 16.5 bar, at least 16 bar: 3.1 % left']);
        text = lines(16.5, '# a line above\n\n');
        expect(notes()).toEqual(['regulator.inlet-rating 16.5 bar, at least 16 bar: 3.1 % left']);
        text = lines(17, '# a line above\n\n');
        expect(notes()).toEqual(['regulator.inlet-rating 17 bar, at least 16 bar: 6.3 % left']);
        text = lines(20, '');
        expect(notes()).toEqual([]);
        text = text.replace(/regulator/g, 'reducer').replace('reducer {', 'regulator reducer {').replace('20 bar   set', '17 bar   set');
        expect(notes()).toEqual(['reducer.inlet-rating 17 bar, at least 16 bar: 6.3 % left']);
    });
});

/** Numbers found, tables and corners: against laws that can be turned round by hand, and against writing the text anew. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Analyst, analyseText, applyFix } from '../../language/index.js';
import { cornersOf } from '../../language/what-if/corners.js';
import { decidedBy } from '../../language/what-if/decides.js';
import { CannotTry } from '../../language/what-if/input.js';
import { sizeFor } from '../../language/what-if/size.js';
import { sweep } from '../../language/what-if/sweep.js';
import type { Workings } from '../../language/quantities/workings.js';

const today = '2026-06-15';
const bench = `rig "Bench", drawn
supply power { sort: bench   voltage: 40 V   current-limit: 10 A }
lye { solute: KOH   strength: 28 wt% }
separator { material: composite   thickness: 0.5 mm }
stack {
  cells: 10
  wetted: 100 x 120 mm
  gap: 2 mm
  port: 1 of 4 mm, 80 mm long
}
bag { volume: 60 L   own-pressure: 0.1 kPa }
seal { depth: 150 mm }
cylinder { volume: 10 L   rating: 12 bar }
path current: power -> stack
path hydrogen: stack -> bag
`;
const value = (workings: Workings, name: string) => workings.quantity(workings.rig.parts.get(name.split('.')[0])!, name.slice(name.indexOf('.') + 1))!.value;
const workingsOf = (text: string) => analyseText(text, { today }).workings;
const size = (expectation: string, by: string, between?: string) => sizeFor(workingsOf(bench), expectation, by, between);

describe('size', () => {
    it('turns a law round that can be turned round by hand', () => {
        // p = rho g h: 3 kPa of water at 998 kg/m³ and 9.80665 m/s² stand 306.5 mm high.
        const found = size('seal.opens-at > 3 kPa', 'seal.depth');
        expect(found.value!).toBeGreaterThanOrEqual(3000 / (998 * 9.80665));
        expect(found.value!).toBeLessThan(1.004 * 3000 / (998 * 9.80665));
        expect(found).toMatchObject({ side: 'at least', text: '307 mm' });
    });
    it.each([
        ['stack.volts-per-cell < 1.95 V', 'stack.wetted'], ['stack.volts-per-cell < 1.9 V', 'power.current-limit'], ['stack.bypass-share < 2 %', 'stack.port.bore'],
        ['bag.fill-time > 90 min', 'bag.volume'], ['stack.hydrogen-rate > 55 NL/h', 'stack.cells'], ['stack.hydrogen-rate = 50 NL/h', 'power.current-limit'],
        ['stack.temperature < 35 °C', 'power.current-limit'],
    ])('what it writes holds, and a little less does not: %s by %s', (expectation, by) => {
        const found = size(expectation, by);
        expect(found.already).toBe(false);
        const text = applyFix(bench, 'rig.rig', found.fix!);
        const after = sizeFor(workingsOf(text), expectation, by);
        if (found.side === 'just there') {
            expect(Number.parseFloat(found.gives!)).toBeCloseTo(50, 0);
            return;
        }
        expect(after.already).toBe(true);
        const back = found.input.counted ? (found.side === 'at least' ? -1 : 1) : (found.side === 'at least' ? -0.02 : 0.02) * found.value!;
        const worse = found.input.at(found.value! + back);
        expect(sizeFor(worse, expectation, by).already).toBe(false);
    });
    it('changes nothing where it holds', () => expect(size('stack.volts-per-cell < 3 V', 'stack.gap').already).toBe(true));
    it('says why there is none', () => {
        expect(size('stack.volts-per-cell < 1.2 V', 'stack.gap').why).toMatch(/^No stack\.gap between .* is enough: it goes from .* V \(at .* mm\) to .* V/);
        expect(size('stack.volts-per-cell < 1.9 V', 'cylinder.volume').why).toMatch(/^It does not depend on cylinder\.volume/);
        expect(size('cylinder.fill-time < 1 h', 'bag.volume').why).toMatch(/not known|not depend/);
    });
    it('looks where it is told', () => {
        expect(size('stack.bypass-share < 2 %', 'stack.port.bore', '3.5..6 mm').value).toBeUndefined();
        expect(size('stack.bypass-share < 2 %', 'stack.port.bore', '1..4 mm').value).toBeGreaterThan(0.001);
    });
    it('writes an assumption that it changes into the text, with the rest of it', () => {
        const text = bench.replace('  port: 1 of 4 mm, 80 mm long\n', '');
        const found = sizeFor(workingsOf(text), 'stack.bypass-share < 3 %', 'stack.port.bore');
        expect(applyFix(text, 'rig.rig', found.fix!)).toMatch(/port:\s+1 of \d\.\d\d mm, 60 mm long/);
    });
    it('never changes a fact of the world', () => {
        expect(size('cylinder.pressure-volume > 20 kJ', 'cylinder.rating')).toMatchObject({ side: 'at least', fix: undefined });
    });
    it.each([
        ['stack.volts', 'stack.gap', /no comparison/], ['stack.voltage < 3', 'stack.gap', /unit is missing/], ['stack.voltage < 20 V', 'stak.gap', /There is no part stak.*stack/],
        ['stack.voltage < 20 V', 'stack.gab', /no property gab.*gap/], ['stack.voltage < 20 V', 'stack', /which of its properties/], ['stack.voltage < 20 V', 'stack.port', /stack\.port\.bore/],
        ['stack.voltage < 20 V', 'lye.solute', /no number/],
    ])('a question without sense is told so: %s by %s', (expectation, by, message) => {
        expect(() => size(expectation, by)).toThrow(message);
        expect(() => size(expectation, by)).toThrow(CannotTry);
    });
});

describe('sweep', () => {
    it('gives in each row what the text with that number gives', () => {
        const { axes, rows } = sweep(workingsOf(bench), ['stack.gap: 1..5 mm'], ['stack.volts-per-cell', 'stack.bypass-share', 'stack.temperature'], 5);
        expect(axes[0].values.map(v => Math.round(v * 1e6) / 1e3)).toEqual([1, 2, 3, 4, 5]);
        for (const row of rows) {
            const workings = workingsOf(bench.replace('gap: 2 mm', `gap: ${row.at[0] * 1000} mm`));
            for (const r of row.results) expect(r.value, r.quantity.name).toBeCloseTo(value(workings, `stack.${r.quantity.name}`), 6);
        }
    });
    it('varies two numbers at once, whole ones in whole steps', () => {
        const { rows } = sweep(workingsOf(bench), ['stack.cells: 8..10', 'power.current-limit: 5..10 A'], ['stack.voltage'], 3);
        expect(rows.map(r => r.at)).toEqual([8, 9, 10].flatMap(cells => [5, 7.5, 10].map(amps => [cells, amps])));
        expect(rows[8].results[0].value).toBeGreaterThan(rows[0].results[0].value);
    });
    it('leaves unknown what is unknown', () => {
        const { rows } = sweep(workingsOf(bench), ['stack.gap: 1..5 mm'], ['cylinder.fill-time'], 2);
        expect(rows.length).toBe(2);
        const none = sweep(workingsOf(bench.replace('strength: 28 wt%', 'strength: unknown')), ['stack.gap: 1..5 mm'], ['stack.voltage'], 2);
        expect(none.rows.map(r => r.results[0].value)).toEqual([NaN, NaN]);
    });
    it.each([
        [[], ['stack.voltage'], /one or two/], [['stack.gap: 1..5 mm'], ['stack.volt'], /no number volt/], [['stack.gap: 5 mm'], ['stack.voltage'], /no range/], [['stack.gap: 1..5 mm'], ['stak.voltage'], /no part stak/],
    ] as const)('tells what makes no sense', (over, of, message) => expect(() => sweep(workingsOf(bench), over, of)).toThrow(message));
});

describe('corners', () => {
    const example = (name: string) => readFileSync(new URL(`../../examples/${name}`, import.meta.url), 'utf8');
    it('looks at every corner that a rig has, and only at those', () => {
        const names = (text: string) => cornersOf(workingsOf(text), { today }).corners.map(c => c.name);
        expect(names(bench)).toEqual(['as described', 'coldest day', 'hottest day', 'quarter of the current', 'empty cylinder', 'full cylinder', 'three idle days']);
        expect(names('rig "R", idea\n')).toEqual(['as described', 'coldest day', 'hottest day']);
    });
    it('says what a rig with that weather and that current says', () => {
        const { corners, lines } = cornersOf(workingsOf(bench), { today });
        const at = (line: string, corner: string) => lines.find(l => l.name === line)!.results[corners.findIndex(c => c.name === corner)]!.value;
        const described = (text: string, name: string) => value(workingsOf(text), name);
        const site = (low: number, high: number) => `${bench}site { coldest: ${low} °C   hottest: ${high} °C }\n`;
        expect(at('lye', 'coldest day')).toBeCloseTo(described(site(5, 5), 'stack.temperature'), 6);
        expect(at('lye', 'hottest day')).toBeCloseTo(described(site(40, 40), 'stack.temperature'), 6);
        expect(at('bypass', 'quarter of the current')).toBeCloseTo(described(bench.replace('current-limit: 10 A', 'current-limit: 2.5 A'), 'stack.bypass-share'), 9);
        expect(at('lye', 'coldest day')).toBeLessThan(at('lye', 'as described'));
    });
    it('tells what a corner breaks, with nothing that was broken before', () => {
        const text = `${bench}expect stack.temperature < 45 °C\nexpect stack.hydrogen-rate > 30 NL/h\nexpect stack.volts-per-cell < 1 V\n`;
        const { corners } = cornersOf(workingsOf(text), { today });
        const broken = (name: string) => corners.find(c => c.name === name)!.breaks.filter(f => f.rule === 'expectation-not-met').map(f => f.message);
        expect(broken('hottest day').join()).toContain('stack.temperature');
        expect(broken('quarter of the current').join()).toContain('stack.hydrogen-rate');
        expect(corners.flatMap(c => c.breaks).some(f => f.message.startsWith('stack.volts-per-cell'))).toBe(false);
    });
    it('says what it could not look at', () => {
        const battery = new Analyst(f => (f.endsWith('bench-shelf.rig') ? example('bench-shelf.rig') : bench.replace('supply power { sort: bench   voltage: 40 V   current-limit: 10 A }', 'battery power { voltage: 25 V }'))).analyse('a.rig', { today });
        expect(cornersOf(battery.workings, { today }).corners.find(c => c.name === 'quarter of the current')!.skipped).toMatch(/turns the current down/);
    });
});

describe('a finding that a guess decides', () => {
    const guessed = bench.replace('  gap: 2 mm\n  port: 1 of 4 mm, 80 mm long\n', '');
    const told = (text: string, rule: string, most = 6) => {
        const analysis = analyseText(text, { today });
        return analysis.findings.filter(f => f.rule === rule).map(f => decidedBy(analysis.workings, f, most, { today }));
    };
    it('names the guess, where the finding would be gone at one end of what is usual', () => {
        // Ports 5 mm wide are only assumed: narrower ones within 30 % let less than a tenth of the current pass.
        const rig = guessed.replace('cells: 10', 'cells: 12');
        expect(told(rig, 'shunt-current-high')).toEqual([['stack.port.bore']]);
        expect(told(rig, 'shunt-current-high', 0)).toEqual([[]]);
    });
    it('names none where no guess could turn it', () => {
        expect(told(guessed.replace('cells: 10', 'cells: 60').replace('40 V', '200 V'), 'shunt-current-high')).toEqual([[]]);
        expect(told(`${bench}expect stack.volts-per-cell < 1 V\n`, 'expectation-not-met')).toEqual([[]]);
    });
});

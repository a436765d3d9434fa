/** What stands after a colon: read, worked out, refused in the maker's words. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { evaluate, isTrouble, type Amount } from '../../language/values/evaluate.js';
import { match } from '../../language/values/match.js';
import { nearest } from '../../language/values/nearest.js';
import { parseValue } from '../../language/values/parse-value.js';
import { conditions, count, facts, points, quantity, rows, schedule, size, slot, threshold, words, type Property } from '../../language/vocabulary/define.js';

const work = (text: string): Amount => {
    const v = parseValue(text);
    expect(v.problems).toEqual([]);
    const w = evaluate(v.list[0][0]);
    if (isTrouble(w)) throw new Error(w.message);
    return w;
};
const trouble = (text: string) => {
    const v = parseValue(text);
    if (v.problems.length) return v.problems[0].message;
    const w = evaluate(v.list[0][0]);
    return isTrouble(w) ? w.message : undefined;
};

describe('arithmetic with units', () => {
    it.each([
        ['12 V', 12], ['-5 °C', 268.15], ['−5 °C', 268.15], ['2 * 3 V', 6], ['(1 + 2) * 4 m', 12], ['10 °C + 5 K', 288.15], ['20 °C - 5 °C', 15], ['2^3', 8], ['-2^2', -4], ['2 m^2', 2],
        ['1/4 in', 0.00635], ['1 1/2 in', 0.0381], ['AWG 10', 5.2612e-6], ['min(3 V, 4 V)', 3], ['max(1 bar, 20 kPa)', 1e5], ['sqrt(4 m2)', 2], ['5 m / 2', 2.5], ['3 kPa + 5 mbar', 3500], ['4 per h', 4 / 3600],
        ['900 L per week', 0.9 / 604800], ['0.25 * 8 A', 2], ['1 h + 20 min', 4800], ['6 bar abs - 1 bar abs', 5e5], ['2e3 Pa', 2000], ['18 %', 0.18],
    ])('%s', (text, si) => {
        expect(work(text).si).toBeCloseTo(si, Math.abs(si) < 1e-3 ? 9 : 6);
    });
    it.each([
        ['12.0 V ± 0.2 V', 11.8, 12.2], ['12 V +/- 2 %', 11.76, 12.24], ['20 °C ± 2 °C', 291.15, 295.15], ['20 °C ± 2 K', 291.15, 295.15], ['40 %..85 %', 0.4, 0.85], ['2..16 bar', 2e5, 16e5], ['100 mm ± 1', 0.099, 0.101],
        ['(10 V ± 1 V) * 2', 18, 22], ['(10 V ± 1 V) - (3 V ± 1 V)', 5, 9],
    ])('%s has bounds', (text, low, high) => {
        expect(work(text).low).toBeCloseTo(low, 6);
        expect(work(text).high).toBeCloseTo(high, 6);
    });
    it.each([
        ['10 °C + 5 °C', /do not add up/], ['3 V + 2 A', /A voltage and a current do not go together/], ['1 / 0', /divides by zero/], ['foo(3)', /not known; there are min/], ['sqrt(-4)', /root of a negative/],
        ['12 volts', /volts is not a unit/], ['12 kPA', /did you mean kPa/], ['2 m ^ 3 s', /exponent/], ['12 V +', /must follow/], ['(3 V', /never closed/], ['"open', /closing quote/], ['3 V ;', /means nothing/], ['2026-02-30', /no day/],
        ['5.', /does not end with a point/], ['bag.', /name must follow/],
    ])('%s is told', (text, message) => {
        expect(trouble(text)).toMatch(message);
    });
    it('tells a decimal comma, with the fix, and does not read it as a number', () => {
        const v = parseValue('1,5 V');
        expect(v.problems[0]).toMatchObject({ code: 'decimal-comma', fix: { text: '1.5' } });
        expect(v.list[0][0].is).toBe('unknown');
        expect(parseValue('23.4 V at 45 A, 24 V at 30 A').problems).toEqual([]);
        expect(parseValue('1, 5 V').problems).toEqual([]);
    });
    it('reads any text, and the same way each time', () => {
        fc.assert(fc.property(fc.string({ unit: 'binary' }), text => {
            const v = parseValue(text);
            for (const p of v.problems) {
                expect(p.start).toBeGreaterThanOrEqual(0);
                expect(p.start).toBeLessThanOrEqual(text.length);
                expect(p.message.length).toBeGreaterThan(5);
            }
            expect(parseValue(text)).toEqual(v);
        }), { numRuns: 500, seed: 4 });
    });
});

const named = (p: Omit<Property, 'name'>): Property => ({ name: 'x', ...p });
const get = (text: string, p: Omit<Property, 'name'>) => {
    const m = match(parseValue(text), named(p), () => undefined);
    return { ...Object.fromEntries([...m.facts].map(([k, f]) => [k, f.sizes ?? f.word ?? f.text ?? f.names?.join('.') ?? Number(f.number.toPrecision(8))])), problems: m.problems.map(x => x.message) };
};

describe('values against their declaration', () => {
    const gasket = facts([[slot('material', { words: ['EPDM', 'PTFE'] })], [slot('free', 'length'), 'to', slot('pressed', 'length')]], '', { example: '' });
    const port = facts([[slot('count', 'count'), 'of', slot('bore', 'length')], [slot('length', 'length'), 'long?']], '', { example: '' });
    it.each([
        ['3 mm', quantity('length', ''), { '': 0.003, problems: [] }],
        ['12', count(''), { '': 12, problems: [] }],
        ['130 x 150 mm', size(2, ''), { '': [0.13, 0.15], problems: [] }],
        ['6x1 mm', size(2, ''), { '': [0.006, 0.001], problems: [] }],
        ['130 x 150 x 1 mm', size(3, ''), { '': [0.13, 0.15, 0.001], problems: [] }],
        ['EPDM, 3 mm to 2.4 mm', gasket, { material: 'EPDM', free: 0.003, pressed: 0.0024, problems: [] }],
        ['1 of 8 mm, 12 mm long', port, { count: 1, bore: 0.008, length: 0.012, problems: [] }],
        ['23.4 V at 45 A', points('voltage', 'current', '', { example: '' }), { y: 23.4, x: 45, problems: [] }],
        ['4 °C at 15:30, -3 °C at 22:00', schedule('temperature', '', { example: '' }), { value: 277.15, at: '15:30', problems: [] }],
        ['above 420 W for 2 min', threshold(''), { side: 'above', value: 420, for: 120, problems: [] }],
        ['3 h 20 min', quantity('time', ''), { '': 12000, problems: [] }],
        ['25 wt%', quantity('mass-fraction', ''), { '': 0.25, problems: [] }],
        ['6 mol/L', quantity('mass-fraction', ''), { '': 6000, problems: [] }],
        ['80 NL/h', quantity('gas-flow', ''), { '': 0.00099144518, problems: [] }],
    ] as const)('%s', (text, p, expected) => {
        expect(get(text, p)).toEqual(expected);
    });
    it.each([
        ['3', quantity('length', ''), /unit is missing: mm/], ['3 V', quantity('length', ''), /A length is expected here, in mm.*V is a voltage/], ['2.5', count(''), /whole number/], ['3 mm', count(''), /plain count/],
        ['EPDN, 3 mm to 2.4 mm', gasket, /did you mean EPDM/], ['EPDM, 3 mm to', gasket, /must follow/], ['130 x mm', size(2, ''), /./], ['130 mm', size(2, ''), /size of 2/], ['briddge', words(['bridge', 'none'], ''), /did you mean bridge/],
        ['23.4 V', points('voltage', 'current', '', { example: '' }), /at/], ['over 3 A', threshold(''), /above or below/i],
    ] as const)('%s is told', (text, p, message) => {
        const v = parseValue(text);
        const told = [...v.problems.map(x => x.message), ...match(v, named(p), () => undefined).problems.map(x => x.message)];
        expect(told.join(' | ')).toMatch(message);
    });
    it('keeps none and unknown apart from silence', () => {
        expect(match(parseValue('none'), named(quantity('length', ''))).says).toBe('none');
        expect(match(parseValue('unknown'), named(quantity('length', ''))).says).toBe('unknown');
        expect(match(parseValue('none'), named(words(['none', 'DC'], ''))).facts.get('')?.word).toBe('none');
    });
    it('reads conditions', () => {
        const m = match(parseValue('main, bag-draw or hand-draw, rest'), named(conditions('')));
        expect(m.rows.map(r => r.get('')!.condition)).toMatchObject([{ join: 'one' }, { join: 'or', of: [{ names: ['bag-draw'] }, { names: ['hand-draw'] }] }, { join: 'one' }]);
        expect(match(parseValue('a or b and c'), named(conditions(''))).problems[0].message).toMatch(/separate items/);
    });
    it('lets a comma before the end pass', () => {
        expect(match(parseValue('a, b,'), named(rows([slot('', { part: [] })], '', { example: '' }))).problems).toEqual([]);
    });
});

describe('did you mean', () => {
    it.each([['suply', 'supply'], ['bublber', 'bubbler'], ['colum', 'column'], ['xyz', undefined], ['a', undefined]])('%s: %s', (typed, meant) => {
        expect(nearest(typed, ['supply', 'bubbler', 'column', 'bag'])).toBe(meant);
    });
});

describe('what no value of a property can be', () => {
    const told = (line: string) => analyseText(`rig "T", drawn\n${line}\n`).findings.filter(f => f.rule === 'value-not-understood').map(f => f.message);
    it('a size below nothing', () => {
        expect(told('tube t { length: -2 m }')).toEqual(['length cannot be below 0; -2 m is.']);
        expect(told('bag b { volume: -60 L }')).toEqual(['volume cannot be below 0; -60 L is.']);
        // What is given away, colder than freezing or under the air's pressure is a number like another.
        expect(told('budget { tariff: -0.02 EUR/kWh }')).toEqual([]);
        expect(told('site { coldest: -12 °C }')).toEqual([]);
    });
    it('none of what there always is', () => {
        expect(told('purpose { audience: none }')[0]).toMatch(/^There is always some audience/);
        expect(told('purpose { audience: unknown }')).toEqual([]);
    });
    it('a plate may tell its thickness alone', () => {
        expect(told('stack { cells: 4   wetted: 80 x 90 mm   plate: nickel, 0.8 mm }')).toEqual([]);
    });
});

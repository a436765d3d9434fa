/** Units against published conversion factors (SP 811, ISO 80000, ASTM B258, ISO 13443), and round trips. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measures, gasDifference } from '../../language/units/dimension.js';
import { digits, duration, show } from '../../language/units/format.js';
import { unitTable } from '../../language/units/table.js';
import { fromSi, toSi, unitBefore, unitOf, unitSpellings } from '../../language/units/unit.js';

const si = (value: number, unit: string) => toSi(value, unitOf(unit)!);

describe('units', () => {
    it.each([
        // NIST SP 811, appendix B.8
        ['psi', 6894.757], ['in', 0.0254], ['ft', 0.3048], ['lb', 0.45359237], ['oz', 0.028349523], ['kgf', 9.80665], ['lbf', 4.4482216],
        ['atm', 101325], ['mmHg', 133.322], ['inH2O', 249.0889], ['mmH2O', 9.80665], ['gal', 3.785412e-3], ['mbar', 100],
        // ISO 80000
        ['bar', 1e5], ['L', 1e-3], ['mL', 1e-6], ['min', 60], ['h', 3600], ['day', 86400], ['kWh', 3.6e6], ['Ah', 3600], ['rpm', 1 / 60],
        ['wt%', 0.01], ['ppm', 1e-6], ['µm', 1e-6], ['um', 1e-6], ['mm2', 1e-6], ['cm³', 1e-6], ['mm^2', 1e-6], ['W/(m2 K)', 1], ['ohm·cm2', 1e-4], ['S/cm', 100],
        ['L/h', 1e-3 / 3600], ['m3/h', 1 / 3600], ['kg/m3', 1], ['mA/cm2', 10], ['EUR/kWh', 1 / 3.6e6], ['°', Math.PI / 180],
    ])('1 %s is %d in SI', (unit, expected) => {
        expect(si(1, unit) / expected).toBeCloseTo(1, 5);
    });
    it('counts normal and standard litres in moles', () => {
        // 22.41396954 L/mol at 0 °C and 23.645 L/mol at 15 °C, both at 101.325 kPa (CODATA 2018; ISO 13443)
        expect(1 / si(1, 'NL')).toBeCloseTo(22.41396954, 5);
        expect(1 / si(1, 'sL')).toBeCloseTo(23.6448, 3);
        expect(si(1, 'Nm3') / si(1, 'NL')).toBeCloseTo(1000, 6);
    });
    it('knows scales with a zero of their own', () => {
        expect(si(0, '°C')).toBeCloseTo(273.15, 9);
        expect(si(-40, '°C')).toBeCloseTo(si(-40, '°F'), 6);
        expect(si(212, '°F')).toBeCloseTo(373.15, 6);
        expect(unitOf('W/(m2·°C)')!.offset).toBe(0);
    });
    it('never takes gauge for absolute', () => {
        expect(unitOf('bar')!.mark).toBeUndefined();
        expect(unitOf('barg')!.mark).toBe('gauge');
        expect(unitOf('bar(g)')!.mark).toBe('gauge');
        expect(unitOf('bar abs')!.mark).toBe('absolute');
        expect(unitOf('psia')!.mark).toBe('absolute');
        expect(unitOf('m abs')).toBeUndefined();
    });
    it('knows wire gauges by their area (ASTM B258: AWG 10 is 5.261 mm², AWG 0 is 53.49 mm²)', () => {
        const area = (n: number) => unitBefore('AWG')!(n).factor * n * 1e6;
        expect(area(10)).toBeCloseTo(5.261, 2);
        expect(area(4)).toBeCloseTo(21.15, 1);
    });
    it('refuses what is no unit', () => {
        for (const text of ['volts', 'mm2^2', 'x', 'bra', '°C^2', 'bar(g)/h', 'L//h', '']) expect(unitOf(text), text).toBeUndefined();
    });
    it('has no spelling twice, and works out every row', () => {
        const spellings = unitTable.flatMap(r => r.spellings.split(' '));
        expect(new Set(spellings).size).toBe(spellings.length);
        for (const s of unitSpellings()) expect(unitOf(s), s).toBeDefined();
    });
    it('offers only units of the right dimension', () => {
        for (const [name, m] of Object.entries(measures)) {
            for (const unit of m.units.filter(Boolean)) {
                const d = unitOf(unit)?.dimension;
                expect(d, `${name}: ${unit}`).toBeDefined();
                expect(d === m.dimension || gasDifference(d!, m.dimension) !== undefined, `${name}: ${unit}`).toBe(true);
            }
        }
    });
    it('goes there and back', () => {
        fc.assert(fc.property(fc.constantFrom(...unitSpellings()), fc.double({ min: -1e6, max: 1e6, noNaN: true }), (spelling, value) => {
            const unit = unitOf(spelling)!;
            expect(Math.abs(fromSi(toSi(value, unit), unit) - value)).toBeLessThan(1e-6 * Math.max(1, Math.abs(value), Math.abs(unit.offset / unit.factor)));
        }), { numRuns: 300, seed: 3 });
    });
});

describe('numbers as people read them', () => {
    it.each([[0.0123456, '0.0123'], [1234.5, '1235'], [99.95, '100'], [0, '0'], [-5.5, '-5.5'], [2.100, '2.1'], [1.5e7, '1.5e7'], [NaN, 'unknown'], [Infinity, 'without limit']])('%d is %s', (value, text) => {
        expect(digits(value)).toBe(text);
    });
    it('shows SI values in a unit', () => {
        expect(show(293.15, '°C')).toBe('20 °C');
        expect(show(0.0025, 'mm')).toBe('2.5 mm');
        expect(show(NaN, 'V')).toBe('unknown');
    });
    it.each([[40, '40 s'], [1500, '25 min'], [12000, '3 h 20 min'], [7200, '2 h'], [864000, '10 days'], [Infinity, 'never']])('%d s is %s', (seconds, text) => {
        expect(duration(seconds)).toBe(text);
    });
});

/** Pages, workings, rows of numbers, and the rigs to start from. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { allQuantities } from '../../language/quantities/index.js';
import { explain, explainable, nearestExplainable } from '../../language/reference/explain.js';
import { handbook } from '../../language/reference/handbook.js';
import { exampleOf } from '../../language/reference/property-text.js';
import { assumptionRows, keyNumbers, quantityRows, resultsOf } from '../../language/reference/quantities.js';
import { templates } from '../../language/reference/templates.js';
import { workingOf, workingText } from '../../language/reference/working.js';
import { formatText } from '../../language/rig/format.js';
import { allRules } from '../../language/rules/index.js';
import { unitOf } from '../../language/units/unit.js';
import { match } from '../../language/values/match.js';
import { parseValue } from '../../language/values/parse-value.js';
import { kinds } from '../../language/vocabulary/index.js';

const today = '2026-06-15';

describe('pages', () => {
    it('there is one for every name that is offered, with its name as title', () => {
        for (const name of explainable()) {
            const page = explain(name);
            expect(page, name).toBeDefined();
            expect(page!.markdown, name).toMatch(/^# \S.*\n\n\S/);
            expect(page!.markdown, name).not.toMatch(/undefined|NaN|\[object|\n{4}/);
        }
    });
    it('and one for every property and quantity of every kind', () => {
        for (const kind of kinds.values()) for (const key of Object.keys(kind.properties)) expect(explain(`${kind.name}.${key}`)?.markdown, `${kind.name}.${key}`).toContain(kind.properties[key].doc);
        for (const q of allQuantities) {
            for (const of of [q.of].flat()) {
                const { markdown } = explain(`${of}.${q.name}`)!;
                for (const said of [q.meaning, q.formula, q.source, q.range ?? '']) expect(markdown, `${of}.${q.name}`).toContain(said);
            }
        }
    });
    it('of a rule say why, where the limit is from, how grave it is, and leave the last word to others', () => {
        for (const rule of allRules) {
            const { markdown } = explain(rule.name)!;
            expect(markdown).toContain(rule.source);
            expect(markdown).toContain(`Usually: ${rule.severity}.`);
            expect(markdown).toMatch(/Local codes and licensed practice decide\.\*$/);
        }
    });
    it('of a kind list what can be said and what is worked out', () => {
        const { markdown } = explain('stack')!;
        expect(markdown).toContain('| gap |');
        expect(markdown).toContain('| volts-per-cell |');
        expect(markdown).toMatch(/\| 2\.5 mm \(.+\) \|/);
    });
    it('of a property tell form, default with reason and source, usual range', () => {
        const { markdown } = explain('stack.gap')!;
        expect(markdown).toMatch(/Written: a length \(mm/);
        expect(markdown).toMatch(/If not said: 2\.5 mm.*, .+ \(.+\)\./);
        expect(explain('cylinder.rating')!.markdown).toContain('A fact: no fix changes it.');
    });
    it('of a unit tell what it is in others, from published factors', () => {
        // NIST SP 811 (2008), Appendix B.8: 1 psi = 6.894757 kPa, 1 bar = 100 kPa, 1 mmH2O = 9.80665 Pa, 1 in = 25.4 mm.
        expect(explain('psi')!.markdown).toContain('1 psi = 0.06895 bar = 6.895 kPa');
        expect(explain('bar')!.markdown).toMatch(/1 bar = 100 kPa = 100000 Pa/);
        expect(explain('mmH2O')!.markdown).toContain('= 9.807 Pa');
        expect(explain('in')!.markdown).toContain('1 in = 25.4 mm');
        expect(explain('°C')!.markdown).toContain('0 °C is 273.15 K');
        // ASTM B258: AWG 10 has 5.261 mm².
        expect(explain('AWG')!.markdown).toContain('| AWG 10 | 5.26 mm2 |');
        expect(explain('bara')!.markdown).toContain('Counted from vacuum.');
        expect(explain('kPa')!.markdown).toContain('above the air outside');
        expect(explain('NL')!.markdown).toMatch(/0 °C and 101\.325 kPa/);
        expect(explain('EUR')!.markdown).not.toContain('USD');
    });
    it('of words of the language say how they are written', () => {
        expect(explain('path')!.markdown).toContain('`path hydrogen: ');
        expect(explain('drawn')!.markdown).toContain('A stage');
        expect(explain('none')!.markdown).toContain('there is no such thing');
    });
    it('of runs tell what counts as a hazard, what is followed and what is left out', () => {
        const page = explain('run')!.markdown;
        for (const words of ['A bag at the pressure that it bears', 'switch: sticks made', 'The small gas spaces over the lye follow at once', '1 mm']) expect(page).toContain(words);
        expect(explain('faults')!.markdown.split('\n').slice(1)).toEqual(page.split('\n').slice(1));
    });
    it('do not exist for what has no meaning; the nearest name is offered', () => {
        for (const name of ['', 'nothing-of-the-kind', 'stack.', '.gap', 'stack.nothing', 'constructor', '__proto__', 'toString', 'stack.constructor']) expect(explain(name), name).toBeUndefined();
        expect(nearestExplainable('relief-mising')).toBe('relief-missing');
        expect(nearestExplainable('stack.volts-per-sell')).toBe('stack.volts-per-cell');
        expect(nearestExplainable('stak.gap')).toBe('stack.gap');
        expect(nearestExplainable('qqqqqqqq')).toBeUndefined();
    });
});

describe('the handbook', () => {
    const text = handbook();
    it('has every kind, property, quantity, rule and word', () => {
        for (const kind of kinds.keys()) expect(text).toContain(`\n## ${kind}\n`);
        for (const q of allQuantities) expect(text).toContain(q.meaning);
        for (const r of allRules) expect(text).toContain(`| ${r.name} | ${r.severity} |`);
        expect(text).toContain('| allow |');
    });
    it('has tables whose rows are as wide as their heads', () => {
        let width = 0;
        for (const line of text.split('\n')) {
            if (!line.startsWith('|')) width = 0;
            else {
                const cells = line.split(/(?<!\\)\|/).length;
                expect(cells, line).toBe(width || cells);
                width = cells;
            }
        }
    });
});

describe('declarations', () => {
    it('assume values that can be read where they would be written', () => {
        for (const kind of kinds.values()) {
            for (const p of Object.values(kind.properties)) {
                if (!p.assume) continue;
                const m = match(parseValue(p.assume.value), p);
                expect(m.problems.map(x => x.message), `${kind.name}.${p.name}: ${p.assume.value}`).toEqual([]);
            }
        }
    });
    it('have examples without marks left in them', () => {
        for (const kind of kinds.values()) for (const p of Object.values(kind.properties)) expect(exampleOf(p), `${kind.name}.${p.name}`).not.toMatch(/[${}|]/);
    });
    it('know the numbers that are shown by themselves', () => {
        const names = new Set(allQuantities.map(q => q.name));
        expect([...keyNumbers].filter(n => !names.has(n))).toEqual([]);
    });
});

describe('workings', () => {
    const { rig, workings } = analyseText(templates.find(t => t.name === 'bench')!.text.replace('cells:            10', 'cells:            10   # as bought'), { today });
    const result = workings.quantity(rig.parts.get('stack')!, 'hydrogen-rate')!;
    it('give formula, source, and every input with its origin', () => {
        const text = workingText(result, { depth: 4, rig });
        expect(text).toContain(result.quantity.formula);
        expect(text).toContain(result.quantity.source);
        const line = (text: string, part: string) => text.split('\n').find(l => l.trim().startsWith(part)) ?? '';
        const cells = rig.pages[0].text.split('\n').findIndex(l => l.startsWith('  cells:')) + 1;
        expect(line(text, 'stack.cells =')).toMatch(new RegExp(`= 10 +stated, line ${cells}$`));
        expect(line(text, 'stack.groups =')).toMatch(/= 1 +assumed: \S/);
        expect(line(text, 'stack.faraday-efficiency =')).toMatch(/% .*worked out: \S/);
    });
    it('say each input once, and go no deeper than asked', () => {
        const steps = workingText(result, { depth: 9 }).split('\n').filter(l => / = /.test(l) && l.startsWith('  ')).map(l => l.trim().split(' = ')[0]);
        expect(new Set(steps).size).toBe(steps.length);
        const shallow = workingText(result, { depth: 1 });
        expect(shallow.split('\n').filter(l => / = /.test(l) && l.startsWith('  '))).toHaveLength(result.inputs.length);
        expect(workingText(result, { depth: 3 }).length).toBeGreaterThan(shallow.length);
    });
    it('say the same as Markdown', () => {
        const markdown = workingOf(result, { rig });
        expect(markdown).toMatch(/^\*\*stack\.hydrogen-rate = [\d.]+ NL\/h/);
        expect(markdown).toMatch(/\n- stack\.faraday-efficiency = [\d.]+ %.* \(worked out: /);
        expect(markdown).toMatch(/\n {2}- stack\.bypass-share = /);
    });
    it('of what is not known say what is missing', () => {
        const { rig, workings } = analyseText('rig "R", idea\ncylinder { rating: 20 bar }\n', { today });
        const unknown = resultsOf(workings).find(r => r.part.name === 'cylinder' && r.missing.length)!;
        expect(workingText(unknown, { rig })).toMatch(/Not known, because .*cylinder\.volume.* (is|are) not given\./);
    });
    it('exist for every number of every template', () => {
        for (const t of templates) {
            const { rig, workings } = analyseText(t.text, { today });
            for (const r of resultsOf(workings)) {
                for (const text of [workingText(r, { rig, depth: 6 }), workingOf(r, { rig, depth: 6 })]) expect(text, `${t.name} ${r.part.name}.${r.quantity.name}`).not.toMatch(/undefined|NaN|\[object/);
            }
        }
    });
});

describe('rows of numbers', () => {
    const { workings } = analyseText(`rig "R", built
supply { voltage: 24 V ± 2 %   current-limit: 9 A }
leads { section: AWG 12   length: 1 m }
stack {
  cells:            11
  wetted:           80 x 95 mm
  port:             1 of 4 mm, 70 mm long
  temperature:      48 °C ± 2 K
}
fuse { rating: 16 A }
fuse spare like fuse
reading warm { date: 2026-05-04 16:10   stack.temperature: 47 °C ± 1 K   stack.voltage: 22.9 V }
budget { tariff: 0.28 GBP/kWh }
`, { today });
    const rows = quantityRows(workings);
    const row = (name: string, status?: string) => rows.find(r => r.name === name && (!status || r.status === status))!;
    it('are in the unit of the writer, with SI beside', () => {
        expect(row('supply.voltage')).toEqual({ name: 'supply.voltage', value: 24, unit: 'V', si: 24, status: 'stated', plusMinus: 0.48, low: 23.52, high: 24.48, source: 'stated, line 2' });
        expect(row('stack.port.bore')).toMatchObject({ value: 4, unit: 'mm', si: 0.004, status: 'stated' });
        // ASTM B258: AWG 12 has 3.309 mm².
        expect(row('leads.section')).toMatchObject({ unit: 'mm2' });
        expect(row('leads.section').value).toBeCloseTo(3.309, 2);
        expect(row('stack.temperature', 'measured')).toMatchObject({ value: 47, unit: '°C', si: 320.15, plusMinus: 1 });
        expect(row('spare.rating')).toMatchObject({ value: 16, source: expect.stringMatching(/^as fuse/) });
    });
    it('have a value that is their SI number in their unit', () => {
        for (const r of rows) {
            if (r.si === null || !r.unit) continue;
            const unit = unitOf(r.unit)!;
            expect(unit, `${r.name} ${r.unit}`).toBeDefined();
            expect(r.value! * unit.factor + unit.offset, r.name).toBeCloseTo(r.si, 9 - Math.ceil(Math.log10(Math.abs(r.si) + 1e-12) + 5));
        }
    });
    it('count money in the currency of the tariff', () => {
        const costs = rows.filter(r => r.name.startsWith('budget.') && r.status === 'computed' && /GBP|EUR/.test(r.unit));
        expect(costs.length).toBeGreaterThan(0);
        for (const r of costs) expect(r.unit).toContain('GBP');
    });
    it('list what was assumed only where a number rests on it, each once', () => {
        const assumed = assumptionRows(workings);
        expect(new Set(assumed.map(a => a.name)).size).toBe(assumed.length);
        expect(assumed.map(a => a.name)).toContain('stack.gap');
        expect(assumed.map(a => a.name)).not.toContain('stack.cells');
        for (const a of assumed) {
            const [part, key] = a.name.split('.');
            expect(workings.given(workings.rig.parts.get(part)!, key).assumedText, a.name).toBe(a.value);
            expect(a.because.length).toBeGreaterThan(3);
            expect(a.source).not.toBe('');
        }
    });
});

describe('templates', () => {
    it.each(templates.map(t => [t.name, t] as const))('%s is read and judged without an error or a warning, and is tidy', (_, t) => {
        const { findings, workings } = analyseText(t.text, { today });
        expect(findings.filter(f => f.severity !== 'hint').map(f => `${f.rule}: ${f.message}`)).toEqual([]);
        expect(formatText(t.text)).toBe(t.text);
        expect(resultsOf(workings).filter(r => r.value === r.value).length).toBeGreaterThan(20);
    });
    it('keep what they expect', () => {
        for (const t of templates) expect(analyseText(t.text, { today }).findings.filter(f => f.rule === 'expectation-not-met')).toEqual([]);
    });
});

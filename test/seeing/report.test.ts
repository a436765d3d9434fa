/** The report: what must stand in it, what must not, and that it is a page like any other. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { Analyst, analyseText } from '../../language/index.js';
import { asHtml, asMarkdown } from '../../language/seeing/report/page.js';
import { reportOf, type ReportOptions } from '../../language/seeing/report/report.js';
import { showResult } from '../../language/reference/values.js';
import { storing } from '../run/rigs.js';

const folder = path.resolve(import.meta.dirname, '../../examples');
const read = (f: string) => {
    try {
        return readFileSync(f, 'utf8');
    } catch {
        return undefined;
    }
};
const of = (name: string, options: ReportOptions = {}) => {
    const analysis = new Analyst(read).analyse(path.join(folder, name), { today: '2026-06-15' });
    return { analysis, report: reportOf(analysis, { today: '2026-06-15', ...options }) };
};
const fromText = (text: string, options: ReportOptions = {}) => reportOf(analyseText(text, { today: '2026-06-15' }), { today: '2026-06-15', ...options });

describe('the report', () => {
    const { analysis, report } = of('potters-burner.rig', { faults: false });
    it('has its sections, what decides first and cautions next', () => {
        expect(report.sections.map(s => s.name).slice(0, 6)).toEqual(['decide', 'cautions', 'site', 'drawing', 'section', 'numbers']);
        for (const name of ['findings', 'set-points', 'assumed', 'day', 'cost', 'sources', 'not-checked']) expect(report.sections.map(s => s.name)).toContain(name);
        for (const s of report.sections) expect(s.lead).toMatch(/\.$/);
    });
    it('tells the numbers that show tells', () => {
        const html = asHtml(report);
        for (const name of ['hydrogen-rate', 'temperature', 'plug-power']) expect(html).toContain(showResult(analysis.workings.quantity(analysis.rig.parts.get('stack')!, name)!));
        expect(html).toContain('34 mL of petrol');
    });
    it('is valid HTML that stands by itself', async () => {
        const html = asHtml(report);
        const { results } = await new HtmlValidate({ extends: ['html-validate:standard'], rules: { 'long-title': 'off', 'no-inline-style': 'error' } }).validateString(html);
        expect(results.flatMap(r => r.messages.map(m => `${m.ruleId}: ${m.message} (${m.line}:${m.column})`))).toEqual([]);
        expect(html).not.toMatch(/(?:src|href)="(?!#)|url\(|<script|@import/);
        expect(html).toContain('Content-Security-Policy');
    });
    it('as Markdown has tables whose rows are as wide as their heads', () => {
        const lines = asMarkdown(report).split('\n');
        const wide = (l: string) => l.replace(/\\\|/g, '').split('|').length;
        for (const [i, l] of lines.entries()) if (/^\|[-:|]+\|$/.test(l)) for (let k = i - 1; lines[k]?.startsWith('|') && k < lines.length; k++) expect(wide(lines[k]), lines[k]).toBe(wide(l));
    });
});
describe('what is shared', () => {
    it('leaves the store out, and says so; with storage on request', () => {
        const without = asHtml(fromText(storing, { faults: false }));
        expect(without).toContain('leaves out the store');
        expect(without).not.toContain('data-part="cylinder"');
        expect(without).not.toContain('cut-off breaks');
        expect(without).toContain('data-part="store-bag"');
        const whole = asHtml(fromText(storing, { faults: false, withStorage: true }));
        expect(whole).not.toContain('leaves out the store');
        expect(whole).toContain('data-part="cylinder"');
        expect(whole).toContain('cut-off breaks');
    });
    it('faults are never left out, whatever else is', () => {
        const md = asMarkdown(fromText(storing));
        expect(md).toContain('A single failure reaches a hazard');
        expect(md).toMatch(/cylinder leaks/);
        expect(md).toContain('What would help');
    });
    it('tells what a guess decides, where texts are there to be tried', () => {
        const text = 'rig "Close", built\nsupply { sort: bench   voltage: 22 V   current-limit: 12 A   isolated: yes }\nlye { solute: KOH   strength: 28 wt% }\nstack { cells: 10   wetted: 100 x 120 mm }\npath current: supply -> stack\nexpect stack.hydrogen-rate > 20 NL/h\n';
        const report = fromText(text, { faults: false, textOf: () => text });
        const flips = report.sections.find(s => s.name === 'flips')!;
        expect(flips.blocks.length).toBe(1);
        expect(asMarkdown(report)).toContain('What a guess decides');
    });
});
describe('bad input', () => {
    it('names with signs of other languages are only names', () => {
        const text = 'rig "<img src=x onerror=alert(1)> | [a](http://x)", drawn\nstack { cells: 4   wetted: 80 x 100 mm }\nsite { place: shed }\n';
        const html = asHtml(fromText(text, { faults: false }));
        expect(html).not.toContain('<img');
        const md = asMarkdown(fromText(text, { faults: false }));
        expect(md).not.toMatch(/(?<!\\)<img|(?<!\\)\[a\]/);
    });
    it.each(['rig "Nothing"\n', 'rig "One"\nstack { cells: 3 }\n', 'rig "Broken"\nstack { cells: \npath hydrogen: -> \n', ''])('a rig of little gives what is known: %j', text => {
        const html = asHtml(fromText(text));
        expect(html).toContain('Cautions first');
        expect(html).toContain('Not checked here');
        expect(html).not.toMatch(/NaN|undefined|Infinity/);
    });
});

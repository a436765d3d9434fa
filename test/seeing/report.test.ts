/** The report: what must stand in it, what must not, and that it is a page like any other. */
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { HtmlValidate } from 'html-validate';
import { chromium } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { Analyst, analyseText } from '../../language/index.js';
import { resultsOf, isKeyNumber } from '../../language/reference/quantities.js';
import { showResult, showSpread } from '../../language/reference/values.js';
import { asHtml, asMarkdown, type Report } from '../../language/seeing/report/page.js';
import { reportOf, type ReportOptions } from '../../language/seeing/report/report.js';
import { withoutStore } from '../../language/seeing/report/store.js';
import { browserFlags, browserPath, itInBrowser } from '../browser.js';
import { callIn } from '../command/call.js';
import { storing } from '../run/rigs.js';

const folder = path.resolve(import.meta.dirname, '../../examples');
const read = (f: string) => {
    try {
        return readFileSync(f, 'utf8');
    } catch {
        return undefined;
    }
};
const today = '2026-06-15';
const example = (name: string) => new Analyst(read).analyse(path.join(folder, name), { today });
const of = (name: string, options: ReportOptions = {}) => {
    const analysis = example(name);
    return { analysis, report: reportOf(analysis, { today, ...options }) };
};
const fromText = (text: string, options: ReportOptions = {}) => reportOf(analyseText(text, { today }), { today, ...options });
/** Words of a page without its tags. */
const wordsOf = (html: string) => html.replace(/<style>[\s\S]*?<\/style>/, '').replace(/<[^>]+>/g, ' ').replace(/&#(\d+);/g, (_, n) => String.fromCharCode(Number(n))).replace(/\s+/g, ' ');
const sectionOf = (report: Report, name: string) => asMarkdown({ ...report, sections: report.sections.filter(s => s.name === name) });
const validate = new HtmlValidate({ extends: ['html-validate:standard'], rules: { 'long-title': 'off', 'no-inline-style': 'error' } });
const hostile = 'rig "<img src=x onerror=alert(1)> | [a](http://x) `b`", drawn\nstack { cells: 4   wetted: 80 x 100 mm   price: 1 EUR }\nsite { place: shed   bonded: "<script>x</script> | *y*" }\nallow relief-missing by "<b>" because "a|b\u0007"\n';
const small = 'rig "One"\nstack { cells: 3 }\n\n';
const erring = readFileSync(path.join(folder, 'mistakes/relief-missing.rig'), 'utf8');

describe('the report', () => {
    const { analysis, report } = of('potters-burner.rig', { faults: false });
    it('has its sections in order, what decides first and cautions next; each says what it is for in one sentence', () => {
        expect(report.sections.map(s => s.name)).toEqual(['decide', 'cautions', 'site', 'drawing', 'section', 'numbers', 'plots', 'findings', 'set-points', 'assumed', 'flips', 'day', 'broken', 'cost', 'permissions', 'sources', 'not-checked']);
        for (const s of report.sections) expect(s.lead).toMatch(/^[A-Z][^.]*\.$|101\.325/);
    });
    it('tells every key number as show does, with its ±', () => {
        const text = wordsOf(asHtml(report));
        const key = resultsOf(analysis.workings).filter(r => r.value === r.value && isKeyNumber(r));
        expect(key.length).toBeGreaterThan(30);
        for (const r of key) expect(text, r.quantity.name).toContain(`${r.quantity.meaning} ${showResult(r)} ${showSpread(r)}`.trim().replace(/\s+/g, ' '));
    });
    it('works a day and a normal litre out from the same numbers', () => {
        const q = (part: string, name: string) => analysis.workings.quantity(analysis.rig.parts.get(part)!, name)!.value;
        const decide = sectionOf(report, 'decide');
        const kWh = q('stack', 'plug-power') * 5 * 3600 / 3.6e6;
        expect(decide).toContain(`| ${Number(kWh.toPrecision(3))} kWh`);
        const perLitre = q('stack', 'plug-energy-per-volume') / 3.6e6;
        expect(decide).toContain(`| ${Number(perLitre.toPrecision(3))} Wh`);
        // 0.11 m³ at 20 °C and the air of the site hold 4.5 mol: 1.1 MJ (241.8 kJ/mol), a thirtieth of a litre of petrol at 32 MJ.
        expect(decide).toContain('34 mL of petrol');
        expect(decide).toContain('no store to leave away');
    });
    it('says what is not known or not allowed yet, and asks for prices instead of making some up', () => {
        const decide = sectionOf(report, 'decide');
        expect(decide).toContain('The insurer: asked 2026-03-12');
        expect(decide).toContain('whether people live or sit above');
        expect(decide).toMatch(/Rent of a cylinder for a year.*\\_\\_/);
        expect(decide).not.toContain('Helium');
    });
    it('as Markdown has tables whose rows are as wide as their heads', () => {
        for (const made of [report, fromText(hostile, { faults: false }), fromText(storing, { faults: false })]) {
            const lines = asMarkdown(made).split('\n');
            const wide = (l: string) => l.replace(/\\\|/g, '').split('|').length;
            const heads = lines.flatMap((l, i) => (/^\|[-:|]+\|$/.test(l) ? [i] : []));
            expect(heads.length).toBeGreaterThan(2);
            for (const i of heads) for (let k = i - 1; lines[k]?.startsWith('|'); k++) expect(wide(lines[k]), lines[k]).toBe(wide(lines[i]));
        }
    });
    it('tells what a guess decides: a limit that an assumed value just meets', () => {
        const text = 'rig "Close", drawn\nsupply { sort: bench   voltage: 22 V   current-limit: 12 A   isolated: yes }\nlye { solute: KOH   strength: 28 wt% }\nstack { cells: 10   wetted: 100 x 120 mm }\npath current: supply -> stack\n';
        const { workings } = analyseText(text, { today });
        const now = workings.quantity(workings.rig.parts.get('stack')!, 'port-resistance')!.value;
        const flips = (limit: number) => sectionOf(fromText(`${text}expect stack.port-resistance < ${limit.toFixed(4)} ohm\n`, { faults: false }), 'flips');
        expect(flips(now * 1.1)).toMatch(/stack\.port.* instead of .* would bring an error: expectation-not-met/);
        expect(flips(now * 0.9)).toMatch(/stack\.port.* would take an error away: expectation-not-met/);
        expect(flips(now * 100)).not.toContain('would bring an error: expectation');
    });
});
describe('the page', () => {
    const made: readonly (readonly [string, string])[] = [
        ['an example, with quarters', asHtml(of('jeweller-torch-store.rig', { faults: false }).report)], ['a store', asHtml(fromText(storing, { faults: false, withStorage: true }), 'letter')], ['little', asHtml(fromText(small, { faults: false }), 'a4')], ['hostile', asHtml(fromText(hostile, { faults: false }))],
    ];
    it.each(made)('is valid and stands by itself: %s', async (_, html) => {
        const { results } = await validate.validateString(html);
        expect(results.flatMap(r => r.messages.map(m => `${m.ruleId}: ${m.message} (${m.line}:${m.column})`))).toEqual([]);
        expect(html).not.toMatch(/(?:src|href)="(?!#)|url\(|<script|@import|\sstyle=|\son\w+="/);
        const style = /<style>([\s\S]*?)<\/style>/.exec(html)![1];
        expect(html.match(/<style>/g)).toHaveLength(1);
        expect(html).toContain(`style-src &#39;sha256-${createHash('sha256').update(style).digest('base64')}&#39;`);
        expect(html).toContain('default-src &#39;none&#39;');
    });
    it('a drawing too large for its words to be read on one sheet has its quarters on four more, each part whole in one of them', () => {
        const whole = asHtml(of('jeweller-torch-store.rig', { faults: false, withStorage: true }).report);
        const quarters = [...whole.matchAll(/viewBox="([-\d. ]+)"[^>]*><use href="#report-drawing-picture"/g)].map(m => m[1].split(' ').map(Number));
        expect(quarters).toHaveLength(4);
        const drawn = /<svg[^>]* id="report-drawing-picture"[\s\S]*?<\/svg>/.exec(whole)![0];
        const places = [...drawn.matchAll(/<g data-part="([^"]+)" data-kind[^>]*>(?:<title>[^<]*<\/title>)?<g transform="translate\(([-\d.]+) ([-\d.]+)\)"/g)].map(m => [m[1], Number(m[2]), Number(m[3])] as const);
        expect(places.length).toBeGreaterThan(30);
        const lost = places.filter(([, x, y]) => !quarters.some(([left, top, w, h]) => x - 30 >= left && x + 30 <= left + w && y - 30 >= top && y + 40 <= top + h));
        expect(lost).toEqual([]);
        expect(asHtml(of('lesson-two-cells.rig', { faults: false }).report)).not.toContain('class="quarters"');
    });
    itInBrowser('has nothing that the accessibility checker finds, and its style is let in', async () => {
        const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
        const browser = await chromium.launch({ executablePath: browserPath, args: browserFlags });
        try {
            for (const [what, html] of made) {
                // Its policy lets no script in: the checker comes from outside of the page.
                const page = await (await browser.newContext({ bypassCSP: true })).newPage();
                const asked: string[] = [];
                page.on('request', r => asked.push(r.url()));
                await page.setContent(html);
                await page.evaluate(axe);
                const { violations } = await page.evaluate(() => (window as unknown as { axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> } }).axe.run());
                expect(violations.map(v => `${v.id}: ${v.nodes[0].html.slice(0, 120)}`), what).toEqual([]);
                expect(asked.filter(u => /^https?:/.test(u))).toEqual([]);
                const strict = await (await browser.newContext()).newPage();
                await strict.setContent(html);
                expect(await strict.evaluate(() => getComputedStyle(document.querySelector('h2')!).borderTopWidth)).toBe('2px');
            }
        } finally {
            await browser.close();
        }
    }, 60_000);
});
describe('what is shared', () => {
    it('leaves the store out, and says so; with storage on request', () => {
        const without = asHtml(fromText(storing, { faults: false }));
        expect(without).toContain('leaves out the store');
        expect(without).not.toContain('data-part="cylinder"');
        // What can hurt is told wherever it stands: findings, faults and what cannot be checked name parts that are not described.
        const { sections, ...rest } = fromText(storing, { faults: false });
        const described = wordsOf(asHtml({ ...rest, sections: sections.filter(s => !['decide', 'findings', 'broken', 'not-checked'].includes(s.name)) }));
        for (const hidden of ['cut-off', 'high-high', 'store-relief', 'load-delay']) expect(described, hidden).not.toContain(hidden);
        expect(without).toContain('data-part="store-bag"');
        const whole = asHtml(fromText(storing, { faults: false, withStorage: true }));
        expect(whole).not.toContain('leaves out the store');
        expect(whole).toContain('data-part="cylinder"');
        expect(wordsOf(whole)).toContain('cut-off breaks above 12 bar');
    });
    it('faults are never left out, whatever else is', () => {
        const md = sectionOf(fromText(storing), 'broken');
        expect(md).toContain('A single failure reaches a hazard');
        expect(md).toMatch(/cylinder leaks/);
        expect(md).toContain('What would help');
        expect(sectionOf(fromText(storing, { faults: false }), 'broken')).toContain('No failure was followed');
    });
    it('tells the danger of the store even where the store is left out', () => {
        expect(sectionOf(fromText(storing, { faults: false }), 'decide')).toMatch(/Work in the pressure alone.*small car/);
    });
});
describe('a rig without its store', () => {
    const analysis = example('jeweller-torch-store.rig');
    const lesser = withoutStore(analysis.workings)!;
    it('keeps what makes, holds at low pressure and uses the gas, and loses what serves the store alone', () => {
        for (const gone of ['compressor', 'unloader', 'cylinder', 'store-check', 'dryer', 'regulator', 'store-relief', 'use-relief', 'relief-vent', 'cut-off', 'high-high', 'hot-discharge', 'compressor-contactor', 'rest', 'bag-draw', 'store-gauge', 'store-purge']) expect(lesser.gone, gone).toContain(gone);
        for (const kept of ['stack', 'store-bag', 'bag-seal', 'bag-high', 'suction-low', 'main', 'fan', 'arrestor', 'burner', 'gas-watch', 'h2-vent']) expect(lesser.gone, kept).not.toContain(kept);
        expect(lesser.workings.paths.after('store-bag', 'hydrogen')).toContain('burner');
    });
    it('makes as much, for less energy and money', () => {
        const q = (w: typeof lesser.workings, part: string, name: string) => w.quantity(w.rig.parts.get(part)!, name)!.value;
        expect(q(lesser.workings, 'stack', 'hydrogen-rate')).toBeCloseTo(q(analysis.workings, 'stack', 'hydrogen-rate'), 9);
        const pressing = q(analysis.workings, 'compressor', 'energy-per-volume') / 3.6e6 * 0.3;
        expect(q(analysis.workings, 'budget', 'electricity-cost') - q(lesser.workings, 'budget', 'electricity-cost')).toBeCloseTo(pressing, 9);
        expect(q(lesser.workings, 'budget', 'parts-total')).toBeLessThan(q(analysis.workings, 'budget', 'parts-total'));
    });
    it('is not there where nothing is pressed', () => {
        expect(withoutStore(example('potters-burner.rig').workings)).toBeUndefined();
    });
});
describe('bad input', () => {
    it('names with signs of other languages are only names', () => {
        const html = asHtml(fromText(hostile, { faults: false }));
        expect(html).not.toMatch(/<img|<script|<b>/);
        const md = asMarkdown(fromText(hostile, { faults: false }));
        expect(md).not.toMatch(/(?<!\\)<(?:img|script|b)|(?<!\\)\[a\]|(?<!\\)`b/);
        expect(md).toContain('\\<img');
    });
    it.each(['rig "Nothing"\n', small, 'rig "Broken"\nstack { cells: \npath hydrogen: -> \n', '', erring])('a rig of little or of errors gives what is known: %#', text => {
        const html = wordsOf(asHtml(fromText(text)));
        expect(html).toContain('What would make this a bad idea here');
        expect(html).toContain('Not checked here');
        expect(html).not.toMatch(/NaN|undefined|Infinity|\bnull\b|\[object/);
    });
    it('errors stand at the top of what is decided by', () => {
        expect(sectionOf(fromText(erring), 'decide')).toMatch(/\* Error: /);
    });
});
describe('the command', () => {
    const place = mkdtempSync(path.join(tmpdir(), 'rigwright-'));
    afterAll(() => rmSync(place, { recursive: true, force: true }));
    const call = (...argv: string[]) => callIn(place, today)('report', path.join(folder, 'lesson-two-cells.rig'), '--no-faults', ...argv);
    it('writes Markdown to the terminal, or a file by its ending', async () => {
        expect((await call()).out).toMatch(/^# .*\n/);
        expect(await call('-o', 'a.html')).toMatchObject({ status: 0 });
        expect(readFileSync(path.join(place, 'a.html'), 'utf8')).toMatch(/^<!doctype html>/);
        expect(await call('-o', 'a.doc')).toMatchObject({ status: 2, err: expect.stringContaining('.html, .md or .pdf') });
        expect(await call('-o', 'a.pdf', '--browser', path.join(place, 'none'))).toMatchObject({ status: 2, err: expect.stringContaining('no browser') });
    });
    itInBrowser('prints a PDF on the paper asked for', async () => {
        for (const [size, box] of [['a4', /MediaBox \[0 0 59\d[\d.]* 84\d/], ['letter', /MediaBox \[0 0 612[\d.]* 792/]] as const) {
            expect(await call('-o', `${size}.pdf`, '--size', size, '--browser', browserPath)).toMatchObject({ status: 0 });
            expect(readFileSync(path.join(place, `${size}.pdf`), 'latin1')).toMatch(box);
        }
    }, 60_000);
});

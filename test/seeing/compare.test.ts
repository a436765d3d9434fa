/** Comparison: against differences worked out by hand. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { resultText } from '../../language/reference/values.js';
import { compare, headlinesOf, numbersOf } from '../../language/seeing/compare/compare.js';
import { comparisonReport, newErrors } from '../../language/seeing/compare/page.js';
import { sideBySide, sideBySideReport } from '../../language/seeing/compare/side-by-side.js';
import { asHtml, asMarkdown } from '../../language/seeing/report/page.js';
import command from '../../server/command/commands/compare.js';
import { storing, textOf } from '../run/rigs.js';

const today = { today: '2026-06-15' };
const of = (before: string, after: string) => compare(analyseText(before, today), analyseText(after, today));
const whats = (c: ReturnType<typeof of>) => c.again.map(a => a.what);

describe('a comparison', () => {
    it('of a rig with itself finds nothing, and words and order count for nothing', () => {
        for (const after of [storing, `# a remark\n${storing}`, storing.replace('stack { cells: 11', 'stack {   cells: 11')]) {
            expect(of(storing, after)).toMatchObject({ added: [], removed: [], changed: [], moved: [], findings: { come: [], gone: [], other: [] }, nearer: [], again: [] });
        }
    });
    it('a third of the current: a third of the gas by Faraday, and the fall of the level with it', () => {
        const c = of(storing, storing.replace('voltage: 26 V   current-limit: 18 A', 'voltage: 26 V   current-limit: 6 A'));
        expect(c.changed).toEqual([{ name: 'power.current-limit', before: '18 A', after: '6 A', like: [] }]);
        const share = (name: string) => c.moved.find(m => m.name === name)!.share;
        const [current, rate] = [share('stack.current'), share('stack.hydrogen-rate')];
        // More of it goes past the plates at little current.
        expect((1 + rate) / (1 + current)).toBeLessThan(1);
        expect((1 + rate) / (1 + current)).toBeGreaterThan(0.88);
        expect(c.moved.find(m => m.name === 'stack.current')!.after).toMatch(/^6 A/);
        // Cooler gas carries off less vapour besides.
        expect((1 + share('h2-column.level-fall')) / (1 + rate)).toBeLessThan(1);
        expect((1 + share('h2-column.level-fall')) / (1 + rate)).toBeGreaterThan(0.9);
        expect(whats(c)).toContain('polarity and current at the stack, before any gas is kept');
    });
    it('a taller store holds more by its volume, and nothing else of the stack moves', () => {
        const c = of(storing, storing.replace('cylinder { volume: 22 L', 'cylinder { volume: 44 L'));
        expect(c.moved.find(m => m.name === 'cylinder.stored-gas')!.share).toBeCloseTo(1, 6);
        expect(c.moved.filter(m => m.name.startsWith('stack.'))).toEqual([]);
        expect(whats(c)).toContain('leak test of what was opened: cylinder');
    });
    it('a relief taken away is told with what comes of it, and the other way round with what is gone', () => {
        const without = storing.replace(/^relief-valve store-relief .*\n/m, '').replace('path hydrogen: cylinder -> store-relief -> outdoors\n', '');
        const c = of(storing, without);
        expect(c.removed).toEqual(['store-relief']);
        expect(c.findings.come.some(p => p.finding.severity === 'error')).toBe(true);
        expect(of(without, storing).findings.gone.map(p => p.finding.rule)).toEqual(expect.arrayContaining(c.findings.come.map(p => p.finding.rule)));
    });
    it('a set point that moved is to be tested again, a price is not', () => {
        expect(whats(of(storing, storing.replace('trips: above 64 L', 'trips: above 63 L')))).toEqual(['bag-high: made to act at its point, and seen to do what it should']);
        expect(of(storing.replace('trip bag-high {', 'trip bag-high { price: 9 EUR  '), storing.replace('trip bag-high {', 'trip bag-high { price: 12 EUR  ')).again).toEqual([]);
    });
    it('a joint that is made otherwise is told as one', () => {
        const c = of(storing, storing.replace('path hydrogen: cylinder -> store-relief -> outdoors', 'vent roof { place: outdoors-up   bore: 20 mm }\npath hydrogen: cylinder -> store-relief -> roof -> outdoors'));
        expect(c.added).toEqual(['roof']);
        expect(c.changed.map(x => x.after ?? `no ${x.before}`)).toEqual(['hydrogen: store-relief -> roof', 'hydrogen: roof -> outdoors', 'no hydrogen: store-relief -> outdoors']);
    });
    it('is told so that a change can be judged, whatever the names are', () => {
        const report = comparisonReport(of(storing, storing.replace('"A store to run"', '"<b>|x|</b>"').replace('current-limit: 18 A', 'current-limit: 6 A')), ['a.rig', 'b.rig']);
        const md = asMarkdown(report);
        for (const words of ['Other numbers that moved', 'In short', 'power.current-limit', 'To be tested again', 'Local codes and licensed practice decide']) expect(md).toContain(words);
        expect(md).not.toMatch(/(?<!\\)<b>/);
        expect(asHtml(report)).not.toContain('<b>');
    });
});
/** A rig in which a few numbers can be worked out by hand. */
const plain = `rig "Bench", drawn
supply power { sort: bench   voltage: 30 V   current-limit: 10 A   isolated: yes   price: 100 EUR }
stack { cells: 10   plates: 11   wetted: 100 x 100 mm }
leads { length: 2 m   section: 10 mm2 }
path current: power -> leads -> stack
let store = 20 L
cylinder first { volume: store   rating: 16 bar }
cylinder second like first
budget { other: 50 EUR }
`;
describe('what a comparison tells, worked out by hand', () => {
    const change = (...changes: (readonly [string, string])[]) => of(plain, textOf(changes, plain));
    it('a sum, a ratio and how much it is', () => {
        const c = change(['price: 100 EUR', 'price: 160 EUR'], ['wetted: 100 x 100 mm', 'wetted: 200 x 100 mm']);
        const of = (name: string) => c.moved.find(m => m.name === name)!;
        expect([of('budget.parts-total').before, of('budget.parts-total').after]).toEqual(['150 EUR', '210 EUR']);
        expect(of('budget.parts-total').share).toBeCloseTo(0.4, 9);
        // 10 A over 100 cm² and over 200 cm².
        expect([of('stack.current-density').before, of('stack.current-density').after]).toEqual(['100 mA/cm2', '50 mA/cm2']);
        expect(c.headlines.find(h => h.name === 'stack.current')).toMatchObject({ before: '10 A', after: '10 A', moved: false });
        const md = asMarkdown(comparisonReport(c, ['a', 'b']));
        expect(md).toContain('| budget.parts-total | 150 EUR | 210 EUR | +40 % |');
        expect(md).toMatch(/\| stack\.current-density .*\| 100 mA\/cm2 \| 50 mA\/cm2 \| −50 % \|/);
    });
    it('a temperature moves by kelvins, not by shares', () => {
        const c = change(['stack { cells: 10', 'stack { temperature: 40 °C   cells: 10']);
        const back = of(textOf([['stack { cells: 10', 'stack { temperature: 40 °C   cells: 10']], plain), textOf([['stack { cells: 10', 'stack { temperature: 60 °C   cells: 10']], plain));
        expect(c.changed[0]).toEqual({ name: 'stack.temperature', before: undefined, after: '40 °C', like: [] });
        expect(back.headlines.find(h => h.name === 'stack.temperature')!.share).toBeNaN();
        expect(back.headlines.find(h => h.name === 'stack.temperature')).toMatchObject({ before: expect.stringMatching(/^40 °C/), after: expect.stringMatching(/^60 °C/), moved: true });
    });
    it('a named value, and a part that is like another one', () => {
        const c = change(['let store = 20 L', 'let store = 40 L'], ['rating: 16 bar', 'rating: 12 bar']);
        expect(c.changed).toEqual([{ name: 'let store', before: '20 L', after: '40 L', like: [] }, { name: 'first.rating', before: '16 bar', after: '12 bar', like: ['second'] }]);
        expect(whats(c)).toContain('leak test of what was opened: first, second');
    });
    it('each expectation by itself, also one that was loosened', () => {
        const two = `${plain}expect stack.current > 9 A\nexpect stack.voltage < 40 V\n`;
        const c = of(two, textOf([['> 9 A', '> 11 A'], ['< 40 V', '< 4 V']], two));
        expect(c.findings.come.map(p => p.finding.message.split(' ')[0])).toEqual(['stack.current', 'stack.voltage']);
        expect(c.changed.filter(x => x.name === 'expect').map(x => x.after ?? x.before)).toEqual(['stack.current > 11 A', 'stack.voltage < 4 V', 'stack.current > 9 A', 'stack.voltage < 40 V']);
        const third = of(textOf([['> 9 A', '> 11 A']], two), textOf([['> 9 A', '> 12 A']], two));
        expect(third.findings.other).toHaveLength(1);
        expect(asMarkdown(comparisonReport(third, ['a', 'b']))).toMatch(/Still there, with other numbers.*\n\n\* error: .*12 A.*before: .*11 A/);
    });
    it('a finding that is turned down is gone, and that it was turned down is told', () => {
        const wrong = plain.replace('plates: 11', 'plates: 12');
        const c = of(`${wrong}expect stack.current > 11 A\n`, `${wrong}expect stack.current > 11 A\nallow expectation-not-met because "a try"\n`);
        expect(c.changed).toEqual([{ name: 'allow', before: undefined, after: expect.stringMatching(/^expectation-not-met because "?a try/), like: [] }]);
        expect(c.findings.gone.map(p => p.finding.rule)).toEqual(['expectation-not-met']);
    });
    it('a finding of another weight is graver or milder, not gone and new', () => {
        const weighed = (level: string) => `${plain}weigh shunt-current-high as ${level} because "a try"\n`;
        const c = of(weighed('hint'), weighed('error'));
        expect(c.findings.other.map(o => [o.before.finding.severity, o.after.finding.severity])).toEqual([['hint', 'error']]);
        expect(c.findings.come.concat(c.findings.gone).map(p => p.finding.rule)).toEqual([]);
        expect(newErrors(c)).toBe(1);
        expect(asMarkdown(comparisonReport(c, ['a', 'b']))).toMatch(/error, was hint: \d+ % of the current/);
    });
    it('what comes nearer to a limit, and what was near before, with how much is left', () => {
        // 128 °C of 135 °C and the like: taken from the rig, whose cylinder fills to 12 of 14 bar.
        const c = of(storing, textOf([['breaks: above 12 bar', 'breaks: above 12.4 bar']]));
        for (const n of c.nearer) expect(n.near.left, n.near.rule).toBeLessThan(n.before?.left ?? 0.1);
        expect(c.nearer.length).toBeGreaterThan(0);
    });
    it('a test card on record goes stale, one that comes with the change does not', () => {
        const card = (date: string) => `test acts { date: ${date}   covers: bag-high   with: float moved   result: passed }\n`;
        const tested = storing + card('2026-05-01');
        const moved: readonly [string, string] = ['trips: above 64 L', 'trips: above 63 L'];
        expect(of(tested, textOf([moved], tested)).again).toEqual([{ what: 'bag-high: made to act at its point, and seen to do what it should', stale: ['acts of 2026-05-01'] }]);
        expect(of(tested, textOf([moved], storing + card('2026-06-01'))).again).toEqual([]);
        expect(of(storing, textOf([moved], storing + card('2026-06-01'))).again).toEqual([]);
        const md = asMarkdown(comparisonReport(of(tested, textOf([moved], tested)), ['a', 'b']));
        expect(md).toContain('no longer shown by acts of 2026-05-01');
    });
    it('a leak test is stale where what it covers was opened, or what hangs on that', () => {
        const tested = `${storing}test tight { date: 2026-05-01   covers: h2-column, h2-bubbler   with: nitrogen   pressure: 2 kPa   lasted: 30 min   result: passed }\ntest far { date: 2026-05-01   covers: cylinder   with: nitrogen   pressure: 12 bar   lasted: 30 min   result: passed }\n`;
        for (const [from, to] of [['stack { cells: 11', 'stack { cells: 12'], ['bubbler h2-bubbler { immersion: 110 mm', 'bubbler h2-bubbler { immersion: 120 mm']] as const) {
            const leak = of(tested, textOf([[from, to]], tested)).again.find(a => a.what.startsWith('leak test'))!;
            expect(leak.stale, from).toEqual(['tight of 2026-05-01']);
        }
    });
    it('same numbers of like parts stand in one line', () => {
        const c = of(storing, textOf([['voltage: 26 V   current-limit: 18 A', 'voltage: 26 V   current-limit: 9 A']]));
        expect(c.moved.find(m => m.name === 'h2-column.level-fall')!.twins).toEqual(['o2-column.level-fall']);
    });
});
const variants = 'variant half { power.current-limit: 9 A   power.price: 40 EUR }\nvariant bare { store-relief: none }\nvariant both { with: half, bare }\n';
describe('variants side by side', () => {
    const analysis = analyseText(storing + variants, today);
    const s = sideBySide(analysis, [], today);
    it('stand in columns in the order of the text, the rig as written first', () => {
        expect(s.columns.map(c => c.name)).toEqual(['as written', 'half', 'bare', 'both']);
        expect(s.columns[1].says).toEqual(['power.current-limit: 9 A', 'power.price: 40 EUR']);
        const current = s.headlines.find(l => l.name === 'stack.current')!.results.map(r => r!.value);
        for (const [i, amperes] of [18, 9, 18, 9].entries()) expect(current[i]).toBeCloseTo(amperes, 6);
    });
    it('agree with a comparison of texts in which the same was written by hand', () => {
        const byHand = of(storing, textOf([['current-limit: 18 A', 'current-limit: 9 A   price: 40 EUR']]));
        const column = numbersOf(s.columns[1].analysis);
        for (const m of byHand.moved) expect(resultText(column.get(m.name)!), m.name).toBe(m.after);
        const relief = of(storing, storing.replace(/^relief-valve store-relief .*\n/m, '').replace('path hydrogen: cylinder -> store-relief -> outdoors\n', ''));
        const come = s.findings.filter(f => !f.at[0] && f.at[2]).map(f => f.rule);
        expect(come).toEqual(expect.arrayContaining(relief.findings.come.filter(p => p.finding.severity === 'error').map(p => p.finding.rule)));
    });
    it('tell findings that come and go, and the cost', () => {
        const missing = s.findings.find(f => f.rule === 'relief-missing')!;
        expect(missing.at.map(p => p?.finding.severity)).toEqual([undefined, undefined, 'error', 'error']);
        const md = asMarkdown(sideBySideReport(s));
        expect(md).toContain('| relief-missing at cylinder | - | - | error | error |');
        const errors = s.columns.map(c => c.analysis.findings.filter(f => f.severity === 'error').length);
        expect(md).toContain(`Errors: as written ${errors[0]}, half ${errors[1]}, bare ${errors[2]}, both ${errors[3]}.`);
        expect(errors[2]).toBe(errors[0] + 1);
        expect(md).toMatch(/\| budget\.parts-total .*\| 40 EUR \|/);
        expect(md).toContain('Local codes and licensed practice decide');
    });
    it('break into several tables where there are many, the rig as written first in each', () => {
        const many = Array.from({ length: 9 }, (_, i) => `variant v${i} { power.current-limit: ${i + 2} A }\n`).join('');
        const md = asMarkdown(sideBySideReport(sideBySide(analyseText(storing + many, today), [], today)));
        expect(md.match(/\| number \| as written \|/g)!.length).toBe(6);
        expect(asMarkdown(sideBySideReport(s, 2))).toContain('| number | as written | half |');
    });
    it('names of any characters are escaped, and a broken variant is told', () => {
        const odd = analyseText(storing.replace('"A store to run"', '"<i>|"') + 'variant würfel { power.note: "<b>|"   power.current-limit: 9 kg }\n', today);
        const report = sideBySideReport(sideBySide(odd, [], today));
        expect(asHtml(report)).not.toMatch(/<[bi]>/);
        expect(asMarkdown(report)).toContain('würfel');
        expect(odd.findings.some(f => f.severity === 'error' && f.span.start > storing.length)).toBe(true);
    });
});
describe('rigwright compare', () => {
    const call = async (cwd: string, args: readonly string[], options: Record<string, string | boolean> = {}) => {
        let out = '';
        const status = await command.run({ args: [...args], options: { format: 'text', ...options } }, { out: t => (out += t), err: () => {}, cwd, colour: false, readStdin: async () => '', today: '2026-06-15' });
        return { status, out };
    };
    it('compares with a revision in git, and says plainly where there is none', async () => {
        const folder = mkdtempSync(path.join(os.tmpdir(), 'rigwright-compare-'));
        try {
            const git = (...args: string[]) => execFileSync('git', args, { cwd: folder, stdio: 'ignore', env: { ...process.env, GIT_AUTHOR_NAME: 'x', GIT_AUTHOR_EMAIL: 'x@example.org', GIT_COMMITTER_NAME: 'x', GIT_COMMITTER_EMAIL: 'x@example.org', GIT_CONFIG_GLOBAL: '/dev/null' } });
            writeFileSync(path.join(folder, 'store.rig'), storing);
            await expect(call(folder, ['store.rig'], { since: 'HEAD' })).rejects.toThrow(/git repository/);
            git('init', '-q');
            git('add', '.');
            git('commit', '-q', '-m', 'first');
            writeFileSync(path.join(folder, 'store.rig'), storing.replace('current-limit: 18 A', 'current-limit: 6 A'));
            const { out, status } = await call(folder, ['store.rig'], { since: 'HEAD' });
            expect(out).toContain('power.current-limit');
            expect(status).toBe(0);
            await expect(call(folder, ['store.rig'], { since: '--output=x' })).rejects.toThrow(/no revision/);
            await expect(call(folder, ['store.rig'], { since: 'nowhere' })).rejects.toThrow(/no revision nowhere/);
            writeFileSync(path.join(folder, 'other.rig'), storing.replace('cells: 11', 'cells: 12').replace('plate:', 'plates: 9   plate:'));
            expect((await call(folder, ['store.rig', 'other.rig'])).status).toBe(1);
            const { moved } = JSON.parse((await call(folder, ['store.rig'], { since: 'HEAD', format: 'json' })).out);
            expect(moved.length).toBeGreaterThan(5);
        } finally {
            rmSync(folder, { recursive: true, force: true });
        }
    });
    it('says plainly what it takes', async () => {
        await expect(call('/', [])).rejects.toThrow(/two files, or one with --since REVISION, --variants/);
        await expect(call('/', ['a.rig'])).rejects.toThrow(/no file or folder a\.rig/);
        await expect(call('/', ['a.rig', 'b.rig'], { since: 'HEAD' })).rejects.toThrow(/no second file/);
    });
    it('sets variants side by side in every form', async () => {
        const folder = mkdtempSync(path.join(os.tmpdir(), 'rigwright-compare-'));
        try {
            writeFileSync(path.join(folder, 'store.rig'), `${storing}${variants}`);
            writeFileSync(path.join(folder, 'plain.rig'), storing);
            const text = await call(folder, ['store.rig'], { variants: true });
            expect(text.status).toBe(0);
            for (const words of ['half', 'bare', 'as written', 'relief-missing at cylinder', 'In short']) expect(text.out).toContain(words);
            expect((await call(folder, ['store.rig', 'half'])).out).not.toContain('bare');
            expect((await call(folder, ['store.rig', 'half', 'bare'], { format: 'md' })).out).toContain('| number | as written | half | bare |');
            expect(JSON.parse((await call(folder, ['store.rig', 'half+bare'], { format: 'json' })).out).columns.map((c: { name: string }) => c.name)).toEqual(['as written', 'half+bare']);
            await call(folder, ['store.rig'], { variants: true, out: 'side.html' });
            expect(readFileSync(path.join(folder, 'side.html'), 'utf8')).toContain('<h1>A store to run: its variants side by side</h1>');
            await expect(call(folder, ['store.rig', 'hlf'])).rejects.toThrow('There is no file hlf. As a variant: There is no variant hlf; did you mean half?');
            await expect(call(folder, ['plain.rig'], { variants: true })).rejects.toThrow(/has no variants/);
            await expect(call(folder, ['store.rig'])).rejects.toThrow('or --variants: this rig has half, bare, both.');
        } finally {
            rmSync(folder, { recursive: true, force: true });
        }
    });
});

describe('the numbers by which a rig is known', () => {
    it('hold no sum of prices where nothing has one', () => {
        const named = (more: string) => headlinesOf([numbersOf(analyseText(`${storing}${more}`, today))]).filter(n => n.startsWith('budget.'));
        expect(named('')).not.toContain('budget.parts-total');
        expect(named('gauge dial { on: cylinder   price: 12 EUR }\n')).toContain('budget.parts-total');
    });
});

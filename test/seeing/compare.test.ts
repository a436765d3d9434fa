/** Comparison: against differences worked out by hand. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { compare, comparisonReport } from '../../language/seeing/compare/compare.js';
import { asHtml, asMarkdown } from '../../language/seeing/report/page.js';
import command from '../../server/command/commands/compare.js';
import { storing } from '../run/rigs.js';

const today = { today: '2026-06-15' };
const of = (before: string, after: string) => compare(analyseText(before, today), analyseText(after, today));

describe('a comparison', () => {
    it('of a rig with itself finds nothing, and words and order count for nothing', () => {
        for (const after of [storing, `# a remark\n${storing}`, storing.replace('stack { cells: 11', 'stack {   cells: 11')]) {
            expect(of(storing, after)).toMatchObject({ added: [], removed: [], changed: [], moved: [], come: [], gone: [], nearer: [], again: [] });
        }
    });
    it('a third of the current: a third of the gas by Faraday, and the fall of the level with it', () => {
        const c = of(storing, storing.replace('voltage: 26 V   current-limit: 18 A', 'voltage: 26 V   current-limit: 6 A'));
        expect(c.changed).toEqual([{ name: 'power.current-limit', before: '18 A', after: '6 A' }]);
        const share = (name: string) => c.moved.find(m => m.name === name)!.share;
        const [current, rate] = [share('stack.current'), share('stack.hydrogen-rate')];
        // More of it goes past the plates at little current.
        expect((1 + rate) / (1 + current)).toBeLessThan(1);
        expect((1 + rate) / (1 + current)).toBeGreaterThan(0.88);
        expect(c.moved.find(m => m.name === 'stack.current')!.after).toMatch(/^6 A/);
        // Cooler gas carries off less vapour besides.
        expect((1 + share('h2-column.level-fall')) / (1 + rate)).toBeLessThan(1);
        expect((1 + share('h2-column.level-fall')) / (1 + rate)).toBeGreaterThan(0.9);
        expect(c.again).toContain('polarity and current at the stack, before any gas is kept');
    });
    it('a taller store holds more by its volume, and nothing else of the stack moves', () => {
        const c = of(storing, storing.replace('cylinder { volume: 22 L', 'cylinder { volume: 44 L'));
        expect(c.moved.find(m => m.name === 'cylinder.stored-gas')!.share).toBeCloseTo(1, 6);
        expect(c.moved.filter(m => m.name.startsWith('stack.'))).toEqual([]);
        expect(c.again).toContain('leak test of what cylinder belongs to');
    });
    it('a relief taken away is told with what comes of it, and the other way round with what is gone', () => {
        const without = storing.replace(/^relief-valve store-relief .*\n/m, '').replace('path hydrogen: cylinder -> store-relief -> outdoors\n', '');
        const c = of(storing, without);
        expect(c.removed).toEqual(['store-relief']);
        expect(c.come.some(f => f.severity === 'error')).toBe(true);
        expect(of(without, storing).gone.map(f => f.rule)).toEqual(expect.arrayContaining(c.come.map(f => f.rule)));
    });
    it('a set point that moved is to be tested again, a price is not', () => {
        expect(of(storing, storing.replace('trips: above 64 L', 'trips: above 63 L')).again).toEqual(['bag-high: made to act at its point, and seen to stop what it should']);
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
        for (const words of ['Numbers that moved', 'power.current-limit', 'To be tested again', 'Local codes and licensed practice decide']) expect(md).toContain(words);
        expect(md).not.toMatch(/(?<!\\)<b>/);
        expect(asHtml(report)).not.toContain('<b>');
    });
});
describe('rigwright compare', () => {
    const call = async (cwd: string, args: readonly string[], options: Record<string, string> = {}) => {
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
    it('takes two files, or one and a revision', async () => {
        await expect(call('/', ['a.rig'])).rejects.toThrow(/two files/);
    });
});

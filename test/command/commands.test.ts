/** The command line: exit codes, forms of output, and that its findings are the editor's. */
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { Analyst } from '../../language/index.js';
import { allRules } from '../../language/rules/index.js';
import { run } from '../../server/command/run.js';
import { allCommands } from '../../server/command/commands.generated.js';

const examples = path.resolve(import.meta.dirname, '../../examples');
const folder = mkdtempSync(path.join(tmpdir(), 'rigwright-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (name: string, text: string) => {
    writeFileSync(path.join(folder, name), text);
    return name;
};
async function call(argv: string[], stdin = '', cwd = folder) {
    let out = '';
    let err = '';
    const status = await run(argv, { out: t => void (out += t), err: t => void (err += t), cwd, colour: false, readStdin: async () => stdin, today: '2026-06-15' });
    return { status, out, err };
}
const wrong = 'rig "Salt", drawn\n\nlye { solute: NaCl }\n';
const right = 'rig "Potash", idea\n\nlye { solute: KOH }\n';

describe('check', () => {
    it('ends with 0 without errors, 1 with, 2 when it could not', async () => {
        expect((await call(['check', file('right.rig', right)])).status).toBe(0);
        expect((await call(['check', file('wrong.rig', wrong)])).status).toBe(1);
        const missing = await call(['check', 'not-there.rig']);
        expect(missing.status).toBe(2);
        expect(missing.err).toContain('not-there.rig');
    });
    it('prints findings as JSON, with ranges counted from 0', async () => {
        const { out } = await call(['check', file('wrong.rig', wrong), '--format', 'json']);
        const { version, findings } = JSON.parse(out);
        expect(version).toMatch(/^\d+\.\d+\.\d+$/);
        const salt = findings.find((f: { rule: string }) => f.rule === 'electrolyte-makes-chlorine');
        expect(salt).toMatchObject({ severity: 'error', range: { start: { line: 2, character: 14 }, end: { line: 2, character: 18 } } });
        expect(Object.keys(salt).sort()).toEqual(['file', 'fixes', 'message', 'range', 'related', 'rule', 'severity', 'source', 'why']);
    });
    it('prints SARIF, JUnit, and lines for a pull request', async () => {
        file('wrong.rig', wrong);
        const sarif = JSON.parse((await call(['check', 'wrong.rig', '--format', 'sarif'])).out);
        expect(sarif.version).toBe('2.1.0');
        expect(sarif.runs[0].results.map((r: { ruleId: string }) => r.ruleId)).toContain('electrolyte-makes-chlorine');
        const junit = (await call(['check', 'wrong.rig', '--format', 'junit'])).out;
        expect(junit).toMatch(/^<\?xml/);
        expect(junit).toContain('<failure');
        expect((await call(['check', 'wrong.rig', '--format', 'github'])).out).toMatch(/^::error .*file=.*wrong\.rig/m);
    });
    it('reads one text from standard input', async () => {
        const { status, out } = await call(['check', '--stdin'], wrong);
        expect(status).toBe(1);
        expect(out).toContain('electrolyte-makes-chlorine');
    });
    it('counts warnings against the number given', async () => {
        file('warned.rig', 'rig "Steel", drawn\n\ncolumn pot { material: brass }\n');
        expect((await call(['check', 'warned.rig'])).status).toBe(0);
        expect((await call(['check', 'warned.rig', '--max-warnings', '0'])).status).toBe(1);
        expect((await call(['check', 'warned.rig', '--max-warnings', 'few'])).status).toBe(2);
    });
    it('mends what keeps its meaning', async () => {
        file('comma.rig', 'rig "Comma", idea\n\nsupply { voltage: 26,5 V }\n');
        await call(['check', 'comma.rig', '--fix']);
        expect(readFileSync(path.join(folder, 'comma.rig'), 'utf8')).toContain('26.5 V');
    });
    it('knows the date that it is told', async () => {
        file('dated.rig', 'rig "Dated", drawn\n\ncylinder { volume: 20 L   rating: 25 bar   test-date: 2018-05   test-interval: 10 years }\n');
        expect((await call(['check', 'dated.rig', '--on', '2026-01-01'])).out).not.toContain('test-date-lapsed');
        expect((await call(['check', 'dated.rig', '--on', '2029-01-01'])).out).toContain('test-date-lapsed');
        expect((await call(['check', 'dated.rig', '--on', 'soon'])).status).toBe(2);
    });
    const texts = [...readdirSync(examples), ...readdirSync(path.join(examples, 'mistakes')).map(f => `mistakes/${f}`)].filter(f => f.endsWith('.rig'));
    it.each(texts)('says of %s what the engine says', async name => {
        const { out } = await call(['check', name, '--format', 'json'], '', examples);
        const full = path.join(examples, name);
        const own = new Analyst(f => { try { return readFileSync(f, 'utf8'); } catch { return undefined; } }).analyse(full, { today: '2026-06-15' });
        expect(JSON.parse(out).findings.map((f: { rule: string; message: string }) => `${f.rule} ${f.message}`).sort()).toEqual(own.findings.map(f => `${f.rule} ${f.message}`).sort());
    });
});
describe('show', () => {
    it('prints numbers and assumptions as JSON', async () => {
        file('ten.rig', 'rig "Ten lines", idea\n\nsupply { voltage: 26 V   current-limit: 8 A }\nstack { cells: 12   wetted: 80 x 100 mm }\n');
        const { quantities, assumptions } = JSON.parse((await call(['show', 'ten.rig', '--format', 'json'])).out);
        const volts = quantities.find((q: { name: string }) => q.name === 'stack.volts-per-cell');
        expect(volts.si).toBeGreaterThan(1.5);
        expect(volts.si).toBeLessThan(2.4);
        expect(Object.keys(volts)).toEqual(expect.arrayContaining(['name', 'value', 'unit', 'si', 'status', 'plusMinus', 'source']));
        for (const q of quantities) expect(['stated', 'assumed', 'measured', 'computed', 'unknown']).toContain(q.status);
        expect(assumptions.length).toBeGreaterThan(3);
    });
    it('tells what is near a limit, and nothing of it where nothing is', async () => {
        const rig = (bears: number) => `rig "Near", drawn\n\ncylinder { volume: 20 L   rating: 16 bar }\nregulator { listed-for: hydrogen   inlet-rating: ${bears} bar   set: 0.03 bar }\npath hydrogen: cylinder -> regulator -> burner\n`;
        file('near.rig', rig(17));
        file('far.rig', rig(30));
        expect((await call(['show', 'near.rig'])).out).toContain('\nNear a limit\n  regulator.inlet-rating  regulator-wrong-kind  17 bar, at least 16 bar: 6.3 % left\n');
        expect((await call(['show', 'far.rig'])).out).not.toContain('Near a limit');
        const near = async (name: string) => JSON.parse((await call(['show', name, '--format', 'json'])).out).near;
        expect(await near('near.rig')).toEqual([{ rule: 'regulator-wrong-kind', part: 'regulator', key: 'inlet-rating', number: 17e5, limit: 16e5, unit: 'bar', side: 'at least', left: expect.closeTo(0.0625, 6) }]);
        expect(await near('far.rig')).toEqual([]);
    });
    it('shows how a number came about, and offers the nearest name', async () => {
        file('ten.rig', 'rig "Ten lines", idea\n\nsupply { voltage: 26 V   current-limit: 8 A }\nstack { cells: 12   wetted: 80 x 100 mm }\n');
        expect((await call(['show', 'ten.rig', '--working', 'stack.volts-per-cell'])).out).toContain('stack');
        expect((await call(['show', 'ten.rig', '--working', 'stack.volts-per-sell'])).err).toContain('did you mean stack.volts-per-cell?');
    });
});
describe('the rest', () => {
    it('lists every rule', async () => {
        const { rules } = JSON.parse((await call(['rules', '--format', 'json'])).out);
        expect(rules.map((r: { name: string }) => r.name).sort()).toEqual(allRules.map(r => r.name).sort());
    });
    it.each(['relief-missing', 'stack', 'stack.gap', 'wt%', 'volts-per-cell'])('explains %s', async name => {
        const { status, out } = await call(['explain', name]);
        expect(status).toBe(0);
        expect(out.length).toBeGreaterThan(40);
    });
    it('offers the nearest name for what it does not know', async () => {
        expect((await call(['explain', 'relief-mising'])).err).toContain('relief-missing');
        expect((await call(['chek'])).err).toContain('did you mean check?');
        expect((await call(['check', '--formt', 'json'])).err).toContain('did you mean --format?');
    });
    it('formats, and says with --check what it would change', async () => {
        file('loose.rig', 'rig "Loose", idea\n\nlye {\n    solute:   KOH\n strength: 28 wt%\n}\n');
        await call(['format', 'loose.rig']);
        expect(readFileSync(path.join(folder, 'loose.rig'), 'utf8')).toContain('  solute:           KOH\n  strength:         28 wt%');
    });
    it('starts a rig that can be read', async () => {
        expect((await call(['new', 'sketch', '-o', 'mine.rig'])).status).toBe(0);
        expect((await call(['check', 'mine.rig'])).out).not.toMatch(/value-not-understood|unknown-word/);
        expect((await call(['new', 'sketch', '-o', 'mine.rig'])).status).toBe(2);
    });
    it.each(allCommands.map(c => c.name))('%s has help', async name => {
        expect((await call([name, '--help'])).out).toContain(`rigwright ${name}`);
    });
});

describe('rules FILE', () => {
    it('tells how long each rule takes on a rig, the longest first', async () => {
        const { status, out } = await call(['rules', path.join(examples, 'lesson-two-cells.rig'), '--on', '2026-06-15', '--format', 'json']);
        expect(status).toBe(0);
        const { rules, microseconds } = JSON.parse(out) as { rules: { rule: string; microseconds: number }[]; microseconds: number };
        expect(rules.length).toBeGreaterThan(50);
        expect(rules.map(r => r.microseconds)).toEqual(rules.map(r => r.microseconds).sort((a, b) => b - a));
        expect(rules.reduce((sum, r) => sum + r.microseconds, 0)).toBe(microseconds);
    });
});

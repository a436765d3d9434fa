/** The forms in which findings are printed, the files they are about, and what happens when something is in the way. */
import { chmodSync, copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { spawn, spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ruleNamed } from '../../language/rules/index.js';
import { run } from '../../server/command/run.js';
import { version } from '../../server/command/version.js';
import { commandBundle } from '../server/server-bundle.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const folder = mkdtempSync(path.join(tmpdir(), 'rigwright-reports-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
/** Writes files, and gives the folder they are in. */
function put(files: Record<string, string>): string {
    const dir = mkdtempSync(path.join(folder, 'case-'));
    for (const [name, text] of Object.entries(files)) {
        mkdirSync(path.dirname(path.join(dir, name)), { recursive: true });
        writeFileSync(path.join(dir, name), text);
    }
    return dir;
}
async function call(cwd: string, argv: string[], more: { stdin?: string; colour?: boolean; stop?: AbortSignal } = {}) {
    let out = '';
    let err = '';
    const status = await run(argv, {
        out: t => void (out += t), err: t => void (err += t), cwd, colour: more.colour ?? false, readStdin: async () => more.stdin ?? '', today: '2026-06-15', stop: more.stop,
    });
    return { status, out, err };
}
interface JsonFinding { file: string; rule: string; severity: string; message: string; range: Range; related: { file: string; range: Range; message: string }[]; fixes: { title: string; edits: { file: string; range: Range; text: string }[] }[] }
interface Range { start: { line: number; character: number }; end: { line: number; character: number } }
const findingsOf = (out: string) => (JSON.parse(out) as { findings: JsonFinding[] }).findings;

// A name with signs that need care in each form: & < > in XML, % : , in workflow commands, a blank and # in addresses.
const awkward = 'a & b #1, 50%.rig';
const salt = 'rig "Salt <&>", drawn\n\nlye { solute: NaCl }   # é 💧\ncolumn pot { material: brass }\n';

describe('findings as JSON', () => {
    it('have the keys that were promised, ranges from 0 in UTF-16 units, related places and fixes with theirs', async () => {
        const cwd = put({ 'r.rig': 'rig "💧", drawn\n\nstack { cells: 9 }\nstack { cells: 10 }\nbag { note: "💧💧" rating: 2,5 kPa }\n' });
        const { out } = await call(cwd, ['check', 'r.rig', '--format', 'json']);
        const findings = findingsOf(out);
        for (const f of findings) expect(Object.keys(f)).toEqual(['file', 'rule', 'severity', 'message', 'why', 'source', 'range', 'related', 'fixes']);
        const comma = findings.find(f => f.rule === 'decimal-comma')!;
        const at = 'bag { note: "💧💧" rating: '.length;
        expect(comma).toMatchObject({ file: 'r.rig', severity: 'error', range: { start: { line: 4, character: at }, end: { line: 4, character: at + 3 } } });
        expect(comma.fixes[0]).toMatchObject({ title: 'Write 2.5', edits: [{ file: 'r.rig', text: '2.5', range: { start: { line: 4, character: at } } }] });
    });
    it('are in the order of file and place, and the same each time', async () => {
        const cwd = path.join(root, 'examples');
        const [a, b] = [await call(cwd, ['check', 'mistakes', '--format', 'json']), await call(cwd, ['check', 'mistakes', '--format', 'json'])];
        expect(a.out).toBe(b.out);
        const places = findingsOf(a.out).map(f => [f.file, f.range.start.line, f.range.start.character] as const);
        for (let i = 1; i < places.length; i++) if (places[i][0] === places[i - 1][0]) expect(places[i][1]).toBeGreaterThanOrEqual(places[i - 1][1]);
    });
});

describe('findings as SARIF', () => {
    // Against the properties that the standard requires: OASIS SARIF 2.1.0, sections 3.13, 3.14, 3.18-3.19, 3.27-3.30, 3.49, 3.55-3.57.
    it('are a log of version 2.1.0 with one run, columns in UTF-16 units from 1', async () => {
        const cwd = put({ [awkward]: salt });
        const log = JSON.parse((await call(cwd, ['check', '--format', 'sarif'])).out);
        expect(log).toMatchObject({ version: '2.1.0', runs: [{ tool: { driver: { name: 'rigwright', version } }, columnKind: 'utf16CodeUnits' }] });
        const [{ results, tool, originalUriBaseIds }] = log.runs;
        const { rules } = tool.driver;
        expect(results.length).toBeGreaterThan(1);
        for (const r of results) {
            expect(['error', 'warning', 'note']).toContain(r.level);
            expect(r.message.text).not.toBe('');
            expect(rules[r.ruleIndex].id).toBe(r.ruleId);
            for (const l of [...r.locations, ...(r.relatedLocations ?? [])]) {
                const { artifactLocation, region } = l.physicalLocation;
                expect(decodeURIComponent(artifactLocation.uri)).toBe(awkward);
                expect(artifactLocation.uri).toMatch(/^[A-Za-z0-9%._~-]+$/);
                expect(originalUriBaseIds[artifactLocation.uriBaseId].uri).toMatch(/^file:\/\/\/.*\/$/);
                expect(region.startLine).toBeGreaterThanOrEqual(1);
                expect(region.startColumn).toBeGreaterThanOrEqual(1);
                expect([region.endLine, region.endColumn] > [region.startLine, region.startColumn]).toBe(true);
            }
        }
        const chlorine = results.find((r: { ruleId: string }) => r.ruleId === 'electrolyte-makes-chlorine');
        expect(chlorine.locations[0].physicalLocation.region).toEqual({ startLine: 3, startColumn: 15, endLine: 3, endColumn: 19 });
        for (const rule of rules) expect(rule).toMatchObject({ id: expect.any(String), shortDescription: { text: ruleNamed(rule.id)!.summary }, defaultConfiguration: { level: expect.stringMatching(/^(error|warning|note)$/) } });
        for (const fix of results.flatMap((r: { fixes?: object[] }) => r.fixes ?? [])) {
            expect(fix.description.text).not.toBe('');
            for (const c of fix.artifactChanges) for (const x of c.replacements) expect(x).toMatchObject({ deletedRegion: { startLine: expect.any(Number) }, insertedContent: { text: expect.any(String) } });
        }
    });
});

describe('findings as JUnit XML', () => {
    it('are well formed, one suite for each file, hints no failures', async () => {
        const cwd = put({ [awkward]: `${salt}bag { note: "\u0001\u0008" }\n`, 'fine.rig': 'library "Fine"\n\nlye usual { solute: KOH }\n' });
        const { out } = await call(cwd, ['check', '--format', 'junit']);
        const json = findingsOf((await call(cwd, ['check', '--format', 'json'])).out);
        expect(out).toMatch(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n<testsuites /);
        // What XML 1.0 (2.2) cannot hold is gone; what it must have escaped is.
        expect(out).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/);
        expect(out.replace(/<[^<>]*>/g, '')).not.toMatch(/[<>]/);
        expect(out.match(/&(?!(amp|lt|gt|quot|apos);)/g)).toBeNull();
        const stack: string[] = [];
        for (const [, close, name, selfClosed] of out.matchAll(/<(\/?)([a-z-]+)(?:\s[^<>]*?)?(\/?)>/g)) {
            if (close) expect(stack.pop()).toBe(name);
            else if (!selfClosed) stack.push(name);
        }
        expect(stack).toEqual([]);
        expect(out.match(/<testsuite /g)).toHaveLength(2);
        expect(out.match(/<failure /g)).toHaveLength(json.filter(f => f.severity !== 'hint').length);
        expect(Number(/<testsuites [^>]*tests="(\d+)"/.exec(out)![1])).toBe(out.match(/<testcase /g)!.length);
        expect(out).toContain('name="nothing found"');
    });
});

describe('findings as workflow commands', () => {
    it('have their signs escaped, and lines from 1', async () => {
        const cwd = put({ [awkward]: salt });
        const { out } = await call(cwd, ['check', '--format', 'github']);
        const json = findingsOf((await call(cwd, ['check', '--format', 'json'])).out);
        const lines = out.trimEnd().split('\n');
        expect(lines).toHaveLength(json.length);
        for (const line of lines) expect(line).toMatch(/^::(error|warning|notice) file=a & b #1%2C 50%25\.rig,line=\d+,endLine=\d+(,col=\d+,endColumn=\d+)?,title=[a-z0-9-]+::\S/);
        expect(out).toContain('file=a & b #1%2C 50%25.rig,line=3,endLine=3,col=15,endColumn=19,title=electrolyte-makes-chlorine::');
    });
});

describe('findings for people', () => {
    it('show place, rule, line and marks, why once, what to do, counts and a word of care', async () => {
        const cwd = put({ 'r.rig': 'rig "R", drawn\n\nlye { solute: NaCl }\n' });
        const { out } = await call(cwd, ['check']);
        const chlorine = out.slice(out.indexOf('r.rig:3:15')).split('\n');
        expect(chlorine.slice(0, 4).map(l => l.trimEnd())).toEqual([
            'r.rig:3:15  error  electrolyte-makes-chlorine', expect.stringMatching(/^ {2}\S/), '     3 | lye { solute: NaCl }', '       |               ^^^^',
        ]);
        expect(chlorine[4]).toBe(`  why: ${ruleNamed('electrolyte-makes-chlorine')!.why}`);
        expect(out).toMatch(/\n {2}do: {2}\S/);
        expect(out).toMatch(/\n1 file: \d+ errors?, \d+ warnings?, \d+ hints?\.\n/);
        expect(out).toContain('Local codes and licensed practice decide.');
        expect(out).not.toContain('\u001b');
    });
    it('have colours only where asked for', async () => {
        const cwd = put({ 'r.rig': 'rig "R", drawn\n\nlye { solute: NaCl }\n' });
        expect((await call(cwd, ['check'], { colour: true })).out).toContain('\u001b[31merror');
    });
    it('keep their marks under the words after tabs, in long lines and at the end of a line', async () => {
        const cwd = put({ 'tab.rig': 'rig "T", drawn\n\nlye {\n\t\tsolute:\tNaCl\n}\n', 'long.rig': `rig "L", drawn\n\nlye { note: "${'x'.repeat(300)}"   solute: NaCl }\n` });
        for (const [file, lead] of [['tab.rig', '  solute: '], ['long.rig', '…xxxx"   solute: ']]) {
            const lines = (await call(cwd, ['check', file])).out.split('\n');
            const at = lines.findIndex(l => l.includes('solute: NaCl') && l.includes(' | '));
            expect(lines[at]).toContain(lead.slice(-10));
            expect(lines[at].length).toBeLessThan(130);
            expect(lines[at + 1].indexOf('^^^^')).toBe(lines[at].indexOf('NaCl'));
        }
    });
    it('say why only once for each rule', async () => {
        const cwd = put({ 'r.rig': 'rig "R", drawn\n\ncolumn a { material: brass }\ncolumn b { material: brass }\n' });
        const { out } = await call(cwd, ['check']);
        const name = findingsOf((await call(cwd, ['check', '--format', 'json'])).out).filter(f => f.message.includes('brass') || f.range.start.line > 1).map(f => f.rule).find((r, i, all) => all.indexOf(r) !== i)!;
        expect(out.split(`why: ${ruleNamed(name)!.why}`)).toHaveLength(2);
    });
    it('say that nothing was found, and that this is no promise', async () => {
        const cwd = put({ 'l.rig': 'library "L"\n\nlye usual { solute: KOH }\n' });
        const { status, out } = await call(cwd, ['check']);
        expect(status).toBe(0);
        expect(out).toContain('1 file: nothing found.');
        expect(out).toContain('Silence is no statement');
    });
});

describe('files', () => {
    const rig = 'rig "R", drawn\n\nuse "parts.rig"\nuse "book.rig"\nstack like wide { cells: 9 }\n';
    const files = { 'r.rig': rig, 'parts.rig': 'library "P"\n\nstack wide { wetted: 9 x 9 cm }\nbag odd { volume: 3 Lx }\n', 'book.rig': 'reading a {\n  stack.voltige: 3 V\n}\n' };
    it('of a folder are all that lie below, but for hidden ones and packages', async () => {
        const cwd = put({ 'a/b/x.rig': 'rig "X", idea\nlye { solute: NaCl }\n', '.git/y.rig': 'lye { solute: NaCl }', 'node_modules/z.rig': 'lye { solute: NaCl }', 'note.txt': 'lye' });
        expect(new Set(findingsOf((await call(cwd, ['check', '--format', 'json'])).out).map(f => f.file))).toEqual(new Set(['a/b/x.rig']));
        expect((await call(cwd, ['check', 'a'])).out).toContain('1 file:');
    });
    it('that a rig uses are told once, with the rig', async () => {
        const cwd = put(files);
        const findings = findingsOf((await call(cwd, ['check', '--format', 'json'])).out);
        expect(findings.filter(f => f.file === 'parts.rig' && f.message.includes('Lx'))).toHaveLength(1);
        expect(findings.filter(f => f.file === 'book.rig')).toHaveLength(1);
        expect((await call(cwd, ['check'])).out).toContain('1 file:');
        expect((await call(cwd, ['check', 'r.rig', 'parts.rig', 'r.rig'])).out).toContain('1 file:');
    });
    it('a page by itself is judged in the rig beside it that uses it, and nothing else is told', async () => {
        const cwd = put(files);
        const findings = findingsOf((await call(cwd, ['check', 'book.rig', '--format', 'json'])).out);
        expect(findings.map(f => [f.file, f.rule])).toEqual([['book.rig', 'unknown-name']]);
        expect((await call(cwd, ['show', 'book.rig'])).out).toMatch(/^R {2}drawn/);
    });
    it('outside of where the command runs are named in full, with forward slashes', async () => {
        const cwd = put({ 'in/r.rig': 'rig "R", idea\nlye { solute: NaCl }\n' });
        const [finding] = findingsOf((await call(path.join(cwd, 'in'), ['check', path.join(cwd, 'in', 'r.rig'), '--format', 'json'])).out);
        expect(finding.file).toBe('r.rig');
        const elsewhere = put({});
        expect(findingsOf((await call(elsewhere, ['check', path.join(cwd, 'in/r.rig'), '--format', 'json'])).out)[0].file).toBe(path.join(cwd, 'in/r.rig').replaceAll('\\', '/'));
    });
    it('that are no text, or missing, end in words', async () => {
        const cwd = put({ 'empty.rig': '' });
        writeFileSync(path.join(cwd, 'bytes.rig'), Buffer.from([0, 255, 254, 10, 123, 125, 200]));
        expect((await call(cwd, ['check', 'bytes.rig'])).status).toBe(1);
        expect((await call(cwd, ['check', 'empty.rig'])).status).toBe(0);
        const bytes = readFileSync(path.join(cwd, 'bytes.rig'));
        const formatted = await call(cwd, ['format', 'bytes.rig']);
        expect([formatted.status, formatted.err]).toEqual([2, 'bytes.rig is no UTF-8 text; it was left as it is.\n']);
        expect(readFileSync(path.join(cwd, 'bytes.rig'))).toEqual(bytes);
        const none = await call(put({}), ['check']);
        expect([none.status, none.err]).toEqual([2, 'There is no .rig file in this folder.\n']);
    });
    it('that may not be written are told', async () => {
        const cwd = put({ 'r.rig': 'tee   a\n' });
        chmodSync(path.join(cwd, 'r.rig'), 0o444);
        // Root may write anything: the command then runs as nobody (65534 on Linux and the BSDs), who must get into the folder
        // and to a copy of the command: where this project lies, nobody else may be let in.
        const command = path.join(cwd, 'command.cjs');
        copyFileSync(await commandBundle(), command);
        const argv = [command, 'format', 'r.rig'];
        const asRoot = process.getuid?.() === 0;
        if (asRoot) for (const dir of [folder, cwd]) chmodSync(dir, 0o755);
        const asNobody = 'process.setegid(65534); process.seteuid(65534); require(process.argv[1]);';
        const { status, stderr } = spawnSync(process.execPath, asRoot ? ['-e', asNobody, ...argv] : argv, { cwd, encoding: 'utf8' });
        expect({ status, stderr }).toEqual({ status: 2, stderr: expect.stringContaining('may not be used by you') });
        expect(readFileSync(path.join(cwd, 'r.rig'), 'utf8')).toBe('tee   a\n');
    });
});

describe('a text from standard input', () => {
    it('has the name it is given, and finds the files beside that name', async () => {
        const cwd = put({ 'sub/parts.rig': 'library "P"\n\nstack wide { wetted: 9 x 9 cm }\n' });
        const text = 'rig "R", drawn\n\nuse "parts.rig"\nstack like wide { cells: 9 }\nlye { solute: NaCl }\n';
        const named = await call(cwd, ['check', '--stdin', '--stdin-name', 'sub/new.rig', '--format', 'json'], { stdin: text });
        expect(named.status).toBe(1);
        expect(findingsOf(named.out).map(f => f.rule)).not.toContain('file-not-found');
        expect(new Set(findingsOf(named.out).map(f => f.file))).toEqual(new Set(['sub/new.rig']));
        const unnamed = findingsOf((await call(cwd, ['check', '--stdin', '--format', 'json'], { stdin: text })).out);
        expect(unnamed.some(f => f.range.start.line === 2 && f.severity === 'error')).toBe(true);
    });
    it('cannot be mended, watched, or come together with files', async () => {
        for (const argv of [['--fix'], ['--watch'], ['x.rig']]) {
            const { status, err } = await call(folder, ['check', '--stdin', ...argv], { stdin: 'tee a\n' });
            expect([status, err]).toEqual([2, expect.stringMatching(/--stdin.*\.\n$/)]);
        }
    });
});

describe('--fix', () => {
    it('applies what keeps the meaning, says where, and leaves the rest for the maker', async () => {
        const cwd = put({ 'r.rig': 'rig "R", idea\r\n\r\nsupply { voltage: 26,5 V }\r\nbag { rating: 2,5 kPa   volume: 80 }\r\n' });
        const { out, err } = await call(cwd, ['check', '--fix', '--format', 'json']);
        const after = readFileSync(path.join(cwd, 'r.rig'), 'utf8');
        const keeping = findingsOf(out).flatMap(f => f.fixes).filter(f => (f as { keepsMeaning?: boolean }).keepsMeaning);
        expect(keeping).toEqual([]);
        expect(after).toContain('26.5 V');
        expect(after).toContain('2.5 kPa');
        // A missing unit is a choice: it is not made for the maker.
        expect(after).toContain('volume: 80 }');
        expect(after.match(/\r\n/g)).toHaveLength(4);
        expect(err).toMatch(/^mended 2 places in r\.rig\n$/);
        expect((await call(cwd, ['check', '--fix'])).err).toBe('');
    });
});

describe('--watch', () => {
    it('checks again when a file changes, and ends when told', async () => {
        const cwd = put({ 'r.rig': 'rig "R", drawn\nlye { solute: KOH }\n' });
        const stop = new AbortController();
        let out = '';
        let err = '';
        const until = async (seen: () => boolean) => {
            for (let i = 0; i < 400 && !seen(); i++) await new Promise(done => setTimeout(done, 20));
            expect(seen()).toBe(true);
        };
        const ended = run(['check', '--watch', '--format', 'github'], {
            out: t => void (out += t), err: t => void (err += t), cwd, colour: false, readStdin: async () => '', today: '2026-06-15', stop: stop.signal,
        });
        await until(() => err.includes('Watching'));
        expect(out).not.toContain('electrolyte-makes-chlorine');
        writeFileSync(path.join(cwd, 'r.rig'), 'rig "R", drawn\nlye { solute: NaCl }\n');
        await until(() => out.includes('electrolyte-makes-chlorine'));
        rmSync(path.join(cwd, 'r.rig'));
        await until(() => err.includes('There is no .rig file'));
        stop.abort();
        expect(await ended).toBe(1);
    });
});

describe('words that are not known', () => {
    it.each([
        [['chek'], 'There is no command chek; did you mean check?'],
        [['check', '--fromat=json'], 'check has no option --fromat; did you mean --format?'],
        [['check', '--format', 'jsn'], '--format is one of text, json, sarif, github, junit; did you mean json?'],
        [['check', '--on'], '--on needs DATE behind it'],
        [['check', '--on', '2026-02-30'], '--on takes a date, as 2026-06-15.'],
        [['check', '--fix=yes'], '--fix stands by itself and takes nothing.'],
        [['check', '--max-warnings', '-1'], '--max-warnings'],
        [['check', '--max-warnings=-1'], '--max-warnings takes a number, 0 or more.'],
        [['show'], 'show takes a file.'],
        [['show', 'a', 'b'], 'b is one word too many for show.'],
        [['rules', 'x'], 'There is no file or folder x.'],
        [['rules', 'a', 'b'], 'b is one word too many for rules.'],
        [['explain'], 'explain takes a name'],
        [['explain', 'stack.gep'], 'Nothing is called stack.gep; did you mean stack.gap?'],
        [['new', 'skech'], 'There is no template skech; did you mean sketch?'],
        [['format', '--check', '--write'], '--check changes nothing'],
        [['help', 'shw'], 'There is no command shw; did you mean show?'],
    ])('%j', async (argv, said) => {
        const { status, out, err } = await call(folder, argv);
        expect(status).toBe(2);
        expect(err).toContain(said);
        expect(err.trimEnd()).not.toContain('\n');
        expect(out).toBe('');
    });
});

describe('show', () => {
    const text = 'rig "Ten lines", idea\n\nsupply { voltage: 26 V ± 1 V   current-limit: 8 A }\nstack { cells: 12   wetted: 80 x 100 mm }\nreading warm { date: 2026-06-01   stack.voltage: 24.4 V ± 0.2 V }\n';
    it('has stated, assumed, computed, measured and unknown numbers, in their units', async () => {
        const { quantities, assumptions } = JSON.parse((await call(put({ 'r.rig': text }), ['show', 'r.rig', '--format', 'json'])).out) as { quantities: { name: string; value: number | null; unit: string; si: number | null; status: string; plusMinus: number | null; source: string }[]; assumptions: object[] };
        const row = (name: string, status: string) => quantities.find(q => q.name === name && q.status === status);
        for (const q of quantities) expect(Object.keys(q)).toEqual(expect.arrayContaining(['name', 'value', 'unit', 'si', 'status', 'plusMinus', 'source']));
        expect(row('supply.voltage', 'stated')).toMatchObject({ value: 26, unit: 'V', si: 26, plusMinus: 1, source: 'stated, line 3' });
        expect(row('stack.gap', 'assumed')).toMatchObject({ unit: 'mm', plusMinus: null });
        expect(row('stack.gap', 'assumed')!.si).toBeCloseTo(row('stack.gap', 'assumed')!.value! / 1000, 9);
        expect(row('stack.voltage', 'measured')).toMatchObject({ value: 24.4, unit: 'V', plusMinus: 0.2, source: 'reading warm, 2026-06-01, line 5' });
        expect(row('stack.voltage', 'computed')!.value).toBeGreaterThan(20);
        const unknown = quantities.filter(q => q.status === 'unknown');
        expect(unknown.length).toBeGreaterThan(0);
        for (const q of unknown) expect([q.value, q.si, q.plusMinus]).toEqual([null, null, null]);
        for (const a of assumptions) expect(Object.keys(a)).toEqual(['name', 'value', 'because', 'source']);
        expect(assumptions).toContainEqual(expect.objectContaining({ name: 'stack.gap', value: expect.stringMatching(/ mm/) }));
    });
    it('lines points up, names what is missing, and tells the same numbers as the JSON', async () => {
        const cwd = put({ 'r.rig': text });
        const { out } = await call(cwd, ['show', 'r.rig']);
        const points = out.split('\n').filter(l => /^ {2}[a-z-]+ {2,}-?\d+\.\d/.test(l)).map(l => l.indexOf('.'));
        expect(points.length).toBeGreaterThan(5);
        expect(new Set(points).size).toBe(1);
        expect(out).toContain('Assumed, since the text does not say');
        expect(out).toMatch(/more numbers would need what is not said: /);
        const all = (await call(cwd, ['show', 'r.rig', '--all'])).out;
        expect(all).toMatch(/needs [a-z-]+\.[a-z-]+/);
        expect(all.split('\n').length).toBeGreaterThan(out.split('\n').length);
    });
    it('is not for libraries', async () => {
        const cwd = put({ 'l.rig': 'library "L"\n' });
        expect(await call(cwd, ['show', 'l.rig'])).toMatchObject({ status: 2, err: 'l.rig is no rig of its own: it is a library.\n' });
    });
    it('tells how a number came about, with the lines of what it rests on', async () => {
        const { out } = await call(put({ 'r.rig': text }), ['show', 'r.rig', '--working', 'stack.hydrogen-rate']);
        expect(out).toMatch(/^stack\.hydrogen-rate = [\d.]+ NL\/h/);
        expect(out).toMatch(/\nHow {8}\S.*\n/);
        expect(out).toMatch(/\nSource {5}\S.*\n/);
        expect(out).toMatch(/stack\.cells = 12 +stated, line 4/);
        expect(out).toMatch(/stack\.gap = [\d.]+ mm +assumed: \S/);
    });
});

describe('the built command', () => {
    let bundle: string;
    beforeAll(async () => void (bundle = await commandBundle()));
    it('prints, ends with its exit code, and holds its colours back in a pipe', () => {
        const cwd = put({ 'r.rig': 'rig "R", drawn\nlye { solute: NaCl }\n' });
        const { status, stdout } = spawnSync(process.execPath, [bundle, 'check', '--on', '2026-06-15'], { cwd, encoding: 'utf8' });
        expect(status).toBe(1);
        expect(stdout).toContain('electrolyte-makes-chlorine');
        expect(stdout).not.toContain('\u001b');
        expect(spawnSync(process.execPath, [bundle, '--version'], { encoding: 'utf8' }).stdout).toBe(`rigwright ${version}\n`);
    });
    it('starts the server', async () => {
        const child = spawn(process.execPath, [bundle, 'serve', '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
        const body = JSON.stringify({ jsonrpc: '2.0', id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } });
        child.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
        const answer = await new Promise<string>((done, fail) => {
            let got = '';
            child.stdout.on('data', (d: Buffer) => (got += d.toString()).includes('"capabilities"') && done(got));
            child.on('exit', code => fail(new Error(`ended with ${code}`)));
        });
        expect(answer).toMatch(/^Content-Length: \d+/);
        child.kill();
    });
    it('has the version of the package', () => {
        expect(JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8')).version).toBe(version);
    });
});

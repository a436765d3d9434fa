/** A bundle there and back, and archives that were made to do harm, written byte by byte. */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { unzipSync } from 'fflate';
import { afterAll, describe, expect, it } from 'vitest';
import { Analyst } from '../../language/index.js';
import { resultsOf } from '../../language/reference/quantities.js';
import { keyOf, trouble, usable } from '../../server/command/bundle/names.js';
import { BadBundle, limits, unpack } from '../../server/command/bundle/unpack.js';
import { readText } from '../../server/command/files.js';
import { callIn } from './call.js';
import { storing } from '../run/rigs.js';

const top = mkdtempSync(path.join(tmpdir(), 'rigwright-bundle-'));
afterAll(() => rmSync(top, { recursive: true, force: true }));
const examples = path.resolve(import.meta.dirname, '../../examples');
function put(files: Record<string, string | Uint8Array>): string {
    const dir = mkdtempSync(path.join(top, 'case-'));
    for (const [name, text] of Object.entries(files)) {
        mkdirSync(path.dirname(path.join(dir, name)), { recursive: true });
        writeFileSync(path.join(dir, name), text);
    }
    return dir;
}
const call = (cwd: string, ...argv: string[]) => callIn(cwd)(...argv);
const works = (file: string) => {
    const { workings, findings } = new Analyst(readText).analyse(file, { today: '2026-06-15' });
    return { numbers: resultsOf(workings).map(r => [`${r.part.name}.${r.quantity.name}`, r.value, r.low, r.high]), findings: findings.map(f => [f.rule, f.severity, f.message, f.span.start, f.span.end]) };
};

describe('a bundle', () => {
    it('of every example comes back to the byte, with the same numbers and findings', { timeout: 60_000 }, async () => {
        for (const name of readdirSync(examples).filter(n => n.endsWith('.rig') && readFileSync(path.join(examples, n), 'utf8').startsWith('rig '))) {
            const dir = put({});
            expect((await call(dir, 'bundle', path.join(examples, name), '-o', 'b.zip', '--no-faults')).status, name).toBe(0);
            expect((await call(dir, 'unbundle', 'b.zip', '-o', 'out')).status, name).toBe(0);
            expect(readFileSync(path.join(dir, 'out/rig', name))).toEqual(readFileSync(path.join(examples, name)));
            expect(works(path.join(dir, 'out/rig', name))).toEqual(works(path.join(examples, name)));
            expect(readFileSync(path.join(dir, 'out/report.html'), 'utf8')).toMatch(/^<!doctype html>/);
        }
    });
    it('takes along what stands elsewhere, so that the text still finds it, and no names of the maker\'s folders', async () => {
        const dir = put({
            'ana-secret/shed/shed.rig': storing.replace('\n', '\nuse "../shelf/deep/shelf.rig"\nuse "pages/more.rig"\nuse "../shelf/shelf.rig"\nuse "../shelf/gone.rig"\n') + 'log first { file: "tables/run 1.csv"   time: "time"   stack.current: "I" in A }\nlog away { file: "../../passwords.csv"   time: "time" }\n',
            'ana-secret/shed/pages/more.rig': 'use "../../shelf/last.rig"\ntube pipe like thin { length: 2 m }\n',
            'ana-secret/shed/tables/run 1.csv': 'time,I\n0,18\n', 'passwords.csv': 'no',
            'ana-secret/shelf/deep/shelf.rig': 'library "Deep"\nuse "../last.rig"\ntube wide { size: 8x1 mm }\n', 'ana-secret/shelf/shelf.rig': 'library "Shelf"\ntube narrow { size: 4x1 mm }\n',
            'ana-secret/shelf/last.rig': 'library "Last"\ntube thin { size: 6x1 mm }\n',
        });
        const { out, status } = await call(dir, 'bundle', 'ana-secret/shed/shed.rig', '-o', 'b.zip', '--no-faults');
        expect(status).toBe(0);
        expect(out).toContain('Not in it:\n');
        expect(out).toMatch(/gone\.rig: there is no such file/);
        expect(out).toMatch(/passwords\.csv: a table outside/);
        expect((await call(dir, 'unbundle', 'b.zip', '-o', 'out')).status).toBe(0);
        const listed = (JSON.parse(readFileSync(path.join(dir, 'out/manifest.json'), 'utf8')).files as { name: string }[]).map(f => f.name).sort();
        expect(listed).toEqual(['report.html', 'rig/from-elsewhere/2-shelf.rig', 'rig/from-elsewhere/last.rig', 'rig/from-elsewhere/shelf.rig', 'rig/pages/more.rig', 'rig/shed.rig', 'rig/tables/run 1.csv']);
        for (const f of listed) expect(readFileSync(path.join(dir, 'out', f), 'utf8'), f).not.toContain('ana-secret');
        const [was, is] = [works(path.join(dir, 'ana-secret/shed/shed.rig')), works(path.join(dir, 'out/rig/shed.rig'))];
        expect(is.numbers).toEqual(was.numbers);
        const words = (f: typeof was.findings) => f.map(x => String(x[2]).replace(/\S+gone\.rig/, '')).sort();
        expect(words(is.findings)).toEqual(words(was.findings));
        expect(is.numbers.some(([name]) => String(name).startsWith('pipe.'))).toBe(true);
    });
    it('carries names of any characters, and makes those usable that are not so everywhere', async () => {
        const odd = ['Wäscherei & Söhne, 7° "x" ß.rig', '水素.rig', 'con.rig', 'a%41 #1.rig', '🔥 e\u0301.rig', 'x:y?.rig'];
        for (const name of odd) {
            const dir = put({ [name]: storing });
            expect((await call(dir, 'bundle', name, '-o', 'b.zip', '--no-faults')).status, name).toBe(0);
            const back = await call(dir, 'unbundle', 'b.zip', '-o', 'out');
            expect(back.status, name + back.err).toBe(0);
            const [file] = readdirSync(path.join(dir, 'out/rig'));
            if (!trouble(name)) expect(file).toBe(name);
            expect(readFileSync(path.join(dir, 'out/rig', file), 'utf8')).toBe(storing);
        }
        expect([usable('con.rig'), usable('x:y?.rig'), usable('..'), usable('a.'), usable('NUL'), usable(' a')]).toEqual(['_con.rig', 'x_3Ay_3F.rig', '._2E', 'a_2E', '_NUL', '_20a']);
        fc.assert(fc.property(fc.string({ unit: 'binary' }), s => trouble(usable(s)) === undefined));
    });
    it('is an ordinary archive, the same to the byte each time, and writes over nothing unless told to', async () => {
        const dir = put({ 'shed.rig': storing });
        expect((await call(dir, 'bundle', 'shed.rig', '--no-faults')).status).toBe(0);
        const first = readFileSync(path.join(dir, 'shed.zip'));
        expect(Object.keys(unzipSync(first))).toEqual(['manifest.json', 'rig/shed.rig', 'report.html']);
        const again = await call(dir, 'bundle', 'shed.rig');
        expect([again.status, again.err]).toEqual([2, expect.stringContaining('There is a shed.zip already')]);
        await call(dir, 'bundle', 'shed.rig', '--force', '--no-faults');
        expect(readFileSync(path.join(dir, 'shed.zip')).equals(first)).toBe(true);
        expect((await call(dir, 'unbundle', 'shed.zip')).status).toBe(0);
        writeFileSync(path.join(dir, 'shed/rig/shed.rig'), 'mine');
        rmSync(path.join(dir, 'shed/report.html'));
        const over = await call(dir, 'unbundle', 'shed.zip');
        expect([over.status, over.err]).toEqual([2, expect.stringContaining('is there already; nothing was unpacked')]);
        expect(readFileSync(path.join(dir, 'shed/rig/shed.rig'), 'utf8')).toBe('mine');
        expect(existsSync(path.join(dir, 'shed/report.html'))).toBe(false);
        expect((await call(dir, 'unbundle', 'shed.zip', '--force')).status).toBe(0);
        expect(readFileSync(path.join(dir, 'shed/rig/shed.rig'), 'utf8')).toBe(storing);
    });
    it('does not write through a link that stands there, --force or not', async () => {
        const dir = put({ 'shed.rig': storing, 'outside/keep': 'x' });
        await call(dir, 'bundle', 'shed.rig', '--no-faults');
        for (const [link, to] of [['rig', 'outside'], ['report.html', 'outside/keep']]) {
            rmSync(path.join(dir, 'out'), { recursive: true, force: true });
            mkdirSync(path.join(dir, 'out'));
            // A folder is linked in the way that needs no right of its own on any system.
            symlinkSync(path.join(dir, to), path.join(dir, 'out', link), to === 'outside' ? 'junction' : 'file');
            const { status, err } = await call(dir, 'unbundle', 'shed.zip', '-o', 'out', '--force');
            expect([status, err], link).toEqual([2, expect.stringContaining('nothing was unpacked')]);
            expect(readdirSync(path.join(dir, 'outside')), link).toEqual(['keep']);
            expect(readdirSync(path.join(dir, 'out')), link).toEqual([link]);
        }
        // Nor does it read a table through one.
        const dir2 = put({ 'rigs/shed.rig': `${storing}log l { file: "run.csv"   time: "t" }\n`, 'secret.csv': 'secret' });
        symlinkSync(path.join(dir2, 'secret.csv'), path.join(dir2, 'rigs/run.csv'));
        expect((await call(dir2, 'bundle', 'rigs/shed.rig', '-o', 'b.zip', '--no-faults')).out).toContain('Not in it:\n  run.csv: a table outside');
    });
});

// ---- archives as nobody of good will writes them -----------------------------------------------------------------------

interface Made { name: string | Buffer; content?: string | Buffer; method?: number; packed?: Buffer; size?: number; flags?: number; attributes?: number; localName?: string; header?: number }
const sha = (b: Buffer) => createHash('sha256').update(b).digest('hex');
function zip(files: readonly Made[], { count = files.length, remark = '', gap = 0, after = '' } = {}): Buffer {
    const out: Buffer[] = [];
    const list: Buffer[] = [];
    let at = 0;
    for (const f of files) {
        const content = Buffer.from(f.content ?? '');
        const method = f.method ?? 8;
        const packed = f.packed ?? (method === 8 ? deflateRawSync(content) : content);
        const name = Buffer.from(f.name);
        const local = Buffer.from(f.localName ?? name);
        const head = Buffer.alloc(30);
        head.writeUInt32LE(0x04034b50, 0);
        head.writeUInt16LE(20, 4);
        head.writeUInt16LE(f.flags ?? 0x800, 6);
        head.writeUInt16LE(method, 8);
        head.writeUInt32LE(packed.length, 18);
        head.writeUInt32LE(f.size ?? content.length, 22);
        head.writeUInt16LE(local.length, 26);
        const entry = Buffer.alloc(46);
        entry.writeUInt32LE(0x02014b50, 0);
        entry.writeUInt16LE(0x0314, 4);
        entry.writeUInt16LE(20, 6);
        entry.writeUInt16LE(f.flags ?? 0x800, 8);
        entry.writeUInt16LE(method, 10);
        entry.writeUInt32LE(packed.length, 20);
        entry.writeUInt32LE(f.size ?? content.length, 24);
        entry.writeUInt16LE(name.length, 28);
        entry.writeUInt32LE(((f.attributes ?? 0o100644) << 16) >>> 0, 38);
        entry.writeUInt32LE(f.header ?? at, 42);
        list.push(entry, name);
        out.push(head, local, packed);
        at += 30 + local.length + packed.length;
    }
    const length = list.reduce((s, b) => s + b.length, 0);
    const end = Buffer.alloc(22);
    end.writeUInt32LE(0x06054b50, 0);
    end.writeUInt16LE(count, 8);
    end.writeUInt16LE(count, 10);
    end.writeUInt32LE(length, 12);
    end.writeUInt32LE(at + gap, 16);
    end.writeUInt16LE(Buffer.byteLength(remark), 20);
    return Buffer.concat([...out, ...list, end, Buffer.from(remark), Buffer.from(after)]);
}
const rig: Made = { name: 'rig/a.rig', content: 'rig "A", idea\n' };
/** A manifest that fits some files. */
const manifestFor = (files: readonly Made[], more: object = {}): Made => ({ name: 'manifest.json', content: JSON.stringify({ bundle: 1, 'made-by': 'x', title: 'A', rig: 'rig/a.rig', files: files.map((f, i) => ({ name: String(f.name), role: i ? 'used' : 'rig', bytes: Buffer.from(f.content ?? '').length, sha256: sha(Buffer.from(f.content ?? '')) })), ...more }) });
const whole = (...files: Made[]) => zip([manifestFor([rig, ...files]), rig, ...files]);

describe('an archive made to do harm', () => {
    it('the builder of this test makes ones that open where nothing is wrong', () => {
        expect([...unpack(whole({ name: 'rig/b.rig', content: 'x' })).files.keys()]).toEqual(['manifest.json', 'rig/a.rig', 'rig/b.rig']);
        expect(unpack(zip([manifestFor([rig]), { ...rig, method: 0 }, { name: 'rig/', method: 0, attributes: 0o040755 }], { remark: 'a remark' })).manifest.title).toBe('A');
    });
    const evil: Record<string, [Buffer, RegExp]> = {};
    for (const name of ['../x.rig', 'rig/../../x.rig', '/etc/x.rig', 'C:/x.rig', 'c:x.rig', '..\\x.rig', 'rig\\x.rig', '\\\\host\\x', 'rig/./x', 'rig//x', 'rig/x.', 'rig/x ', 'rig/ x', 'rig/con', 'rig/NUL.rig', 'rig/com1.txt', 'aux/x.rig', 'rig/a:stream', 'rig/x\0.rig', 'rig/x\n.rig', 'rig/\u202egir.x', `rig/${'x'.repeat(130)}`, 'a/'.repeat(20) + 'x', '', 'rig/lpt¹', 'rig/x*']) {
        evil[`named ${JSON.stringify(name)}`] = [whole({ name, content: 'x' }), /^The name .* in it |nothing/];
    }
    evil['a name that is no UTF-8'] = [zip([manifestFor([rig]), rig, { name: Buffer.from([0x72, 0xff, 0xfe]), content: 'x' }]), /no UTF-8/];
    evil['two names that differ in case only'] = [whole({ name: 'rig/B.rig', content: 'x' }, { name: 'rig/b.rig', content: 'y' }), /one file on some machines/];
    evil['two names that are composed otherwise only'] = [whole({ name: 'rig/é.rig', content: 'x' }, { name: 'rig/e\u0301.rig', content: 'y' }), /one file on some machines/];
    evil['the same name twice'] = [whole({ name: 'rig/a.rig', content: 'y' }), /one file on some machines/];
    evil['a file that is a folder as well'] = [whole({ name: 'rig/B', content: 'x' }, { name: 'rig/b/c.rig', content: 'y' }), /a file and a folder at once/];
    evil['a link'] = [whole({ name: 'rig/link', content: '/etc/passwd', attributes: 0o120777 }), /no plain file/];
    evil['a device'] = [whole({ name: 'rig/device', attributes: 0o020666 }), /no plain file/];
    evil['a pipe'] = [whole({ name: 'rig/pipe', attributes: 0o010666 }), /no plain file/];
    evil['a folder with something in it'] = [zip([manifestFor([rig]), rig, { name: 'rig/sub/', content: 'x', method: 0, attributes: 0o040755 }]), /packed in a way/];
    evil['locked by a password'] = [whole({ name: 'rig/b.rig', content: 'x', flags: 0x801 }), /password/];
    evil['packed otherwise'] = [whole({ name: 'rig/b.rig', content: 'x', method: 12 }), /a way that is not known/];
    evil['more files than may be'] = [zip(Array.from({ length: limits.files + 1 }, (_, i) => ({ name: `rig/${i}.rig` }))), /more than 500 files/];
    evil['fewer files than it says'] = [zip([manifestFor([rig]), rig], { count: 3 }), /breaks off/];
    evil['more files than it says'] = [zip([manifestFor([rig]), rig], { count: 1 }), /list of files/];
    evil['a list elsewhere'] = [zip([manifestFor([rig]), rig], { gap: 7 }), /not where it should be/];
    evil['something behind its end'] = [zip([manifestFor([rig]), rig], { after: 'tail' }), /no zip archive/];
    evil['another name at the file than in the list'] = [zip([manifestFor([rig]), { ...rig, localName: 'rig/z.rig' }]), /two names/];
    evil['files that share their bytes'] = [zip([manifestFor([rig]), rig, { name: 'rig/b.rig', content: 'x', header: 0 }]), /not where the list says/];
    evil['a file that begins nowhere'] = [zip([manifestFor([rig]), { ...rig, header: 0xfffffff0 }]), /not where the list says/];
    evil['a size that is told too small'] = [zip([manifestFor([rig]), { ...rig, size: 3 }]), /not as long/];
    evil['bytes that unpack to nothing'] = [zip([manifestFor([rig]), { ...rig, packed: Buffer.from([0xff, 0xff, 0xff]) }]), /cannot be unpacked/];
    evil['no manifest'] = [zip([rig]), /manifest\.json is missing/];
    evil['a manifest that is none'] = [zip([{ name: 'manifest.json', content: '{"bundle":1}' }, rig]), /not as it should be/];
    evil['a manifest of a later form'] = [zip([manifestFor([rig], { bundle: 2 }), rig]), /not as it should be/];
    evil['a manifest whose rig is not listed'] = [zip([manifestFor([rig], { rig: '../../x' }), rig]), /not as it should be/];
    evil['a file that is not listed'] = [zip([manifestFor([rig]), rig, { name: 'rig/b.rig', content: 'x' }]), /not in its manifest/];
    evil['a listed file that is not there'] = [zip([manifestFor([rig, { name: 'rig/b.rig', content: 'x' }]), rig]), /listed and not in it/];
    evil['another content than listed'] = [zip([manifestFor([rig]), { ...rig, content: 'rig "B", idea\n' }]), /not what manifest\.json says/];
    evil['a manifest that lists one file twice'] = [zip([manifestFor([rig, rig]), rig]), /twice/];
    evil['nothing at all'] = [Buffer.alloc(0), /no zip archive/];
    evil['no archive'] = [Buffer.from('rig "A", idea\n'), /no zip archive/];

    it.each(Object.entries(evil))('%s: told plainly, and nothing is written', async (_, [bytes, words]) => {
        expect(() => unpack(bytes)).toThrow(BadBundle);
        expect(() => unpack(bytes)).toThrow(words);
        const dir = put({ 'b.zip': bytes });
        const { status, out, err } = await call(dir, 'unbundle', 'b.zip', '-o', 'out', '--force');
        expect([status, out]).toEqual([2, '']);
        expect(err).toMatch(/^b\.zip was not unpacked\. /m);
        expect(err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]|\n.*\n./);
        expect(readdirSync(dir)).toEqual(['b.zip']);
    });
    it('that would grow is stopped while it grows, whatever size it tells', () => {
        const bomb = deflateRawSync(Buffer.alloc(limits.each + 1));
        expect(bomb.length).toBeLessThan(40_000);
        expect(() => unpack(zip([manifestFor([rig]), rig, { name: 'rig/b.rig', packed: bomb, size: 5 }]))).toThrow(/larger than a bundle may be/);
        const large = deflateRawSync(Buffer.alloc(limits.each));
        const many = Array.from({ length: 5 }, (_, i): Made => ({ name: `rig/${i}.rig`, packed: large, size: limits.each }));
        expect(() => unpack(zip([manifestFor([rig]), rig, ...many]))).toThrow(/all together, is larger/);
        expect(() => unpack(zip([{ name: 'manifest.json', packed: deflateRawSync(Buffer.alloc(2e6)), size: 2e6 }, rig]))).toThrow(/larger than a bundle may be/);
    });
    it('cut off anywhere, or with any byte changed, is told or comes out unharmed', () => {
        const good = whole({ name: 'rig/b.rig', content: 'tube pipe { length: 2 m }\n'.repeat(4) });
        const files = unpack(good).files;
        for (let n = 0; n < good.length; n++) expect(() => unpack(good.subarray(0, n)), String(n)).toThrow(BadBundle);
        for (let n = 0; n < good.length; n++) {
            const bad = Buffer.from(good);
            bad[n] ^= 0x55;
            try {
                // Times and the like do not matter; what comes out must be what went in.
                for (const [name, content] of unpack(bad).files) if (name !== 'manifest.json') expect(Buffer.from(content).equals(Buffer.from(files.get(name)!)), String(n)).toBe(true);
            } catch (e) {
                expect(e, String(n)).toBeInstanceOf(BadBundle);
            }
        }
    });
    it('of random bytes is told', () => {
        fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), bytes => void expect(() => unpack(bytes)).toThrow(BadBundle)));
        expect(keyOf('STRASSE')).toBe(keyOf('straße'));
    });
});

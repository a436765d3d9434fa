/** draw, plot and section at the command line, and the browser behind PNG. */
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { browserAt, usualPlaces } from '../../server/command/browser.js';
import { callIn } from './call.js';
import { browserPath, itInBrowser } from '../browser.js';
import { soundMarkup } from '../seeing/look.js';

const examples = path.resolve(import.meta.dirname, '../../examples');
const out = mkdtempSync(path.join(tmpdir(), 'rigwright-test-'));
afterAll(() => rmSync(out, { recursive: true, force: true }));
const call = callIn(examples);
const rig = 'potters-burner.rig';
const file = (name: string) => path.join(out, name);

describe('draw', () => {
    it('draws all of the rig or some layers of it, on a sheet of the same size', async () => {
        const size = (svg: string) => /viewBox="[^"]*"/.exec(svg)![0];
        const all = await call('draw', rig);
        expect(all.status).toBe(0);
        soundMarkup(all.out.trim());
        const some = await call('draw', rig, '--layers', 'hydrogen, values');
        expect(size(some.out)).toBe(size(all.out));
        expect([all, some].map(r => [r.out.includes('data-layer="oxygen"'), r.out.includes('gas-bag')])).toEqual([[true, true], [false, true]]);
    });
    it('writes SVG in other colours, and what leads where as rows', async () => {
        expect(await call('draw', rig, '-o', file('d.svg'), '--colours', 'sharp')).toMatchObject({ status: 0 });
        expect(readFileSync(file('d.svg'), 'utf8')).toContain('fill="#000000"');
        expect(await call('draw', rig, '-o', file('d.csv'))).toMatchObject({ status: 0 });
        expect(readFileSync(file('d.csv'), 'utf8')).toMatch(/^\ufeffmedium,from,to\r\n(.*\r\n)*hydrogen,stack,h2-column\r\n/);
    });
    it('tells in one line what it cannot do', async () => {
        expect(await call('draw', rig, '--layers', 'smoke')).toMatchObject({ status: 2, err: expect.stringMatching(/^There is no layer smoke; there are .*hydrogen.*\.\n$/) });
        expect(await call('draw', 'mistakes/decimal-comma.rig', '-o', file('x.pdf'))).toMatchObject({ status: 2, err: expect.stringContaining('.svg, .png or .csv') });
    });
});
describe('plot', () => {
    it('lists the plots, and why one is not there', async () => {
        const { status, out: text } = await call('plot', rig);
        expect(status).toBe(0);
        expect(text).toMatch(/^polarisation +What the stack asks/);
        expect(text).toContain('Not for this rig. No compressor is described. It needs a compressor');
    });
    it('tells the numbers behind one without a file', async () => {
        const { status, out: text } = await call('plot', rig, 'watts');
        expect(status).toBe(0);
        expect(text).toMatch(/^Where the watts go\n.*from the plug/);
        expect(text).toMatch(/in the hydrogen +\d/);
        expect(text).toContain('Local codes and licensed practice decide.');
    });
    it('writes SVG and CSV', async () => {
        expect(await call('plot', rig, 'polarisation', '-o', file('a.svg'), '--colours', 'dark')).toMatchObject({ status: 0 });
        const svg = readFileSync(file('a.svg'), 'utf8');
        soundMarkup(svg.trim());
        expect(svg).toContain('#1b2027');
        expect(await call('plot', rig, 'cells', '-o', file('a.csv'))).toMatchObject({ status: 0 });
        expect(readFileSync(file('a.csv'), 'utf8')).toMatch(/^\ufeffplate,working \(A\),lowest current \(A\)\r\n1,14,8\r\n/);
    });
    it('follows a scenario and asks of a number', async () => {
        expect((await call('plot', rig, 'run', '--scenario', 'cool-morning')).out).toContain('cool-morning, from 07:30 for 5 h');
        expect((await call('plot', rig, 'roots', '--of', 'stack.temperature')).out).toContain('stack.temperature is 4');
    });
    it('tells in one line what it cannot do', async () => {
        expect(await call('plot', rig, 'polarization', '-o', file('x.svg'))).toMatchObject({ status: 2, err: expect.stringContaining('polarisation') });
        expect(await call('plot', rig, 'filling')).toMatchObject({ status: 2, err: 'No compressor is described.\n' });
        expect(await call('plot', rig, 'watts', '-o', file('x.pdf'))).toMatchObject({ status: 2, err: expect.stringContaining('.svg, .png or .csv') });
        expect(await call('plot', rig, '-o', file('x.svg'))).toMatchObject({ status: 2, err: expect.stringContaining('Say which plot') });
        expect(await call('plot', rig, 'watts', '-o', file('x.png'), '--browser', '/nowhere/browser')).toMatchObject({ status: 2, err: 'There is no browser at /nowhere/browser.\n' });
        expect(existsSync(file('x.png'))).toBe(false);
    });
    itInBrowser('writes PNG by a browser, as large as the picture says', async () => {
        expect(await call('plot', rig, 'volts', '-o', file('v.png'), '--browser', browserPath)).toMatchObject({ status: 0 });
        await call('plot', rig, 'volts', '-o', file('v.svg'));
        const png = readFileSync(file('v.png'));
        expect(png.subarray(1, 4).toString()).toBe('PNG');
        const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(readFileSync(file('v.svg'), 'utf8'))!.map(Number);
        expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([2 * width, 2 * height]);
        expect(statSync(file('v.png')).size).toBeGreaterThan(10_000);
    }, 60_000);
});
describe('section', () => {
    it('tells the order, draws, and writes it as rows', async () => {
        const { out: text } = await call('section', rig);
        expect(text).toMatch(/^ +2 {2}end board {2}PP, 25 mm\n +11 {2}plate {2}nickel/);
        expect(await call('section', rig, '-o', file('s.svg'))).toMatchObject({ status: 0 });
        soundMarkup(readFileSync(file('s.svg'), 'utf8').trim());
        await call('section', rig, '-o', file('s.csv'));
        expect(readFileSync(file('s.csv'), 'utf8')).toContain('1 for each of 10 cells');
    });
});
describe('the browser', () => {
    it('is looked for in the usual places of each system', () => {
        expect(browserAt(undefined, f => f === '/usr/bin/google-chrome', 'linux', { PATH: '/opt/x' })).toBe('/usr/bin/google-chrome');
        expect(browserAt(undefined, f => f === '/opt/x/chromium', 'linux', { PATH: '/opt/x:/usr/bin' })).toBe('/opt/x/chromium');
        expect(usualPlaces('darwin', { HOME: '/Users/a', PATH: '' })).toContain('/Applications/Google Chrome.app/Contents/MacOS/Google Chrome');
        expect(usualPlaces('win32', { ProgramFiles: 'C:\\Program Files' })).toContain('C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe');
        // A relative place on the PATH is nothing to start a program from.
        expect(usualPlaces('linux', { PATH: '.:bin' }).every(p => p.startsWith('/'))).toBe(true);
    });
    it('is named by the maker where there is none', () => {
        expect(() => browserAt(undefined, () => false, 'linux', {})).toThrow('--browser');
    });
});

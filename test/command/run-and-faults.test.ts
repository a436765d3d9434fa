/** run and faults at the command line. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { callIn } from './call.js';
import { storing } from '../run/rigs.js';

const folder = mkdtempSync(path.join(tmpdir(), 'rigwright-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
writeFileSync(path.join(folder, 'store.rig'), `${storing}scenario short { starts: 14:00   lasts: 40 min   events: 14:05 start-button pressed }\n`);
writeFileSync(path.join(folder, 'empty.rig'), 'rig "Nothing yet", idea\n\nlye { solute: KOH }\n');
const call = callIn(folder);

describe('run', () => {
    it('tells what happens by the clock, and how it stands at the end', async () => {
        const { status, out } = await call('run', 'store.rig', '--for', '3h');
        expect(status).toBe(0);
        expect(out).toMatch(/^A store to run\na usual day, from 08:00, 20 °C at the start\n\n08:00:00 {2}start-button pressed: .*the stack makes gas\n/);
        expect(out).toMatch(/^08:\d\d:\d\d {2}bag-full makes \(store-bag\.volume above 55 L\): compressor starts/m);
        expect(out).toMatch(/^After 3 h\n/m);
        expect(out).toMatch(/^ {2}hydrogen made +\d+ NL$/m);
        expect(out).toContain('Local codes');
    });
    it('runs a scenario of the text by its name, and offers the nearest', async () => {
        const { out } = await call('run', 'store.rig', '--scenario', 'short');
        expect(out).toMatch(/^short, from 14:00/m);
        expect(out).toMatch(/^14:05:00 {2}start-button pressed/m);
        expect(out).toMatch(/^After 40 min/m);
        expect(await call('run', 'store.rig', '--scenario', 'shorts')).toMatchObject({ status: 2, err: expect.stringContaining('did you mean short?') });
    });
    it('gives events, series and the end as JSON, and the series as CSV', async () => {
        const found = JSON.parse((await call('run', 'store.rig', '--for', '2h', '--format', 'json')).out);
        expect(Object.keys(found)).toEqual(expect.arrayContaining(['version', 'events', 'series', 'final']));
        expect(found.events.find((e: { cause: string }) => e.cause.startsWith('bag-full makes'))).toMatchObject({ sort: 'control', clock: expect.stringMatching(/^08:/) });
        expect(found.series['cylinder.pressure']).toMatchObject({ unit: 'bar' });
        expect(found.series['cylinder.pressure'].values).toHaveLength(found.series.time.length);
        const csv = (await call('run', 'store.rig', '--for', '2h', '--format', 'csv')).out.trim().split('\r\n');
        expect(csv[0]).toBe('time (s),stack.temperature (°C),stack.current (A),stack.voltage (V),compressor.starts,compressor.discharge-pressure (bar),store-bag.volume (L),store-bag.pressure (kPa),store-bag.oxygen (%),cylinder.pressure (bar),cylinder.temperature (°C),cylinder.oxygen (%),h2-column.level (mm),o2-column.level (mm),site.hydrogen (%),site.oxygen (%)');
        expect(csv.at(-1)).toMatch(/^7200\.00,/);
    });
    it('lets one thing fail', async () => {
        const { out } = await call('run', 'store.rig', '--fault', 'bag-empty sticks made', '--for', '2h');
        expect(out).toMatch(/suction-low trips/);
        expect(await call('run', 'store.rig', '--fault', 'bag-empty explodes')).toMatchObject({ status: 2, err: expect.stringContaining('sticks made') });
        expect(await call('run', 'store.rig', '--fault', 'nobody stops')).toMatchObject({ status: 2, err: expect.stringContaining('no part nobody') });
    });
    it('ends with 2 and a reason where there is nothing to run, or no time', async () => {
        expect(await call('run', 'empty.rig')).toMatchObject({ status: 2, err: expect.stringContaining('There is no stack') });
        expect(await call('run', 'store.rig', '--for', 'long')).toMatchObject({ status: 2, err: expect.stringContaining('--for') });
        expect(await call('run', 'store.rig', '--for', '-3h')).toMatchObject({ status: 2 });
    });
});
describe('faults', () => {
    it('tells the worst first, what catches what, and what is left out', async () => {
        const { status, out } = await call('faults', 'store.rig');
        expect(status).toBe(0);
        expect(out).toMatch(/^A single failure reaches a hazard \(\d+\)\n/);
        expect(out).toMatch(/bag-empty sticks made or detached: suction-low acts after/);
        expect(out).toMatch(/^ {2}suction-low +without it a hazard is reached: /m);
        expect(out).toMatch(/^Not followed by a run \(\d+\)$/m);
        expect(out).toContain('Of two at once only those are tried');
    });
    it('gives hazards as SARIF, at the parts that fail', async () => {
        const { runs: [{ results }] } = JSON.parse((await call('faults', 'store.rig', '--format', 'sarif', '--for', '6h')).out);
        const vent = results.find((r: { message: { text: string } }) => r.message.text.startsWith('o2-vent blocked'));
        expect(vent).toMatchObject({ ruleId: 'single-fault-reaches-hazard', level: 'warning' });
        const line = storing.split('\n').findIndex(l => l.startsWith('vent o2-vent')) + 1;
        expect(vent.locations[0].physicalLocation.region.startLine).toBe(line);
    });
    it('gives it as JSON', async () => {
        const { faults, guards } = JSON.parse((await call('faults', 'store.rig', '--format', 'json', '--for', '6h')).out);
        expect(faults.find((f: { part: string; way: string }) => f.part === 'o2-vent' && f.way === 'blocked')).toMatchObject({ outcome: 'hazard', hazard: 'port-dry', time: expect.any(Number), 'caught-by': null });
        expect(guards.map((g: { name: string }) => g.name)).toContain('high-high');
    });
});

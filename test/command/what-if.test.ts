/** size, sweep and corners at the command line. */
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { callIn } from './call.js';

const examples = path.resolve(import.meta.dirname, '../../examples');
const call = callIn(examples);
const rig = 'lesson-two-cells.rig';

describe('size', () => {
    it('says the number, what it gives, and what it would then tell', async () => {
        const { status, out } = await call('size', 'jeweller-torch-store.rig', '--for', 'cylinder.fill-time < 1.5 h', '--by', 'power.current-limit');
        expect(status).toBe(0);
        expect(out).toMatch(/^power\.current-limit: at least [\d.]+ A\nThat gives 1\.\d+ h; as it stands it is [\d.]+ h with 20 A\.\nThen it tells fuse-overloaded: /);
    });
    it('lists the single numbers that would do, if none is named', async () => {
        const { status, out } = await call('size', rig, '--for', 'stack.volts-per-cell < 2 V');
        expect(status).toBe(0);
        expect(out.trim().split('\n').length).toBeGreaterThan(1);
        for (const line of out.trim().split('\n')) expect(line).toMatch(/^[\w-]+\.[\w.-]+ +at (?:least|most) .* \(now .*; gives [12](?:\.\d+)? V\)$/);
    });
    it('ends with 1 and the reason where there is no such number', async () => {
        const { status, out } = await call('size', rig, '--for', 'stack.volts-per-cell < 1 V', '--by', 'stack.gap');
        expect(status).toBe(1);
        expect(out).toContain('No stack.gap between');
    });
    it('gives it all as JSON', async () => {
        const found = JSON.parse((await call('size', rig, '--for', 'stack.volts-per-cell < 2 V', '--by', 'stack.wetted', '--format', 'json')).out);
        expect(found).toMatchObject({ by: 'stack.wetted', already: false, side: 'at least', why: null });
        expect(found.value).toMatch(/^\d+(?:\.\d+)? x \d+(?:\.\d+)? mm$/);
        expect(found.text).toContain(found.value);
    });
    it('ends with 2 for a question without sense', async () => {
        expect(await call('size', rig)).toMatchObject({ status: 2, err: expect.stringContaining('--for') });
        expect(await call('size', rig, '--for', 'stack.volts < 2 V', '--by', 'stack.gap')).toMatchObject({ status: 2, err: expect.stringContaining('volts') });
    });
});
describe('sweep', () => {
    it('prints a table with a curve', async () => {
        const { status, out } = await call('sweep', rig, '--over', 'stack.gap: 1..5 mm', '--of', 'stack.volts-per-cell,stack.temperature', '--steps', '5');
        expect(status).toBe(0);
        const lines = out.trimEnd().split('\n');
        expect(lines.length).toBe(7);
        // A wider gap asks more volts: the curve leans to the right.
        const ends = lines.slice(2).map(l => l.length);
        expect([...ends].sort((a, b) => a - b)).toEqual(ends);
    });
    it('prints CSV and JSON with the same numbers', async () => {
        const args = ['sweep', rig, '--over', 'stack.gap: 1..5 mm; lye.strength: 20..30 wt%', '--of', 'stack.current', '--steps', '3'];
        const csv = (await call(...args, '--format', 'csv')).out.trim().split('\r\n');
        const { columns, rows } = JSON.parse((await call(...args, '--format', 'json')).out);
        expect(csv[0]).toBe(columns.map((c: { name: string; unit: string }) => `${c.name} (${c.unit})`).join(','));
        expect(csv.slice(1)).toEqual(rows.map((r: number[]) => r.join(',')));
        expect(rows.length).toBe(9);
    });
});
describe('corners', () => {
    it('prints a table and what each corner breaks', async () => {
        const { status, out } = await call('corners', 'jeweller-torch-store.rig');
        expect(status).toBe(0);
        for (const corner of ['coldest', 'hottest', 'quarter', 'empty', 'full', 'idle']) expect(out.split('\n\n')[0]).toContain(corner);
        expect(out).toMatch(/quarter of the current {2}the current turned down to a quarter\n(?: {2}\w.*\n)* {2}error expectation-not-met: stack\.hydrogen-rate/);
        expect(out).toContain('Local codes and licensed practice decide.');
    });
    it('gives them as JSON', async () => {
        const { corners } = JSON.parse((await call('corners', rig, '--format', 'json')).out);
        expect(corners.map((c: { name: string }) => c.name)).toContain('hottest day');
        const lye = (name: string) => corners.find((c: { name: string }) => c.name === name).numbers.find((n: { name: string }) => n.name === 'stack.temperature').value;
        expect(lye('hottest day')).toBeGreaterThan(lye('coldest day'));
    });
});

/**
 * Runs beside an integrator of a general library with its own search for events, on equations written down a second time
 * (independent/integrate.py). What it found is kept in independent/results.json, so that no Python is needed here. `npm run independent`
 * makes both files anew; RIGWRIGHT_RENEW has the laws written that it starts from.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { run, type RunResult } from '../../language/run/run.js';
import { cases, fingerprint, HOURS, lawsOf, scenarioOf, type Case } from './independent/cases.js';
import { workingsOf } from './rigs.js';

/** Share of each state, and s of each event, over all hours. */
const STATE = 1e-3;
const EVENT = 1;

const beside = (name: string) => path.join(import.meta.dirname, 'independent', name);
interface Found {
    readonly name: string;
    /** Of which rig, and what is done in it. */
    readonly of: string;
    readonly switched: readonly (readonly [t: number, name: string, on: boolean])[];
    readonly hazards: Readonly<Record<string, number>>;
    /** States at the end of each hour. */
    readonly hours: readonly Readonly<Record<string, number>>[];
}
const renewing = process.env.RIGWRIGHT_RENEW === 'laws';
if (renewing) writeFileSync(beside('laws.json'), `[\n${cases.map(c => JSON.stringify({ ...c, of: fingerprint(c), laws: lawsOf(c) })).join(',\n')}\n]\n`);
const found = existsSync(beside('results.json')) ? (JSON.parse(readFileSync(beside('results.json'), 'utf8')) as { cases: Found[] }).cases : [];
const laws = JSON.parse(readFileSync(beside('laws.json'), 'utf8')) as (Case & { of: string; laws: ReturnType<typeof lawsOf> })[];

const runOf = (c: Case, hours = HOURS): RunResult => run(workingsOf([], c.text), scenarioOf(c, hours), { already: c.already });
/** Of a warmth its distance from the room: a share of kelvins above nothing would hide a wrong one. */
const counted = (c: Case, state: string, value: number) => (state === 'lye' ? value - c.weather : value);

describe.skipIf(renewing)('a run beside an independent integrator', () => {
    for (const [i, c] of cases.entries()) {
        describe(c.name, () => {
            it('is of this rig and of these laws: npm run independent makes it anew', () => {
                expect(found[i]?.of).toBe(fingerprint(c));
                expect(laws[i].of).toBe(fingerprint(c));
                const now = lawsOf(c);
                for (const [name, was] of Object.entries(laws[i].laws)) {
                    const is = [now[name as keyof typeof now]].flat();
                    const stored = [was].flat();
                    expect(is.length).toBe(stored.length);
                    for (const [k, value] of is.entries()) expect(Math.abs(value - stored[k]), `${name} ${k}`).toBeLessThanOrEqual(1e-6 * Math.abs(stored[k]));
                }
            });
            if (c.of.switches.length) it('has every switch move at its moment, in the same order', () => {
                // What moves as everything is started is no event of its own.
                const theirs = found[i].switched.filter(([t, name]) => t > 0 && c.of.switches.includes(name));
                const ours = runOf(c).switched.filter(s => s.t > 0 && c.of.switches.includes(s.name));
                for (const name of c.of.switches) {
                    const [mine, other] = [ours.filter(s => s.name === name), theirs.filter(([, n]) => n === name)];
                    expect(mine.map(s => s.on), name).toEqual(other.map(([, , on]) => on));
                    for (const [k, s] of mine.entries()) expect(Math.abs(s.t - other[k][0]), `${name} at ${s.t} s`).toBeLessThan(EVENT);
                }
            });
            if (c.of.hazards.length) it('reaches the same hazards at the same moments', () => {
                const { hazards } = runOf(c);
                for (const name of c.of.hazards) expect(Math.abs(hazards.find(h => h.name === name)!.t - found[i].hazards[name]), name).toBeLessThan(EVENT);
            });
            it('stands where it stands at the end of each hour', () => {
                for (let hour = 1; hour <= HOURS; hour++) {
                    const { final } = runOf(c, hour);
                    for (const state of c.of.states) {
                        const [ours, theirs] = [final[state as keyof typeof final], found[i].hours[hour - 1][state]].map(n => counted(c, state, n));
                        // What has died away to nothing is held to a hundred-thousandth of the most that there was: how a store comes to the air at the very end differs.
                        const most = Math.max(...found[i].hours.map(h => Math.abs(counted(c, state, h[state]))));
                        expect(Math.abs(ours - theirs), `${state} after ${hour} h: ${ours}, ${theirs}`).toBeLessThanOrEqual(Math.max(STATE * Math.abs(theirs), 1e-5 * most) + 1e-9);
                    }
                }
            });
        });
    }
});

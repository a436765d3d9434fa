/** Random sound rigs, run through a day, and with one part broken: nothing is lost, nothing hangs, nothing is no number. RIGWRIGHT_RUNS sets how many. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { Plant } from '../../language/run/plant.js';
import { faultsOf, runWithFault } from '../../language/run/faults.js';
import { run, type RunResult } from '../../language/run/run.js';
import { usualDay } from '../../language/run/scenario.js';
import { drawing, wholeRig } from '../rules/whole-rigs.js';

const RIGS = Math.max(12, Math.min(Math.round(Number(process.env.RIGWRIGHT_RUNS ?? 0) / 10), 1000));
const LOST = 1e-6;

/** @param capacity  J/K of lye and stack */
function sound(r: RunResult, what: string, capacity: number): void {
    expect(Math.abs(r.balance), `${what}: hydrogen`).toBeLessThan(LOST);
    expect([...r.times, ...Object.values(r.final), ...r.series.flatMap(s => s.values)].every(Number.isFinite), `${what}: numbers`).toBe(true);
    expect(r.times.every((t, i) => i === 0 || t >= r.times[i - 1]), `${what}: time goes on`).toBe(true);
    const gained = capacity * (r.final.lye - r.series[0].values[0]);
    expect(Math.abs(r.final.heat - r.final.lost - gained), `${what}: heat`).toBeLessThan(1e-3 * Math.max(r.final.heat, r.final.lost, 1));
}

describe('runs of random rigs', () => {
    it(`${RIGS} of them: a usual day, and one with something broken`, { timeout: 3_600_000 }, () => {
        let broken = 0;
        for (let seed = 1; seed <= RIGS; seed++) {
            const { text } = wholeRig(7000 + seed);
            const { workings } = analyseText(text, { today: '2026-06-15' });
            const day = run(workings, usualDay(workings));
            const capacity = workings.partsOf('stack')[0].q('heat-capacity-total');
            sound(day, `seed ${seed}`, capacity);
            expect(day.ended.early, `seed ${seed}`).toBeUndefined();
            expect(day.hazards.map(h => h.name), `seed ${seed}`).toEqual([]);
            const { faults } = workings.unnoted(() => faultsOf(workings, new Plant(workings)));
            if (!faults.length) continue;
            const random = drawing(seed);
            for (let k = 0; k < 3; k++) {
                const fault = faults[Math.floor(random() * faults.length)];
                const r = runWithFault(workings, fault, 86400);
                sound(r, `seed ${seed}, ${fault.part} ${fault.what}`, capacity);
                broken++;
            }
        }
        expect(broken).toBeGreaterThan(RIGS);
    });
});

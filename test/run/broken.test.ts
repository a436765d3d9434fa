/** Rigs with lines missing, doubled or cut short: a run ends with a result or with a reason, and never hangs. RIGWRIGHT_RUNS sets how many. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { CannotRun } from '../../language/run/laws.js';
import { faultsOf, runWithFault } from '../../language/run/faults.js';
import { Plant } from '../../language/run/plant.js';
import { run } from '../../language/run/run.js';
import { usualDay } from '../../language/run/scenario.js';
import { drawing, wholeRig } from '../rules/whole-rigs.js';
import { storing } from './rigs.js';

const TRIED = Math.max(60, Math.min(Number(process.env.RIGWRIGHT_RUNS ?? 0), 2000));

describe('a run of a rig that is not whole', () => {
    it('ends with a result or a reason', { timeout: 3_600_000 }, () => {
        let ran = 0;
        let refused = 0;
        for (let seed = 1; seed <= TRIED; seed++) {
            const random = drawing(seed);
            const lines = (seed % 2 ? storing : wholeRig(seed).text).split('\n');
            for (let k = 0; k < 4; k++) {
                const at = Math.floor(random() * lines.length);
                const what = random();
                if (what < 0.5) lines.splice(at, 1);
                else if (what < 0.7) lines[at] = lines[at].slice(0, Math.floor(random() * lines[at].length));
                else if (what < 0.85) lines[at] = lines[at].replace(/\d+/, String(Math.floor(10 ** (4 * random()) - 1)));
                else lines.splice(at, 0, lines[Math.floor(random() * lines.length)]);
            }
            const { workings } = analyseText(lines.join('\n'), { today: '2026-06-15' });
            try {
                const day = run(workings, usualDay(workings));
                const { faults } = workings.unnoted(() => faultsOf(workings, new Plant(workings)));
                const runs = [day, ...(faults.length ? [runWithFault(workings, faults[Math.floor(random() * faults.length)], 86400)] : [])];
                for (const r of runs) {
                    expect(r.series.flatMap(s => s.values).every(Number.isFinite), `seed ${seed}`).toBe(true);
                    expect(r.ended.t === 86400 || r.ended.early, `seed ${seed}`).toBeTruthy();
                    expect(Math.abs(r.balance), `seed ${seed}`).toBeLessThan(1e-6);
                }
                ran++;
            } catch (e) {
                if (!(e instanceof CannotRun)) throw e;
                expect(e.message).toMatch(/\.$/);
                refused++;
            }
        }
        expect(ran).toBeGreaterThan(TRIED / 3);
        expect(ran + refused).toBe(TRIED);
    });
});

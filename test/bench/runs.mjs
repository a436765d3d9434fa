// node test/bench/runs.mjs: a day of the complete example, all its single faults, guards and hidden failures, and the stepper beside an integrator of a
// general library (odex) that looks for each event by halving, on the same equations to the same closeness. Never a test:
// figures hang on the machine, so compare the columns of one run. Puts its own key into test/bench/results.json.
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { Solver } from 'odex';
import { keepResults } from './keep-results.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const cache = path.join(process.env.XDG_CACHE_HOME ?? path.join(os.homedir(), '.cache'), 'rigwright-bench');
mkdirSync(cache, { recursive: true });
const outfile = path.join(cache, 'runs.mjs');
await build({
    stdin: {
        contents: ['Analyst } from "./language/index.js', 'run } from "./language/run/run.js', 'faultRuns } from "./language/run/faults.js', 'usualDay } from "./language/run/scenario.js', 'follow } from "./language/run/stepper.js'].map(l => `export { ${l}";`).join('\n'),
        resolveDir: root, loader: 'ts',
    },
    bundle: true, platform: 'node', format: 'esm', outfile, logLevel: 'warning', alias: { mathjs: path.join(root, 'node_modules/mathjs/lib/esm/type/unit/Unit.js') },
    banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
});
const { Analyst, run, faultRuns, usualDay, follow } = await import(pathToFileURL(outfile).href);
const median = list => [...list].sort((a, b) => a - b)[list.length >> 1];
const timed = (times, work) => {
    const all = [];
    let result;
    for (let i = 0; i < times; i++) {
        const t = performance.now();
        result = work();
        all.push(performance.now() - t);
    }
    return { ms: Math.round(median(all) * 100) / 100, result };
};
/** Read afresh, so that no runs are kept. */
const read = (name = 'jeweller-torch-store.rig') => new Analyst(file => {
    try {
        return readFileSync(file, 'utf8');
    } catch {
        return undefined;
    }
}).analyse(path.join(root, 'examples', name), { today: '2026-06-15' });
const { workings } = read();
const fill = timed(30, () => run(workings, usualDay(workings, 8 * 3600)));
const day = timed(30, () => run(workings, usualDay(workings, 24 * 3600)));
/** All faults: ms until the single ones are known and until all are, and the longest that a pause was waited for. The first with a cold engine. */
const faults = [1, 2, 3].map(() => {
    const begun = performance.now();
    const runs = faultRuns(read().workings);
    let last = performance.now();
    let single = 0;
    let progress;
    const waits = [];
    for (;;) {
        const step = runs.next();
        const now = performance.now();
        waits.push(now - last);
        last = now;
        if (step.done) return { single, all: now - begun, wait: waits.sort((a, b) => a - b)[Math.floor(waits.length * 0.99)], runs: progress.of, found: step.value };
        progress = step.value;
        if (step.value.found) single = now - begun;
    }
});
/** ms for the single failures of every example: one that chatters shows here. */
const examples = Object.fromEntries(readdirSync(path.join(root, 'examples')).filter(f => f.endsWith('.rig') && !/^library/m.test(readFileSync(path.join(root, 'examples', f), 'utf8'))).map(name => [name.replace('.rig', ''), timed(3, () => {
    for (const runs = faultRuns(read(name).workings); ;) {
        const step = runs.next();
        if (step.done || step.value.found) return undefined;
    }
}).ms]));
console.table(examples);

// Bag and store by turns: lye that warms, a bag that fills and is drawn down between two volumes; 8 h, about ten events.
const make = T => 1.05e-3 * (1 - 4e-4 * (T - 293));
const slopeOf = drawing => (x, out) => {
    out[0] = (150 - 3.6 * (x[0] - 293) - 2e-9 * (x[0] ** 4 - 293 ** 4)) / 34e3;
    out[1] = make(x[0]) - (drawing ? 8e-3 / (1 + 0.05 * x[2]) : 0);
    out[2] = drawing ? 8e-3 / (1 + 0.05 * x[2]) : 0;
};
const bound = drawing => x => (drawing ? 0.4 - x[1] : x[1] - 3.6);
const CLOSE = 1e-7;
const ours = timed(40, () => {
    let t = 0;
    let x = Float64Array.of(293, 0.4, 2);
    let drawing = false;
    const events = [];
    while (t < 28800) {
        const slope = slopeOf(drawing);
        const over = bound(drawing);
        const end = follow((_t, y, out) => slope(y, out), t, 28800, x, [(_t, y) => over(y)], { relative: CLOSE, absolute: Float64Array.of(1e-3, 1e-6, 1e-6), longest: 300 }, 1, () => {});
        ({ t, x } = end);
        if (end.hit.length) {
            events.push(t);
            drawing = !drawing;
        }
    }
    return { events, x };
});
const theirs = timed(40, () => {
    let t = 0;
    let x = [293, 0.4, 2];
    let drawing = false;
    const events = [];
    while (t < 28800) {
        const slope = slopeOf(drawing);
        const over = bound(drawing);
        const out = [0, 0, 0];
        const solver = new Solver(3);
        solver.absoluteTolerance = solver.relativeTolerance = CLOSE;
        solver.denseOutput = true;
        let before = t;
        let hit;
        const f = (_t, y) => {
            slope(y, out);
            return [...out];
        };
        const end = solver.solve(f, t, x, 28800, (_n, xOld, xNew, y, dense) => {
            if (hit === undefined && over(y) >= 0) {
                let [low, high] = [before, xNew];
                while (high - low > 1e-3) {
                    const middle = (low + high) / 2;
                    if (over([0, 1, 2].map(i => dense(i, middle))) >= 0) high = middle;
                    else low = middle;
                }
                hit = { t: high, x: [0, 1, 2].map(i => dense(i, high)) };
                return false;
            }
            before = xNew;
            return undefined;
        });
        if (hit) {
            ({ t, x } = hit);
            events.push(t);
            drawing = !drawing;
        } else {
            t = 28800;
            x = end.y;
        }
    }
    return { events, x };
});
const apart = Math.max(...ours.result.events.map((t, i) => Math.abs(t - (theirs.result.events[i] ?? Infinity))));
const row = {
    on: new Date().toISOString().slice(0, 10), node: process.version, fill8hMs: fill.ms, fill8hEvents: fill.result.events.length, day24hMs: day.ms, faults: faults[0].found.faults.length, faultRuns: faults[0].runs,
    singleFaultsColdMs: Math.round(faults[0].single), sixtyFaultsColdMs: Math.round(60 * faults[0].single / faults[0].found.faults.length), singleFaultsMs: Math.round(faults[2].single),
    allFaultsColdMs: Math.round(faults[0].all), allFaultsMs: Math.round(faults[2].all), pauseWaitedP99Ms: Math.round(100 * faults[2].wait) / 100, stepperMs: ours.ms, odexMs: theirs.ms, odexOverOurs: Math.round(100 * theirs.ms / ours.ms) / 100, events: ours.result.events.length, eventsApartS: Number(apart.toPrecision(3)),
};
console.table(row);
keepResults({ runs: { ...row, singleFaultsOfExamplesMs: examples } });

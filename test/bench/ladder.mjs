// node test/bench/ladder.mjs: the bypass ladder beside two general solvers on the same equations, 10 to 10 000 cells. Never a
// test: figures hang on the machine, so compare the columns of one run. Puts its own key into test/bench/results.json.
//
// The circuit: four channels as a rig has them (two lower ones alike, two upper ones alike with gas in them), and plates either
// as straight lines (1.83 V and 13.5 mΩ) or of smooth nickel, which bend. The general solvers know nothing of it: they take
// every node of every channel as an unknown and every plate as a straight line that is drawn anew until the currents stand
// still, by the same measure as ours. In long stacks the middle plates carry next to nothing, where nickel is steepest, and
// that plain iteration swings for ever: then it has no time to show, and `settled` says so.
//   banded   a plain banded elimination, written here: no small maintained library of that kind was found on npm
//   dense    ml-matrix, LU of the whole matrix; only where it fits
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { mkdirSync } from 'node:fs';
import { build } from 'esbuild';
import { Matrix, solve } from 'ml-matrix';
import { keepResults } from './keep-results.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const cache = path.join(process.env.XDG_CACHE_HOME ?? path.join(os.homedir(), '.cache'), 'rigwright-bench');
mkdirSync(cache, { recursive: true });
const bundled = async name => {
    const outfile = path.join(cache, `${name}.mjs`);
    await build({ entryPoints: [path.join(root, `language/physics/${name}.ts`)], bundle: true, platform: 'node', format: 'esm', outfile, logLevel: 'warning' });
    return import(pathToFileURL(outfile).href);
};
const { solveLadder } = await bundled('bypass-ladder');
const { nickelKinetics, plateSlope, plateVoltage } = await bundled('polarisation');

const AREA = 0.01;
const CURRENT = 10;
const cell = { temperature: 328.15, rest: 1.2, ...nickelKinetics, areaResistance: 0.5e-4, offset: 0.05 };
const laws = {
    straight: { volts: i => 1.83 + 0.0135 * i, slope: () => 0.0135 },
    nickel: { volts: i => plateVoltage(cell, i / AREA), slope: i => plateSlope(cell, i / AREA) / AREA },
};
const lower = { port: 30, segment: 0.5 };
const upper = { port: 52, segment: 0.86 };
const channels = [lower, lower, upper, upper];
const SETTLED = 1e-7;
const MOST_STEPS = 60;

/** Banded elimination without exchange of rows: the matrix is one of conductances, its diagonal outweighs the rest. */
function bandedSolver(size, half) {
    const width = 2 * half + 1;
    const a = new Float64Array(size * width);
    const b = new Float64Array(size);
    return {
        clear() { a.fill(0); b.fill(0); },
        add(r, c, value) { a[r * width + c - r + half] += value; },
        feed(r, value) { b[r] += value; },
        solve() {
            for (let k = 0; k < size; k++) {
                const pivot = a[k * width + half];
                for (let r = k + 1; r < Math.min(size, k + half + 1); r++) {
                    const factor = a[r * width + k - r + half] / pivot;
                    if (factor === 0) continue;
                    for (let c = k; c < Math.min(size, k + half + 1); c++) a[r * width + c - r + half] -= factor * a[k * width + c - k + half];
                    b[r] -= factor * b[k];
                }
            }
            for (let k = size - 1; k >= 0; k--) {
                let sum = b[k];
                for (let c = k + 1; c < Math.min(size, k + half + 1); c++) sum -= a[k * width + c - k + half] * b[c];
                b[k] = sum / a[k * width + half];
            }
            return b;
        },
    };
}
function denseSolver(size) {
    let a = Matrix.zeros(size, size);
    let b = Matrix.zeros(size, 1);
    return {
        clear() { a = Matrix.zeros(size, size); b = Matrix.zeros(size, 1); },
        add(r, c, value) { a.set(r, c, a.get(r, c) + value); },
        feed(r, value) { b.set(r, 0, b.get(r, 0) + value); },
        solve() { return solve(a, b).to1DArray(); },
    };
}
/** Plate currents by any solver of linear equations: every node an unknown, cell by cell so that neighbours stay near. */
function general(cells, law, solverOf) {
    const each = channels.length + 1;
    const size = cells * each;
    const solver = solverOf(size, each);
    const plates = new Float64Array(cells - 1).fill(CURRENT);
    for (let step = 1; step <= MOST_STEPS; step++) {
        solver.clear();
        const last = (cells - 1) * each;
        // The last cell is the place from which volts are counted.
        const add = (r, c, value) => { if (r !== last) solver.add(r, c, value); };
        const join = (p, q, g) => { add(p, p, g); add(q, q, g); add(p, q, -g); add(q, p, -g); };
        const feed = (r, value) => { if (r !== last) solver.feed(r, value); };
        for (let j = 0; j < cells; j++) {
            channels.forEach((channel, k) => {
                join(j * each, j * each + 1 + k, 1 / channel.port);
                if (j + 1 < cells) join(j * each + 1 + k, (j + 1) * each + 1 + k, 1 / channel.segment);
            });
            if (j + 1 === cells) continue;
            const slope = law.slope(plates[j]);
            const volts = law.volts(plates[j]) - slope * plates[j];
            join(j * each, (j + 1) * each, 1 / slope);
            feed(j * each, volts / slope);
            feed((j + 1) * each, -volts / slope);
        }
        solver.add(last, last, 1);
        feed(0, CURRENT);
        const x = solver.solve();
        let change = 0;
        for (let j = 0; j < cells - 1; j++) {
            const slope = law.slope(plates[j]);
            const i = (x[j * each] - x[(j + 1) * each] - law.volts(plates[j])) / slope + plates[j];
            change = Math.max(change, Math.abs(i - plates[j]));
            plates[j] = i;
        }
        if (change <= SETTLED * CURRENT) return { plates, steps: step };
    }
    return { plates, steps: Infinity };
}
function timed(work, least = 5, budget = 1500) {
    const times = [];
    const start = performance.now();
    while (times.length < least || (performance.now() - start < budget && times.length < 2000)) {
        const t = performance.now();
        work();
        times.push(performance.now() - t);
    }
    return times.sort((a, b) => a - b)[Math.floor(times.length / 2)];
}
const figures = x => Number(x.toPrecision(3));
const apart = (a, b) => figures(a.reduce((worst, x, j) => Math.max(worst, Math.abs(x - b[j])), 0) / CURRENT);

const ladder = [];
for (const [plates, law] of Object.entries(laws)) {
    for (const cells of [10, 100, 1000, 10000]) {
        const ours = solveLadder(cells, CURRENT, law, channels);
        const row = { plates, cells, steps: ours.steps, settled: ours.settled, oursMs: figures(timed(() => solveLadder(cells, CURRENT, law, channels))) };
        const beside = (name, solverOf) => {
            const other = general(cells, law, solverOf);
            row[`${name}Settled`] = Number.isFinite(other.steps);
            if (!row[`${name}Settled`]) return;
            row[`${name}Steps`] = other.steps;
            row[`${name}Ms`] = figures(timed(() => general(cells, law, solverOf), 3));
            row[`${name}Apart`] = apart(other.plates, ours.plates);
            row[`${name}OverOurs`] = figures(row[`${name}Ms`] / row.oursMs);
        };
        beside('banded', bandedSolver);
        if (cells <= 100 && (plates === 'straight' || cells <= 10)) beside('dense', denseSolver);
        ladder.push(row);
        console.log(JSON.stringify(row));
    }
}
console.table(ladder);
keepResults({ ladder: { on: new Date().toISOString().slice(0, 10), node: process.version, cores: os.cpus().length, channels: channels.length, amperes: CURRENT, rows: ladder } });

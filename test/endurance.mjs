// npm run endurance -- [MINUTES]: the random cases in full counts (RIGWRIGHT_RUNS=10000 sets how many), and the server under random typing. Writes what it saw
// to test/endurance-results.json. Not part of the tests: it takes minutes.
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { fuzz } from './server/fuzz.mjs';

const root = path.resolve(import.meta.dirname, '..');
const minutes = Number(process.argv[2] ?? 5);
const runs = Number(process.env.RIGWRIGHT_RUNS ?? Math.round(minutes * 800));
const vitest = spawnSync(process.execPath, [path.join(root, 'node_modules/vitest/vitest.mjs'), 'run', 'test/language/properties.test.ts', 'test/language/memory.test.ts', 'test/language/balances.test.ts', 'test/language/monotony.test.ts', 'test/rules/quiet.test.ts', 'test/run/random.test.ts', 'test/run/broken.test.ts', '--testTimeout', '3600000'], {
    cwd: root, stdio: 'inherit', env: { ...process.env, RIGWRIGHT_RUNS: String(runs) },
});
const seed = Number(process.env.SEED ?? Date.now() % 1e9);
const { difference, edits, requests } = await fuzz({ seconds: minutes * 30, seed, log: line => console.log(line) });
const results = { on: new Date().toISOString().slice(0, 10), propertyCases: runs, propertiesHold: vitest.status === 0, seed, edits, requests, difference: difference ?? null };
writeFileSync(path.join(root, 'test/endurance-results.json'), `${JSON.stringify(results, null, 2)}\n`);
console.log(results);
process.exitCode = vitest.status === 0 && !difference ? 0 : 1;

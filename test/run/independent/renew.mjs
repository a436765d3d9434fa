// npm run independent: writes the laws at rest of the cases anew, and what an integrator of Python's scipy finds from them; then
// compares. Needs python3 with scipy (Debian: apt-get install python3-scipy); the test itself does not.
import { spawnSync } from 'node:child_process';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../../..');
const steps = [
    [process.execPath, [path.join(root, 'node_modules/vitest/vitest.mjs'), 'run', 'test/run/independent.test.ts'], { RIGWRIGHT_RENEW: 'laws' }],
    ['python3', [path.join(import.meta.dirname, 'integrate.py')], {}],
    [process.execPath, [path.join(root, 'node_modules/vitest/vitest.mjs'), 'run', 'test/run/independent.test.ts'], {}],
];
for (const [command, args, env] of steps) {
    const { status, error } = spawnSync(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...env } });
    if (error) console.error(`${command}: ${error.message}`);
    if (status !== 0) {
        process.exitCode = status ?? 1;
        break;
    }
}

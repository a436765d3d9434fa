// npm run accuracy: writes test/accuracy/ACCURACY.md anew from the checks, once all of them hold.
import { spawnSync } from 'node:child_process';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');
const vitest = spawnSync(process.execPath, [path.join(root, 'node_modules/vitest/vitest.mjs'), 'run', 'test/accuracy'], { cwd: root, stdio: 'inherit', env: { ...process.env, RIGWRIGHT_RENEW: '1' } });
process.exitCode = vitest.status ?? 1;

#!/usr/bin/env node
// npm run fresh-clone: clones what is committed here into an empty folder and runs the two commands of the README
// there, as somebody would who has just found the project. Prints how long each took; exit code 1 if one fails.
//
// The tests run there without the browser part (RIGWRIGHT_BROWSER=none): it is driven once, in this folder, by
// `npm test`. Packages may come out of npm's own cache, as on most people's second project.
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '..');
const folder = mkdtempSync(path.join(os.tmpdir(), 'rigwright-clone-'));
const clone = path.join(folder, 'rigwright');
const windows = process.platform === 'win32';
const times = [];

let failed = false;
try {
    execFileSync('git', ['clone', '--quiet', '--no-hardlinks', root, clone], { stdio: 'inherit' });
    if (execFileSync('git', ['status', '--porcelain'], { cwd: root, encoding: 'utf8' }).trim()) {
        console.log('Note: what is changed here but not committed is not in the clone.');
    }
    failed = !(run(['start', '--', '--no-open'], {}) && run(['test'], { RIGWRIGHT_BROWSER: 'none' }));
} finally {
    rmSync(folder, { recursive: true, force: true });
}

console.log('');
for (const { command, seconds, status } of times) {
    console.log(`${command.padEnd(28)} ${seconds.toFixed(1).padStart(6)} s   ${status === 0 ? 'went well' : `ended with ${status}`}`);
}
process.exit(failed ? 1 : 0);

function run(args, environment) {
    const command = `npm ${args.join(' ')}`;
    console.log(`\n==== a fresh clone: ${command}`);
    const started = Date.now();
    const env = { ...process.env, ...environment };
    // The npm that runs this script must not lend the clone its own folder and settings.
    for (const name of Object.keys(env)) if (/^npm_/i.test(name) || name === 'INIT_CWD') delete env[name];
    const { status } = spawnSync(windows ? 'npm.cmd' : 'npm', args, { cwd: clone, env, stdio: ['ignore', 'inherit', 'inherit'], shell: windows });
    times.push({ command, seconds: (Date.now() - started) / 1000, status });
    return status === 0;
}

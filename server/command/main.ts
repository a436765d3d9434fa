#!/usr/bin/env node
/** The command line: finds the command, reads its options, runs it. */
import '../../language/grammar/polyfill.js';
import '../engine-settings.js';
import { run } from './run.js';

/** The day where the machine stands. */
function localToday(): string {
    const now = new Date();
    return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
}
async function readStdin(): Promise<string> {
    const chunks: Buffer[] = [];
    for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
    return Buffer.concat(chunks).toString('utf8');
}
// Whoever reads the output may have seen enough.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
});
const stop = new AbortController();
void run(process.argv.slice(2), {
    out: text => void process.stdout.write(text),
    err: text => void process.stderr.write(text),
    cwd: process.cwd(),
    columns: process.stdout.columns,
    readStdin,
    today: localToday(),
    colour: process.stdout.isTTY === true && !process.env.NO_COLOR && process.env.TERM !== 'dumb',
    stop: stop.signal,
}).then(status => {
    process.exitCode = status;
});

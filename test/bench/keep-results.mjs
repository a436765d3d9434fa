// results.json is written by several benchmarks: each puts in its own keys and leaves those of the others.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const file = path.join(import.meta.dirname, 'results.json');

export function keepResults(own) {
    const before = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {};
    writeFileSync(file, `${JSON.stringify({ ...before, ...own }, null, 2)}\n`);
}

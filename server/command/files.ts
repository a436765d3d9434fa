/** Files of the command line: what to check, and a reader of texts with them. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { Analyst, type Analysis } from '../../language/index.js';
import { CannotDo } from './command.js';

/** Every .rig file under the given files and folders, in order. */
export function rigFiles(args: readonly string[], cwd: string): string[] {
    const found: string[] = [];
    const walk = (dir: string) => {
        for (const d of readdirSync(dir, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))) {
            const full = path.join(dir, d.name);
            if (d.isDirectory()) {
                if (!d.name.startsWith('.') && d.name !== 'node_modules') walk(full);
            } else if (d.name.endsWith('.rig')) found.push(full);
        }
    };
    for (const arg of args.length ? args : ['.']) {
        const full = path.resolve(cwd, arg);
        if (!existsSync(full)) throw new CannotDo(`There is no file or folder ${arg}.`);
        if (statSync(full).isDirectory()) walk(full);
        else found.push(full);
    }
    if (!found.length) throw new CannotDo(`No .rig file in ${args.join(', ') || 'this folder'}.`);
    return [...new Set(found)];
}
export function readText(file: string): string | undefined {
    try {
        return readFileSync(file, 'utf8');
    } catch {
        return undefined;
    }
}
export interface Checked {
    readonly analyses: readonly Analysis[];
    readonly textOf: (file: string) => string | undefined;
}
/** Analyses of all rigs among some files; pages and libraries that another of them uses are told there, once. */
export function checkFiles(files: readonly string[], today: string, texts: ReadonlyMap<string, string> = new Map()): Checked {
    const cache = new Map<string, string | undefined>(texts);
    const textOf = (file: string) => {
        if (!cache.has(file)) cache.set(file, readText(file));
        return cache.get(file);
    };
    for (const f of files) if (textOf(f) === undefined) throw new CannotDo(`${f} cannot be read.`);
    const analyst = new Analyst(textOf);
    const all = files.map(f => analyst.analyse(f, { today }));
    const used = new Set(all.flatMap(a => a.files.filter(f => f !== a.rig.root)));
    return { analyses: all.filter(a => !(used.has(a.rig.root) && a.rig.pages[0].sort !== 'rig')), textOf };
}
/** A file as it is shown: relative to where the command runs, with forward slashes. */
export function shown(file: string, cwd: string): string {
    const rel = path.relative(cwd, file);
    return (rel && !rel.startsWith('..') ? rel : file).split(path.sep).join('/');
}
/** --on DATE, or today. */
export function dateOf(on: string | boolean | undefined, today: string): string {
    if (on === undefined) return today;
    if (typeof on !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(on) || Number.isNaN(Date.parse(on))) throw new CannotDo('--on takes a date as 2026-06-15.');
    return on;
}

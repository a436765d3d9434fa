/** Files of the command line: what to check, and a reader of texts with them. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { Analyst, type Analysis } from '../../language/index.js';
import { resolveUse } from '../../language/rig/assemble.js';
import { CannotDo } from './command.js';

/** Larger files are no rig texts, bytes. */
const LARGEST = 16e6;

/** Rig files directly in a folder. */
function rigsIn(folder: string): string[] {
    return readdirSync(folder, { withFileTypes: true }).filter(d => !d.isDirectory() && d.name.endsWith('.rig')).map(d => path.join(folder, d.name)).sort();
}
/** Every .rig file under the given files and folders, in order. A file that is named counts whatever it is called. */
export function rigFiles(args: readonly string[], cwd: string): string[] {
    const found: string[] = [];
    const walk = (folder: string) => {
        const entries = readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
        for (const d of entries) {
            const full = path.join(folder, d.name);
            if (d.isDirectory()) {
                if (!d.name.startsWith('.') && d.name !== 'node_modules') walk(full);
            } else if (d.name.endsWith('.rig')) {
                found.push(full);
            }
        }
    };
    for (const arg of args.length ? args : ['.']) {
        const full = path.resolve(cwd, arg);
        if (!existsSync(full)) throw new CannotDo(`There is no file or folder ${arg}.`);
        if (statSync(full).isDirectory()) walk(full);
        else found.push(full);
    }
    if (!found.length) throw new CannotDo(`There is no .rig file in ${args.join(', ') || 'this folder'}.`);
    return [...new Set(found)];
}
/** Text of a file; undefined if there is none that can be read. */
export function readText(file: string): string | undefined {
    try {
        const { size } = statSync(file);
        return size < LARGEST ? readFileSync(file, 'utf8') : undefined;
    } catch {
        return undefined;
    }
}
/** Whether a file holds the bytes of this text: what is no UTF-8 would be damaged by writing it back. */
export function isText(file: string, text: string): boolean {
    return Buffer.from(text, 'utf8').equals(readFileSync(file));
}

export interface Checked {
    readonly analyses: readonly Analysis[];
    readonly textOf: (file: string) => string | undefined;
    /** ISO date on which they were judged. */
    readonly today: string;
    /** Files to tell about; all files of the analyses if undefined. */
    readonly only?: ReadonlySet<string>;
}
/**
 * Analyses of all rigs among some files. Pages and libraries that another of them uses are told there, once; a page whose
 * rig is not among them is judged in its rig, if that lies beside it.
 *
 * @param texts texts of files that are not, or not so, on the disk
 */
export function checkFiles(files: readonly string[], today: string, texts: ReadonlyMap<string, string> = new Map()): Checked {
    const cache = new Map<string, string | undefined>(texts);
    const textOf = (file: string) => {
        if (!cache.has(file)) cache.set(file, readText(file));
        return cache.get(file);
    };
    const unreadable = files.filter(f => textOf(f) === undefined);
    if (unreadable.length) throw new CannotDo(unreadable.map(f => `${f} cannot be read.`).join('\n'));
    const analyst = new Analyst(textOf);
    const analyse = (file: string) => analyst.analyse(file, { today });
    const all = files.map(analyse);
    const used = new Set(all.flatMap(a => a.files.filter(f => f !== a.rig.root)));
    const analyses: Analysis[] = [];
    const only = new Set<string>();
    for (const a of all) {
        const { sort } = a.rig.pages[0];
        if (sort !== 'rig' && used.has(a.rig.root)) continue;
        const rig = sort === 'page' ? rigBeside(a.rig.root, analyst) : undefined;
        if (rig === undefined) {
            analyses.push(a);
            for (const f of a.files) only.add(f);
        } else {
            analyses.push(analyse(rig));
            only.add(a.rig.root);
        }
    }
    return { analyses, textOf, today, only };
}
/** The first rig in the folder of a page that uses it, itself or through other pages. */
function rigBeside(page: string, analyst: Analyst): string | undefined {
    let beside: string[];
    try {
        beside = rigsIn(path.dirname(page));
    } catch {
        return undefined;
    }
    const seen = new Set([page]);
    const found: string[] = [];
    for (const used of seen) {
        for (const file of beside) {
            const other = seen.has(file) ? undefined : analyst.page(file);
            if (!other || other.sort === 'library' || !other.uses.some(u => resolveUse(file, u) === used)) continue;
            seen.add(file);
            if (other.sort === 'rig') found.push(file);
        }
    }
    return found.sort()[0];
}

/** A file as it is shown: relative to where the command runs if it lies below, with forward slashes. */
export function shown(file: string, cwd: string): string {
    const relative = path.relative(cwd, file);
    const below = relative && !path.isAbsolute(relative) && !/^\.\.([\\/]|$)/.test(relative);
    return (below ? relative : file).split(path.sep).join('/');
}
/** --on DATE, or today. */
export function dateOf(on: string | boolean | undefined, today: string): string {
    if (on === undefined) return today;
    const written = typeof on === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(on) ? new Date(`${on}T00:00:00Z`) : undefined;
    if (!written || Number.isNaN(written.getTime()) || written.toISOString().slice(0, 10) !== on) throw new CannotDo('--on takes a date, as 2026-06-15.');
    return on;
}

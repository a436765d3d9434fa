/**
 * A rig with all that it reads, as one archive. Files in the rig's folder keep their places; what it uses from elsewhere is laid into a
 * folder of its own, and the lines that name it are written anew, so that the names of the maker's folders do not travel along.
 */
import { createHash } from 'node:crypto';
import { readFileSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { zipSync, type Zippable } from 'fflate';
import type { Analysis } from '../../../language/index.js';
import { resolveUse } from '../../../language/rig/assemble.js';
import type { Page, Span, Use } from '../../../language/rig/rig.js';
import { version } from '../version.js';
import { FORM, MANIFEST, type Listed, type Manifest, type Role } from './manifest.js';
import { keyOf, trouble, usable } from './names.js';
import { limits } from './unpack.js';

const RIG = 'rig';
/** In the rig's folder: what stood outside of it, or under a name that cannot be used everywhere. */
const ELSEWHERE = 'from-elsewhere';

export interface Packed {
    readonly bytes: Uint8Array;
    readonly manifest: Manifest;
    /** What the rig names and what is not in it, each with the reason. */
    readonly left: readonly string[];
}
interface Stored { readonly name: string; readonly role: Role; readonly content: Uint8Array; readonly renamed?: true }

/** @param report  the page of the rig, HTML */
export function pack(analysis: Analysis, report: string, today: string): Packed {
    const { rig } = analysis;
    const folder = path.dirname(rig.root);
    const pages = rig.pages.filter(p => !p.file.startsWith('rigwright-library:'));
    const places = new Map<string, string>();
    const taken = new Set<string>();
    const left: string[] = [];
    const place = (file: string) => {
        const inside = path.relative(folder, file).split(path.sep).join('/');
        let name = `${RIG}/${inside}`;
        const stays = !inside.startsWith('..') && !path.isAbsolute(inside) && !trouble(name) && !inside.startsWith(`${ELSEWHERE}/`);
        if (!stays) name = `${RIG}/${file === rig.root ? '' : `${ELSEWHERE}/`}${usable(path.basename(file))}`;
        for (let i = 2; taken.has(keyOf(name)); i++) name = `${RIG}/${ELSEWHERE}/${i}-${usable(path.basename(file))}`;
        taken.add(keyOf(name));
        places.set(file, name);
    };
    for (const page of pages) {
        if (page.file !== rig.root && !inFolder(folder, page.file) && !page.file.toLowerCase().endsWith('.rig')) left.push(`${page.file}: it stands outside of the rig's folder and is no .rig file`);
        else place(page.file);
    }
    for (const p of rig.problems) if (p.code === 'file-not-found') left.push(`${textAt(pages, p.span)}: there is no such file`);
    const logs = logsOf(analysis);
    const stored: Stored[] = [];
    for (const log of logs) {
        if (places.has(log.file)) continue;
        const content = inFolder(folder, log.file) ? bytesOf(log.file) : undefined;
        if (content) {
            place(log.file);
            stored.push({ name: places.get(log.file)!, role: 'log', content });
        } else left.push(`${log.said}: ${inFolder(folder, log.file) ? 'there is no such file, or it is too large' : 'a table outside of the rig\'s folder is not taken along'}`);
    }
    const texts = pages.filter(p => places.has(p.file)).map((page): Stored => {
        const name = places.get(page.file)!;
        const edits: { span: Span; text: string }[] = [];
        for (const use of page.uses) {
            const to = use.shipped ? undefined : places.get(resolveUse(page.file, use));
            if (to !== undefined && resolveUse(name, use) !== to) edits.push({ span: use.targetSpan, text: between(name, to, use) });
        }
        for (const log of logs) {
            const to = log.span.file === page.file ? places.get(log.file) : undefined;
            const from = path.posix.dirname(name);
            if (to !== undefined && path.posix.normalize(path.posix.join(from, log.said)) !== to) edits.push({ span: log.span, text: `"${path.posix.relative(from, to)}"` });
        }
        const role = page.file === rig.root ? RIG : 'used';
        if (!edits.length) return { name, role, content: readFileSync(page.file) };
        let text = page.text;
        for (const e of edits.sort((a, b) => b.span.start - a.span.start)) text = text.slice(0, e.span.start) + e.text + text.slice(e.span.end);
        return { name, role, content: Buffer.from(text, 'utf8'), renamed: true };
    });
    const all: Stored[] = [...texts, ...stored, { name: 'report.html', role: 'report', content: Buffer.from(report, 'utf8') }];
    const listed = all.map(({ name, role, content, renamed }): Listed => ({ name, role, bytes: content.length, sha256: sha256(content), ...(renamed && { renamed }) }));
    const manifest: Manifest = { bundle: FORM, 'made-by': `Rigwright ${version}`, title: rig.title, rig: places.get(rig.root)!, files: listed };
    // One date for all: a bundle of the same files on the same day is the same to the byte. Archives know no day before 1980.
    const mtime = new Date(`${today < '1980-01-02' ? '1980-01-02' : today}T12:00:00`);
    const files: Zippable = { [MANIFEST]: [Buffer.from(`${JSON.stringify(manifest, null, 2)}\n`, 'utf8'), { mtime }] };
    for (const { name, content } of all) files[name] = [content, { mtime }];
    return { bytes: zipSync(files, { level: 9 }), manifest, left };
}
/** In hexadecimal. */
export const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** Way from one file of the bundle to another one, for a `use` line. */
function between(from: string, to: string, use: Use): string {
    const way = path.posix.relative(path.posix.dirname(from), to);
    return resolveUse(from, { ...use, target: way }) === to ? way : use.target;
}
/** Also where links lead. */
function inFolder(folder: string, file: string): boolean {
    const below = (from: string, to: string) => {
        const way = path.relative(from, to);
        return way !== '' && !way.startsWith('..') && !path.isAbsolute(way);
    };
    try {
        return below(folder, file) && below(realpathSync(folder), realpathSync(file));
    } catch {
        return below(folder, file);
    }
}
function bytesOf(file: string): Uint8Array | undefined {
    try {
        const { size } = statSync(file);
        return size <= limits.each ? readFileSync(file) : undefined;
    } catch {
        return undefined;
    }
}
interface Log { readonly said: string; readonly file: string; readonly span: Span }
/** Tables that the rig names. */
function logsOf({ rig, workings }: Analysis): Log[] {
    return [...rig.parts.values()].filter(p => p.kind?.name === 'log').flatMap(p => {
        const entry = p.entries.get('file');
        const fact = workings.given(p, 'file').facts.get('');
        const said = fact?.text ?? fact?.word;
        return entry && said ? [{ said, file: path.resolve(path.dirname(p.file), said), span: entry.span }] : [];
    });
}
function textAt(pages: readonly Page[], span: Span): string {
    return pages.find(p => p.file === span.file)?.text.slice(span.start, span.end) ?? '';
}

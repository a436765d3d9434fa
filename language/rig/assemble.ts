/** Pages -> rig: follows `use`, gathers parts, adds what every rig has, and tells names that stand for nothing. */
import { nearest, offering } from '../values/nearest.js';
import { kindCalled, kinds } from '../vocabulary/index.js';
import type { Kind, Medium } from '../vocabulary/define.js';
import type { Allowance, Expectation, Fix, Named, Page, Part, Path, Problem, Rig, Span, Use } from './rig.js';
import { shippedLibraries } from './shipped.generated.js';

/** Where a path may end without a part standing there. */
export const pathEnds: ReadonlySet<string> = new Set(['outdoors', 'room', 'plugged', 'tap', 'drain', 'mains', 'user']);

/** Other words for them. */
const endsCalled: ReadonlyMap<string, string> = new Map([['outside', 'outdoors'], ['outdoor', 'outdoors'], ['air', 'outdoors'], ['atmosphere', 'outdoors'], ['open-air', 'outdoors'], ['indoors', 'room'], ['inside', 'room'], ['sewer', 'drain'], ['plug', 'plugged'], ['socket', 'mains']]);

/** A place on a disk with a letter, or on another machine, as one system writes them: no address with a scheme. */
const lettered = /^(?:[a-z]:[\\/]|\\\\)/i;

/** The file that a `use` names, as seen from the file it stands in: an address, or a place on a disk written as that file's is. */
export function resolveUse(file: string, use: Use): string {
    if (use.shipped) return `rigwright-library:/${use.target}.rig`;
    if (lettered.test(file)) return besideLettered(file, use.target);
    const [scheme, rest] = /^([a-z][a-z0-9+.-]*:(?:\/\/[^/]*)?)?(.*)$/i.exec(file)!.slice(1);
    const parts = (use.target.startsWith('/') ? [] : rest.split('/').slice(0, -1));
    for (const step of use.target.split('/')) {
        if (step === '..') {
            if (parts.length > 1) parts.pop();
        } else if (step !== '.' && step !== '') parts.push(scheme ? encodeURIComponent(decode(step)) : step);
    }
    return (scheme ?? '') + (use.target.startsWith('/') ? '/' : '') + parts.join('/');
}
function besideLettered(file: string, target: string): string {
    if (lettered.test(target)) return target;
    const folder = file.split(/[\\/]/).slice(0, -1);
    // The disk, or machine and share, which nothing goes above.
    const top = file.startsWith('\\\\') ? 4 : 1;
    const parts = /^[\\/]/.test(target) ? folder.slice(0, top) : folder;
    for (const step of target.split(/[\\/]/)) {
        if (step === '..') {
            if (parts.length > top) parts.pop();
        } else if (step !== '.' && step !== '') parts.push(step);
    }
    return parts.join(file.includes('\\') ? '\\' : '/');
}
function decode(s: string): string {
    try {
        return decodeURIComponent(s);
    } catch {
        return s;
    }
}

/** Text of a library shipped with the tool, by its file name, or undefined. */
export function shippedText(file: string): string | undefined {
    const name = /^rigwright-library:\/(.+)\.rig$/.exec(file)?.[1];
    return name === undefined ? undefined : shippedLibraries[name];
}
export function shippedNames(): string[] {
    return Object.keys(shippedLibraries);
}

/**
 * Puts a rig together.
 * @param root file that was opened
 * @param pageOf reads another file, or answers undefined if there is none
 */
export function assemble(root: Page, pageOf: (file: string) => Page | undefined): Rig {
    const pages: Page[] = [];
    const problems: Problem[] = [];
    const seen = new Map<string, Page>();
    const follow = (page: Page, trail: readonly string[]) => {
        seen.set(page.file, page);
        pages.push(page);
        for (const use of page.uses) {
            const file = resolveUse(page.file, use);
            const next = seen.get(file) ?? pageOf(file);
            if (!next) {
                const near = use.shipped ? nearest(use.target, shippedNames()) : undefined;
                problems.push({
                    code: 'file-not-found', span: use.targetSpan,
                    message: use.shipped ? `No library ${use.target} comes with Rigwright; ${near ? `did you mean ${near}?` : `there is ${shippedNames().join(', ')}. A file of your own stands in quotes.`}` : `There is no file ${use.target} beside this one.`,
                    fixes: near ? [{ title: `Write ${near}`, edits: [{ span: use.targetSpan, text: near }], preferred: true }] : undefined,
                });
            } else if (file === page.file || trail.includes(file)) {
                problems.push({ code: 'circular-use', span: use.targetSpan, message: file === page.file ? 'A file cannot use itself.' : 'These files use each other in a circle; this line counts for nothing.' });
            } else if (next.sort === 'rig') {
                problems.push({ code: 'value-not-understood', span: use.targetSpan, message: `${use.target} is a rig of its own: only libraries and further pages can be used.` });
            } else if (!seen.has(file)) {
                follow(next, [...trail, page.file]);
            }
        }
    };
    follow(root, []);

    const parts = new Map<string, Part>();
    const patterns = new Map<string, Part>();
    const lets = new Map<string, Named>();
    const isLibrary = root.sort === 'library';
    for (const page of pages) {
        for (const part of page.parts) {
            const into = page.sort === 'library' && !isLibrary ? patterns : parts;
            const before = into.get(part.name);
            if (before) {
                // A half-typed header that collides must not push out the finished part.
                const [kept, loser] = before.inside || !part.inside ? [before, part] : [part, before];
                into.set(part.name, kept);
                problems.push({
                    code: 'name-taken', span: loser.nameSpan,
                    message: loser.named ? `${loser.name} is taken by another part; give this one a name of its own.` : `There is a ${loser.kindWord} already; a second one needs a name: ${loser.kindWord} second-${loser.kindWord} { }.`,
                    related: [{ span: kept.nameSpan, message: `${kept.name} stands here` }],
                });
            } else {
                into.set(part.name, page.sort === 'library' ? { ...part, pattern: true } : part);
            }
        }
        if (page.sort === 'library' && !isLibrary) continue;
        for (const named of page.lets) {
            const before = lets.get(named.name);
            if (before) problems.push({ code: 'name-taken', span: named.nameSpan, message: `${named.name} is named twice; the first one holds.`, related: [{ span: before.nameSpan, message: 'first named here' }] });
            else lets.set(named.name, named);
        }
    }
    for (const [name, named] of lets) {
        const part = parts.get(name);
        if (part) problems.push({ code: 'name-taken', span: named.nameSpan, message: `${name} is the name of a part as well.`, related: [{ span: part.nameSpan, message: 'the part stands here' }] });
    }
    const own = pages.filter(p => p.sort !== 'library' || isLibrary);
    const paths: Path[] = own.flatMap(p => p.paths);
    const expects: Expectation[] = own.flatMap(p => p.expects);
    // How much a rule weighs may stand in a library, so that all rigs of a workshop can share it; what is turned down is each rig's own.
    const allows: Allowance[] = [...pages.flatMap(p => p.allows.filter(a => a.level)), ...own.flatMap(p => p.allows.filter(a => !a.level))];

    if (!isLibrary) imply(root, parts, paths);
    checkNames(root, parts, patterns, paths, problems);
    return {
        root: root.file, title: root.title?.text ?? '', stage: root.stage?.word ?? 'drawn', stageSaid: !!root.stage, isLibrary,
        pages, parts, patterns, lets, paths, expects, allows, problems,
    };
}

/** Parts that are there without a word: site and budget in every rig, lye and separator with a stack, a stop named like its kind. */
function imply(root: Page, parts: Map<string, Part>, paths: readonly Path[]): void {
    const span: Span = root.title?.span ?? { file: root.file, start: 0, end: 0 };
    const add = (kind: Kind, at: Span, name = kind.name) => {
        parts.set(name, { name, kind, kindWord: kind.name, file: at.file, nameSpan: at, kindSpan: at, span: at, inside: undefined, named: false, entries: new Map(), implied: true });
    };
    const has = (kind: string) => [...parts.values()].some(p => p.kind?.name === kind);
    for (const kind of kinds.values()) if (kind.always && !parts.has(kind.name) && !has(kind.name)) add(kind, span);
    for (const path of paths) {
        for (const stop of path.stops) {
            const kind = kinds.get(stop.name);
            if (kind && !parts.has(stop.name) && kind.on.length) add(kind, stop.span);
        }
    }
    const stack = [...parts.values()].find(p => p.kind?.name === 'stack');
    if (!stack) return;
    if (kinds.has('lye') && !has('lye')) add(kinds.get('lye')!, stack.nameSpan);
    const separator = stack.entries.get('separator')?.value?.text;
    if (kinds.has('separator') && separator !== 'none' && !has('separator')) add(kinds.get('separator')!, stack.nameSpan);
}

/** The kind that a name speaks of: a bubbler in o2-bubbler, a burner in torch. */
function kindOfName(name: string, medium: string): Kind | undefined {
    const words = name.toLowerCase().split('-');
    for (let from = 0; from < words.length; from++) {
        const rest = words.slice(from).join('-');
        const kind = kinds.get(rest) ?? kindCalled(rest);
        if (kind?.on.includes(medium as Medium)) return kind;
    }
    return undefined;
}

function checkNames(root: Page, parts: Map<string, Part>, patterns: Map<string, Part>, paths: readonly Path[], problems: Problem[]): void {
    // A page opened by itself does not know its rig: names from elsewhere are no mistake there.
    const alone = root.sort === 'page';
    const unknown = (name: string, span: Span, what: string, candidates: Iterable<string>) => {
        const near = nearest(name, candidates);
        problems.push({
            code: 'unknown-name', span, message: offering(`${what} ${name} does not exist`, near),
            fixes: near ? [{ title: `Write ${near}`, edits: [{ span, text: near }], preferred: true }] : undefined,
        });
    };
    const partNames = () => [...parts.values()].filter(p => !p.kind?.statement).map(p => p.name);
    if (!alone) {
        for (const path of paths) {
            for (const stop of path.stops) {
                if (parts.has(stop.name) || pathEnds.has(stop.name)) continue;
                const span = { ...stop.span, end: stop.span.start + stop.name.length };
                // The nearest name may belong to the other gas: h2-bubbler for o2-bubbler would join the two.
                const other = new Set(paths.filter(p => p.medium !== path.medium).flatMap(p => p.stops.map(s => s.name)));
                const candidates = [...partNames().filter(n => n === 'stack' || !other.has(n)), ...pathEnds];
                const end = endsCalled.get(stop.name.toLowerCase());
                const kind = end || nearest(stop.name, candidates) ? undefined : kindOfName(stop.name, path.medium);
                if (end) {
                    problems.push({ code: 'unknown-name', span, message: offering(`A part ${stop.name} does not exist`, end), fixes: [{ title: `Write ${end}`, edits: [{ span, text: end }], preferred: true }] });
                } else if (kind) {
                    const line = `${kind.name} ${stop.name}`;
                    const fix: Fix = { title: `Describe it: ${line}`, edits: [{ span: { file: path.file, start: path.span.start, end: path.span.start }, text: `${line}\n` }], preferred: true };
                    problems.push({ code: 'unknown-name', span, message: `A part ${stop.name} does not exist; a line ${line} would describe one.`, fixes: [fix] });
                } else {
                    unknown(stop.name, span, 'A part', candidates);
                }
            }
        }
    }
    for (const part of [...parts.values(), ...patterns.values()]) {
        if (!part.base) continue;
        const base = parts.get(part.base.name) ?? patterns.get(part.base.name);
        if (!base) {
            if (!alone) unknown(part.base.name, part.base.span, 'A part', [...parts.keys(), ...patterns.keys()]);
        } else if (base.kind && part.kind && base.kind !== part.kind) {
            problems.push({ code: 'value-not-understood', span: part.base.span, message: `${base.name} is a ${base.kind.name}, ${part.name} a ${part.kind.name}: only parts of one kind are alike.`, related: [{ span: base.nameSpan, message: `${base.name} stands here` }] });
        } else if (inCircle(part, parts, patterns)) {
            problems.push({ code: 'circular-reference', span: part.base.span, message: `${part.name} is like itself, by way of ${part.base.name}.` });
        }
    }
}
function inCircle(part: Part, parts: Map<string, Part>, patterns: Map<string, Part>): boolean {
    const seen = new Set<Part>();
    for (let p: Part | undefined = part; p?.base; p = parts.get(p.base.name) ?? patterns.get(p.base.name)) {
        if (seen.has(p)) return true;
        seen.add(p);
    }
    return false;
}

/** What is joined to what: the paths of a rig as a graph, one medium at a time. Read by rules, quantities and the editor. */
import type { Medium } from '../vocabulary/define.js';
import { pathEnds } from './assemble.js';
import type { Path, Rig, Span, Stop } from './rig.js';

export interface Link {
    readonly medium: string;
    readonly from: Stop;
    readonly to: Stop;
    readonly path: Path;
    /** The stretch of text from one name to the other. */
    readonly span: Span;
}

const noLinks: readonly Link[] = [];

export class Paths {
    private readonly all: readonly Link[];
    private readonly anyBroken: boolean;
    /** By medium, then by name. */
    private readonly out = new Map<string, Map<string, Link[]>>();
    private readonly into = new Map<string, Map<string, Link[]>>();
    private readonly ends: ReadonlySet<string>;
    private readonly media = new Map<string, Set<string>>();

    /**
     * @param found what was found before in paths that joined the same; names only, no places
     * @param note is told by which medium the paths are read, each time; undefined: by all of them
     */
    constructor(rig: Rig, private readonly found: (medium: string) => Map<string, unknown> = nothingFound(), private readonly note: (medium: string | undefined) => void = () => {}) {
        this.anyBroken = rig.paths.some(p => p.broken);
        const links: Link[] = [];
        for (const path of rig.paths) {
            for (let i = 1; i < path.stops.length; i++) {
                const [from, to] = [path.stops[i - 1], path.stops[i]];
                const link: Link = { medium: path.medium, from, to, path, span: { file: path.file, start: from.span.start, end: to.span.end } };
                links.push(link);
                push(this.out, path.medium, from.name, link);
                push(this.into, path.medium, to.name, link);
                for (const name of [from.name, to.name]) {
                    const media = this.media.get(name);
                    if (media) media.add(path.medium);
                    else this.media.set(name, new Set([path.medium]));
                }
            }
        }
        this.all = links;
        // A part may bear such a name: then it is the part.
        this.ends = new Set([...pathEnds].filter(n => !rig.parts.has(n)));
    }
    /** Every link of every path, in the order of the text. */
    get links(): readonly Link[] {
        this.note(undefined);
        return this.all;
    }
    /** Whether some path could not be read in full. */
    get broken(): boolean {
        this.note(undefined);
        return this.anyBroken;
    }
    /** Links that leave a part. */
    from(name: string, medium: Medium): readonly Link[] {
        this.note(medium);
        return this.out.get(medium)?.get(name) ?? noLinks;
    }
    /** Links that lead to a part. */
    to(name: string, medium: Medium): readonly Link[] {
        this.note(medium);
        return this.into.get(medium)?.get(name) ?? noLinks;
    }
    /** Names of the parts that come after a part, near ones first; ends such as outdoors included. */
    after(name: string, medium: Medium): readonly string[] {
        return this.once(medium, `after ${medium} ${name}`, () => this.search(name, n => this.from(n, medium).map(l => l.to.name)));
    }
    /** Names of the parts that come before a part, near ones first. */
    before(name: string, medium: Medium): readonly string[] {
        return this.once(medium, `before ${medium} ${name}`, () => this.search(name, n => this.to(n, medium).map(l => l.from.name)));
    }
    /** Every part on a path of a medium, in the order of the text. */
    on(medium: Medium): readonly string[] {
        return this.once(medium, `on ${medium}`, () => {
            const names = new Set<string>();
            for (const l of this.all) if (l.medium === medium) names.add(l.from.name).add(l.to.name);
            return [...names].filter(n => !this.ends.has(n));
        });
    }
    /** The media whose paths touch a part. */
    mediaOf(name: string): ReadonlySet<string> {
        this.note(undefined);
        return this.media.get(name) ?? none;
    }
    /** Names joined to a part by a medium, in either direction, path ends included. */
    neighbours(name: string, medium: Medium): string[] {
        return [...this.to(name, medium).map(l => l.from.name), ...this.from(name, medium).map(l => l.to.name)];
    }
    /**
     * Everything that shares one space with a part: joined by a medium in either direction. Goes no further behind what
     * `stops` says; such parts themselves belong to it, path ends do not. From each name to the one it was reached from.
     */
    space(start: string, medium: Medium, stops: (name: string) => boolean): ReadonlyMap<string, string | undefined> {
        const from = new Map<string, string | undefined>([[start, undefined]]);
        const queue = [start];
        for (let name = queue.shift(); name !== undefined; name = queue.shift()) {
            if (name !== start && stops(name)) continue;
            const reach = (next: string) => {
                if (from.has(next) || this.ends.has(next)) return;
                from.set(next, name!);
                queue.push(next);
            };
            for (const l of this.to(name, medium)) reach(l.from.name);
            for (const l of this.from(name, medium)) reach(l.to.name);
        }
        return from;
    }
    /** Names along a space from its start to one of its parts, both included. */
    static trail(space: ReadonlyMap<string, string | undefined>, to: string): string[] {
        const trail: string[] = [];
        for (let name: string | undefined = to; name !== undefined; name = space.get(name)) trail.unshift(name);
        return trail;
    }
    /** A route from one part to another, both included, or undefined. The shortest; first in the text among equals. */
    route(from: string, to: string, medium: Medium): readonly string[] | undefined {
        return this.once(medium, `route ${medium} ${from} ${to}`, () => this.findRoute(from, to, medium));
    }
    private findRoute(from: string, to: string, medium: Medium): string[] | undefined {
        const cameFrom = new Map<string, string | undefined>([[from, undefined]]);
        const queue = [from];
        for (let name = queue.shift(); name !== undefined; name = queue.shift()) {
            if (name === to) return Paths.trail(cameFrom, name);
            for (const l of this.from(name, medium)) {
                if (cameFrom.has(l.to.name)) continue;
                cameFrom.set(l.to.name, name);
                queue.push(l.to.name);
            }
        }
        return undefined;
    }
    /** Parts strictly between two parts on the shortest route. */
    between(from: string, to: string, medium: Medium): string[] {
        return this.route(from, to, medium)?.slice(1, -1) ?? [];
    }
    /** The link from one part to the next, for a finding to point at. */
    link(from: string, to: string, medium: Medium): Link | undefined {
        return this.from(from, medium).find(l => l.to.name === to);
    }
    /** All routes from a part to where the medium ends, at most 64, none visiting a part twice. */
    routes(from: string, medium: Medium): readonly (readonly string[])[] {
        return this.once(medium, `routes ${medium} ${from}`, () => this.findRoutes(from, medium));
    }
    private findRoutes(from: string, medium: Medium): string[][] {
        const routes: string[][] = [];
        const go = (trail: string[]) => {
            if (routes.length >= 64) return;
            const next = this.from(trail.at(-1)!, medium).filter(l => !trail.includes(l.to.name));
            if (!next.length) routes.push(trail);
            for (const l of next) go([...trail, l.to.name]);
        };
        go([from]);
        return routes;
    }
    /** Where a part is named in the paths of a medium (first place), for a finding to point at. */
    place(name: string, medium?: Medium): Span | undefined {
        this.note(medium);
        for (const l of this.all) {
            if (medium && l.medium !== medium) continue;
            if (l.from.name === name) return l.from.span;
            if (l.to.name === name) return l.to.span;
        }
        return undefined;
    }
    /** The paths do not change: what was found once is kept. */
    private once<T>(medium: Medium, key: string, find: () => T): T {
        this.note(medium);
        const found = this.found(medium);
        if (found.has(key)) return found.get(key) as T;
        const result = find();
        found.set(key, result);
        return result;
    }
    private search(start: string, next: (name: string) => string[]): string[] {
        const found = new Set<string>();
        const queue = next(start);
        for (let name = queue.shift(); name !== undefined; name = queue.shift()) {
            if (found.has(name) || name === start) continue;
            found.add(name);
            queue.push(...next(name));
        }
        return [...found];
    }
}
const none: ReadonlySet<string> = new Set();
/** Drawers for what is found in the paths of each medium. */
export function nothingFound(): (medium: string) => Map<string, unknown> {
    const drawers = new Map<string, Map<string, unknown>>();
    return medium => {
        let drawer = drawers.get(medium);
        if (!drawer) drawers.set(medium, (drawer = new Map()));
        return drawer;
    };
}

function push(map: Map<string, Map<string, Link[]>>, medium: string, name: string, link: Link): void {
    let byName = map.get(medium);
    if (!byName) map.set(medium, (byName = new Map()));
    const list = byName.get(name);
    if (list) list.push(link);
    else byName.set(name, [link]);
}

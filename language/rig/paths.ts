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

export class Paths {
    readonly links: readonly Link[];
    private readonly out = new Map<string, Link[]>();
    private readonly into = new Map<string, Link[]>();

    constructor(rig: Rig) {
        const links: Link[] = [];
        for (const path of rig.paths) {
            for (let i = 1; i < path.stops.length; i++) {
                const [from, to] = [path.stops[i - 1], path.stops[i]];
                const link: Link = { medium: path.medium, from, to, path, span: { file: path.file, start: from.span.start, end: to.span.end } };
                links.push(link);
                push(this.out, `${path.medium} ${from.name}`, link);
                push(this.into, `${path.medium} ${to.name}`, link);
            }
        }
        this.links = links;
    }
    /** Links that leave a part. */
    from(name: string, medium: Medium): readonly Link[] {
        return this.out.get(`${medium} ${name}`) ?? [];
    }
    /** Links that lead to a part. */
    to(name: string, medium: Medium): readonly Link[] {
        return this.into.get(`${medium} ${name}`) ?? [];
    }
    /** Names of the parts that come after a part, near ones first; ends such as outdoors included. */
    after(name: string, medium: Medium): string[] {
        return this.search(name, n => this.from(n, medium).map(l => l.to.name));
    }
    /** Names of the parts that come before a part, near ones first. */
    before(name: string, medium: Medium): string[] {
        return this.search(name, n => this.to(n, medium).map(l => l.from.name));
    }
    /** Every part on a path of a medium, in the order of the text. */
    on(medium: Medium): string[] {
        const names = new Set<string>();
        for (const l of this.links) if (l.medium === medium) names.add(l.from.name).add(l.to.name);
        return [...names].filter(n => !pathEnds.has(n));
    }
    /** The media whose paths touch a part. */
    mediaOf(name: string): Set<string> {
        return new Set(this.links.filter(l => l.from.name === name || l.to.name === name).map(l => l.medium));
    }
    /** A route from one part to another, both included, or undefined. The shortest; first in the text among equals. */
    route(from: string, to: string, medium: Medium): string[] | undefined {
        const cameFrom = new Map<string, string | undefined>([[from, undefined]]);
        const queue = [from];
        for (let name = queue.shift(); name !== undefined; name = queue.shift()) {
            if (name === to) {
                const route = [name];
                for (let p = cameFrom.get(name); p !== undefined; p = cameFrom.get(p)) route.unshift(p);
                return route;
            }
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
    routes(from: string, medium: Medium): string[][] {
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
        for (const l of this.links) {
            if (medium && l.medium !== medium) continue;
            if (l.from.name === name) return l.from.span;
            if (l.to.name === name) return l.to.span;
        }
        return undefined;
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
function push<V>(map: Map<string, V[]>, key: string, value: V): void {
    const list = map.get(key);
    if (list) list.push(value);
    else map.set(key, [value]);
}

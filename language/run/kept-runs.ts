/**
 * Runs that were done before, kept as long as nothing that they read has become another: an edit of a comment, a price or a place
 * leaves them as they are. Kept are names and numbers, never places.
 */
import { WorkedCell, type Cell } from '../quantities/memory.js';
import type { Workings } from '../quantities/workings.js';
import type { FaultResult, Faults } from './faults.js';
import type { RunResult } from './run.js';

/** One failure, or one beside another, and what moved in its run. */
export interface Tried {
    readonly result: FaultResult;
    /** How often each device switched after the failure. */
    readonly switched: ReadonlyMap<string, number>;
    readonly acted: ReadonlySet<string>;
    readonly passed: ReadonlySet<string>;
}
/** What runs of a rig read, and what they brought. All of them stand and fall together: they share nearly all that they read. */
interface Brought {
    /** Revision at which all that was read said the same. */
    at: number;
    readonly known: Set<Cell>;
    /** What is looked up, and what has to be worked out to be compared. */
    readonly given: Cell[];
    readonly worked: Cell[];
    healthy: RunResult | undefined;
    readonly tried: Map<string, Tried>;
    faults: Faults | undefined;
}
const nothing = (at: number): Brought => ({ at, known: new Set(), given: [], worked: [], healthy: undefined, tried: new Map(), faults: undefined });

/** Runs of one reading of a rig, over what is kept from the readings before. */
export class KeptRuns {
    constructor(private readonly workings: Workings, private brought: Brought) {}

    /** Runs a piece of work and notes what it read. */
    noting<T>(work: () => T): T {
        const { value, reads } = this.workings.noting(work);
        const { known, given, worked } = this.brought;
        for (const cell of reads ?? []) {
            if (known.has(cell)) continue;
            known.add(cell);
            (cell instanceof WorkedCell ? worked : given).push(cell);
        }
        return value;
    }
    get healthy(): RunResult | undefined {
        return this.brought.healthy;
    }
    set healthy(healthy: RunResult | undefined) {
        this.own().healthy = healthy;
    }
    get faults(): Faults | undefined {
        return this.brought.faults;
    }
    set faults(faults: Faults | undefined) {
        this.own().faults = faults;
    }
    tried(key: string): Tried | undefined {
        return this.brought.tried.get(key);
    }
    keep(key: string, tried: Tried): void {
        this.own().tried.set(key, tried);
    }
    /** Once a later reading has taken the memory over, what is read is noted no more: what comes of it is shared no more either. */
    private own(): Brought {
        if (!this.workings.generation && this.brought.at >= 0) this.brought = { ...this.brought, at: -1, known: new Set(), given: [], worked: [], tried: new Map(this.brought.tried) };
        return this.brought;
    }
}
const all = new WeakMap<object, Map<number, Brought>>();
/** What is kept of runs that last so long, s, as far as it still holds; empty at first. */
export function keptRuns(workings: Workings, lasts: number): KeptRuns {
    const { generation, revision } = workings;
    if (!generation) return new KeptRuns(workings, nothing(revision));
    let byTime = all.get(generation);
    if (!byTime) all.set(generation, (byTime = new Map()));
    let brought = byTime.get(lasts);
    if (!brought || !workings.stillHolds(brought.given, brought.at) || !workings.stillHolds(brought.worked, brought.at)) byTime.set(lasts, (brought = nothing(revision)));
    brought.at = revision;
    return new KeptRuns(workings, brought);
}

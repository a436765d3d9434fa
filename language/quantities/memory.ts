/**
 * What lets an edit cost what it touches. Whoever works something out (a quantity, a model, a check) has all that it reads
 * noted as cells. From one reading of the rig to the next a cell knows whether its value became another one; what read
 * only cells that stayed the same would come out the same, and is kept.
 *
 * Places in the text are no part of a cell: an edit above moves everything below it. Whatever tells a place is therefore
 * asked again each time; kept are numbers, and the silence of checks.
 */
import type { Fact, Facts } from '../values/match.js';
import type { ParsedValue } from '../values/parse-value.js';
import type { Entry, Part, Path, Rig } from '../rig/rig.js';
import { pathEnds } from '../rig/assemble.js';
import { nothingFound } from '../rig/paths.js';
import { controlKeys, FoundControls } from '../rig/controls.js';
import type { Spread } from './spread.js';
import type { Given, Input, Result, Workings } from './workings.js';

/** Something that can be read while something else is worked out. */
export class Cell {
    /** Revision in which it last became another. */
    changed = 0;
    /** Revision in which that was last found out; Infinity for those that are compared at each beginning. */
    checked = Infinity;
    /** By whom it was noted last. */
    mark = 0;
    /** Whether it is plain that it stayed the same, with nothing looked at: most are checked so at each edit. */
    settles(_revision: number): boolean {
        return false;
    }
    /** Finds out whether it became another; called once in a revision, by need. */
    refresh(_workings: Workings): void {}
}
/** A property of a part as given. */
export class GivenCell extends Cell {
    override checked = 0;
    private given: Pick<Given, 'status' | 'facts' | 'rows' | 'property'> | undefined;
    private from: string | undefined;
    constructor(private readonly record: PartRecord, readonly key: string) {
        super();
    }
    override settles(revision: number): boolean {
        // A value that names others can become another one without a change of its text.
        if (!this.record.part || !this.given || this.rests || this.record.text.changed > this.checked) return false;
        this.checked = revision;
        return true;
    }
    override refresh(workings: Workings): void {
        const { part } = this.record;
        this.take(part && workings.given(part, this.key), workings.revision);
    }
    private rests = false;
    /** Keeps what was just found; tells by `changed` whether it is another. */
    take(given: Given | undefined, revision: number): void {
        const before = this.given;
        if (!before || !given || before.status !== given.status || before.property !== given.property || this.from !== given.from?.name || !sameFacts(before.facts, given.facts) || !sameRows(before.rows, given.rows)) this.changed = revision;
        this.given = given && { status: given.status, facts: given.facts, rows: given.rows, property: given.property };
        this.from = given?.from?.name;
        this.rests = !!given?.entry?.value?.names;
        this.checked = revision;
    }
}
/** An input of a kept result, without the texts that it came from. */
export type Trace = Pick<Input, 'label' | 'key' | 'value' | 'text' | 'unit' | 'status' | 'doubt'> & { readonly part: string };

/** A quantity or a model of a part, as it last came out. */
export class WorkedCell<T> extends Cell {
    override checked = 0;
    value: T | undefined;
    kind = '';
    deps: readonly Cell[] = [];
    inputs: readonly Trace[] = [];
    missing: readonly string[] = [];
    constructor(readonly record: PartRecord, private readonly again: (workings: Workings, part: Part) => void) {
        super();
    }
    override refresh(workings: Workings): void {
        const { part } = this.record;
        if (part) this.again(workings, part);
        // Gone, or in a circle: taken as another.
        if (this.checked !== workings.revision) this.changed = workings.revision;
    }
}
/** All that is kept of one part, by its name. */
export class PartRecord {
    part: Part | undefined;
    /** Whether it is there, and of which kind. */
    readonly presence = new Cell();
    /** What its block says, with that of the parts that it is like. */
    readonly text = new Cell();
    readonly givens = new Map<string, GivenCell>();
    readonly results = new Map<string, WorkedCell<Kept>>();
    readonly models = new Map<string, WorkedCell<{ solution: unknown }>>();
    readonly spreads = new Map<string, WorkedCell<Spread>>();
    /** Revision in which its own block last said another thing. */
    own = 0;
    private following = false;
    private followed = 0;
    private base: PartRecord | undefined;

    /** @returns whether something that drives other parts was touched */
    turn(part: Part | undefined, revision: number): boolean {
        const before = this.part;
        this.part = part;
        if (before?.kindWord !== part?.kindWord || before?.pattern !== part?.pattern || !before !== !part) this.presence.changed = revision;
        if (before && part && saysTheSame(before, part)) return false;
        this.own = revision;
        return (!!before && drives(before)) || (!!part && drives(part)) ? !before || !part || controlsDiffer(before, part) : false;
    }
    /** Settles `text`, once all parts have turned. */
    follow(baseOf: (name: string) => PartRecord | undefined, revision: number): void {
        if (this.followed === revision) return;
        const base = this.part?.base && baseOf(this.part.base.name);
        let changed = Math.max(this.own, this.text.changed);
        if (base !== this.base) changed = revision;
        this.base = base;
        if (base) {
            // Like itself, by way of others: never kept.
            if (this.following) {
                this.text.changed = revision;
                return;
            }
            this.following = true;
            base.follow(baseOf, revision);
            this.following = false;
            changed = Math.max(changed, base.text.changed);
        }
        this.text.changed = changed;
        this.followed = revision;
    }
}
/** What is kept of a quantity. */
export type Kept = Pick<Result, 'value' | 'missing' | 'remarks' | 'rests'>;

/** What is kept of one rig from one reading to the next. */
export class Memory {
    revision = 0;
    /** Always another: for what looks at the rig as a whole. */
    readonly whole = new Cell();
    private readonly paths = new Map<string, Cell>();
    readonly foundPaths = nothingFound();
    foundControls = new FoundControls();
    /** What drives what. */
    readonly controls = new Cell();
    /** Names, kinds and order of all parts. */
    readonly roster = new Cell();
    /** Something went in a circle: what came out hung on the order of asking, and nothing of it is kept. */
    spoilt = false;
    private parts = new Map<string, PartRecord>();
    private patterns = new Map<string, PartRecord>();
    private kinds = new Map<string, { cell: Cell; names: string }>();
    private lets = new Map<string, { cell: Cell; value: ParsedValue | undefined }>();
    private lastPaths: readonly Path[] = [];
    private lastEnds = '';
    private lastRoster = '';
    private lastDrivers = '';
    private lastStage = '';
    /** Another object once all was forgotten: for what others keep beside this. */
    generation = {};

    /** A new reading of the rig begins: finds out what of it says another thing than before. */
    begin(rig: Rig): void {
        if (this.spoilt || rig.stage !== this.lastStage) this.forget();
        this.lastStage = rig.stage;
        const revision = ++this.revision;
        this.whole.changed = revision;
        let driving = false;
        const turn = (records: Map<string, PartRecord>, parts: ReadonlyMap<string, Part>) => {
            for (const [name, part] of parts) {
                let record = records.get(name);
                if (!record) records.set(name, (record = new PartRecord()));
                if (record.turn(part, revision)) driving = true;
            }
            for (const [name, record] of records) if (record.part && !parts.has(name) && record.turn(undefined, revision)) driving = true;
        };
        turn(this.parts, rig.parts);
        turn(this.patterns, rig.patterns);
        const baseOf = (name: string) => this.present(name) ?? this.patterns.get(name);
        for (const record of this.parts.values()) record.follow(baseOf, revision);

        let roster = '';
        let drivers = '';
        for (const part of rig.parts.values()) {
            const line = `${part.name} ${part.kindWord} ${part.pattern ? 1 : 0}\n`;
            roster += line;
            if (drives(part)) drivers += line;
        }
        if (drivers !== this.lastDrivers) driving = true;
        this.lastDrivers = drivers;
        if (roster !== this.lastRoster) {
            this.lastRoster = roster;
            this.roster.changed = revision;
            for (const [kind, known] of this.kinds) {
                const names = namesOf(rig, kind);
                if (names !== known.names) known.cell.changed = revision;
                known.names = names;
            }
        }
        const ends = [...pathEnds].filter(n => rig.parts.has(n)).join(' ');
        if (rig.paths !== this.lastPaths) {
            const differ = (a: Path, b: Path) => a !== b && !samePath(a, b);
            const most = Math.max(rig.paths.length, this.lastPaths.length);
            for (let i = 0, moved = false; i < most; i++) {
                const [a, b] = [this.lastPaths[i], rig.paths[i]];
                // Where a path came or went, the order of all that follow is another.
                moved ||= !a || !b || a.medium !== b.medium;
                if (moved || differ(a, b)) for (const path of [a, b]) if (path) this.pathsDiffer(path.medium);
            }
        }
        if (ends !== this.lastEnds) for (const path of rig.paths) this.pathsDiffer(path.medium);
        this.lastPaths = rig.paths;
        this.lastEnds = ends;
        if (driving || this.path('current').changed === revision) {
            this.controls.changed = revision;
            this.foundControls = new FoundControls();
        }
        for (const [name, known] of this.lets) {
            const value = rig.lets.get(name)?.value;
            if (value !== known.value) known.cell.changed = revision;
            known.value = value;
        }
    }
    private forget(): void {
        this.parts = new Map();
        this.patterns = new Map();
        this.kinds = new Map();
        this.lets = new Map();
        this.controls.changed = this.roster.changed = this.revision + 1;
        this.lastRoster = '';
        this.spoilt = false;
        this.generation = {};
    }
    private pathsDiffer(medium: string): void {
        this.path(medium).changed = this.path(undefined).changed = this.revision;
        this.foundPaths(medium).clear();
    }
    /** The paths of a medium; undefined: all of them. */
    path(medium: string | undefined): Cell {
        let cell = this.paths.get(medium ?? '');
        if (!cell) this.paths.set(medium ?? '', (cell = new Cell()));
        return cell;
    }
    private marks = 0;
    nextMark(): number {
        return ++this.marks;
    }
    private present(name: string): PartRecord | undefined {
        const record = this.parts.get(name);
        return record?.part ? record : undefined;
    }
    /** What is kept of a part of the rig, or of a name that no part bears. */
    record(name: string): PartRecord {
        let record = this.parts.get(name);
        if (!record) this.parts.set(name, (record = new PartRecord()));
        return record;
    }
    /** Names of the parts of a kind, in their order. */
    kind(kind: string, rig: Rig): Cell {
        let known = this.kinds.get(kind);
        if (!known) this.kinds.set(kind, (known = { cell: new Cell(), names: namesOf(rig, kind) }));
        return known.cell;
    }
    named(name: string, rig: Rig): Cell {
        let known = this.lets.get(name);
        if (!known) this.lets.set(name, (known = { cell: new Cell(), value: rig.lets.get(name)?.value }));
        return known.cell;
    }
}

function namesOf(rig: Rig, kind: string): string {
    let names = '';
    for (const part of rig.parts.values()) if (part.kindWord === kind) names += `${part.name} ${part.pattern ? 1 : 0}\n`;
    return names;
}
/** Values are kept by their text: the same text is the same object. */
function sameEntry(a: Entry, b: Entry): boolean {
    return a.key === b.key && a.value === b.value && a.property === b.property && a.broken === b.broken && a.note === b.note;
}
function saysTheSame(a: Part, b: Part): boolean {
    if (a === b) return true;
    if (a.kindWord !== b.kindWord || a.pattern !== b.pattern || a.implied !== b.implied || a.note !== b.note || a.file !== b.file || a.base?.name !== b.base?.name || a.entries.size !== b.entries.size) return false;
    const others = b.entries.values();
    for (const entry of a.entries.values()) if (!sameEntry(entry, others.next().value!)) return false;
    return true;
}
const feeds: ReadonlySet<string> = new Set(['supply', 'transformer', 'charger', 'battery']);
const driving = new Map<string, boolean>();
/** Whether the control lines of a rig can hang on a part. */
function drives(part: Part): boolean {
    let known = driving.get(part.kindWord);
    if (known === undefined) driving.set(part.kindWord, (known = feeds.has(part.kindWord) || !part.kind || controlKeys.some(key => part.kind!.properties[key] !== undefined)));
    return known;
}
function controlsDiffer(a: Part, b: Part): boolean {
    return a.kindWord !== b.kindWord || a.pattern !== b.pattern || a.base?.name !== b.base?.name || controlKeys.some(key => {
        const [x, y] = [a.entries.get(key), b.entries.get(key)];
        return x === undefined || y === undefined ? x !== y : !sameEntry(x, y);
    });
}
function samePath(p: Path, q: Path): boolean {
    return p.broken === q.broken && p.file === q.file && p.stops.length === q.stops.length && p.stops.every((s, k) => s.name === q.stops[k].name && s.port === q.stops[k].port);
}
function sameFacts(a: Facts, b: Facts): boolean {
    if (a === b) return true;
    if (a.size !== b.size) return false;
    for (const [slot, fact] of a) {
        const other = b.get(slot);
        if (!other || !sameFact(fact, other)) return false;
    }
    return true;
}
function sameFact(a: Fact, b: Fact): boolean {
    return a === b || (Object.is(a.number, b.number) && Object.is(a.low, b.low) && Object.is(a.high, b.high) && a.word === b.word && a.text === b.text
        && a.amount?.basis === b.amount?.basis && a.amount?.unit === b.amount?.unit && a.amount?.dimension === b.amount?.dimension && Object.is(a.amount?.si, b.amount?.si)
        && a.sizes?.join() === b.sizes?.join() && a.names === b.names && a.condition === b.condition && a.stateTaken === b.stateTaken);
}
function sameRows(a: readonly Facts[], b: readonly Facts[]): boolean {
    return a === b || (a.length === b.length && a.every((facts, i) => sameFacts(facts, b[i])));
}

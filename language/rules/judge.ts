/** Asks every rule of a worked-out rig, and puts what they tell in order: one finding per cause, permissions heeded. */
import { nearest, offering } from '../values/nearest.js';
import { duration } from '../units/format.js';
import type { View } from '../quantities/view.js';
import type { Cell } from '../quantities/memory.js';
import { guessesIn, type Workings } from '../quantities/workings.js';
import { reaches, type Allowance, type Level, type Problem, type Rig, type Span, type Stage } from '../rig/rig.js';
import type { Finding, Rule, Severity, Tell, Telling } from './define.js';
import { allRules, ruleNamed } from './index.js';
import { NEAR, nearest as nearestOf, standing, type Near } from './near.js';

export interface JudgeOptions {
    /** Date given from outside; rules about dates are silent without it. */
    readonly today?: string;
    /** Filled with milliseconds per rule, if given. */
    readonly times?: Map<string, number>;
    readonly clock?: () => number;
}

export interface Judgement {
    /** In the order of the text. */
    readonly findings: Finding[];
    /** What is within a tenth of a limit and not over it, the nearest first. */
    readonly near: readonly Near[];
}
/** All findings of a rig. */
export function judge(workings: Workings, options: JudgeOptions = {}): Judgement {
    const { rig } = workings;
    const findings: Finding[] = [];
    const near: Near[] = [];
    for (const page of rig.pages) for (const p of page.problems) findings.push(fromProblem(p));
    for (const p of rig.problems) findings.push(fromProblem(p));

    const lacking: Lack[] = [];
    const toDo: Rule[] = [];
    const reached = (stage: Stage) => reaches(rig.stage, stage);
    const listener = new Listener(workings, options.today, reached);
    const before = keptOf(workings, options.today);
    const mayJudge = !rig.isLibrary && rig.pages[0]?.sort !== 'page';
    if (mayJudge) {
        for (const rule of allRules) {
            if (!rule.check) continue;
            const asked = askedOf(rule, workings);
            if (!asked.length) continue;
            const from = options.times && options.clock?.();
            const early = !!rule.from && !reached(rule.from);
            let spoke = false;
            for (const v of asked) {
                const answer = ask(rule, v, listener, before, early);
                for (const l of answer.lacking) lacking.push(l);
                spoke ||= answer.spoke;
                for (const t of answer.told) findings.push(fromTelling(rule, t, answer.rests));
                for (const n of answer.near) near.push(n);
            }
            if (early && spoke) toDo.push(rule);
            if (from !== undefined) options.times!.set(rule.name, (options.times!.get(rule.name) ?? 0) + options.clock!() - from);
        }
        cannotCheck(workings, lacking, reached('built'), findings);
        if (toDo.length && reached('drawn')) {
            const span = rig.pages[0].stage?.span ?? rig.pages[0].title?.span ?? { file: rig.root, start: 0, end: 1 };
            findings.push(make('to-do-before-first-gas', span, `Before first gas, ${toDo.length === 1 ? 'one thing is' : `${toDo.length} things are`} still to do: ${toDo.map(r => r.name).join(', ')}.`));
        }
    }
    for (const p of workings.problems) findings.push(fromProblem(p));
    if (rig.pages[0]?.sort === 'page' && mayJudge === false && !rig.isLibrary) dropForeignNames(findings);

    // Permissions first: what is turned down must not go on hiding its consequences. Then one finding per cause: consequences are
    // left out while their cause is told.
    const once = distinct(findings);
    const allowed = mayJudge ? permissions(rig, once, options.today) : once;
    const fired = new Set(allowed.map(f => f.rule));
    const isConsequence = (rule: string) => !!ruleNamed(rule)?.under?.some(cause => fired.has(cause));
    const leftOut = (n: Near) => rig.allows.some(a => a.rule === n.rule && a.level === 'nothing' && (!a.on || a.on.name === n.part));
    const kept = allowed.filter(f => !isConsequence(f.rule)).sort((a, b) => (a.span.file < b.span.file ? -1 : a.span.file > b.span.file ? 1 : 0) || a.span.start - b.span.start || rank(a.severity) - rank(b.severity) || (a.rule < b.rule ? -1 : 1));
    return { findings: kept, near: nearestOf(near.filter(n => !isConsequence(n.rule) && !leftOut(n))) };
}
const rank = (s: Severity) => (s === 'error' ? 0 : s === 'warning' ? 1 : 2);

/** What a life-guarding check lacks; the part by its name. */
interface Lack {
    readonly part: string;
    readonly key: string;
    readonly what: string;
}
/** What a rule said of a part. */
interface Answer {
    readonly spoke: boolean;
    readonly told: readonly Telling[];
    readonly lacking: readonly Lack[];
    readonly near: readonly Near[];
    /** Assumed values that it rests on. */
    readonly rests: readonly string[];
}
/** An answer from an earlier reading of the rig: it would be the same, places aside, while all that it read is the same. */
interface KeptAnswer extends Answer {
    readonly kind: string;
    readonly reads: readonly Cell[];
    at: number;
}
type KeptAnswers = Map<Rule, Map<string, KeptAnswer>>;

/** Takes down what one check tells. */
class Listener {
    private told: Telling[] = [];
    private lacking: Lack[] = [];
    private near: Near[] = [];
    private rule = '';
    private readonly tell: Tell;
    constructor(readonly workings: Workings, today: string | undefined, reached: (stage: Stage) => boolean) {
        // Plain fields only: an accessor of its own would make the engine keep every reading until its next full collection.
        this.tell = Object.assign((t: Telling) => void this.told.push(t), {
            exceeds: (number: number, limit: number, unit: string, at: View, key?: string) => this.over(number, limit, unit, 'at most', at, key),
            fallsShort: (number: number, limit: number, unit: string, at: View, key?: string) => this.over(number, limit, unit, 'at least', at, key),
            cannotCheck: (v: View, key: string, what: string) => void this.lacking.push({ part: v.name, key, what }),
            today, stage: workings.rig.stage, reached, workings,
        }) as Tell;
    }
    private over(number: number, limit: number, unit: string, side: Near['side'], at: View, key: string | undefined): boolean {
        const { over, left } = standing(number, limit, unit, side);
        // The last bit of a sum is no difference.
        if (!over && left <= NEAR * (1 + 1e-9)) this.near.push({ rule: this.rule, part: at.name, key, number, limit, unit, side, left });
        return over;
    }
    listen(rule: Rule, v: View): Pick<Answer, 'told' | 'lacking' | 'near'> {
        this.told = [];
        this.lacking = [];
        this.near = [];
        this.rule = rule.name;
        rule.check!(v, this.tell);
        return { told: this.told, lacking: this.lacking, near: this.near };
    }
}

const kept = new WeakMap<object, { today: string | undefined; answers: KeptAnswers }>();
/** Answers kept from the reading before; undefined where nothing is kept. */
function keptOf(workings: Workings, today: string | undefined): KeptAnswers | undefined {
    if (!workings.generation) return undefined;
    let known = kept.get(workings.generation);
    if (known?.today !== today) known = undefined;
    if (!known) kept.set(workings.generation, (known = { today, answers: new Map() }));
    return known.answers;
}
/** @param early the rule speaks from a later stage on: only whether it would speak counts */
function ask(rule: Rule, v: View, listener: Listener, before: KeptAnswers | undefined, early: boolean): Answer {
    const { workings } = listener;
    let byPart = before?.get(rule);
    if (before && !byPart) before.set(rule, (byPart = new Map()));
    const last = byPart?.get(v.name);
    const same = last?.kind === v.kind && workings.stillHolds(last.reads, last.at);
    if (same) last.at = workings.revision;
    if (same && (early || !last.spoke)) return last;
    // Places move with every edit: of what was told only that something was is kept.
    if (same) return { ...last, told: listener.listen(rule, v).told };
    const { value: { told, lacking, near: noted }, reads } = workings.noting(() => listener.listen(rule, v));
    const spoke = told.length > 0;
    const near = early ? [] : noted;
    // Rules decide by what they read and nothing else: the few that spoke are asked again, to see what they rest on.
    const rests = early || !spoke ? [] : guessesIn(workings.watch(() => listener.listen(rule, v)).inputs);
    if (reads && byPart) byPart.set(v.name, { spoke, told: [], lacking, near, rests, kind: v.kind, reads, at: workings.revision });
    return { spoke, told: early ? [] : told, lacking, near, rests };
}

/** Whether the rule of a finding tells something at the same place of a rig that differs by a supposition. */
export function toldAgain(workings: Workings, finding: Finding, options: JudgeOptions = {}): boolean {
    const rule = ruleNamed(finding.rule);
    if (!rule?.check) return true;
    const listener = new Listener(workings, options.today, stage => reaches(workings.rig.stage, stage));
    return askedOf(rule, workings).some(v => listener.listen(rule, v).told.some(t => t.at.file === finding.span.file && t.at.start === finding.span.start));
}

function askedOf(rule: Rule, workings: Workings): readonly View[] {
    if (rule.on === 'rig') {
        const site = workings.partsOf('site')[0];
        return site ? [site] : [];
    }
    return typeof rule.on === 'string' ? workings.livePartsOf(rule.on) : (rule.on ?? []).flatMap(kind => workings.livePartsOf(kind));
}
function fromTelling(rule: Rule, t: Telling, rests: readonly string[]): Finding {
    return {
        rule: rule.name, severity: t.severity ?? rule.severity, message: t.message, why: t.why ?? rule.why, source: t.source ?? rule.source,
        span: widen(t.at), related: t.related ?? [], fixes: t.fixes ?? [], rests, guardsLife: rule.guardsLife ?? false,
    };
}
function fromProblem(p: Problem): Finding {
    const rule = ruleNamed(p.code);
    return {
        rule: p.code, severity: rule?.severity ?? 'error', message: p.message, why: rule?.why ?? '', source: rule?.source ?? '', span: widen(p.span),
        related: p.related ?? [], fixes: p.fixes ?? [], rests: [], guardsLife: false,
    };
}
/** A finding the judge itself makes, in the name of a declared rule. */
function make(name: string, span: Span, message: string, more: Partial<Finding> = {}): Finding {
    return { ...fromProblem({ code: name, span, message }), ...more };
}
function widen(span: Span): Span {
    return span.end > span.start ? span : { ...span, end: span.start + 1 };
}

/** One finding per part at stage built; one in all, naming the next decision, before. */
function cannotCheck(workings: Workings, lacking: readonly Lack[], built: boolean, findings: Finding[]): void {
    if (!lacking.length) return;
    const { rig } = workings;
    const byPart = new Map<string, { keys: Set<string>; what: Set<string> }>();
    for (const { part, key, what } of lacking) {
        const entry = byPart.get(part) ?? { keys: new Set<string>(), what: new Set<string>() };
        entry.keys.add(key);
        entry.what.add(what);
        byPart.set(part, entry);
    }
    if (built) {
        for (const [name, { keys, what }] of byPart) {
            const v = workings.viewOf(name)!;
            // Every input that lacks is named, since it is what has to be found out; of the checks three are enough.
            const list = [...keys].map(k => `${v.name}.${k}`).join(', ');
            const more = what.size > 3 ? `; and ${what.size - 3} more` : '';
            findings.push(make('cannot-check-a-hazard', v.part.implied ? rig.pages[0].title?.span ?? v.at() : v.at(),
                `Cannot check ${[...what].slice(0, 3).join('; ')}${more}, because ${list} ${keys.size > 1 ? 'are' : 'is'} not given.`, { severity: 'warning', guardsLife: true }));
        }
        return;
    }
    // How many checks wait for each unknown: the three that unlock most are named.
    const waits = new Map<string, number>();
    for (const { part, key } of lacking) waits.set(`${part}.${key}`, (waits.get(`${part}.${key}`) ?? 0) + 1);
    const first = [...waits].sort((a, b) => b[1] - a[1]).slice(0, 3).map(([k]) => k);
    const span = rig.pages[0].title?.span ?? { file: rig.root, start: 0, end: 1 };
    findings.push(make('cannot-check-a-hazard', span, `Next to decide: ${first.join(', ')}. ${lacking.length} check${lacking.length > 1 ? 's' : ''} that guard${lacking.length > 1 ? '' : 's'} life ${lacking.length > 1 ? 'wait' : 'waits'} for what is not given yet.`, { severity: 'hint', guardsLife: true }));
}

/** In a page that is opened without its rig, names from elsewhere are no mistake. */
function dropForeignNames(findings: Finding[]): void {
    for (let i = findings.length - 1; i >= 0; i--) if (findings[i].rule === 'unknown-name') findings.splice(i, 1);
}

function distinct(findings: readonly Finding[]): Finding[] {
    const seen = new Set<string>();
    return findings.filter(f => {
        const key = `${f.rule} ${f.span.file} ${f.span.start} ${f.message}`;
        if (seen.has(key)) return false;
        seen.add(key);
        return true;
    });
}

/** Told by the judge itself and still open to a permission. What tells of permissions is not: a danger would vanish without trace. */
const mayBeTurnedDown: ReadonlySet<string> = new Set(['cannot-check-a-hazard', 'to-do-before-first-gas']);

function permissions(rig: Rig, findings: readonly Finding[], today: string | undefined): Finding[] {
    let kept = [...findings];
    for (const allow of rig.allows) {
        const rule = ruleNamed(allow.rule);
        if (!rule) {
            const near = nearest(allow.rule, allRules.map(r => r.name));
            kept.push(make('unknown-name', allow.ruleSpan, offering(`There is no rule ${allow.rule}`, near), near ? { fixes: [{ title: `Write ${near}`, edits: [{ span: allow.ruleSpan, text: near }], preferred: true }] } : {}));
            continue;
        }
        if (!rule.check && !rule.fromRuns && !mayBeTurnedDown.has(rule.name)) {
            kept.push(make('permission-unused', allow.ruleSpan, `${allow.rule} tells ${rule.family === 'reading the text' ? 'what cannot be read' : 'about permissions'}; it cannot be turned down.`));
            continue;
        }
        if (allow.on && !rig.parts.has(allow.on.name)) {
            kept.push(make('unknown-name', allow.on.span, `A part ${allow.on.name} does not exist.`));
            continue;
        }
        if (allow.level) {
            kept = weighed(rig, kept, allow, allow.level);
            continue;
        }
        if (!allow.because) kept.push(make('permission-incomplete', allow.ruleSpan, `Say why ${allow.rule} may stand: because "reason".`));
        if (!allow.until) kept.push(make('permission-incomplete', allow.ruleSpan, `Say until when ${allow.rule} may stand: until 2027-01-31. Permissions without an end are forgotten.`));
        if (allow.until && today && allow.until < today) {
            kept.push(make('permission-ended', allow.ruleSpan, `This permission ended on ${allow.until}; ${allow.rule} is told again.`));
            continue;
        }
        // What runs tell comes later: until then there is nothing to turn down.
        if (rule.fromRuns) continue;
        const covered = (f: Finding) => f.rule === allow.rule && (!allow.on || within(rig, f, allow.on.name));
        const muted = kept.filter(covered);
        if (!muted.length) {
            kept.push(make('permission-unused', allow.ruleSpan, `${allow.rule}${allow.on ? ` on ${allow.on.name}` : ''} is not told here: this permission can go.`));
            continue;
        }
        kept = kept.filter(f => !covered(f));
        if (muted.some(f => f.severity === 'error' || f.guardsLife)) {
            const days = allow.until && today ? (Date.parse(allow.until) - Date.parse(today)) / 1000 : NaN;
            kept.push(make('error-muted', allow.ruleSpan, `Turned down${allow.by ? ` by ${allow.by}` : ''}: ${muted[0].message}${days === days && days > 0 ? ` Ends in ${duration(days)}.` : ''}`,
                { related: muted.map(f => ({ span: f.span, message: 'what it is about' })) }));
        }
    }
    return kept;
}
/** What runs tell, permissions and weights heeded. What is wrong with a permission itself is told with the text. */
export function heeded(rig: Rig, findings: readonly Finding[], today: string | undefined): Finding[] {
    let kept = [...findings];
    for (const allow of rig.allows) {
        if (!ruleNamed(allow.rule)?.fromRuns || (allow.on && !rig.parts.has(allow.on.name))) continue;
        if (allow.level) kept = weighed(rig, kept, allow, allow.level).filter(f => ruleNamed(f.rule)?.fromRuns || f.rule === 'weight-refused');
        else if (!(allow.until && today && allow.until < today)) kept = kept.filter(f => !(f.rule === allow.rule && (!allow.on || within(rig, f, allow.on.name))));
    }
    return kept;
}
/** Findings with another weight for those of one rule. What guards a life, and an error, is not made lighter; and only hints may be left out. */
function weighed(rig: Rig, findings: readonly Finding[], by: Allowance, level: Level): Finding[] {
    const kept: Finding[] = [];
    const refused = new Set<string>();
    let lighter = false;
    for (const f of findings) {
        if (f.rule !== by.rule || (by.on && !within(rig, f, by.on.name))) {
            kept.push(f);
            continue;
        }
        const goesDown = level === 'nothing' || rank(level) > rank(f.severity);
        if (goesDown && f.guardsLife) refused.add(`${by.rule} guards a life: it is never made lighter. A single place can be turned down by allow, with a reason and an end.`);
        else if (goesDown && f.severity === 'error') refused.add(`${by.rule} tells an error here: a single place can be turned down by allow, with a reason and an end.`);
        else if (level === 'nothing' && f.severity !== 'hint') refused.add(`Only hints can be left out altogether; ${by.rule} tells a ${f.severity} here. It can be made a hint.`);
        else {
            lighter ||= goesDown;
            if (level !== 'nothing') kept.push({ ...f, severity: level });
            continue;
        }
        kept.push(f);
    }
    for (const message of refused) kept.push(make('weight-refused', by.ruleSpan, message));
    if (lighter && !by.because) kept.push(make('permission-incomplete', by.ruleSpan, `Say why ${by.rule} may weigh less: because "reason".`));
    return kept;
}
/** Whether a finding is about a part: it points into its block, or at its name on a path. */
function within(rig: Rig, f: Finding, name: string): boolean {
    const part = rig.parts.get(name);
    if (!part) return false;
    const touches = (s: Span) => (s.file === part.span.file && s.start >= part.span.start && s.end <= part.span.end) ||
        rig.paths.some(p => p.stops.some(stop => stop.name === name && stop.span.file === s.file && stop.span.start < s.end && s.start < stop.span.end));
    return touches(f.span) || f.related.some(r => touches(r.span));
}

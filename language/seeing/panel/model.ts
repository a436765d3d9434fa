/**
 * What the panel beside a text shows: the numbers of the part under the cursor and of the whole rig, numbers that can be turned, findings,
 * and a picture. Turned, the whole rig is worked out as if the text said so.
 */
import type { Analysis, Finding } from '../../index.js';
import { Workings, type Result } from '../../quantities/workings.js';
import { caution } from '../../reference/caution.js';
import { resultsOf } from '../../reference/quantities.js';
import { showResult, showSpread } from '../../reference/values.js';
import type { Part } from '../../rig/rig.js';
import { fromSi } from '../../units/unit.js';
import { CannotTry, inputOf, type TriedInput } from '../../what-if/input.js';

export interface PanelNumber {
    /** 'stack.current' */
    readonly name: string;
    readonly label: string;
    readonly value: string;
    readonly spread: string;
    readonly meaning: string;
    /** What it is as the text stands, where a turned number makes it another. */
    readonly was?: string;
}
export interface PanelTurn {
    readonly name: string;
    readonly label: string;
    readonly meaning: string;
    /** As it would be written: '2.4 mm'. */
    readonly text: string;
    /** In the unit of the text, as positions on a scale: they are turned by `step`. */
    readonly now: number;
    readonly low: number;
    readonly high: number;
    readonly step: number;
    readonly unit: string;
    /** A fact of the world, or a value from elsewhere, is looked at and not written. */
    readonly writes: boolean;
}
export interface PanelFinding {
    readonly severity: Finding['severity'];
    readonly rule: string;
    readonly message: string;
    readonly file: string;
    readonly start: number;
    /** Against the text as it stands. */
    readonly sort: 'there' | 'new' | 'gone';
}
export interface Panel {
    readonly title: string;
    readonly stage: string;
    readonly part?: { readonly name: string; readonly kind: string };
    readonly turned?: { readonly name: string; readonly text: string };
    readonly turns: readonly PanelTurn[];
    readonly here: readonly PanelNumber[];
    readonly key: readonly PanelNumber[];
    readonly findings: readonly PanelFinding[];
    readonly hints: number;
    readonly caution: string;
}
/** A number that is turned: by name, to a value in the unit of the text. */
export interface Turning {
    readonly name: string;
    readonly to: number;
}

/** Of a rig as a whole, in this order, where they are known. */
const keyNumbers = [
    'stack.current', 'stack.voltage', 'stack.volts-per-cell', 'stack.temperature', 'stack.hydrogen-rate', 'stack.plug-power', 'stack.plug-energy-per-volume', 'stack.heat',
    'stack.oxygen-in-hydrogen', 'stack.water-use', 'bag.fill-time', 'gasometer.fill-time', 'compressor.free-delivery', 'cylinder.usable-gas', 'cylinder.stored-energy',
];
const MOST_TURNS = 6;
/** How far a scale reaches from where a number stands: a third of it to three times it, in so many steps or somewhat more. */
const REACH = 3;
const STEPS = 120;
/** The same for what has no natural zero, as a temperature. */
const REACH_POINT = 25;

const own = (result: Result, was?: Result): PanelNumber => {
    const value = showResult(result);
    const before = was && showResult(was);
    return { name: `${result.part.name}.${result.quantity.name}`, label: result.quantity.name.replaceAll('-', ' '), value, spread: showSpread(result), meaning: result.quantity.meaning, was: before !== undefined && before !== value ? before : undefined };
};
/** A step of 1, 2 or 5. */
function round(step: number): number {
    const ten = 10 ** Math.floor(Math.log10(step));
    return step / ten > 5 ? 10 * ten : step / ten > 2 ? 5 * ten : step / ten > 1 ? 2 * ten : ten;
}
/** In the unit of the text. */
const inUnit = (input: TriedInput, si: number) => (input.counted || !input.unit ? si : fromSi(si, input.unit));
export function siOf(input: TriedInput, n: number): number {
    return input.counted || !input.unit ? n : n * input.unit.factor + input.unit.offset;
}
function turnOf(input: TriedInput, at: number): PanelTurn {
    const now = inUnit(input, at);
    const stands = inUnit(input, input.now);
    const [least, most] = [inUnit(input, input.low), inUnit(input, input.high)].sort((a, b) => a - b);
    const point = !!input.unit?.offset;
    const [from, to] = point ? [stands - REACH_POINT, stands + REACH_POINT] : [stands / REACH, stands * REACH];
    const [low, high] = [Math.max(least, Math.min(from, now)), Math.min(most, Math.max(to, now))];
    const step = input.counted ? 1 : round((high - low) / STEPS);
    const grid = (n: number, how: (x: number) => number) => Number((how(n / step) * step).toPrecision(12));
    return {
        name: input.name, label: input.name.split('.').slice(1).join(' ').replaceAll('-', ' '), meaning: input.property.doc, text: input.say(at), now, low: grid(low, Math.floor), high: grid(high, Math.ceil), step,
        unit: input.counted ? '' : input.unit?.text ?? '', writes: !!input.write(at),
    };
}
/** A number of the text by name, if it can be turned; a size a x b cannot. */
export function turnable(workings: Workings, name: string): TriedInput | undefined {
    try {
        const input = inputOf(workings, name);
        return input.now === input.now && Math.abs(input.now) > 0 && !input.isArea ? input : undefined;
    } catch (e) {
        if (e instanceof CannotTry) return undefined;
        throw e;
    }
}
/** The numbers that stand in a part, the one under the cursor first. */
function turnsOf(workings: Workings, part: Part, entry: string | undefined, turned: Turning | undefined): PanelTurn[] {
    const keys = [...part.entries.keys()].sort((a, b) => Number(b === entry) - Number(a === entry));
    const out: PanelTurn[] = [];
    for (const key of keys) {
        if (out.length === MOST_TURNS) break;
        const input = turnable(workings, `${part.name}.${key}`);
        if (input) out.push(turnOf(input, turned?.name === input.name ? siOf(input, turned.to) : input.now));
    }
    return out;
}

/**
 * @param at      name of the part under the cursor and of the property there
 * @param turned  the number that is turned, and the rig as it would then be
 */
export function panelOf(analysis: Analysis, at: { readonly part?: string; readonly entry?: string }, turned?: { readonly turning: Turning; readonly text: string; readonly then: Pick<Analysis, 'workings' | 'findings'> }): Panel {
    const { rig, workings } = analysis;
    const now = turned?.then ?? analysis;
    const part = (at.part !== undefined ? rig.parts.get(at.part) : undefined) ?? workings.partsOf('stack')[0]?.part;
    const shown = part && !part.kind?.statement ? part : workings.partsOf('stack')[0]?.part;
    const before = new Map(resultsOf(workings).map(r => [`${r.part.name}.${r.quantity.name}`, r]));
    const results = resultsOf(now.workings).filter(r => r.value === r.value);
    const tell = (r: Result) => own(r, turned && before.get(`${r.part.name}.${r.quantity.name}`));
    const key = keyNumbers.flatMap(name => {
        const [kind, quantity] = name.split('.');
        const found = results.find(r => r.part.kind?.name === kind && r.quantity.name === quantity);
        // What is not the stack's says whose it is.
        return found ? [kind === 'stack' ? tell(found) : { ...tell(found), label: `${found.part.name} ${found.quantity.name.replaceAll('-', ' ')}` }] : [];
    });
    const told = (f: Finding) => `${f.rule} ${f.span.file} ${rig.parts.size ? nameAt(analysis, f) : ''} ${f.severity}`;
    const had = new Set(analysis.findings.map(told));
    const has = new Set(now.findings.map(told));
    const finding = (f: Finding, sort: PanelFinding['sort']): PanelFinding => ({ severity: f.severity, rule: f.rule, message: f.message, file: f.span.file, start: f.span.start, sort });
    const grave = (f: Finding) => f.severity === 'error' || f.severity === 'warning';
    const findings = [
        ...now.findings.filter(grave).map(f => finding(f, turned && !had.has(told(f)) ? 'new' : 'there')),
        ...(turned ? analysis.findings.filter(f => grave(f) && !has.has(told(f))).map(f => finding(f, 'gone')) : []),
    ].sort((a, b) => Number(b.sort === 'new') - Number(a.sort === 'new') || Number(b.severity === 'error') - Number(a.severity === 'error'));
    return {
        title: rig.title || 'A rig without a title', stage: rig.stage, part: shown && { name: shown.name, kind: shown.kindWord },
        turned: turned && { name: turned.turning.name, text: turned.text },
        turns: shown ? turnsOf(workings, shown, at.part === shown.name ? at.entry : undefined, turned?.turning) : [],
        here: shown ? results.filter(r => r.part.name === shown.name && !key.some(k => k.name === `${r.part.name}.${r.quantity.name}`)).map(tell) : [],
        key, findings, hints: now.findings.filter(f => f.severity === 'hint').length, caution,
    };
}
/** The part that a finding stands in: its place moves as a number is written longer or shorter, the part does not. */
function nameAt({ rig }: Analysis, { span }: Finding): string {
    for (const p of rig.parts.values()) if (p.span?.file === span.file && p.span.start <= span.start && span.start <= p.span.end) return p.name;
    return '';
}

import { csvOf } from '../../../language/reference/csv.js';
import { notInRuns } from '../../../language/reference/run-pages.js';
import { clockOf, happenedText, heldText, totalsOf, worthTelling } from '../../../language/reference/run-text.js';
import { CannotRun, run as runThrough, type RunResult } from '../../../language/run/run.js';
import { FAILS_AT, runWithFault } from '../../../language/run/faults.js';
import { heldIn } from '../../../language/run/expectations.js';
import { DAY, readScenario, usualDay, usualDayIn } from '../../../language/run/scenario.js';
import { workingsIn, namesOf } from '../../../language/quantities/varied.js';
import { variantsOf } from '../../../language/rig/variants.js';
import type { Workings } from '../../../language/quantities/workings.js';
import { fromSi, toSi, unitOf } from '../../../language/units/unit.js';
import { duration, show } from '../../../language/units/format.js';
import { nearest, offering } from '../../../language/values/nearest.js';
import { CannotDo, type Command } from '../command.js';
import { one } from '../one-rig.js';
import { styles } from '../style.js';
import { version } from '../version.js';
import { caution } from '../words.js';

/** Figures of numbers for machines. */
const FIGURES = 6;

const run: Command = {
    name: 'run',
    summary: 'Follows a rig through a day or a scenario: what happens when, and how things stand at the end.',
    args: 'FILE',
    most: 1,
    options: {
        for: { type: 'string', takes: 'TIME', doc: 'how long: 12h, 90min; that of the scenario, or 24 h' },
        scenario: { type: 'string', takes: 'NAME', doc: 'scenario of the rig; the usual day if left out' },
        fault: { type: 'string', takes: "'PART way'", doc: 'something fails ten minutes after the start: "bag-empty sticks made"' },
        with: { type: 'string', takes: 'NAMES', doc: 'variants of the rig that are laid over it: winter, or winter+second-stack' },
        all: { type: 'boolean', doc: 'tells also what has no consequence' },
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'json', 'csv'], doc: 'form of the output' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright run shed.rig --for 12h', "rigwright run shed.rig --fault 'bag-empty sticks made'"],
    async run({ options, args }, around) {
        const { analysis: { workings, rig } } = one(args, options.on, around, 'run');
        const lasts = typeof options.for === 'string' ? timeOf(options.for) : undefined;
        const variants = typeof options.with === 'string' ? namesOf(options.with.replaceAll('+', ',')) : [];
        for (const name of variants) if (!variantsOf(rig).some(v => v.name === name)) throw new CannotDo(offering(`There is no variant ${name}`, nearest(name, variantsOf(rig).map(v => v.name))));
        const r = canRun(() => follow(workings, lasts, options.scenario, options.fault, variants));
        const fault = typeof options.fault === 'string' ? options.fault.trim().replace(/\s+/g, ' ') : undefined;
        const held = heldIn(workings, r, { fault, variants, since: fault === undefined ? 0 : FAILS_AT });
        if (options.format === 'json') around.out(`${JSON.stringify({ version, ...asJson(r), expected: held.map(h => ({ text: h.expectation.text, holds: h.holds ?? null, time: h.t ?? null, message: h.words })) }, null, 2)}\n`);
        else if (options.format === 'csv') around.out(asCsv(r));
        else {
            const s = styles(around.colour);
            const { starts, weather, name } = r.scenario;
            const out = [s.strong(rig.pages[0].title?.text ?? ''), s.quiet(`${name ?? 'a usual day'}${variants.length ? ` with ${variants.join(', ')}` : ''}, from ${clockOf(starts, 0).slice(0, 5)}, ${show(weather(0), '°C')} at the start`), ''];
            const told = r.events.filter(e => options.all || worthTelling(e));
            for (const e of told) out.push(`${clockOf(starts, e.t)}  ${e.sort === 'hazard' ? s.strong(`hazard: ${happenedText(e)}`) : happenedText(e)}`);
            if (!told.length) out.push('Nothing happens that a run would tell.');
            out.push('', s.strong(`After ${duration(r.ended.t)}${r.ended.early ? `: ${r.ended.early}` : ''}`));
            const totals = totalsOf(r, workings);
            const wide = Math.max(...totals.map(t => t.name.length));
            for (const t of totals) out.push(`  ${t.name.padEnd(wide)}  ${t.value}`);
            if (held.length) out.push('', 'Expected', ...held.map(h => `  ${heldText(h, starts)}`));
            out.push('', 'Left out of a run', ...[...r.notes, ...notInRuns].map(n => `  ${n}`));
            out.push('', s.quiet(caution), '');
            around.out(out.join('\n'));
        }
        return held.some(h => h.holds === false) ? 1 : 0;
    },
};
export default run;

/**
 * The run that is asked for: of a failure, of a scenario, or of the usual day.
 * @param lasts  s; that of the scenario, or a day
 * @throws CannotDo where a name stands for nothing
 */
export function follow(asWritten: Workings, lasts: number | undefined, scenario: unknown, fault: unknown, variants: readonly string[] = []): RunResult {
    const workings = variants.length ? workingsIn(asWritten, variants) : asWritten;
    if (typeof fault === 'string') {
        const [part, ...way] = fault.trim().split(/\s+/);
        const view = workings.viewOf(part);
        const ways = view?.part.kind?.events ?? [];
        if (!view) throw new CannotDo(offering(`There is no part ${part}`, nearest(part, [...workings.rig.parts.keys()])));
        if (!ways.includes(way.join(' '))) throw new CannotDo(`${part} does not fail like that; it can: ${ways.join(', ')}.`);
        return runWithFault(workings, { part, what: way.join(' ') }, lasts ?? DAY);
    }
    if (typeof scenario === 'string') {
        const view = workings.partsOf('scenario').find(v => v.name === scenario);
        if (!view) throw new CannotDo(offering(`There is no scenario ${scenario}`, nearest(scenario, workings.partsOf('scenario').map(v => v.name))));
        const read = readScenario(workings, view);
        return runThrough(workings, lasts === undefined ? read : { ...read, lasts });
    }
    return runThrough(workings, variants.length ? usualDayIn(asWritten, variants, lasts) : usualDay(workings, lasts));
}
/** '12h', '90 min' -> s. */
export function timeOf(text: string): number {
    const m = /^([\d.]+)\s*([a-z]+)$/.exec(text.trim());
    const unit = m && unitOf(m[2]);
    const seconds = unit ? toSi(Number(m[1]), unit) : NaN;
    if (!(seconds > 0 && seconds <= 60 * 86400)) throw new CannotDo(`--for takes a time up to 60 days, as 12h or 90min; not ${text}.`);
    return seconds;
}
/** What cannot be run is told in one line. */
export function canRun<T>(work: () => T): T {
    try {
        return work();
    } catch (e) {
        if (e instanceof CannotRun) throw new CannotDo(e.message);
        throw e;
    }
}
const inUnit = (si: number, unit: string) => {
    const u = unitOf(unit);
    return Number((u ? fromSi(si, u) : si).toPrecision(FIGURES));
};
function asJson(r: RunResult): object {
    const { starts, name } = r.scenario;
    return {
        scenario: name ?? null, starts, events: r.events.map(e => ({ time: Number(e.t.toFixed(3)), clock: clockOf(starts, e.t), cause: e.cause, then: e.then, sort: e.sort, parts: e.parts })),
        series: { time: r.times.map(t => Number(t.toFixed(3))), ...Object.fromEntries(r.series.map(s => [s.name, { unit: s.unit, values: s.values.map(v => inUnit(v, s.unit)) }])) },
        hazards: r.hazards.map(h => ({ time: Number(h.t.toFixed(3)), hazard: h.name, part: h.part, message: h.words })),
        final: Object.fromEntries(Object.entries(r.final).map(([k, v]) => [k, Number(v.toPrecision(FIGURES))])), ended: { time: r.ended.t, early: r.ended.early ?? null }, notes: r.notes,
    };
}
function asCsv(r: RunResult): string {
    return csvOf([['time (s)', ...r.series.map(s => (s.unit ? `${s.name} (${s.unit})` : s.name))], ...r.times.map((t, i) => [t.toFixed(2), ...r.series.map(s => inUnit(s.values[i], s.unit))])]);
}

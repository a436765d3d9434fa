/** The report of a rig: what somebody needs who decides, reviews or helps, and has not seen the text. Each section is one entry of `sections`. */
import type { Analysis, Finding } from '../../index.js';
import { Trials } from '../../index.js';
import type { Result } from '../../quantities/workings.js';
import { caution } from '../../reference/caution.js';
import { assumptionRows, resultsOf } from '../../reference/quantities.js';
import { notInRuns } from '../../reference/run-pages.js';
import { alikeEnds, clockOf, faultGroups, happenedText, outcomeText, totalsOf, worthTelling } from '../../reference/run-text.js';
import { showResult, showSpread } from '../../reference/values.js';
import { nearText } from '../../rules/near.js';
import { faultRuns, type Faults } from '../../run/faults.js';
import { CannotRun, run } from '../../run/run.js';
import { usualDay } from '../../run/scenario.js';
import { show } from '../../units/format.js';
import { CannotTry, inputOf } from '../../what-if/input.js';
import { drawingOf } from '../drawing/index.js';
import { printed } from '../palette.js';
import { allPlots, figureOf, pictureOf } from '../plots/index.js';
import { sectionOf } from '../section/layers.js';
import { sectionPicture } from '../section/section.js';
import type { Block, Report, Section } from './page.js';

export interface ReportOptions {
    /** ISO date of the day. */
    readonly today?: string;
    /** What fills a store, and the store, are left out of a shared report unless this is set; what can fail in it never is. */
    readonly withStorage?: boolean;
    /** Texts of the rig, for what is tried; without them nothing is tried. */
    readonly textOf?: (file: string) => string | undefined;
    /** Faults are broken through; they take a second or so. */
    readonly faults?: boolean;
}
interface Around extends ReportOptions {
    readonly analysis: Analysis;
    /** Parts that are left out of this copy. */
    readonly hidden: ReadonlySet<string>;
    readonly faulty: Faults | undefined;
    readonly quantity: (kind: string, name: string) => Result | undefined;
}
/** Kinds that belong to filling and holding a store. */
const ofStorage = new Set(['cylinder', 'compressor', 'unloader', 'check-valve', 'dryer', 'regulator']);
/** Of an assumed value, how far it is tried, and how many at most. */
const TRIED = 0.3;
const MOST_TRIED = 30;
const MOST_ROWS = 40;
/** J in a kilogram of TNT, and of lower heating value in a cubic metre of petrol: what people have a picture of. Textbook. */
const TNT = 4.184e6;
const PETROL = 32e9;

export function reportOf(analysis: Analysis, options: ReportOptions = {}): Report {
    const { workings, rig } = analysis;
    return workings.unnoted(() => {
        const hidden = options.withStorage ? new Set<string>() : storageParts(analysis);
        let faulty: Faults | undefined;
        if (options.faults !== false) {
            try {
                // Single failures are enough for a page; pairs take ten times as long.
                const runs = faultRuns(workings);
                for (let step = runs.next(); !faulty; step = runs.next()) faulty = step.done ? step.value : step.value.found;
            } catch (e) {
                if (!(e instanceof CannotRun)) throw e;
            }
        }
        const results = resultsOf(workings).filter(r => r.value === r.value);
        const around: Around = { ...options, analysis, hidden, faulty, quantity: (kind, name) => results.find(r => r.part.kind?.name === kind && r.quantity.name === name) };
        const made = sections.flatMap(make => make(around) ?? []).filter(s => s.blocks.length);
        return { title: rig.title || 'A rig without a title', subtitle: `Stage: ${rig.stage}${rig.stageSaid ? '' : ' (not said)'}.${options.today ? ` Worked out on ${options.today}.` : ''}${hidden.size ? ` This copy leaves out the store and what fills it: ${hidden.size} parts.` : ''}`, sections: made, caution };
    });
}
function storageParts({ workings }: Analysis): Set<string> {
    const [cylinder] = workings.partsOf('cylinder');
    if (!cylinder) return new Set();
    const { paths } = cylinder;
    const [compressor] = workings.partsOf('compressor');
    const behind = new Set(compressor ? [compressor.name, ...paths.after(compressor.name, 'hydrogen')] : [cylinder.name]);
    const names = new Set<string>();
    for (const v of workings.allViews()) {
        if (v.pattern || v.declared?.statement) continue;
        const sensed = v.controls.sensed(v)?.split('.')[0] ?? '';
        if (ofStorage.has(v.kind) || behind.has(v.name) || behind.has(sensed)) names.add(v.name);
    }
    // The bag stays: the rig is whole without the store.
    for (const n of paths.before(compressor?.name ?? cylinder.name, 'hydrogen')) names.delete(n);
    return names;
}
const words = (text: string, strong = false): Block => ({ is: 'words', text, strong });
const list = (items: readonly string[]): Block[] => (items.length ? [{ is: 'list', items }] : []);
const table = (head: readonly string[], rows: readonly (readonly string[])[], numbers?: readonly number[]): Block[] => (rows.length ? [{ is: 'table', head, rows, numbers }] : []);
const said = (r: Result | undefined) => r && `${showResult(r)}${showSpread(r) ? ` ${showSpread(r)}` : ''}`;
const place = (a: Around, f: Finding) => [...a.analysis.rig.parts.values()].find(p => p.span.file === f.span.file && p.span.start <= f.span.start && f.span.start <= p.span.end)?.name;

/** In the order of the page; what has nothing to say is left out. */
const sections: readonly ((a: Around) => Section | undefined)[] = [decide, cautions, site, flow, section, numbers, plots, findings, setPoints, assumed, flips, day, broken, cost, turnedDown, sources, notChecked];

function decide(a: Around): Section {
    const { workings, findings: told } = a.analysis;
    const [purpose] = workings.partsOf('purpose');
    const [budget] = workings.partsOf('budget');
    const wanted = purpose?.given('wanted').entry?.value?.text;
    const rows: string[][] = [];
    const row = (name: string, value: string | undefined, note: string) => void (value && rows.push([name, value, note]));
    row('Wanted', wanted, purpose?.word('sort') ? `for a ${purpose.word('sort')}` : '');
    row('It makes', said(a.quantity('stack', 'hydrogen-rate')), 'hydrogen, at 0 °C and 101.325 kPa, dry');
    row('It takes at the plug', said(a.quantity('stack', 'plug-power')), 'for the stack');
    row('Electricity for a m³', said(a.quantity('stack', 'plug-energy-per-volume')), 'burnt, that m³ gives back 3.0 kWh (lower heating value)');
    row('A m³ costs', said(a.quantity('budget', 'gas-cost')), 'electricity and parts');
    row('A m³ bought costs', budget?.given('bought-gas').entry?.value?.text, 'as the text says; rent of a cylinder included');
    const bag = a.quantity('bag', 'stored-energy') ?? a.quantity('gasometer', 'stored-energy');
    const store = a.quantity('cylinder', 'stored-energy');
    if (bag) row('Held in the bag when full', showResult(bag), `as much as ${show(bag.value / TNT, 'kg', 2)} of TNT or ${show(bag.value / PETROL, 'mL', 2)} of petrol`);
    if (store && !a.hidden.size) row('Held in the store when full', showResult(store), `as much as ${show(store.value / TNT, 'kg', 2)} of TNT or ${show(store.value / PETROL, 'L', 2)} of petrol, and it is pressed`);
    const grave = told.filter(f => f.severity === 'error' || (f.guardsLife && f.severity === 'warning'));
    const reaches = a.faulty?.faults.filter(f => f.outcome === 'hazard') ?? [];
    return {
        name: 'decide', title: 'To decide by', lead: 'What it does, what it costs, what it holds, and what speaks against it here.',
        blocks: [
            ...table(['', 'about', ''], rows, [1]),
            words(grave.length || reaches.length ? 'What would make this a bad idea here:' : 'Nothing in the text speaks against it by itself. That is no promise: nobody has looked at the rig, the place and the people.', true),
            ...list([...grave.slice(0, 8).map(f => f.message), ...(grave.length > 8 ? [`and ${grave.length - 8} more, under Findings`] : []), ...(reaches.length ? [`${reaches.length} single failures reach a hazard with nothing that acts in time: see Broken`] : [])]),
            ...(workings.partsOf('cylinder').length ? [words('Without a store: the same stack with its bag gives the same gas per hour, used as it is made; no compressor, no pressure vessel, no relief valve, and only the energy of the bag in the house. What is lost is gas for later.')] : []),
            words('Instead: a rented cylinder of hydrogen needs no building; ask a dealer for the price of a fill, rent and delivery, and compare it with the line above. For balloons helium does the same and does not burn. For heat, electricity straight from the plug gives about twice as much.'),
        ],
    };
}
function cautions(): Section {
    return {
        name: 'cautions', title: 'Cautions first', lead: 'What holds for every rig of this sort, whatever its numbers.',
        blocks: list([
            'Hydrogen burns unseen and with next to no spark, from 4 to 75 % in air. It gathers under ceilings: openings belong at the highest point, sources of sparks elsewhere.',
            'Hydrogen and oxygen must never meet in a pipe, a bag or a vessel. A mixture that somebody made by mistake is let out outdoors, never tried.',
            'Strong lye blinds within seconds: goggles, gloves, water to rinse within reach. Lye goes into water, never water into lye.',
            'Mains behind a supply, and tens of amperes before it: whoever is not licensed for it has it done.',
            'A pressure vessel is used for what is stamped on it, tested as the law says, and never for what it was not made for.',
            'Local codes, insurer, landlord and fire service are asked before gas is made, not after.',
        ]),
    };
}
function site(a: Around): Section | undefined {
    const [v] = a.analysis.workings.partsOf('site');
    if (!v) return undefined;
    const rows = [...v.part.entries.values()].filter(e => e.value?.text).slice(0, MOST_ROWS).map(e => [e.key.replaceAll('-', ' '), e.value!.text]);
    return { name: 'site', title: 'Job and site', lead: 'Where it stands, as the text says.', blocks: table(['', ''], rows) };
}
function flow(a: Around): Section | undefined {
    const svg = drawingOf(a.analysis, printed, { id: 'report-drawing', without: a.hidden });
    return svg && { name: 'drawing', title: 'Drawing', lead: 'What is joined to what. Letters and dashes tell what flows; numbers are those of ordinary running.', blocks: [{ is: 'picture', svg, told: 'Flow drawing of the rig.', wide: true }] };
}
function section(a: Around): Section | undefined {
    const s = sectionOf(a.analysis);
    return typeof s === 'string' ? undefined : { name: 'section', title: 'The stack in section', lead: 'Which plate makes which gas, and what lies between.', blocks: [{ is: 'picture', svg: sectionPicture(s, printed, 'report-section'), told: 'The stack, cut open.' }] };
}
/** Those that say something of a rig at rest; the table behind each stands under it. */
const shownPlots = ['polarisation', 'volts', 'watts', 'purity'];
function plots(a: Around): Section {
    const blocks = allPlots.filter(p => shownPlots.includes(p.name)).flatMap((plot): Block[] => {
        const figure = figureOf(plot, a.analysis);
        return typeof figure === 'string' ? [] : [{ is: 'picture', svg: pictureOf(plot, figure, printed, `report-${plot.name}`), told: `${plot.title}. ${plot.meaning}` }];
    });
    return { name: 'plots', title: 'Plots', lead: 'How it behaves around its working point; rigwright plot gives the numbers behind each.', blocks };
}
function numbers(a: Around): Section {
    const rows = resultsOf(a.analysis.workings).filter(r => r.value === r.value && r.quantity.shownAt !== undefined && !a.hidden.has(r.part.name)).map(r => [r.part.name, r.quantity.name.replaceAll('-', ' '), showResult(r), showSpread(r), r.quantity.meaning]);
    return { name: 'numbers', title: 'Key numbers', lead: 'Worked out from the text; the ± is what 95 of 100 such rigs should lie within.', ownPage: true, blocks: table(['part', 'number', '', '±', 'what it is'], rows, [2, 3]) };
}
function findings(a: Around): Section {
    const order = ['error', 'warning', 'hint'];
    const shown = a.analysis.findings.filter(f => !a.hidden.has(place(a, f) ?? '') || f.severity !== 'hint').sort((p, q) => order.indexOf(p.severity) - order.indexOf(q.severity));
    const rows = shown.slice(0, MOST_ROWS).map(f => [f.severity, place(a, f) ?? '', f.message, f.rule]);
    const near = a.analysis.near.filter(n => !a.hidden.has(n.part)).map(n => `${n.part}: ${nearText(n)}`);
    return {
        name: 'findings', title: 'Findings', lead: 'What cannot work or can hurt, as the rules see it.',
        blocks: [
            ...(rows.length ? table(['', 'where', 'what', 'rule'], rows) : [words('No error, no warning and no hint. That is no promise.')]),
            ...(shown.length > MOST_ROWS ? [words(`And ${shown.length - MOST_ROWS} more.`)] : []),
            ...(near.length ? [words('Within a tenth of a limit, and not over it:', true), ...list(near)] : []),
        ],
    };
}
/** Every point at which something acts, in order, by what it senses. */
function setPoints(a: Around): Section {
    const rows: { of: string; value: number; cells: string[] }[] = [];
    for (const v of a.analysis.workings.allViews()) {
        if (v.pattern || a.hidden.has(v.name)) continue;
        const of = v.controls.sensed(v) ?? '';
        for (const key of ['makes', 'breaks', 'trips', 'alarm'] as const) {
            if (!(key in (v.declared?.properties ?? {}))) continue;
            const value = v.maybe(`${key}.value`);
            if (value === value) rows.push({ of, value, cells: [of, v.given(key).entry?.value?.text ?? '', `${v.name} ${key}`] });
        }
        if (v.kind === 'relief-valve' && v.maybe('set') === v.maybe('set')) rows.push({ of: 'pressure', value: v.maybe('set'), cells: ['pressure', v.given('set').entry?.value?.text ?? '', `${v.name} opens`] });
    }
    rows.sort((p, q) => (p.of < q.of ? -1 : p.of > q.of ? 1 : q.value - p.value));
    return { name: 'set-points', title: 'Set points in order', lead: 'What acts at which value, the highest first: each must lie clear of the next.', blocks: table(['what is sensed', 'at', 'what acts'], rows.map(r => r.cells)) };
}
function assumed(a: Around): Section {
    const weight = new Map<string, number>();
    for (const r of resultsOf(a.analysis.workings)) {
        if (r.value !== r.value || r.quantity.shownAt === undefined) continue;
        for (const { root, part } of r.spread.shares) if (root.sort === 'assumed') weight.set(root.label, Math.max(weight.get(root.label) ?? 0, part));
    }
    const rows = assumptionRows(a.analysis.workings).filter(r => !a.hidden.has(r.name.split('.')[0])).map(r => ({ r, w: Math.max(0, ...[...weight].filter(([label]) => label === r.name || label.startsWith(`${r.name}.`)).map(([, w]) => w)) })).sort((p, q) => q.w - p.w);
    return { name: 'assumed', title: 'Assumed', lead: 'What the text does not say and was taken for granted, the weightiest first: measure or decide these before the others.', blocks: table(['what', 'as', 'because', 'at most of a ±'], rows.slice(0, MOST_ROWS).map(({ r, w }) => [r.name, r.value, r.because, w > 0.01 ? `${Math.round(100 * w)} %` : '']), [3]) };
}
/** Assumed values that would bring an error, or take one away, if they were three tenths off. */
function flips(a: Around): Section | undefined {
    if (!a.textOf) return undefined;
    const { analysis } = a;
    const trials = new Trials();
    const errors = (x: Analysis) => new Set(x.findings.filter(f => f.severity === 'error').map(f => f.rule));
    const now = errors(analysis);
    const items: string[] = [];
    for (const { name } of assumptionRows(analysis.workings).slice(0, MOST_TRIED)) {
        for (const share of [1 - TRIED, 1 + TRIED]) {
            try {
                const input = inputOf(analysis.workings, name);
                const si = input.rounded(input.now * share, 0);
                const fix = input.unit?.offset ? undefined : input.write(si);
                if (!fix) continue;
                const then = errors(trials.with(fix, analysis, a.textOf, { today: a.today }));
                for (const rule of then) if (!now.has(rule)) items.push(`${name} at ${input.say(si)} instead of ${input.say(input.now)}: ${rule} would be an error`);
                for (const rule of now) if (!then.has(rule)) items.push(`${name} at ${input.say(si)} instead of ${input.say(input.now)}: ${rule} would be gone`);
            } catch (e) {
                if (!(e instanceof CannotTry)) throw e;
            }
        }
    }
    return { name: 'flips', title: 'What a guess decides', lead: `Assumed values that would bring an error, or take one away, if they were ${100 * TRIED} % off${assumptionRows(analysis.workings).length > MOST_TRIED ? `; the first ${MOST_TRIED} were tried` : ''}.`, blocks: items.length ? list(items) : [words('None of those that were tried.')] };
}
function day(a: Around): Section | undefined {
    const { workings } = a.analysis;
    try {
        const r = run(workings, usualDay(workings));
        const told = r.events.filter(worthTelling).filter(e => !e.parts.some(p => a.hidden.has(p)));
        return {
            name: 'day', title: 'A usual day', lead: 'Switched on at eight, left through a day and a night: what happens when.', ownPage: true,
            blocks: [
                ...(r.ended.early ? [words(`It ends early: ${r.ended.early}.`, true)] : []),
                ...table(['when', 'what happens'], told.slice(0, MOST_ROWS).map(e => [clockOf(r.scenario.starts, e.t), happenedText(e)])),
                ...(told.length > MOST_ROWS ? [words(`And ${told.length - MOST_ROWS} more of the kind.`)] : []),
                ...table(['at the end', ''], totalsOf(r, workings).filter(t => !a.hidden.has(t.name.split('.')[0])).map(t => [t.name, t.value]), [1]),
            ],
        };
    } catch (e) {
        if (e instanceof CannotRun) return { name: 'day', title: 'A usual day', lead: 'What would happen when.', blocks: [words(`It cannot be run through: ${e.message}`)] };
        throw e;
    }
}
function broken(a: Around): Section | undefined {
    if (!a.faulty) return a.faults === false ? undefined : { name: 'broken', title: 'Broken', lead: 'What happens if one thing fails.', blocks: [words('Too little is known to break anything.')] };
    const { faulty } = a;
    return {
        name: 'broken', title: 'Broken', lead: 'One part fails at a time, ten minutes after the start, on the hottest day, rig warm and store half full; a leak is a hole of 1 mm. Two at once can do more.', ownPage: true,
        blocks: [
            ...faultGroups(faulty).flatMap(({ title, faults }): Block[] => [
                words(`${title}:`, true),
                ...(faults[0].outcome === 'stops' || faults[0].outcome === 'unseen' ? [words(`${faults.map(f => `${f.part} ${f.what}`).join(', ')}.`)] : list(alikeEnds(faults).map(({ names, fault }) => `${names}: ${outcomeText(fault)}${fault.help ? `. What would help: ${fault.help}` : ''}`))),
            ]),
            ...(faulty.left.length ? [words('Ways to fail that no run follows:', true), words(`${faulty.left.join(', ')}.`)] : []),
        ],
    };
}
function cost(a: Around): Section {
    const rows: string[][] = [];
    for (const v of a.analysis.workings.allViews()) {
        const price = v.pattern ? undefined : v.part.entries.get('price')?.value?.text;
        if (price && !a.hidden.has(v.name)) rows.push([v.name, v.kind, price]);
    }
    const sums = resultsOf(a.analysis.workings).filter(r => r.part.kind?.name === 'budget' && r.value === r.value && !a.hidden.size).map(r => [r.quantity.name.replaceAll('-', ' '), '', showResult(r)]);
    return { name: 'cost', title: 'Cost', lead: 'Prices as the text has them, and what follows from them.', blocks: table(['', '', ''], [...rows, ...sums], [2]) };
}
function turnedDown(a: Around): Section {
    const rows = a.analysis.rig.allows.map(p => [p.rule, p.on?.name ?? 'everywhere', p.level ? `weighs as ${p.level}` : 'turned down', p.because ?? 'no reason given', [p.by, p.until && `until ${p.until}`].filter(Boolean).join(', ')]);
    return { name: 'turned-down', title: 'Turned down', lead: 'Rules whose word is not heeded, or weighs otherwise, with the reason that was given.', blocks: table(['rule', 'where', '', 'because', ''], rows) };
}
function sources(a: Around): Section {
    const found = new Set<string>();
    for (const f of a.analysis.findings) if (f.source) found.add(f.source);
    for (const r of resultsOf(a.analysis.workings)) if (r.value === r.value && r.quantity.shownAt !== undefined && r.quantity.source) found.add(r.quantity.source);
    return { name: 'sources', title: 'Sources', lead: 'What the numbers and findings above rest on, as far as they are published; rigwright explain NAME tells more of each.', blocks: list([...found].filter(s => s !== 'definition').sort().slice(0, MOST_ROWS)) };
}
function notChecked(a: Around): Section {
    const cannot = a.analysis.findings.filter(f => f.rule === 'cannot-check-a-hazard').map(f => f.message);
    return {
        name: 'not-checked', title: 'Not checked here', lead: 'What this page cannot know.',
        blocks: list(['Whether the rig is built as the text says, and whether its parts are what their labels say.', 'Law, permission, insurance and the electrical installation: those who are licensed for them decide.', 'Workmanship: joints, welds, threads, cleanliness, what was in a vessel before.', ...notInRuns.map(n => `In runs: ${n}`), ...cannot]),
    };
}

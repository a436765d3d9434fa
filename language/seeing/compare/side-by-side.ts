/** A rig as it is written and some of its variants in columns: which numbers differ, which findings come and go, what it costs. */
import { inVariants, type AnalyseOptions, type Analysis } from '../../index.js';
import type { Result } from '../../quantities/workings.js';
import { caution } from '../../reference/caution.js';
import { isKeyNumber } from '../../reference/quantities.js';
import { resultText, showResult, showSpread } from '../../reference/values.js';
import { variantsOf } from '../../rig/variants.js';
import { nearest, offering } from '../../values/nearest.js';
import { cut, list, table, words } from '../report/define.js';
import type { Block, Cell, Report } from '../report/page.js';
import { differ, headlinesOf, IN_THE_BACK, numbersOf, weightOf } from './compare.js';
import { byKey, gravestFirst, gravity, placed, type Placed } from './findings.js';
import { counted, findingCell, firstSentence, twinned } from './page.js';

export interface Column {
    /** 'as written', 'winter', 'winter+two-stacks'. */
    readonly name: string;
    /** What it changes, as its text says: 'site.coldest: -12 °C'. */
    readonly says: readonly string[];
    readonly analysis: Analysis;
}
export interface Line {
    readonly name: string;
    readonly meaning: string;
    /** One for each column; undefined where it is not known there. */
    readonly results: readonly (Result | undefined)[];
    /** Others that are the same in every column. */
    readonly twins: readonly string[];
}
export interface FindingLine {
    readonly rule: string;
    /** One for each column; undefined where it is not told there. */
    readonly at: readonly (Placed | undefined)[];
}
export interface SideBySide {
    readonly title: string;
    readonly columns: readonly Column[];
    /** By which rigs are known, whether they differ or not. */
    readonly headlines: readonly Line[];
    /** Others that differ in some column, the weightiest first. */
    readonly differing: readonly Line[];
    /** Findings that are not in all columns, or not of one weight. */
    readonly findings: readonly FindingLine[];
    /** How many all columns have. */
    readonly shared: number;
}
export const AS_WRITTEN = 'as written';
/** Why there is nothing to set side by side, in a sentence for the maker. */
export class NoVariants extends Error {}

/** Names that stand for columns: variants, or several joined by + that are laid over the rig in that order. */
export function columnsOf(analysis: Analysis, wanted: readonly string[]): readonly (readonly string[])[] {
    const names = variantsOf(analysis.rig).map(v => v.name);
    if (!names.length) throw new NoVariants('This rig has no variants. One is written: variant winter { site.coldest: -12 °C }');
    for (const name of wanted.flatMap(w => w.split('+'))) {
        if (!names.includes(name)) throw new NoVariants(offering(`There is no variant ${name}`, nearest(name, names), `; there ${names.length === 1 ? 'is' : 'are'} ${names.join(', ')}.`));
    }
    return (wanted.length ? [...new Set(wanted)] : names).map(w => w.split('+'));
}
/** @param wanted  see {@link columnsOf}; all variants where none is named */
export function sideBySide(analysis: Analysis, wanted: readonly string[] = [], options: AnalyseOptions = {}): SideBySide {
    const variants = columnsOf(analysis, wanted);
    const says = (name: string) => [...(analysis.rig.parts.get(name)?.entries.values() ?? [])].filter(e => e.value && e.key !== 'note').map(e => `${e.key}: ${e.value!.text.replace(/\s+/g, ' ').trim()}`);
    const columns: Column[] = [{ name: AS_WRITTEN, says: [], analysis: inVariants(analysis, [], options) }, ...variants.map(v => ({ name: v.join('+'), says: v.flatMap(says), analysis: inVariants(analysis, v, options) }))];
    const numbers = columns.map(c => numbersOf(c.analysis));
    const lineOf = (name: string): Line => {
        const results = numbers.map(n => n.get(name));
        return { name, meaning: results.find(r => r)!.quantity.meaning, results, twins: [] };
    };
    const heads = headlinesOf(numbers);
    const differing = [...new Set(numbers.flatMap(n => [...n.keys()]))].filter(n => !heads.includes(n)).map(lineOf).map(line => ({ line, weight: weightIn(line.results) })).filter(x => x.weight > 0)
        .sort((a, b) => b.weight - a.weight || (a.line.name < b.line.name ? -1 : 1)).map(x => x.line);
    const folded = new Map<string, Line>();
    for (const l of differing) {
        const key = `${l.results.find(r => r)!.quantity.name} ${l.results.map(r => (r ? resultText(r) : '')).join(' ')}`;
        const twin = folded.get(key);
        folded.set(key, twin ? { ...twin, twins: [...twin.twins, l.name] } : l);
    }
    const findings = findingLines(columns.map(c => placed(c.analysis)));
    const isShared = ({ at }: FindingLine) => at.every(p => p && p.finding.severity === at[0]!.finding.severity);
    return { title: analysis.rig.title, columns, headlines: heads.map(lineOf), differing: [...folded.values()], findings: findings.filter(f => !isShared(f)), shared: findings.filter(isShared).length };
}
/** The most by which a column differs from the rig as written; 0 where none does. What only others read counts less, though one knows it and another does not. */
function weightIn(results: readonly (Result | undefined)[]): number {
    const [written, ...others] = results;
    const shown = results.some(r => r && isKeyNumber(r)) ? 1 : IN_THE_BACK;
    return Math.max(...others.map(r => {
        if (!r || !written) return r === written ? 0 : shown;
        return differ(written, r) ? weightOf(written, r) : 0;
    }));
}
function findingLines(all: readonly (readonly Placed[])[]): FindingLine[] {
    const keyed = all.map(byKey);
    const lines: FindingLine[] = [];
    for (const key of new Set(keyed.flatMap(k => [...k.keys()]))) {
        const most = Math.max(...keyed.map(k => k.get(key)?.length ?? 0));
        for (let i = 0; i < most; i++) {
            const at = keyed.map(k => k.get(key)?.[i]);
            lines.push({ rule: at.find(p => p)!.finding.rule, at });
        }
    }
    const gravest = ({ at }: FindingLine) => at.filter((p): p is Placed => !!p).sort(gravestFirst)[0];
    return lines.sort((a, b) => gravestFirst(gravest(a), gravest(b)));
}

/** Columns that fit beside each other on a page. */
const ABREAST = 4;
const MOST = 25;
/** @param abreast  columns beside each other; the rig as written stands first in each table */
export function sideBySideReport(s: SideBySide, abreast = ABREAST): Report {
    const groups: number[][] = [];
    for (let i = 1; i < s.columns.length; i += abreast - 1) groups.push([0, ...s.columns.map((_, k) => k).slice(i, i + abreast - 1)]);
    const inColumns = (first: string, rows: readonly (readonly Cell[])[], numbers: boolean): Block[] =>
        groups.flatMap(g => table([first, ...g.map(i => s.columns[i].name)], rows.map(r => [r[0], ...g.map(i => r[i + 1])]), numbers ? g.map((_, i) => i + 1) : undefined));
    const row = (l: Line): readonly Cell[] => [[twinned(l), firstSentence(l.meaning)], ...l.results.map((r, i) => (!r ? '(not known)' : i && l.results[0] && !differ(l.results[0], r) ? 'the same' : [showResult(r), showSpread(r)]))];
    const { shown, rest } = cut(s.differing, MOST, left => `And ${left} more that weigh less.`);
    const findingsIn = (i: number) => s.findings.flatMap(f => f.at[i] ?? []);
    const [written, ...variants] = s.columns;
    const errors = (c: Column) => c.analysis.findings.filter(f => f.severity === 'error').length;
    const away = [...s.columns[0].analysis.rig.parts.keys()];
    const only = variants.flatMap(v => [...v.analysis.rig.parts.keys()].filter(n => !away.includes(n)));
    return {
        title: `${s.title || 'A rig'}: its variants side by side`, caution,
        subtitle: [
            `The rig as it is written beside ${variants.map(v => v.name).join(', ')}.`,
            `Errors: ${s.columns.map(c => `${c.name} ${errors(c) || 'none'}`).join(', ')}.`,
            ...(only.length ? [`As written, what belongs to variants only is left out: ${[...new Set(only)].join(', ')}.`] : []),
        ],
        sections: [
            { name: 'variants', title: 'The variants', lead: 'What each of them says otherwise than the rig.', blocks: list(variants.map(v => [v.name, v.says.join('; ') || 'nothing'])) },
            { name: 'short', title: 'In short', lead: 'The numbers by which a rig is known, and what it costs, whether they differ or not.', blocks: s.headlines.length ? inColumns('number', s.headlines.map(row), true) : [words('None of them is known.')] },
            { name: 'findings', title: 'Findings that come and go', lead: 'What is not told in all columns, or not with the same weight. That nothing is told does not make a rig free of danger.', blocks: [
                ...(s.findings.length ? inColumns('finding', s.findings.map(f => [[`${f.rule}${placeOf(f)}`], ...f.at.map(p => p?.finding.severity ?? '-')]), false) : [words('All columns are told the same.')]),
                ...(s.shared ? [words(`${s.shared} ${s.shared === 1 ? 'finding is' : 'findings are'} told in all of them.`, 'quiet')] : []),
                ...[written, ...variants].flatMap((c, i): Block[] => {
                    const own = findingsIn(i).filter(p => newsIn(s, i, p)).sort(gravestFirst);
                    return own.length ? [words(`${i ? `With ${c.name}` : 'As written'}: ${counted(own)}.`, 'strong'), ...list(own.map(findingCell))] : [];
                }),
            ] },
            { name: 'differing', title: 'Numbers that differ', lead: 'The weightiest first.', blocks: shown.length ? [...inColumns('number', shown.map(row), true), ...rest] : [words('No other number differs by more than half a percent.')] },
        ].filter(x => x.blocks.length),
    };
}
const placeOf = ({ at }: FindingLine) => {
    const p = at.find(x => x);
    return p?.part ? ` at ${p.part}` : p ? ` in line ${p.line}` : '';
};
/** As written, what some variant lacks; in a variant, what is not there as written or is milder. */
function newsIn(s: SideBySide, column: number, p: Placed): boolean {
    const line = s.findings.find(f => f.at[column] === p)!;
    const [written] = line.at;
    return column === 0 ? line.at.some(x => !x) : !written || gravity[written.finding.severity] !== gravity[p.finding.severity];
}

/** A report as data: sections of words, lists, tables and pictures; written as one page of HTML that stands by itself, as Markdown, or for a terminal. */
import { printed } from '../palette.js';
import { el, FONT, short, together, type Markup } from '../svg.js';

/** What stands in a cell or behind a dot; of several lines the first counts, those below it are set smaller. */
export type Cell = string | readonly string[];
/** A row of cells, or a heading over the rows that follow. */
export type Row = readonly Cell[] | { readonly group: string };
export type Block =
    | { readonly is: 'words'; readonly text: string; readonly as?: 'strong' | 'quiet' }
    | { readonly is: 'heading'; readonly text: string }
    | { readonly is: 'list'; readonly items: readonly Cell[] }
    | { readonly is: 'table'; readonly head: readonly string[]; readonly rows: readonly Row[]; /** Columns that hold numbers: set to the right, never broken. */ readonly numbers?: readonly number[]; /** Narrow and long: set in two columns where there is room. */ readonly narrow?: boolean }
    | { readonly is: 'picture'; readonly svg: Markup; /** What it shows, where it cannot be shown. */ readonly told: string; /** By what its ids begin: on paper its quarters follow, each on its own sheet, where its words would be too small. */ readonly quartered?: string };
/** A line to write on: a number that nobody can know but who asks for it. */
export const BLANK = '________';
export interface Section {
    readonly name: string;
    readonly title: string;
    /** One sentence: what it is for. */
    readonly lead: string;
    readonly blocks: readonly Block[];
    /** Where it is printed: begins a new page, or has one that lies on its side. */
    readonly page?: 'own' | 'wide';
}
export interface Report {
    readonly title: string;
    /** What it is, and what this copy of it leaves out. */
    readonly subtitle: readonly string[];
    readonly sections: readonly Section[];
    readonly caution: string;
}
/** Of paper; 'any' leaves it to whoever prints. */
export type PageSize = 'any' | 'a4' | 'letter';

const p = printed;
const STYLE = `
@page { margin: 15mm 15mm 16mm; }
@page wide { size: landscape; margin: 10mm; }
@page a4 { size: A4; margin: 15mm 15mm 16mm; }
@page a4-wide { size: A4 landscape; margin: 10mm; }
@page letter { size: letter; margin: 15mm 15mm 16mm; }
@page letter-wide { size: letter landscape; margin: 10mm; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 54rem; padding: 2rem 1.5rem 4rem; color: ${p.ink}; background: ${p.paper}; font: 15px/1.5 ${FONT}; overflow-wrap: anywhere; }
h1 { font-size: 1.8rem; line-height: 1.2; font-weight: 600; margin: 0 0 0.5rem; }
h2 { font-size: 1.3rem; line-height: 1.25; font-weight: 600; margin: 2.8rem 0 0.3rem; padding-top: 0.5rem; border-top: 2px solid ${p.accent}; }
h3 { font-size: 1rem; font-weight: 600; margin: 1.4rem 0 0.3rem; color: ${p.accent}; }
p { margin: 0.4rem 0 0.7rem; } a { color: ${p.accent}; }
.soft, small { color: ${p.soft}; } small { display: block; font-size: 0.88em; line-height: 1.4; }
header .soft { margin: 0.1rem 0; }
nav ol { columns: 3 13rem; margin: 1.2rem 0; padding-left: 1.5rem; }
ul { margin: 0.4rem 0 0.9rem; padding-left: 1.3rem; } li { margin: 0.25rem 0; }
table { border-collapse: collapse; margin: 0.5rem 0 1rem; width: 100%; font-size: 0.93em; line-height: 1.4; font-variant-numeric: tabular-nums; }
th, td { text-align: left; font-weight: 400; padding: 0.28rem 1rem 0.28rem 0; vertical-align: top; border-bottom: 1px solid ${p.faint}; }
th:last-child, td:last-child { padding-right: 0; }
thead th { font-weight: 600; color: ${p.soft}; border-bottom-color: ${p.soft}; }
tbody th[scope="rowgroup"] { font-weight: 600; padding-top: 0.8rem; }
tbody th[scope="row"] { min-width: 7rem; }
.n { text-align: right; white-space: nowrap; }
.blank { display: inline-block; min-width: 6rem; border-bottom: 1px solid ${p.soft}; }
figure { margin: 1rem 0; } figure svg { max-width: 100%; height: auto; }
.quarters { display: none; } figcaption { color: ${p.soft}; margin: 0 0 0.4rem; }
.narrow { columns: 2 20rem; column-gap: 2rem; } .narrow table { margin-top: 0; }
footer { margin-top: 3rem; padding-top: 0.5rem; border-top: 1px solid ${p.faint}; color: ${p.soft}; }
@media print {
body { max-width: none; padding: 0; font-size: 9.6pt; line-height: 1.42; } nav { display: none; } a { color: inherit; text-decoration: none; }
body.a4 { page: a4; } body.letter { page: letter; }
h2 { margin-top: 8mm; } h1, h2, h3, h2 + p, thead, tbody th[scope="rowgroup"] { break-after: avoid; } h2, h3, h2 + p, tr, li, figure { break-inside: avoid; }
p { orphans: 3; widows: 3; }
section.own { break-before: page; } section.own h2, section.wide h2 { margin-top: 0; }
section.wide { page: wide; } .a4 section.wide { page: a4-wide; } .letter section.wide { page: letter-wide; }
figure svg { max-height: 200mm; } section.wide figure { margin: 0; } section.wide svg { width: 100%; max-height: 158mm; }
.quarters { display: block; } .quarters figure { break-before: page; } section.wide .quarters svg { max-height: 178mm; }
.narrow { columns: 2; } footer { margin-top: 8mm; break-before: avoid; }
}
`;
/** Digest of {@link STYLE} in the page's policy: no other style, and nothing else at all, is let in. `test/seeing/report.test.ts` tells the right one. */
const STYLE_DIGEST = 'sha256-RAaG7laoyQA++en3Lyvscjmd2zRCrNg1f8l7zGNaE7M=';

/** One file of HTML that asks for nothing else: no script, no address, its own style only. @param size  of the paper it is printed on */
export function asHtml({ title, subtitle, sections, caution }: Report, size: PageSize = 'any'): string {
    const body = together(
        el('header', {}, el('h1', {}, title), subtitle.map(s => el('p', { class: 'soft' }, s))),
        el('nav', { 'aria-label': 'Contents' }, el('ol', {}, sections.map(s => el('li', {}, el('a', { href: `#${s.name}` }, s.title))))),
        el('main', {}, sections.map(s => el('section', { id: s.name, class: s.page }, el('h2', {}, s.title), el('p', { class: 'soft' }, s.lead), s.blocks.map(htmlOf)))),
        el('footer', {}, el('p', {}, caution)),
    );
    const head = together(
        el('meta', { charset: 'utf-8' }), el('title', {}, title), el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
        el('meta', { 'http-equiv': 'Content-Security-Policy', content: `default-src 'none'; style-src '${STYLE_DIGEST}'; base-uri 'none'; form-action 'none'` }),
    );
    return `<!doctype html>\n<html lang="en">\n<head>\n${head}\n<style>${STYLE}</style>\n</head>\n<body${size === 'any' ? '' : ` class="${size}"`}>\n${body}\n</body>\n</html>\n`;
}
function inner(c: Cell): (Markup | string)[] {
    const [first, ...then] = typeof c === 'string' ? [c] : c;
    return [first === BLANK ? el('span', { class: 'blank' }, '\u00a0') : first, ...then.filter(Boolean).map(t => el('small', {}, t))];
}
function htmlOf(b: Block): Markup {
    switch (b.is) {
        case 'words': return el('p', { class: b.as === 'quiet' ? 'soft' : undefined }, b.as === 'strong' ? el('strong', {}, b.text) : b.text);
        case 'heading': return el('h3', {}, b.text);
        case 'list': return el('ul', {}, b.items.map(i => el('li', {}, inner(i))));
        case 'picture': return together(el('figure', {}, b.svg), b.quartered !== undefined && quartersOf(b.quartered, b.svg));
        case 'table': {
            const numbers = new Set(b.numbers);
            const row = (r: Row) => ('group' in r
                ? el('tr', {}, el('th', { scope: 'rowgroup', colspan: b.head.length }, r.group))
                : el('tr', {}, r.map((c, i) => (i ? el('td', { class: numbers.has(i) ? 'n' : undefined }, inner(c)) : el('th', { scope: 'row' }, inner(c))))));
            const whole = el('table', {}, el('thead', {}, el('tr', {}, b.head.map((h, i) => el(h ? 'th' : 'td', { scope: h ? 'col' : undefined, class: numbers.has(i) ? 'n' : undefined }, h)))), bodies(b.rows).map(rows => el('tbody', {}, rows.map(row))));
            return b.narrow ? el('div', { class: 'narrow' }, whole) : whole;
        }
    }
}
/** mm that a picture has on a wide sheet beside its heading; height of letters, of the sheet's units and mm that can be read at arm's length: own choice. */
const [WIDE, HIGH, LETTERS, READABLE] = [277, 158, 11, 1.8];
/** Of a picture's own units, by which quarters reach over the middle: a symbol with its name is whole in one of them. Own choice. */
const OVER = 70;
/** The four quarters of a picture, for paper only: whoever has it on a screen enlarges it there. */
function quartersOf(id: string, svg: Markup): Markup | undefined {
    const [width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg.text)!.slice(1).map(Number);
    if (LETTERS * Math.min(WIDE / width, HIGH / height) >= READABLE) return undefined;
    const [w, h] = [width / 2 + OVER, height / 2 + OVER];
    const quarter = (name: string, x: number, y: number) => el('figure', {}, el('figcaption', {}, `The same, larger: ${name}.`),
        el('svg', { xmlns: 'http://www.w3.org/2000/svg', viewBox: [x, y, w, h].map(short).join(' '), width: w, height: h, 'font-family': FONT }, el('use', { href: `#${id}-picture` })));
    return el('div', { class: 'quarters', 'aria-hidden': 'true' }, quarter('upper left', 0, 0), quarter('upper right', width - w, 0), quarter('lower left', 0, height - h), quarter('lower right', width - w, height - h));
}
/** Each heading with what stands under it. */
function bodies(rows: readonly Row[]): Row[][] {
    const out: Row[][] = [];
    for (const r of rows) {
        if ('group' in r || !out.length) out.push([r]);
        else out.at(-1)!.push(r);
    }
    return out;
}

/** Text that means nothing to Markdown but itself. */
const plain = (text: string) => text.replace(/[\\`*_{}[\]<>#|~&]/g, '\\$&').replace(/\s+/g, ' ').replace(/^(\s*)([-+=]|\d+[.)])(\s)/, '$1\\$2$3');
/** Bounds and brackets follow the first line as they are. */
const inOne = (c: Cell) => (typeof c === 'string' ? c : c.filter(Boolean).reduce((all, line) => (!all ? line : /^[±(]/.test(line) ? `${all} ${line}` : `${all} · ${line}`), ''));
const cell = (c: Cell) => plain(inOne(c));
const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;

/** For a review comment or a file; pictures are told in words. Names of any characters mean nothing to Markdown in it. */
export function asMarkdown({ title, subtitle, sections, caution }: Report): string {
    const out = [`# ${plain(title)}`, '', ...subtitle.flatMap(s => [plain(s), ''])];
    for (const s of sections) {
        out.push(`## ${plain(s.title)}`, '', `*${plain(s.lead)}*`, '');
        for (const b of s.blocks) {
            if (b.is === 'words') out.push(b.as === 'strong' ? `**${plain(b.text)}**` : plain(b.text), '');
            else if (b.is === 'heading') out.push(`### ${plain(b.text)}`, '');
            else if (b.is === 'list') out.push(...b.items.map(i => `* ${cell(i)}`), '');
            else if (b.is === 'picture') out.push(`(A picture stands here on the page: ${plain(b.told)})`, '');
            else out.push(line(b.head.map(plain)), `|${b.head.map((_, i) => (b.numbers?.includes(i) ? '--:' : '---')).join('|')}|`, ...b.rows.map(r => line('group' in r ? [`**${plain(r.group)}**`, ...b.head.slice(1).map(() => '')] : r.map(cell))), '');
        }
    }
    return [...out, plain(caution), ''].join('\n');
}
/** For a terminal: words wrapped, tables in columns, numbers to the right. @param wide  characters on a line */
export function asText({ title, subtitle, sections, caution }: Report, wide = 110): string {
    const wrapped = (text: string, first: string, next: string) => {
        const lines: string[] = [];
        let line = first;
        for (const word of text.split(/\s+/)) {
            if (line.length + word.length + 1 > wide && line.trim()) {
                lines.push(line.trimEnd());
                line = next;
            }
            line += `${word} `;
        }
        return [...lines, line.trimEnd()];
    };
    const out = [title, ...subtitle.flatMap(s => wrapped(s, '', ''))];
    for (const s of sections) {
        out.push('', s.title);
        for (const b of s.blocks) {
            if (b.is === 'words') out.push(...wrapped(b.text, '  ', '  '));
            else if (b.is === 'list') for (const i of b.items) out.push(...wrapped(inOne(i), '  - ', '    '));
            else if (b.is === 'heading') out.push('', `  ${b.text}`);
            else if (b.is === 'picture') out.push(`  (${b.told})`);
            else {
                // What is set smaller on a page has no room here.
                const rows = b.rows.map(r => ('group' in r ? [r.group] : r.map((c, i) => (i || typeof c === 'string' ? inOne(c) : c[0]))));
                const widths = b.head.map((h, i) => Math.max(h.length, ...rows.map(r => (r.length > 1 ? r[i] ?? '' : '').length)));
                for (const row of [b.head, ...rows]) out.push(`  ${row.map((c, i) => (b.numbers?.includes(i) ? c.padStart(widths[i]) : c.padEnd(widths[i]))).join('  ')}`.trimEnd());
            }
        }
    }
    return [...out, '', caution, ''].join('\n');
}

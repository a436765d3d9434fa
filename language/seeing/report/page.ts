/** A report as data: sections of paragraphs, lists, tables and pictures; written as one page of HTML that stands by itself, or as Markdown. */
import { printed } from '../palette.js';
import { el, FONT, together, type Markup } from '../svg.js';

/** Words with a stretch that stands out. */
export type Words = string;
export type Block =
    | { readonly is: 'words'; readonly text: Words; readonly strong?: boolean }
    | { readonly is: 'list'; readonly items: readonly Words[] }
    | { readonly is: 'table'; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[]; /** Columns that hold numbers: set to the right. */ readonly numbers?: readonly number[] }
    | { readonly is: 'picture'; readonly svg: Markup; readonly told: string; readonly wide?: boolean };
export interface Section {
    readonly name: string;
    readonly title: string;
    /** One sentence: what it is for. */
    readonly lead: string;
    readonly blocks: readonly Block[];
    /** Begins a new page where it is printed. */
    readonly ownPage?: boolean;
}
export interface Report {
    readonly title: string;
    readonly subtitle: string;
    readonly sections: readonly Section[];
    readonly caution: string;
}

export function asHtml({ title, subtitle, sections, caution }: Report): string {
    const body = together(
        el('header', {}, el('h1', {}, title), el('p', { class: 'soft' }, subtitle)),
        el('nav', { 'aria-label': 'Contents' }, el('ol', {}, sections.map(s => el('li', {}, el('a', { href: `#${s.name}` }, s.title))))),
        el('main', {}, sections.map(s => el('section', { id: s.name, class: s.ownPage ? 'own' : undefined }, el('h2', {}, s.title), el('p', { class: 'soft' }, s.lead), s.blocks.map(htmlOf)))),
        el('footer', {}, el('p', {}, caution)),
    );
    const head = together(
        el('meta', { charset: 'utf-8' }), el('title', {}, title), el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
        el('meta', { 'http-equiv': 'Content-Security-Policy', content: 'default-src \'none\'; style-src \'unsafe-inline\'' }),
    );
    return `<!doctype html>\n<html lang="en">\n<head>\n${head}\n<style>\n${STYLE}</style>\n</head>\n<body>\n${body}\n</body>\n</html>\n`;
}
function htmlOf(b: Block): Markup {
    switch (b.is) {
        case 'words': return el('p', {}, b.strong ? el('strong', {}, b.text) : b.text);
        case 'list': return el('ul', {}, b.items.map(i => el('li', {}, i)));
        case 'picture': return el('figure', { class: b.wide ? 'wide' : undefined }, b.svg, el('figcaption', { class: 'soft' }, b.told));
        case 'table': {
            const numbers = new Set(b.numbers);
            const cell = (tag: string, text: string, i: number) => el(tag, { class: numbers.has(i) ? 'n' : undefined, scope: tag === 'th' ? 'col' : undefined }, text);
            return el('table', {}, el('thead', {}, el('tr', {}, b.head.map((h, i) => cell('th', h, i)))), el('tbody', {}, b.rows.map(r => el('tr', {}, r.map((c, i) => cell('td', c, i))))));
        }
    }
}
const { ink, soft, faint, accent } = printed;
const STYLE = `@page { margin: 16mm 15mm; }
@page wide { size: landscape; margin: 10mm; }
body { margin: 0 auto; max-width: 52rem; padding: 2rem 1.5rem 4rem; color: ${ink}; background: #fff; font: 15px/1.5 ${FONT}; }
h1 { font-size: 1.7rem; font-weight: 600; margin: 0 0 0.2rem; }
h2 { font-size: 1.2rem; font-weight: 600; margin: 2.6rem 0 0.2rem; padding-top: 0.6rem; border-top: 2px solid ${accent}; }
p { margin: 0.5rem 0; } .soft { color: ${soft}; } a { color: ${accent}; }
nav ol { columns: 2; margin: 1.2rem 0; padding-left: 1.4rem; }
ul { margin: 0.5rem 0; padding-left: 1.3rem; } li { margin: 0.2rem 0; }
table { border-collapse: collapse; margin: 0.8rem 0; width: 100%; font-size: 0.93em; font-variant-numeric: tabular-nums; }
th { text-align: left; font-weight: 600; color: ${soft}; } th, td { padding: 0.22rem 0.8rem 0.22rem 0; vertical-align: top; border-bottom: 1px solid ${faint}; }
.n { text-align: right; white-space: nowrap; }
figure { margin: 1rem 0; } figure svg { max-width: 100%; height: auto; } figcaption { font-size: 0.9em; }
footer { margin-top: 3rem; color: ${soft}; }
@media print {
body { max-width: none; padding: 0; font-size: 10.5pt; } nav { display: none; } h2, tr, li, figure { break-inside: avoid; } h2 { break-after: avoid; }
section.own { break-before: page; } figure.wide { page: wide; break-before: page; break-after: page; } figure svg { max-height: 200mm; } figure.wide svg { width: 100%; max-height: 165mm; } a { color: inherit; text-decoration: none; }
}
`;

/** Text that means nothing to Markdown but itself. */
const plain = (text: string) => text.replace(/[\\`*_{}[\]<>#|~]/g, '\\$&').replace(/\r?\n/g, ' ').replace(/^(\s*)([-+=]|\d+[.)])(\s)/, '$1\\$2$3');
export function asMarkdown({ title, subtitle, sections, caution }: Report): string {
    const out = [`# ${plain(title)}`, '', plain(subtitle), ''];
    for (const s of sections) {
        out.push(`## ${plain(s.title)}`, '', `*${plain(s.lead)}*`, '');
        for (const b of s.blocks) {
            if (b.is === 'words') out.push(b.strong ? `**${plain(b.text)}**` : plain(b.text), '');
            else if (b.is === 'list') out.push(...b.items.map(i => `* ${plain(i)}`), '');
            else if (b.is === 'picture') out.push(`(${plain(b.told)})`, '');
            else out.push(`| ${b.head.map(plain).join(' | ')} |`, `|${b.head.map((_, i) => (b.numbers?.includes(i) ? '--:' : '---')).join('|')}|`, ...b.rows.map(r => `| ${r.map(plain).join(' | ')} |`), '');
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
    const out = [title, ...wrapped(subtitle, '', '')];
    for (const s of sections) {
        out.push('', s.title);
        for (const b of s.blocks) {
            if (b.is === 'words') out.push(...wrapped(b.text, '  ', '  '));
            else if (b.is === 'list') for (const i of b.items) out.push(...wrapped(i, '  - ', '    '));
            else if (b.is === 'picture') out.push(`  (${b.told})`);
            else {
                const widths = b.head.map((h, i) => Math.max(h.length, ...b.rows.map(r => (r[i] ?? '').length)));
                for (const row of [b.head, ...b.rows]) out.push(`  ${row.map((c, i) => (b.numbers?.includes(i) ? c.padStart(widths[i]) : c.padEnd(widths[i]))).join('  ')}`.trimEnd());
            }
        }
    }
    return [...out, '', caution, ''].join('\n');
}

/** The building blocks of a printed page: tables, steps, boxes to tick, blanks to fill, and the head that makes it print. */
import { printed } from '../palette.js';
import { el, together, type Child, type Markup } from '../svg.js';

export type Cell = Child | readonly Child[];

/** A number and its unit that stay together. */
export const unbroken = (text: string): string => text.replace(/ /g, '\u00a0');
/** A line to write on. */
export const blank = (size: 'short' | 'long' = 'short'): Markup => el('span', { class: `blank ${size}` }, '\u00a0');
export const box = (): Markup => el('span', { class: 'box' }, '\u00a0');
/** A box to tick, with its words. */
export const tick = (...words: readonly Child[]): Markup => el('span', { class: 'tick' }, box(), ' ', ...words);
export const heading = (text: string): Markup => el('h3', {}, text);
export const words = (...of: readonly Child[]): Markup => el('p', {}, ...of);
export const quiet = (...of: readonly Child[]): Markup => el('p', { class: 'quiet' }, ...of);

/** Columns of a number or a tick. */
const narrow = new Set(['no.', 'in', 'ok', 'got', 'spare', 'cell', 'plate']);
const wider = new Set(['material', 'size', 'at']);

/** A table with its head on every page that it reaches. */
export function table(head: readonly string[], rows: readonly (readonly Cell[])[], form: 'lines' | 'write' = 'lines'): Markup {
    return el('table', { class: form }, el('thead', {}, el('tr', {}, ...head.map(h => el('th', { scope: 'col', class: narrow.has(h) ? 'narrow' : wider.has(h) ? 'wider' : undefined }, h)))),
        el('tbody', {}, ...rows.map(row => el('tr', {}, ...head.map((_, i) => el('td', {}, ...[row[i]].flat()))))));
}
/** What is done, in order, each with a box to tick. */
export const steps = (of: readonly (Cell | undefined | false)[]): Markup | undefined => {
    const items = of.filter(s => s !== undefined && s !== false);
    return items.length ? el('ol', { class: 'steps' }, ...items.map(s => el('li', {}, box(), ' ', ...[s].flat()))) : undefined;
};
export const list = (of: readonly (Cell | undefined | false)[]): Markup | undefined => {
    const items = of.filter(s => s !== undefined && s !== false);
    return items.length ? el('ul', {}, ...items.map(s => el('li', {}, ...[s].flat()))) : undefined;
};
/** A card that is never cut by the end of a page. */
export const card = (title: Child, ...of: readonly (Child | undefined | false)[]): Markup => el('div', { class: 'card' }, el('h4', {}, title), ...of.map(c => c || undefined));
/** Words beside values. */
export const pairs = (rows: readonly (readonly [Child, Cell])[]): Markup => el('dl', {}, ...rows.flatMap(([name, value]) => [el('dt', {}, name), el('dd', {}, ...[value].flat())]));
/** Nobody goes on before this is signed. */
export const hold = (what: Child): Markup => el('p', { class: 'hold' }, el('strong', {}, 'Hold. '), what, ' Signed: ', blank(), ' Date: ', blank());
/** Done by whom and when. */
export const signed = (): Markup => el('p', { class: 'signed' }, 'Done by: ', blank(), ' Date: ', blank(), ' Seen by: ', blank());

const p = printed;
const style = `
@page { size: SIZE; margin: 14mm 13mm 14mm 15mm; }
* { box-sizing: border-box; }
html { color: ${p.ink}; background: ${p.paper}; font: 9.2pt/1.36 system-ui, "Segoe UI", "Noto Sans", "DejaVu Sans", sans-serif; font-variant-numeric: tabular-nums; }
body { margin: 0 auto; max-width: 182mm; }
@media screen { body { padding: 10mm 0; } .sheet { margin-bottom: 22mm; } }
.sheet { break-before: page; }
.sheet:first-of-type { break-before: auto; }
header { display: flex; justify-content: space-between; gap: 8mm; border-bottom: 0.4mm solid ${p.accent}; padding-bottom: 1.2mm; margin-bottom: 3mm; }
header span { color: ${p.soft}; font-size: 8.5pt; overflow-wrap: anywhere; }
header span:last-child { text-align: right; }
h2 { font-size: 16pt; line-height: 1.15; margin: 0 0 1mm; font-weight: 600; }
h3 { font-size: 11pt; margin: 4.2mm 0 1.2mm; font-weight: 600; color: ${p.accent}; break-after: avoid; }
h4 { font-size: 10pt; margin: 0 0 1mm; font-weight: 600; overflow-wrap: anywhere; }
p { margin: 0 0 2mm; }
h3 + .quiet { break-after: avoid; }
.quiet, small, .purpose { color: ${p.soft}; }
.quiet { font-size: 8.5pt; }
small { font-size: 8pt; white-space: nowrap; }
.cautions { border: 0.5mm solid ${p.error}; padding: 1.4mm 3mm 1mm; margin: 2mm 0 3mm; break-inside: avoid; }
.cautions strong { color: ${p.error}; }
.cautions ul { margin: 0.5mm 0 0; }
ul, ol { margin: 0 0 2mm; padding-left: 5.5mm; }
li { margin: 0 0 0.6mm; overflow-wrap: anywhere; }
ol.steps { padding-left: 7mm; }
ol.steps li { margin-bottom: 1.1mm; break-inside: avoid; }
.box { display: inline-block; width: 3.4mm; height: 3.4mm; line-height: 3.4mm; border: 0.3mm solid ${p.ink}; vertical-align: -0.5mm; overflow: hidden; }
.tick { white-space: nowrap; margin-right: 2mm; }
.blank { display: inline-block; border-bottom: 0.25mm solid ${p.soft}; min-width: 16mm; }
.blank.long { min-width: 45mm; }
td .blank { min-width: 11mm; }
table { border-collapse: collapse; width: 100%; margin: 0 0 3mm; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th { text-align: left; min-width: 16.5mm; font-weight: 600; font-size: 8.5pt; color: ${p.soft}; border-bottom: 0.35mm solid ${p.ink}; padding: 0.8mm 1.6mm 0.8mm 0; vertical-align: bottom; }
td { border-bottom: 0.2mm solid ${p.faint}; padding: 1mm 1.6mm 1mm 0; vertical-align: top; overflow-wrap: anywhere; }
th:first-child { min-width: 24mm; }
th.wider { min-width: 21mm; }
th.narrow { min-width: 9mm; }
.write th { font-size: 6.8pt; font-weight: 400; color: ${p.ink}; min-width: 17mm; padding-right: 0.4mm; }
.write th:first-child { min-width: 14mm; }
.write th:last-child { min-width: 10mm; }
table.write td { height: 7mm; border: 0.2mm solid ${p.faint}; padding: 1mm; }
table.write th { padding-left: 0.8mm; overflow-wrap: anywhere; }
.card { border: 0.25mm solid ${p.faint}; padding: 2.2mm 3mm 1.6mm; margin: 0 0 3mm; break-inside: avoid; }
dl { display: grid; grid-template-columns: 42mm 1fr; gap: 0.7mm 3mm; margin: 0 0 1.5mm; }
dt { color: ${p.soft}; }
dd { margin: 0; overflow-wrap: anywhere; }
.hold { border-top: 0.5mm solid ${p.ink}; border-bottom: 0.5mm solid ${p.ink}; padding: 1.6mm 0; margin: 3mm 0; break-inside: avoid; }
.signed { margin-top: 4mm; break-inside: avoid; }
.tile { break-inside: avoid; break-before: page; }
.tile svg { display: block; }
`;
export type PageSize = 'a4' | 'letter';

export interface SheetText {
    readonly title: string;
    readonly purpose: string;
    readonly cautions: readonly string[];
    readonly body: readonly (Markup | undefined | false)[];
}
/** All sheets as one page that needs nothing from elsewhere. */
export function documentOf(title: string, size: PageSize, date: string | undefined, sheets: readonly SheetText[]): string {
    const body = sheets.map(s => el('section', { class: 'sheet' },
        el('header', {}, el('span', {}, title), el('span', {}, date ? `printed ${date}` : '')),
        el('h2', {}, s.title), el('p', { class: 'purpose' }, s.purpose),
        s.cautions.length > 0 && el('div', { class: 'cautions' }, el('strong', {}, 'First'), el('ul', {}, ...s.cautions.map(c => el('li', {}, c)))),
        ...s.body));
    const head = together(el('meta', { charset: 'utf-8' }), el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }), el('title', {}, `${title}: papers`.slice(0, 70)));
    return `<!DOCTYPE html>\n<html lang="en">\n<head>${head.text}<style>${style.replace('SIZE', size === 'a4' ? 'A4' : 'letter')}</style></head>\n<body>\n${together(el('h1', { hidden: true }, title), ...body).text}\n</body>\n</html>\n`;
}

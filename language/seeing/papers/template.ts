/** The drilling template of a plate at its true size: outline, window, what holes the text places, and a line to check the scale by. */
import { printed } from '../palette.js';
import { el, FONT, together, type Markup } from '../svg.js';
import type { Bench } from './bench.js';
import type { Figure } from './dxf.js';
import { holesOf, packOf, windowPlace } from './pack.js';

/** mm around the plate. */
const MARGIN = 6;
/** mm that a line to check the scale by is long. */
export const CHECK = 100;
/** mm below the plate for that line and its words. */
const FOOT = 24;
/** mm of a page of either size that print for sure, and how much two sheets share. */
const SHEET = { width: 180, height: 218, shared: 10 };
/** Sheets of one template; a larger plate has its files only. */
const MOST_SHEETS = 12;

export const layers = { OUTLINE: 7, WINDOW: 3, HOLES: 1, MIDDLE: 8, CHECK: 5, WORDS: 7 } as const;

/** In millimetres, from the lower left corner of the plate, y upwards; undefined where the size of the plate is not told. */
export function templateOf(b: Bench): Figure | undefined {
    const pack = packOf(b);
    const size = pack && b.sizes(pack.stack, 'plate.size');
    if (!pack || !size) return undefined;
    const [w, h] = [size[0] * 1000, size[1] * 1000];
    const lines: Figure['lines'][number][] = [];
    const rect = (layer: string, x: number, y: number, width: number, height: number) => {
        const corners = [[x, y], [x + width, y], [x + width, y + height], [x, y + height]] as const;
        corners.forEach((from, i) => lines.push({ layer, from, to: corners[(i + 1) % 4] }));
    };
    rect('OUTLINE', 0, 0, w, h);
    lines.push({ layer: 'MIDDLE', from: [w / 2, -3], to: [w / 2, h + 3] }, { layer: 'MIDDLE', from: [-3, h / 2], to: [w + 3, h / 2] });
    const window = b.sizes(pack.stack, 'wetted');
    const place = windowPlace(b, pack.stack);
    if (window && place) rect('WINDOW', place[0] * 1000, place[1] * 1000, window[0] * 1000, window[1] * 1000);
    const circles: Figure['circles'][number][] = [];
    for (const hole of holesOf(pack.stack)) {
        const [x, y] = [hole.at[0] * 1000, hole.at[1] * 1000];
        circles.push({ layer: 'HOLES', middle: [x, y], radius: hole.bore * 500 });
        const arm = hole.bore * 500 + 2;
        lines.push({ layer: 'HOLES', from: [x - arm, y], to: [x + arm, y] }, { layer: 'HOLES', from: [x, y - arm], to: [x, y + arm] });
    }
    const low = -FOOT + 14;
    lines.push({ layer: 'CHECK', from: [0, low], to: [CHECK, low] }, { layer: 'CHECK', from: [0, low - 2], to: [0, low + 2] }, { layer: 'CHECK', from: [CHECK, low - 2], to: [CHECK, low + 2] });
    const missing = [!window && 'window', window && !place && 'place of the window', !circles.length && 'places of holes'].filter(Boolean);
    return {
        layers, lines, circles,
        words: [
            { layer: 'WORDS', at: [0, low - 5.5], height: 2.6, text: `This line is ${CHECK} mm long. Measure it before you drill.` },
            { layer: 'WORDS', at: [0, low - 9.5], height: 2.6, text: missing.length ? `Not told: ${missing.join(', ')}.` : 'Seen from the front.' },
        ],
        from: [-MARGIN, -FOOT - 4], to: [Math.max(w, CHECK) + MARGIN, h + MARGIN],
    };
}
const strokes: Readonly<Record<string, { readonly stroke: string; readonly width: number; readonly dashes?: string }>> = {
    OUTLINE: { stroke: printed.ink, width: 0.35 }, WINDOW: { stroke: printed.accent, width: 0.25, dashes: '4 1.5' }, HOLES: { stroke: printed.error, width: 0.2 },
    MIDDLE: { stroke: printed.soft, width: 0.15, dashes: '6 1.5 1 1.5' }, CHECK: { stroke: printed.water, width: 0.3 },
};
/** What is drawn, y downwards from the upper edge. */
function drawn(f: Figure): Markup {
    const y = (n: number) => f.to[1] - n;
    const x = (n: number) => n - f.from[0];
    const pen = (layer: string) => ({ stroke: strokes[layer].stroke, 'stroke-width': strokes[layer].width, 'stroke-dasharray': strokes[layer].dashes });
    return together(
        ...f.lines.map(l => el('line', { x1: x(l.from[0]), y1: y(l.from[1]), x2: x(l.to[0]), y2: y(l.to[1]), ...pen(l.layer) })),
        ...f.circles.map(c => el('circle', { cx: x(c.middle[0]), cy: y(c.middle[1]), r: c.radius, fill: 'none', ...pen(c.layer) })),
        ...f.words.map(w => el('text', { x: x(w.at[0]), y: y(w.at[1]), 'font-size': w.height, fill: printed.ink }, w.text)),
    );
}
function sheetOf(f: Figure, id: string, title: string, left: number, top: number, width: number, height: number): Markup {
    return el('svg', {
        xmlns: 'http://www.w3.org/2000/svg', width: `${width}mm`, height: `${height}mm`, viewBox: `${left} ${top} ${width} ${height}`, role: 'img', 'aria-labelledby': `${id}-title`, 'font-family': FONT,
    }, el('title', { id: `${id}-title` }, title), drawn(f));
}
const sizeOf = (f: Figure) => [f.to[0] - f.from[0], f.to[1] - f.from[1]] as const;

/** The whole template as one picture at its true size. */
export function templateSvg(f: Figure): string {
    const [width, height] = sizeOf(f);
    return `${sheetOf(f, 'template', 'Plate at its true size', 0, 0, width, height).text}\n`;
}
/** The same on as many sheets as it takes, each sharing a strip with the next; empty if that would be too many. */
export function templateSheets(f: Figure): { readonly title: string; readonly picture: Markup }[] {
    const [width, height] = sizeOf(f);
    const steps = (whole: number, sheet: number) => (whole <= sheet ? 1 : Math.ceil((whole - SHEET.shared) / (sheet - SHEET.shared)));
    const [across, down] = [steps(width, SHEET.width), steps(height, SHEET.height)];
    if (across * down > MOST_SHEETS) return [];
    const sheets: { title: string; picture: Markup }[] = [];
    for (let r = 0; r < down; r++) {
        for (let c = 0; c < across; c++) {
            const [left, top] = [c * (SHEET.width - SHEET.shared), r * (SHEET.height - SHEET.shared)];
            const title = across * down > 1 ? `Plate at its true size, row ${r + 1} of ${down}, column ${c + 1} of ${across}` : 'Plate at its true size';
            sheets.push({ title, picture: sheetOf(f, `template-${r + 1}-${c + 1}`, title, left, top, Math.min(SHEET.width, width - left), Math.min(SHEET.height, height - top)) });
        }
    }
    return sheets;
}

/** What is cut and drilled, how many of each, and a template of the plate at its true size. */
import { show } from '../../../units/format.js';
import type { Bench } from '../bench.js';
import { csvOf } from '../../../reference/csv.js';
import { dxfOf } from '../dxf.js';
import { clearanceOf, gasketsAreFrames, type Hole, holesOf, leastRodLength, outlineOf, packOf, plateThickness, separatorSheet, spare, thinRims, windowPlace } from '../pack.js';
import { blank, type Cell, heading, list, quiet, table, words } from '../page.js';
import { definePaper } from '../paper.js';
import { el, together } from '../../svg.js';
import { layers, templateOf, templateSheets, templateSvg } from '../template.js';

/** Holes with little around them that are named. */
const MOST_RIMS = 8;

interface Piece {
    readonly what: string;
    readonly count: number;
    readonly spare: number;
    readonly material: string | undefined;
    readonly size: string | undefined;
    readonly note: string;
}
const size = (sizes: readonly number[] | undefined) => sizes && `${sizes.map(s => String(Math.round(s * 10000) / 10)).join(' x ')} mm`;

/** Width and height for whoever cuts, with room to write where they are not told. */
const flat = (sizes: readonly number[] | undefined) => (sizes ? sizes.slice(0, 2).map(s => String(Math.round(s * 10000) / 10)).join(' x ') : '____ x ____');

export function pieces(b: Bench): Piece[] {
    const pack = packOf(b);
    if (!pack) return [];
    const { stack } = pack;
    const plate = b.sizes(stack, 'plate.size');
    const thickness = plateThickness(b, stack);
    const window = size(b.sizes(stack, 'wetted'));
    const sheet = separatorSheet(b, stack);
    const rods = b.fact(stack, 'tie-rods.count');
    const clear = clearanceOf(b.told(stack, 'tie-rods.thread'));
    const sleeves = b.told(stack, 'tie-rods.sleeves');
    const framed = !gasketsAreFrames(b, stack);
    const rodLength = leastRodLength(b, pack);
    const found: Piece[] = [
        { what: 'plates', count: pack.plates, spare: 1, material: b.told(stack, 'plate.material'), size: plate ? size(plate) : thickness > 0 ? `____ x ____ x ${show(thickness, 'mm')}` : undefined, note: `${pack.groups > 1 ? `${pack.groups} groups; ` : ''}the end plates have a terminal each` },
        { what: 'gaskets', count: pack.gaskets, spare: spare(pack.gaskets), material: b.told(stack, 'gasket.material'), size: b.told(stack, 'gasket.free') && `${flat(outlineOf(b, stack))} x ${b.told(stack, 'gasket.free')} free`, note: `window ${window ?? '____ x ____'}; one on each side of every separator${b.told(stack, 'gasket.pressed') ? `; pressed to ${b.told(stack, 'gasket.pressed')}` : ''}` },
        { what: 'separator sheets', count: pack.separators, spare: spare(pack.separators), material: b.told(b.the('separator'), 'material'), size: sheet && `${size(sheet.size)}${b.told(b.the('separator'), 'thickness') ? ` x ${b.told(b.the('separator'), 'thickness')}` : ''}`, note: sheet && sheet.by !== 'told' ? `size by ${sheet.by}` : '' },
        { what: 'frames', count: framed ? NaN : 0, spare: framed ? NaN : 0, material: !framed ? '' : b.told(stack, 'manifold.sort') === 'internal' ? b.told(stack, 'manifold.material') : undefined, size: framed ? undefined : 'none', note: framed ? `none where the gaskets are the frames; window ${window ?? '____ x ____'}${b.told(stack, 'frame-key') ? `; keyed by ${b.told(stack, 'frame-key')}` : ''}` : 'the gaskets, pressed, are as thick as the gap: they are the frames' },
        { what: 'end boards', count: pack.groups === 1 || pack.mirrored ? 2 : NaN, spare: 0, material: b.told(stack, 'end-board.material'), size: b.told(stack, 'end-board.thickness') && `${flat(b.sizes(stack, 'end-board.outline'))} x ${b.told(stack, 'end-board.thickness')}`, note: [b.told(stack, 'end-board.span') && `at most ${b.told(stack, 'end-board.span')} between two bolts`, clear > 0 && `holes of ${show(clear, 'mm')} for ${b.told(stack, 'tie-rods.thread')} (ISO 273, middle row, from memory)`].filter(Boolean).join('; ') },
        { what: 'tie rods', count: rods ? rods.number : NaN, spare: 1, material: undefined, size: b.told(stack, 'tie-rods.thread') && `${b.told(stack, 'tie-rods.thread')} x ${rodLength > 0 ? `at least ${show(Math.ceil(rodLength * 1000) / 1000, 'mm', 3)}` : '____'}`, note: rodLength > 0 ? 'pack, boards, washers, nuts, two turns of thread (ISO 4032, ISO 7089, from memory); more for spring washers and for gaskets not pressed yet' : 'length: pack, both boards, washers, nuts and some turns of thread' },
    ];
    if (sleeves === 'sleeved') found.push({ what: 'sleeves for the tie rods', count: rods ? rods.number : NaN, spare: 1, material: undefined, size: undefined, note: 'insulating, as long as the pack is high' });
    return found;
}
interface HoleRow {
    readonly what: string;
    readonly bore: number;
    /** m; a hole at each of the one over each of the other. */
    readonly left: readonly number[];
    readonly below: readonly number[];
}
/** Holes alike, a line of the table: those of one height, and heights that have the same holes together. */
export function rowsOf(holes: readonly Hole[]): HoleRow[] {
    const rows = new Map<string, { what: string; bore: number; left: number[]; below: number[] }>();
    const put = (into: typeof rows, key: string, row: HoleRow, grows: 'left' | 'below') => {
        const known = into.get(key);
        if (known) known[grows].push(...row[grows]);
        else into.set(key, { what: row.what, bore: row.bore, left: [...row.left], below: [...row.below] });
    };
    const heights: typeof rows = new Map();
    for (const h of holes) put(heights, `${h.what} ${h.bore} ${h.at[1]}`, { what: h.what, bore: h.bore, left: [h.at[0]], below: [h.at[1]] }, 'left');
    for (const h of heights.values()) {
        h.left.sort((a, b) => a - b);
        put(rows, `${h.what} ${h.bore} ${h.left.join()}`, h, 'below');
    }
    return [...rows.values()];
}
const bare = (m: readonly number[]) => `${m.map(n => String(Math.round(n * 10000) / 10)).join(', ')} mm`;
const number = (n: number): Cell => (n === n ? String(n) : blank());

export default definePaper({
    name: 'cut', place: 20, title: 'Cut list and drilling template',
    purpose: 'What to cut, from what, how many, and where the holes are, as far as the text tells it.',
    needs: 'stack: cells, plate, wetted, gasket, port, end-board, tie-rods; window-at and holes for the template',
    cautions: () => [
        'Measure the line of 100 mm on the print before anything is marked from it. Print at 100 %, not fitted to the page.',
        'Deburr every edge: a burr goes through a gasket or a separator. Goggles at the drill; dust of plated or stainless sheet stays out of the lungs.',
    ],
    make: b => {
        const pack = packOf(b);
        if (!pack) return [words('The text has no stack.')];
        const { stack } = pack;
        const holes = holesOf(stack);
        const window = windowPlace(b, stack);
        const rims = thinRims(b, stack);
        const figure = templateOf(b);
        const sheets = figure ? templateSheets(figure) : [];
        const ports = b.fact(stack, 'port.count');
        const rods = b.told(stack, 'tie-rods.count');
        const sleeves = b.told(stack, 'tie-rods.sleeves');
        const millimetres = (m: number) => show(m, 'mm', 4);
        return [
            words(!figure ? 'Without the size of the plate there is no template.' : `${sheets.length === 0 ? 'The plate is too large for a print on a few pages; at its true size it is' : `${sheets.length === 1 ? 'The last page of this paper holds' : `The last ${sheets.length} pages of this paper hold`} the plate at its true size; it is also`} in the files template.svg and template.dxf (layers ${Object.keys(layers).join(', ')}; millimetres).`),
            heading('Pieces'),
            table(['piece', 'no.', 'spare', 'material', 'width x height x thick', 'mind'], pieces(b).map(p => [p.what, number(p.count), number(p.spare), p.material ?? blank(), p.size ? p.size : blank(), p.note])),
            heading('Holes and places'),
            quiet('From the lower left corner of the plate, seen from the front, to the middle of the hole. A hole through a plate leaves a bare rim in the channel: line it, or current passes there.'),
            table(['what', 'no.', 'bore', 'from the left', 'from below'], [
                ...rowsOf(holes).map(r => [`${r.what} hole${r.left.length * r.below.length > 1 ? 's' : ''}`, String(r.left.length * r.below.length), millimetres(r.bore), bare(r.left), bare(r.below)] as Cell[]),
                ['window, lower left corner', '1', '', window ? millimetres(window[0]) : blank(), window ? millimetres(window[1]) : blank()],
                ...(holes.some(h => ['hydrogen', 'oxygen', 'lye'].includes(h.what)) ? [] : [['channel holes (manifold)', blank(), b.ask(stack, 'manifold.bore'), blank(), blank()] as Cell[]]),
                [['ports, from each half of a cell to its channel', b.told(stack, 'port.length') ? `, ${b.told(stack, 'port.length')} long` : ''], ports ? String(ports.number) : blank(), b.ask(stack, 'port.bore'), blank(), b.told(stack, 'port.below') ? `${b.told(stack, 'port.below')} below the top of the window` : blank()],
                ...(holes.some(h => h.what === 'rod') ? [] : [[['tie rods', sleeves ? sleeves === 'outside' ? ', outside the plates' : `, ${sleeves}` : ''], rods ?? blank(), sleeves === 'outside' ? 'none in the plates' : blank(), blank(), blank()] as Cell[]]),
            ]),
            rims.length > 0 && list(rims.slice(0, MOST_RIMS).map(r => `Little is left: ${r}.`)),
            list([
                ['Height of the pressed pack between the boards: ', pack.height.least > 0 ? together(el('strong', {}, show(pack.height.least, 'mm', 4)), pack.height.most > pack.height.least ? `, up to ${show(pack.height.most, 'mm', 4)} with the clamped edges of the separators` : '') : blank(), '.'],
            ]),
            ...sheets.map(s => el('div', { class: 'tile' }, el('h4', {}, s.title), s.picture)),
        ];
    },
    files: b => {
        const figure = templateOf(b);
        return [
            { name: 'cut.csv', text: csvOf([['piece', 'count', 'spare', 'material', 'size', 'note'], ...pieces(b).map(p => [p.what, p.count, p.spare, p.material ?? '', p.size ?? '', p.note])]) },
            ...(figure ? [{ name: 'template.svg', text: templateSvg(figure) }, { name: 'template.dxf', text: dxfOf(figure) }] : []),
        ];
    },
});

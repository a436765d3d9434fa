/**
 * A stack as the pieces that lie on each other, from left to right: what each is, how thick, which gas it meets; and the order in which
 * they are laid. Read from the text; of what the text leaves open it is said what is drawn instead.
 */
import type { Analysis } from '../../index.js';
import type { View } from '../../quantities/view.js';
import { digits, show } from '../../units/format.js';

export type Gas = 'hydrogen' | 'oxygen';
export type Pole = 'plus' | 'minus';
export interface Layer {
    readonly sort: 'board' | 'plate' | 'gap' | 'sheet';
    /** m */
    readonly thickness: number;
    /** Of a gap: what is made in it. */
    readonly gas?: Gas;
    /** Of a plate to which a lead goes. The others work with both faces. */
    readonly pole?: Pole;
    /** Which group of those drawn it is of, from 0, and number of its cell in it, from 1 at the left; of a plate that of the cell before it. */
    readonly group: number;
    readonly cell: number;
}
export interface Step {
    readonly what: string;
    readonly many: number;
    /** Which face goes up, and what it must meet. */
    readonly up: string;
    /** Repeated for each cell of this group. */
    readonly each?: number;
}
export interface Piece {
    readonly what: string;
    readonly size: string;
    readonly many: number;
}
export interface Section {
    readonly stack: string;
    readonly cells: number;
    readonly groups: number;
    /** From left to right. */
    readonly layers: readonly Layer[];
    /** Poles from left to right: of one group, or of two that share their middle plate. */
    readonly poles: readonly Pole[];
    /** m: of a plate, and of the window in which lye and current meet it. */
    readonly plateHeight: number;
    readonly windowHeight: number;
    /** Whether there is a sheet between the gases. */
    readonly parted: boolean;
    readonly pieces: readonly Piece[];
    readonly steps: readonly Step[];
    /** What would hurt if it were built like that. */
    readonly warnings: readonly string[];
    readonly notes: readonly string[];
}

/** m, where nothing is said: of a plate, a sheet, a board; what frames add to the window at top and bottom. Common practice, no source. */
const USUAL = { plate: 1e-3, sheet: 0.5e-3, board: 20e-3, rim: 25e-3 } as const;
/** More cells than anybody stacks. */
const MOST_CELLS = 5000;

/** @returns why it cannot be drawn, in a sentence, where it cannot */
export function sectionOf({ workings }: Analysis): Section | string {
    return workings.unnoted(() => {
        const stack = workings.partsOf('stack')[0];
        if (!stack) return 'No stack is described.';
        const layout = stack.word('layout') ?? 'bipolar';
        if (layout !== 'bipolar') return `Only bipolar stacks are drawn, where each plate makes hydrogen on one face and oxygen on the other; this one is ${layout}.`;
        const [cells, groups] = [stack.maybe('cells'), stack.maybe('groups', 1)];
        const wetted = stack.sizes('wetted');
        if (!(cells >= 1 && cells <= MOST_CELLS)) return 'How many cells there are is not known.';
        if (!wetted || wetted.length < 2) return 'The wetted size is not known: width x height of the window inside the gasket.';
        if (inMiddle(stack) && groups !== 2) return 'A stack that is fed in the middle is drawn with two groups, one on either side of that plate; say groups: 2.';
        return built(stack, stack.says('separator') === 'none' ? undefined : workings.livePartsOf('separator')[0], Math.round(cells), Math.max(1, Math.round(groups)), wetted[1]);
    });
}
const inMiddle = (stack: View) => stack.word('feed') === 'middle' || stack.word('plus-end') === 'middle';
function built(stack: View, separator: View | undefined, cells: number, groups: number, windowHeight: number): Section {
    const warnings: string[] = [];
    const notes: string[] = [];
    if (separator?.part.implied) notes.push('No separator is described: one is taken for granted. Say separator: none in the stack if there is none.');
    const size = stack.sizes('plate.size');
    const or = (known: number | undefined, usual: number, what: string) => {
        if (known !== undefined && known >= 0) return known;
        notes.push(`${what} is not told: drawn as ${show(usual, 'mm')}.`);
        return usual;
    };
    const maybe = (v: View | undefined, key: string) => {
        const n = v?.maybe(key) ?? NaN;
        return n === n ? n : undefined;
    };
    const plate = or(size?.[2] ?? maybe(stack, 'plate.thickness'), USUAL.plate, 'The thickness of a plate');
    const gap = or(maybe(stack, 'gap'), 0, 'The gap');
    if (stack.says('gap') === 'assumed') notes.push(`The gap is assumed: ${show(gap, 'mm')}.`);
    const sheet = separator ? or(maybe(separator, 'thickness'), USUAL.sheet, 'The thickness of the separator') : 0;
    if (separator?.says('thickness') === 'assumed') notes.push(`The thickness of the separator is assumed: ${show(sheet, 'mm')}.`);
    const board = or(maybe(stack, 'end-board.thickness'), USUAL.board, 'The thickness of the end boards');
    const plateHeight = size && size.length > 1 ? Math.max(size[1], windowHeight) : windowHeight + 2 * USUAL.rim;
    if (!size) notes.push(`The size of a plate is not told: drawn ${show(USUAL.rim, 'mm')} higher than the window at top and bottom.`);
    else if (size[1] < windowHeight) notes.push('The text makes the window higher than the plate: the plate is drawn as high as the window.');

    const poles = polesOf(stack, notes, warnings);
    const layers: Layer[] = [{ sort: 'board', thickness: board, group: 0, cell: 0 }, { sort: 'plate', thickness: plate, pole: poles[0], group: 0, cell: 0 }];
    for (let group = 0; group < poles.length - 1; group++) {
        const [near, far] = madeFrom(poles[group]);
        for (let cell = 1; cell <= cells; cell++) {
            layers.push({ sort: 'gap', thickness: gap, gas: near, group, cell });
            if (separator) layers.push({ sort: 'sheet', thickness: sheet, group, cell });
            layers.push({ sort: 'gap', thickness: gap, gas: far, group, cell }, { sort: 'plate', thickness: plate, pole: cell === cells ? poles[group + 1] : undefined, group, cell });
        }
    }
    layers.push({ sort: 'board', thickness: board, group: poles.length - 2, cell: cells });
    if (!separator) warnings.push('There is no separator: both gases share the room between the plates, and what comes out can burn by itself.');
    return {
        stack: stack.name, cells, groups, layers, plateHeight, windowHeight, poles, parted: !!separator, warnings, notes,
        pieces: piecesOf(stack, separator, cells * groups, poles.length > 2 ? 1 : groups, { plate, gap, sheet, board }), steps: stepsOf(stack, separator, cells, poles),
    };
}
/** What is made next to a pole, and on the other side of the sheet: oxygen at plus, hydrogen at minus. */
const madeFrom = (pole: Pole): readonly [Gas, Gas] => (pole === 'plus' ? ['oxygen', 'hydrogen'] : ['hydrogen', 'oxygen']);
/** From left to right; adds to the notes what is taken for granted, and to the warnings what contradicts itself. */
function polesOf(stack: View, notes: string[], warnings: string[]): readonly Pole[] {
    const end = stack.word('plus-end');
    if (inMiddle(stack)) {
        if (!end) notes.push('Whether the plate in the middle is plus or minus is not told: drawn as plus.');
        return end === 'left' || end === 'right' ? ['plus', 'minus', 'plus'] : ['minus', 'plus', 'minus'];
    }
    if (!end) notes.push('Which end is plus is not told: drawn at the left.');
    const half = stack.word('hydrogen-half');
    const made = end === 'right' ? 'left' : 'right';
    if (half && end && half !== made) warnings.push(`The text leads the hydrogen channel into the ${half} half of every cell, but with plus at the ${end} hydrogen is made in the ${made} one: each gas would go into the channel of the other. Drawn by the polarity.`);
    return end === 'right' ? ['minus', 'plus'] : ['plus', 'minus'];
}
const words = (...of: readonly (string | undefined)[]) => of.filter(Boolean).join(', ');
const mm = (v: number) => show(v, 'mm');
const sized = (sizes: readonly number[] | undefined) => (sizes && sizes.length > 1 ? `${sizes.slice(0, 2).map(s => digits(1000 * s, 4)).join(' x ')} mm` : undefined);

function piecesOf(stack: View, separator: View | undefined, cells: number, groups: number, t: Readonly<Record<'plate' | 'gap' | 'sheet' | 'board', number>>): Piece[] {
    const pressed = stack.maybe('gasket.pressed');
    const plates = cells + groups;
    return [
        { what: 'end board', many: 2 * groups, size: words(stack.word('end-board.material'), mm(t.board)) },
        { what: 'plate', many: plates, size: words(stack.word('plate.material') ?? stack.word('plate'), sized(stack.sizes('plate.size')), `${mm(t.plate)} thick`) },
        { what: 'gasket or frame', many: 2 * cells, size: words(stack.word('gasket.material'), pressed === pressed ? `${mm(pressed)} when pressed` : undefined, `gap ${mm(t.gap)}`, `window ${sized(stack.sizes('wetted'))}`) },
        ...(separator ? [{ what: 'separator', many: cells, size: words(separator.word('material'), sized(separator.sizes('size')), `${mm(t.sheet)} thick`) }] : []),
    ];
}
/** In the order in which they are laid, the left end first, lying. */
function stepsOf(stack: View, separator: View | undefined, cells: number, poles: readonly Pole[]): Step[] {
    const key = stack.word('frame-key');
    const keyed = key === 'none' ? '; nothing keeps it from being turned: mark it' : key ? `; its ${key} shows which way` : '; no key is told: mark which way it goes';
    const rods = stack.maybe('tie-rods.count');
    const torque = stack.maybe('tie-rods.torque');
    const [first] = madeFrom(poles[0]);
    const steps: Step[] = [{ what: 'end board', many: 1, up: 'the face that bears the plate' }, { what: `end plate, ${poles[0]}`, many: 1, up: `the face that makes ${first}; its terminal free` }];
    for (let group = 0; group < poles.length - 1; group++) {
        const [near, far] = madeFrom(poles[group]);
        const closes = group === poles.length - 2 ? `end plate, ${poles[group + 1]}` : `middle plate, ${poles[group + 1]}`;
        const last = group === poles.length - 2 ? `below it makes ${far}` : `both faces make ${far}`;
        const frame = (gas: Gas): Step => ({ what: `gasket or frame, ${gas} side`, many: 1, up: `its port into the ${gas} channel${keyed}`, each: group });
        steps.push(frame(near));
        if (separator) steps.push({ what: 'separator', many: 1, up: `${separator.said('wetted-by') ? 'wetted before gas is made; ' : ''}its edge under the gasket all round`, each: group });
        steps.push(frame(far), cells > 1 ? { what: `plate; last of all ${closes}`, many: 1, up: `below it makes ${far}, above it ${near}; of the last one ${last}`, each: group } : { what: closes, many: 1, up: last, each: group });
    }
    return [
        ...steps, { what: 'end board', many: 1, up: 'the face that bears the plate goes down' },
        { what: 'tie rods', many: rods === rods ? rods : 0, up: words(stack.given('tie-rods').facts.get('thread')?.text, torque === torque ? `${show(torque, 'Nm')} each, crosswise and in several rounds` : 'crosswise and in several rounds', stack.word('tie-rods.sleeves')) },
    ];
}

/** The check of the separators in a rig that has run: how hard to press, how far the level may go, when to stop. */
import { GRAVITY } from '../../../physics/constants.js';
import { lyeDensity } from '../../../physics/lye.js';
import { ROOM } from '../../../quantities/surroundings.js';
import { duration, show } from '../../../units/format.js';
import type { Bench } from '../bench.js';
import { blank, heading, list, pairs, quiet, signed, steps, table, words } from '../page.js';
import { definePaper } from '../paper.js';
import { separatorPress } from '../press.js';
import { hydroxide } from './lye.js';

/** Times what sound sheets let through: as the rule separator-lets-more-through. */
const FAILS_AT = 2;
/** m that must stay above a port. Common practice, no source. */
const LEFT_OVER_PORT = 0.02;
/** s between two readings, and how many there are. */
const STEP = 600;
const READINGS = 6;

export interface SeparatorCheck {
    /** Pa across the sheets. */
    readonly least: number;
    readonly most: number;
    readonly head: number;
    /** What the head is. */
    readonly by: string;
    /** m by which the level of the pressed side would be lower when lye has gone through a hole until all is at rest. */
    readonly restsLower: number;
    /** m of lye that stands so high. */
    readonly asLevel: number;
    /** m/s of the pressed side while the sheets are whole; NaN where their permeability is not told. */
    readonly rate: number;
    /** m that the level may fall on the pressed side. */
    readonly mayFall: number;
}
export function separatorCheck(b: Bench): SeparatorCheck | undefined {
    const stack = b.the('stack');
    const separator = b.the('separator');
    const column = b.the('column');
    if (!stack || !separator) return undefined;
    const { least, most, by } = separatorPress(b, stack);
    // No harder than it takes: the least that shows a hole.
    const head = least <= most ? least : NaN;
    const solute = hydroxide(b);
    const strength = b.fact(b.the('lye'), 'strength') && solute ? b.q(b.the('lye'), 'mass-fraction') : NaN;
    const density = solute ? lyeDensity(solute, strength, ROOM) : NaN;
    const wetted = b.sizes(stack, 'wetted');
    const rate = wetted && column ? b.num(separator, 'permeability') * head * wetted[0] * wetted[1] * b.q(stack, 'cells-total') / (Math.PI / 4 * b.num(column, 'bore') ** 2) : NaN;
    const ports = [...b.parts('column').map(c => b.num(c, 'return-port')), ...b.parts('link').map(l => b.num(l, 'depth'))].filter(n => n === n);
    const areas = b.parts('column').map(c => b.num(c, 'bore') ** 2);
    // A fall on the pressed side is a rise on the other: shared by their areas.
    const share = areas.length === 2 ? areas[1] / (areas[0] + areas[1]) : NaN;
    return { least, most, by, head, restsLower: share * head / (density * GRAVITY), asLevel: head / (density * GRAVITY), rate, mayFall: ports.length ? Math.max(0, Math.min(...ports) - LEFT_OVER_PORT) : NaN };
}

export default definePaper({
    name: 'separator', place: 65, title: 'Separator check, rig filled with lye',
    purpose: 'Whether the sheets are still whole, found without opening the stack: one side is pressed, and its level is watched.',
    needs: 'stack, separator with bubble-pressure and permeability, column with bore and return-port, lye',
    cautions: () => [
        'Current off and locked off, rig cold, hydrogen driven out by nitrogen, no flame and no store joined. While current flows, what comes through a hole is the other gas.',
        'Goggles: a level that is pressed too far throws lye out of the other side.',
        'Stop at once at a bubble from the open side, a level that runs, or the stop mark. Then: pressure off, no gas is made, the sheets come out.',
    ],
    make: b => {
        const c = separatorCheck(b);
        if (!c) return [words('The text has no stack or no separator.')];
        const stack = b.the('stack');
        const columns = b.parts('column');
        const fails = FAILS_AT * c.rate;
        const stopAfter = c.mayFall / c.rate;
        const mm = (m: number) => b.number(m, 'mm', 3);
        const linked = b.parts('link');
        return [
            pairs([
                ['head in the work', b.predicted(stack, 'separator-head')],
                ['pressed to', [b.number(c.head, 'kPa', 2), `, ${c.by}; not above `, Number.isFinite(c.most) ? show(c.most, 'kPa', 2) : blank(), c.head === c.head ? '' : '; between the two there is nothing, or one of them is not known: settle that first']],
                ['as a column of this lye', [mm(c.asLevel), '; through a hole the pressed side would come to rest ', mm(c.restsLower), ' lower']],
                ['level moves by itself', c.rate === c.rate ? [show(c.rate, 'mm/h', 2), ' at most while the sheets are whole (lye that seeps through their pores)'] : ['not told (permeability): the first check on sound sheets sets it: ', blank(), ' mm/h']],
                ['stop when faster than', c.rate === c.rate ? `${show(fails, 'mm/h', 2)}, twice that` : ['twice that of the first check: ', blank(), ' mm/h']],
                ['stop mark', [mm(c.mayFall), ' below the level at the start', c.mayFall === c.mayFall ? `: ${show(LEFT_OVER_PORT, 'mm')} of lye stay above the nearest port` : '', stopAfter > 0 ? `; sound sheets take ${duration(stopAfter)} to it` : '']],
            ]),
            heading('Step by step'),
            steps([
                linked.length ? `Shut or clamp ${linked.map(l => l.name).join(', ')} between the columns, as well as it can be: through it the levels even out, and the check shows that and not the sheets. Where it cannot be shut, this check is not for this rig.` : undefined,
                ['Levels now: ', ...columns.flatMap(v => [`${v.name} ${b.told(v, 'level') ? `(told ${b.told(v, 'level')}) ` : ''}`, blank(), ' mm; ']), 'lye ', blank(), ' °C.'],
                'Mark level and stop mark on the sight tube of the pressed side. Open side to the air through a hose that ends under water.',
                'Press the hydrogen side with nitrogen by a water gauge, slowly, to the pressure above. Shut the tap and let it stand for five minutes. Then read.',
                c.restsLower > c.mayFall ? 'At this pressure a level can reach a port: whoever presses watches nothing else.' : undefined,
                'Afterwards let the pressure off slowly, open the link, let the levels come back. The same with the oxygen side if there is doubt.',
            ]),
            heading('Readings'),
            table(['minutes', 'pressure', 'level of the pressed side', 'moved', 'at most', 'bubbles on the open side'], Array.from({ length: READINGS + 1 }, (_, i) => [String(i * STEP / 60), '', '', '', i && c.rate === c.rate ? show(fails * i * STEP, 'mm', 2) : '', '']), 'write'),
            list([
                'A level that does not move and a pressure that falls: a joint leaks, not a sheet. Soap, then again.',
                'Pressure and level both move: note both. Only at an even pressure does the rate tell of the sheets.',
            ]),
            quiet('Write it into the text as a test: covers: separator, with pressure, lasted and level-change.'),
            signed(),
        ];
    },
});

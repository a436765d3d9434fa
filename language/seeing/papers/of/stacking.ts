/** In which order the stack is put together, with a box for every piece. */
import { show } from '../../../units/format.js';
import type { Bench } from '../bench.js';
import { packOf, type Pack } from '../pack.js';
import { blank, box, heading, hold, quiet, signed, steps, table, words } from '../page.js';
import { definePaper } from '../paper.js';
import { together, type Child } from '../../svg.js';

/** Cells of one group that have a line of their own. */
const MOST_CELLS = 60;
const MOST_GROUPS = 8;

/**
 * Which half of a cell comes first from the left: the gas whose channel opens into it; undefined where the text does not tell. In a pack that
 * is fed in its middle the groups mirror each other: oxygen is made at the side of a plate that is plus.
 */
export function firstHalf(b: Bench, pack: Pack, group = 0): 'hydrogen' | 'oxygen' | undefined {
    if (alternates(b, pack)) return undefined;
    if (pack.mirrored) {
        const plus = b.told(pack.stack, 'plus-end');
        return plus !== 'middle' ? undefined : group === 0 ? 'hydrogen' : 'oxygen';
    }
    const half = b.told(pack.stack, 'hydrogen-half');
    return half === 'left' ? 'hydrogen' : half === 'right' ? 'oxygen' : undefined;
}

/** The halves change sides from cell to cell, or the text leaves open where: plates of alternate poles, more than two groups fed in their middles. */
function alternates(b: Bench, pack: Pack): boolean {
    const layout = b.told(pack.stack, 'layout');
    return layout !== undefined && layout !== 'bipolar' || pack.stack.word('feed') === 'middle' && !pack.mirrored;
}
const otherGas = (gas: 'hydrogen' | 'oxygen' | undefined) => gas && (gas === 'hydrogen' ? 'oxygen' : 'hydrogen');

export default definePaper({
    name: 'stacking', place: 40, title: 'Stacking order',
    purpose: 'In which order the pieces lie, which way round, and how they are pressed.',
    needs: 'stack: cells, plus-end, hydrogen-half, gasket, tie-rods, frame-key',
    cautions: () => [
        'One frame turned round leads one gas into the channel of the other. Look at every piece twice, and let a second pair of eyes tick with you.',
        'Edges of sheet cut: gloves. No lye in the stack before it is tight with air or nitrogen.',
    ],
    make: b => {
        const pack = packOf(b);
        if (!pack) return [words('The text has no stack.')];
        const { stack } = pack;
        const first = firstHalf(b, pack);
        const second = otherGas(first);
        const plain = !pack.mirrored && !alternates(b, pack);
        const plus = b.told(stack, 'plus-end');
        const half = (gas: string | undefined): Child => gas ?? blank();
        const split = pack.separators === pack.separators;
        const height = pack.height.least > 0 ? `${show(pack.height.least, 'mm', 4)}${pack.height.most > pack.height.least ? ` to ${show(pack.height.most, 'mm', 4)}` : ''}` : undefined;
        const torque = b.told(stack, 'tie-rods.torque');
        const torqueOf = (share: number) => (b.num(stack, 'tie-rods.torque') > 0 ? show(share * b.num(stack, 'tie-rods.torque'), 'Nm', 2) : blank());
        const lefts = plus === 'left' ? 'plus' : plus === 'right' ? 'minus' : undefined;
        const cells = Math.min(pack.cells, MOST_CELLS);
        const groups = Math.min(pack.groups, MOST_GROUPS);
        // Its first plate is the last one of the group before.
        const shared = (g: number) => pack.mirrored && g > 0;
        const tableOf = (g: number) => [
            pack.groups > 1 && heading(`Group ${g + 1} of ${pack.groups}`),
            table(['cell', 'plate', ...(split ? [`gasket, half for ${firstHalf(b, pack, g) ?? '______'}`, 'separator, whole and clean', `gasket, half for ${otherGas(firstHalf(b, pack, g)) ?? '______'}`] : ['gasket or frame']), 'no short to the plate before'],
                [...Array.from({ length: cells }, (_, i) => [String(i + 1), shared(g) && i === 0 ? 'is in' : box(), ...(split ? [box(), box(), box()] : [box()]), box()]), ['end', box(), ...(split ? ['', '', ''] : ['']), box()]]),
            pack.cells > MOST_CELLS && quiet(`${pack.cells - MOST_CELLS} more cells in the same order.`),
        ];
        return [
            heading('Before'),
            steps([
                'Lay all pieces out and count them against the cut list. Plates without burrs, degreased, rinsed, dry; gaskets without nicks; separators without creases, held against the light.',
                ['Stand the left end board on the bench so that left is below. Seen from the front, the left end plate is ', lefts ?? blank(), ': mark it. ', ...(plain ? ['In every cell the left half belongs to ', half(first), ', the right half to ', half(second), '.'] : [pack.mirrored ? 'The second group mirrors the first: its halves change sides. Each table tells its own.' : 'By what is told of layout and feed the halves change sides from cell to cell or from group to group: write them beside each line.'])],
                plain && lefts && first && first !== (lefts === 'plus' ? 'oxygen' : 'hydrogen') ? 'Stop: oxygen is made at the plate that is plus to its cell. What the text tells of the ends and of the halves do not go together: settle that first.' : undefined,
                b.told(stack, 'frame-key') ? ['Frames are keyed by ', b.told(stack, 'frame-key')!, ': all keys on one side.'] : ['Nothing is told that keeps a frame from being turned: mark one corner of every frame and gasket, all marks on one side: ', blank(), '.'],
                b.told(stack, 'tie-rods.sleeves') === 'sleeved' ? 'Sleeves on the tie rods before the first plate: a rod that touches two plates shorts all cells between them.' : undefined,
            ]),
            heading('From left to right'),
            quiet(`Each line from left to right, then the next one. ${pack.mirrored ? 'The plate in the middle belongs to both groups and is put in once. ' : pack.groups > 1 ? 'Each group between its own end plates. ' : ''}Ends with the last plate and the right end board.`),
            ...(pack.cells === pack.cells ? Array.from({ length: groups }, (_, g) => tableOf(g)).flat() : [words('The text does not tell how many cells there are: ', blank(), '.')]),
            pack.groups > MOST_GROUPS && quiet(`${pack.groups - MOST_GROUPS} more groups in the same way.`),
            hold('every piece is in and the right way round, seen by a second person.'),
            heading('Pressing'),
            steps([
                ['Nuts by hand, crosswise, boards parallel within 0.5 mm all round: ', blank(), ' mm.'],
                [together('Crosswise in three rounds: '), torqueOf(1 / 3), ', ', torqueOf(2 / 3), ', ', torque ?? blank(), b.told(stack, 'tie-rods.count') ? ` on each of ${b.told(stack, 'tie-rods.count')} ${b.told(stack, 'tie-rods.thread') ?? ''} rods.` : ' on each rod.'],
                ['Height between the boards at every rod: expected ', height ?? blank(), '; read ', blank(), ' ', blank(), ' ', blank(), ' ', blank(), '. Where it is larger, look before you pull harder.'],
                ['Clamping force by that torque: ', b.predicted(stack, 'clamp-force'), '; the gaskets are squeezed by ', b.predicted(stack, 'gasket-squeeze'), ', in the middle between rods ', b.predicted(stack, 'gasket-squeeze-between'), '.'],
                'Ohmmeter from plate to plate: no short between any two neighbours, none from any plate to a rod or the metal of the boards.',
                ['Again after a day, and after the first warm run, cold and without pressure: gaskets settle. After a day: ', blank(), ' After the first run: ', blank()],
            ]),
            signed(),
        ];
    },
});

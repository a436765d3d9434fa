/** Forces and squeezes of the stack. */
import { boardBow, boltForce, faceForce, gasketSqueeze } from '../../physics/solids.js';
import { materials } from '../../vocabulary/materials.js';
import { defineQuantity } from '../define.js';
import { threadDoubt } from '../doubts.js';
import type { View } from '../view.js';

/** Plastics give way under load for months: what is left of their stiffness. Common practice, no source. */
const AFTER_MONTHS = 0.5;
const POISSON = { metal: 0.3, plastic: 0.38 };
/** Gaskets that each cell adds to the height: one on each side of its separator. */
export const GASKETS_PER_CELL = 2;

/** m, nominal diameter of the tie rods by their metric thread. */
function rodDiameter(q: View): number {
    return Number(/^M ?(\d+(\.\d+)?)/.exec(q.word('tie-rods.thread') ?? '')?.[1] ?? NaN) / 1000;
}
/** A that one terminal carries: a plate in the middle feeds the groups on both sides of it. */
function terminalCurrent(q: View): number {
    return q.word('feed') === 'middle' ? q.q('current') : q.q('current-per-group');
}

export default [
    defineQuantity({ name: 'gasket-squeeze', of: 'stack', measure: 'fraction', meaning: 'How far the gaskets are pressed together.', formula: '1 - pressed / free thickness', source: 'definition', shownAt: 'gasket', shownAs: 'squeezed', work: q => gasketSqueeze(q.num('gasket.free'), q.num('gasket.pressed')) }),
    defineQuantity({ name: 'face-force', of: 'stack', measure: 'force', meaning: 'Force of the gas on one wetted face at the head of the hydrogen side.', formula: 'pressure x area', source: 'definition', work: q => {
        const w = q.sizes('wetted');
        return w ? faceForce(q.q('hydrogen-head'), w[0] * w[1]) : q.num('wetted');
    } }),
    defineQuantity({ name: 'clamp-force', of: 'stack', measure: 'force', unit: 'kN', meaning: 'Pull of all tie rods together by the torque on their nuts.', formula: 'count x torque / (0.2 x diameter), dry', source: 'common practice, ± 30 %', shownAt: 'tie-rods', shownAs: 'clamps with', work: q => (1 + q.doubt(threadDoubt)) * q.num('tie-rods.count') * boltForce(q.num('tie-rods.torque'), rodDiameter(q)) }),
    defineQuantity({ name: 'end-board-bow', of: 'stack', measure: 'length', meaning: 'How far each end board bows out between its tie rods after months, plastics taken at half of their stiffness.', formula: 'square board on its edges: 0.00406 x load x span^4 / stiffness, the clamping force spread over the plate', source: 'Timoshenko, Theory of Plates and Shells, table 8', shownAt: 'end-board', shownAs: 'bows', work: q => {
        const plate = q.sizes('plate.size');
        const span = q.num('end-board.span');
        const board = materials.get(q.word('end-board.material') ?? '');
        if (!plate || board?.stiffnessPa === undefined) return q.num('plate');
        const force = q.q('clamp-force') / (plate[0] * plate[1]) * span * span;
        return boardBow(force, span, span, q.num('end-board.thickness'), board.stiffnessPa * (board.conducts ? 1 : AFTER_MONTHS), board.conducts ? POISSON.metal : POISSON.plastic);
    } }),
    defineQuantity({ name: 'gasket-squeeze-between', of: 'stack', measure: 'fraction', meaning: 'How far the gaskets are still pressed in the middle between two tie rods, where both boards bow away from them.', formula: 'gasket-squeeze - 2 bow / (2 gaskets a cell x free thickness)', source: 'geometry', work: q => q.q('gasket-squeeze') - 2 * q.q('end-board-bow') / (GASKETS_PER_CELL * q.q('cells-total') * q.num('gasket.free')) }),
    defineQuantity({ name: 'terminal-density', of: 'stack', measure: 'current-density', unit: 'A/mm2', meaning: 'Current over the contact area of one terminal.', formula: 'current of one terminal / contact area', source: 'definition', work: q => terminalCurrent(q) / q.num('stud.contact') }),
    defineQuantity({ name: 'end-plate-drop', of: 'stack', measure: 'voltage', unit: 'mV', meaning: 'Volts lost along one end plate, from its terminal to where the current has left it for the lye.', formula: '½ x current x resistivity x path / (width x thickness), current leaving evenly along the path', source: 'Ohm', work: q => {
        const plate = q.sizes('plate.size');
        const metal = materials.get(q.word('plate.material') ?? '');
        if (!plate || plate.length < 3 || metal?.resistivityOhmM === undefined) return q.num('plate');
        return 0.5 * terminalCurrent(q) * metal.resistivityOhmM * q.num('stud.path') / (Math.min(plate[0], plate[1]) * plate[2]);
    } }),
];

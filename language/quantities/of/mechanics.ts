/** Forces and squeezes of the stack. */
import { faceForce, gasketSqueeze } from '../../physics/solids.js';
import { defineQuantity } from '../define.js';

export default [
    defineQuantity({ name: 'gasket-squeeze', of: 'stack', measure: 'fraction', meaning: 'How far the gaskets are pressed together.', formula: '1 - pressed / free thickness', source: 'definition', shownAt: 'gasket', shownAs: 'squeezed', work: q => gasketSqueeze(q.num('gasket.free'), q.num('gasket.pressed')) }),
    defineQuantity({ name: 'face-force', of: 'stack', measure: 'force', meaning: 'Force of the gas on one wetted face at the head of the hydrogen side.', formula: 'pressure x area', source: 'definition', work: q => {
        const w = q.sizes('wetted');
        return w ? faceForce(q.q('hydrogen-head'), w[0] * w[1]) : q.num('wetted');
    } }),
];

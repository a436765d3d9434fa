/** What a pore can hold at the very best. */
import { bubblePoint } from '../../physics/separator.js';
import { waterSurfaceTension } from '../../physics/water.js';
import { defineQuantity } from '../define.js';

export default [
    defineQuantity({ name: 'pore-limit', of: 'separator', measure: 'pressure', unit: 'kPa', meaning: 'Most that its largest pore can hold, fully wetted. A tested bubble pressure above this contradicts the pore.', formula: '4 x surface tension / largest pore', source: 'Young-Laplace; IAPWS surface tension', work: q => bubblePoint(waterSurfaceTension(298.15), 0, q.num('largest-pore')) }),
];

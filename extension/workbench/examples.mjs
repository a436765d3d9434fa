// What `npm start` shows first.
import path from 'node:path';
import { root } from '../scripts/project.mjs';

/** The folder that opens when no other is named. */
export const examplesFolder = path.join(root, 'examples');
/** The rig whose numbers are printed and that opens by itself. */
export const mainExample = 'workshop-torch.rig';
/** The date on which the examples are judged, so that no test or permission in them runs out. */
export const examplesDate = '2026-06-15';

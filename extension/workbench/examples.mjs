// What `npm start` shows first.
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from '../scripts/project.mjs';

/** The folder that opens when no other is named. */
export const examplesFolder = path.join(root, 'examples');
/** The rig whose numbers are printed and that opens by itself. */
export const mainExample = 'potters-burner.rig';
/** The date on which the examples are judged, so that no test or permission in them runs out. */
export const examplesDate = '2026-06-15';

/** The line of the main example to show first: where its cells are, since that is where most of the numbers stand. */
export function lineToShow() {
    const file = path.join(examplesFolder, mainExample);
    if (!existsSync(file)) return 1;
    return Math.max(1, readFileSync(file, 'utf8').split('\n').findIndex(line => /^stack\b/.test(line)) + 1);
}

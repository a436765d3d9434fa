/** Runs every comparison with outside numbers, and holds the committed table to what they give. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bypass } from './bypass.js';
import { flow } from './flow.js';
import { heat } from './heat.js';
import { hydrogen } from './hydrogen.js';
import { lye } from './lye.js';
import { measuredStacks } from './measured-stacks.js';
import { check, checkUnmet, table } from './outside.js';
import { polarisation } from './polarisation.js';
import { purity } from './purity.js';
import { siteAndSafety } from './site-and-safety.js';
import { supply } from './supply.js';
import { waterSplitting } from './water-splitting.js';

const chapters = [waterSplitting, lye, polarisation, measuredStacks, bypass, purity, hydrogen, flow, heat, supply, siteAndSafety];
const file = new URL('ACCURACY.md', import.meta.url);

for (const chapter of chapters) {
    describe(chapter.title, () => {
        for (const row of chapter.rows) it([row.quantity, row.under, `(${row.source})`].join(' '), () => check(row));
        for (const unmet of chapter.unmet) it(`not met: ${unmet.what}`, () => checkUnmet(unmet));
    });
}
describe('the table', () => {
    it('stands in the repository as the checks give it', () => {
        const made = table(chapters);
        const all = () => {
            for (const c of chapters) {
                c.rows.forEach(check);
                c.unmet.forEach(checkUnmet);
            }
        };
        if (process.env.RIGWRIGHT_RENEW) {
            all();
            writeFileSync(file, made);
        }
        const kept = existsSync(file) ? readFileSync(file, 'utf8').replaceAll('\r\n', '\n').split('\n') : [];
        const changed = made.split('\n').filter((l, i) => l !== kept[i] && !kept.includes(l)).map(l => l.slice(0, 200));
        expect(changed, 'test/accuracy/ACCURACY.md is not what the checks give. If these numbers are right, renew it with `npm run accuracy` and commit it.').toEqual([]);
        expect(kept.length, 'test/accuracy/ACCURACY.md holds lines that no check gives. Renew it with `npm run accuracy` and commit it.').toBe(made.split('\n').length);
    });
    it('says of every row where it comes from and why so much is allowed', () => {
        for (const row of chapters.flatMap(c => c.rows)) {
            expect(row.why.length, row.quantity).toBeGreaterThan(3);
            expect(row.source.length, row.quantity).toBeGreaterThan(3);
            expect(row.known.length, row.quantity).toBeGreaterThan(0);
        }
    });
});

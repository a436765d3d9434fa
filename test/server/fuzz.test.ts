/** A short run with a fixed seed; the long one is `node test/server/fuzz.mjs`, and a part of `npm run endurance`. */
import { expect, it } from 'vitest';
import { fuzz } from './fuzz.mjs';

it('random typing ends with the findings of a fresh server, every request answered', { timeout: 60_000 }, async () => {
    const { difference, edits, requests } = await fuzz({ rounds: 3, seed: 20260615, restsPerRound: 6 });
    expect(difference).toBeUndefined();
    expect(edits).toBeGreaterThan(50);
    expect(requests).toBeGreaterThan(10);
});

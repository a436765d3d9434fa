/** A stack on a supply that nothing limits: cool and warm steady states, and the edge between them. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';

const rig = (hottest: number, supply: string) => `rig "Edge", drawn
site { place: shed   hottest: ${hottest} °C   coldest: -15 °C }
supply { sort: switch-mode   ${supply} }
lye { solute: KOH   strength: 28 wt% }
stack { cells: 24   wetted: 200 x 200 mm   gap: 0.5 mm   heat-loss: 3 W/K   port: 1 of 4 mm, 120 mm long   max-temperature: 90 °C }
`;
const numbers = (text: string) => {
    const { workings, findings } = analyseText(text, { today: '2026-06-15' });
    const of = (name: string) => workings.quantity(workings.rig.parts.get('stack')!, name)!.value;
    return { warm: of('steady-temperature') - 273.15, margin: of('thermal-margin'), room: of('runaway-room') - 273.15, current: of('runaway-current'), now: of('current-hot'), told: findings.filter(f => f.rule === 'stack-overheats').map(f => f.message) };
};

describe('warmth that feeds itself', () => {
    const stiff = 'voltage: 41.76 V';
    const below = numbers(rig(-4, stiff));
    const above = numbers(rig(2, stiff));
    it('a few kelvin of room lead from a cool to a hot stack', () => {
        expect(below.room).toBeGreaterThan(-4);
        expect(below.room).toBeLessThan(2);
        expect(above.warm - below.warm).toBeGreaterThan(20);
    });
    it('the margin is thin before the edge, and the rule tells where the edge is', () => {
        expect(below.margin).toBeGreaterThan(0);
        expect(below.margin).toBeLessThan(0.35);
        expect(numbers(rig(-2, stiff)).margin).toBeLessThan(below.margin);
        expect(numbers(rig(-2, stiff)).told).toEqual([expect.stringContaining('near the edge')]);
        expect(above.told).toEqual([expect.stringContaining('warmth feeds itself')]);
    });
    it('a limit below the tipping current keeps it cool', () => {
        const limited = numbers(rig(2, `${stiff}   current-limit: ${(0.9 * above.current).toFixed(1)} A`));
        expect(limited.margin).toBe(1);
        expect(limited.warm).toBeLessThan(above.warm - 20);
        expect(limited.room).toBeNaN();
        expect(limited.told).toEqual([]);
    });
});

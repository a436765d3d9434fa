/** Groups side by side: one voltage, and the current that each takes of it. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { near, nearly } from '../physics/near.js';

const read = (stack: string, current: number, temperature = 50) => {
    const { workings } = analyseText(`rig "Groups", drawn
supply { sort: bench   voltage: 40 V   current-limit: ${current} A }
lye { solute: KOH   strength: 28 wt% }
stack { wetted: 90 x 110 mm   port: 1 of 4 mm, 120 mm long   temperature: ${temperature} °C   ${stack} }
`, { today: '2026-06-15' });
    return (name: string) => workings.quantity(workings.rig.parts.get('stack')!, name)!.value;
};

describe('groups in parallel', () => {
    it('meet at one voltage: each alone at its own current shows it (Kirchhoff)', () => {
        const both = read('groups: 2   cells: 8 per group   better-group: 0.4 V lower', 20);
        const better = both('better-group-current');
        expect(better).toBeGreaterThan(10.5);
        const alone = (amperes: number) => read('cells: 8', amperes)('voltage');
        near(alone(better) - 0.4, alone(20 - better), 0.03);
    });
    it('share alike where no difference is, and more unlike the larger it is', () => {
        nearly(read('groups: 2   cells: 8 per group   better-group: 0.0001 V lower', 20)('group-share'), 1, 0.01);
        const shares = [0.2, 0.4, 0.8].map(v => read(`groups: 2   cells: 8 per group   better-group: ${v} V lower`, 20)('group-share'));
        expect(shares[0]).toBeLessThan(shares[1]);
        expect(shares[1]).toBeLessThan(shares[2]);
        // Never more than all of it.
        expect(read('groups: 3   cells: 8 per group   better-group: 5 cells', 20)('group-share')).toBeLessThan(3);
    });
    it('with a narrower gap and by the spread of making alone', () => {
        expect(read('groups: 2   cells: 8 per group   gap: 3 mm   better-group: 2 mm gap', 20)('group-share')).toBeGreaterThan(1.02);
        const usual = read('groups: 2   cells: 8 per group', 20)('group-share');
        expect(usual).toBeGreaterThan(1.01);
        expect(usual).toBeLessThan(1.25);
        expect(read('cells: 8', 20)('group-share')).toBeNaN();
    });
});

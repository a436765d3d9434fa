/** What crosses, as a rig tells it: lye that goes round and meets, heads that press, and the lowest current that stays clean. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { nearly } from '../physics/near.js';

const read = (link: string, current = 12, more = '', separator = 'material: composite') => {
    const { workings } = analyseText(`rig "Purity", drawn
site { place: shed }
supply { sort: bench   voltage: 30 V   current-limit: ${current} A }
lye { solute: KOH   strength: 30 wt% }
separator { ${separator} }
stack { cells: 12   wetted: 90 x 110 mm   port: 1 of 4 mm, 120 mm long   temperature: 60 °C   top-height: 300 mm }
column h2-column { base-height: 400 mm }
column o2-column like h2-column
link { bore: 6 mm   depth: 200 mm   ${link} }
${more}
`, { today: '2026-06-15' });
    return (name: string) => workings.quantity(workings.rig.parts.get('stack')!, name)!;
};
const paths = `bubbler deep { immersion: 300 mm }
path hydrogen: stack -> h2-column -> deep -> outdoors
path oxygen: stack -> o2-column -> outdoors`;

describe('lye of both sides that meets', () => {
    const apart = read('')('hydrogen-in-oxygen').value;
    const pumped = (litres: number) => read('shared: returns', 12, `circulation-pump { flow: ${litres} L/min }`)('hydrogen-in-oxygen').value;
    it('carries most of what crosses: Trinke, Haug et al. 2018 found nine tenths in a joined circuit', () => {
        const joined = read('shared: returns')('hydrogen-in-oxygen').value;
        expect(1 - apart / joined).toBeGreaterThan(0.5);
        expect(1 - apart / joined).toBeLessThan(0.97);
    });
    it('a straight line in the flow, with a positive start (Zhou et al. 2024)', () => {
        // Foreign over own gas, which is straight in the flow; the fraction itself bends by a few hundredths.
        const ratio = (litres: number) => pumped(litres) / (1 - pumped(litres));
        const [one, two, three] = [1, 2, 3].map(ratio);
        nearly(three - two, two - one, 1e-3);
        expect(2 * one - two).toBeGreaterThan(0);
    });
});

describe('a difference of heads', () => {
    it('presses lye with its hydrogen through a sheet of known permeability, towards the oxygen', () => {
        const wet = (permeability: string) => read('', 12, paths, `material: composite   ${permeability}`);
        const tight = wet('');
        const open = wet('permeability: 20 L/(m2·h·kPa)');
        expect(open('hydrogen-in-oxygen').value).toBeGreaterThan(1.05 * tight('hydrogen-in-oxygen').value);
        expect(open('oxygen-in-hydrogen').value).toBe(tight('oxygen-in-hydrogen').value);
    });
});

describe('the lowest clean current', () => {
    it('is where hydrogen in oxygen crosses 2 %', () => {
        const clean = read('')('lowest-clean-current').value;
        expect(clean).toBeGreaterThan(0.12);
        expect(clean).toBeLessThan(12);
        const low = read('', 12, `routine { lowest-current: ${clean} A }`)('hydrogen-in-oxygen-low').value;
        nearly(low, 0.02, 0.05);
    });
    it('does not exist where too much lye meets, and says why', () => {
        const none = read('shared: returns', 1)('lowest-clean-current');
        expect(none.value).toBeNaN();
        expect(none.remarks.join()).toContain('the lye of both sides meets');
    });
});

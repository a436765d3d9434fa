/** What feeds a stack, read from the text: windings that a maker winds, a battery by its charge, panels by their light. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { near, nearly } from '../physics/near.js';

const read = (text: string) => {
    const { workings } = analyseText(`rig "Fed", drawn\nlye { solute: KOH   strength: 28 wt% }\n${text}`, { today: '2026-06-15' });
    return (part: string, name: string) => workings.quantity(workings.rig.parts.get(part)!, name)!.value;
};
const stack = (cells: number) => `stack { cells: ${cells}   wetted: 80 x 100 mm   port: 1 of 4 mm, 120 mm long   temperature: 45 °C }`;

describe('a transformer that is wound by hand', () => {
    const of = read(`transformer { sort: laminated   mains: 230 V 50 Hz   power: 400 VA   secondary: 24 V   secondary-unloaded: 25 V   core-area: 20 cm2   flux: 1.2 T   wire: 6 mm2   mean-turn: 250 mm }
rectifier { circuit: bridge }
capacitor { capacitance: 22 mF }
${stack(12)}`);
    it('4.4429 x 50 Hz x 1.2 T x 20 cm² = 0.5331 V a turn (induction)', () => {
        near(of('transformer', 'volts-per-turn'), 0.53315, 1e-4);
        near(of('transformer', 'primary-turns'), 431.4, 0.1);
        near(of('transformer', 'secondary-turns'), 46.9, 0.1);
    });
    it('46.9 turns of 250 mm in 6 mm², copper at 75 °C (0.017241 ohm mm²/m, 0.00393/K, IEC 60028): 41 mohm', () => {
        nearly(of('transformer', 'secondary-resistance'), 46.89 * 0.25 * 0.0172414 * (1 + 0.00393 * 55) / 6, 2e-3);
    });
    it('swings less on its capacitor than the straight-line rule tells, and not by next to nothing', () => {
        const rule = of('stack', 'current') / (2 * 50 * 22e-3);
        expect(of('capacitor', 'ripple')).toBeLessThan(rule);
        expect(of('capacitor', 'ripple')).toBeGreaterThan(0.5 * rule);
    });
});

describe('a battery', () => {
    const with_ = (more: string, cells = 5) => read(`battery { sort: lead-acid   capacity: 100 Ah   voltage: 12 V   internal-resistance: 8 mohm   ${more} }\n${stack(cells)}`);
    it('rests at 12.24 V half full (battery table), and at its plate where no charge is told', () => {
        near(with_('charge: 50 %')('battery', 'rest-voltage'), 12.24, 1e-9);
        expect(with_('')('battery', 'rest-voltage')).toBe(12);
    });
    it('sends more current the fuller it is, and lasts by what it holds', () => {
        const full = with_('charge: 100 %');
        const half = with_('charge: 50 %');
        expect(full('stack', 'current')).toBeGreaterThan(half('stack', 'current'));
        const amperes = half('battery', 'working-current');
        nearly(half('battery', 'time-to-empty') / 3600, 50 / amperes * Math.min(1, (5 / amperes) ** 0.2), 1e-9);
    });
});

describe('panels', () => {
    const roof = (site: string, facing = 'facing: south, 35° up') => read(`site { place: outdoors   temperature: 20 °C   ${site} }
panels { open-circuit: 37 V   short-circuit: 11 A   best: 31 V at 10.4 A   ${facing} }\n${stack(13)}`);
    it('take full sun where nothing is told, the brightest hour where the site tells the sun', () => {
        expect(roof('')('panels', 'irradiance')).toBe(1000);
        const told = roof('sun: 0 W/m2 at 06:00, 600 W/m2 at 12:00, 0 W/m2 at 18:00');
        expect(told('panels', 'irradiance')).toBe(600);
        near(told('panels', 'cell-temperature') - 273.15, 35, 1e-9);
        // Current follows the light.
        expect(told('stack', 'current')).toBeLessThan(0.7 * roof('')('stack', 'current'));
    });
    it('see less when they look away, by latitude', () => {
        const south = roof('latitude: 48°')('panels', 'irradiance');
        expect(south).toBeGreaterThan(850);
        expect(south).toBeLessThan(1050);
        expect(roof('latitude: 48°', 'facing: north, 35° up')('panels', 'irradiance')).toBeLessThan(0.4 * south);
        // Looking east they see the morning: less than south at noon, far more than north.
        const east = roof('latitude: 48°', 'facing: east, 35° up')('panels', 'irradiance');
        expect(east).toBeLessThan(south);
        expect(east).toBeGreaterThan(0.6 * south);
    });
});

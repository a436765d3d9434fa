/** How much solid and water are weighed for the lye, and how they are put together without a burn. */
import { lyeDensity, type Solute } from '../../../physics/lye.js';
import { ROOM } from '../../../quantities/surroundings.js';
import { digits, show } from '../../../units/format.js';
import { solutes } from '../../../vocabulary/solutes.js';
import type { Bench } from '../bench.js';
import { blank, heading, pairs, quiet, signed, steps, table, words } from '../page.js';
import { definePaper } from '../paper.js';

/** K that one portion may warm the lye by. Common practice, no source. */
const PORTION_RISE = 8;
/** °C above which nothing more is put in. Common practice, no source. */
const WAIT_ABOVE = 45;

export interface Weighed {
    /** kg */
    readonly lye: number;
    readonly solid: number;
    readonly water: number;
}
/**
 * @param volume m³ of lye at 20 °C
 * @param strength mass of hydroxide in that of the lye
 * @param assay mass of hydroxide in that of the solid
 */
export function weighed(solute: Solute, volume: number, strength: number, assay: number): Weighed {
    const lye = volume * lyeDensity(solute, strength, ROOM);
    const solid = lye * strength / assay;
    return { lye, solid, water: lye - solid };
}
export const hydroxide = (b: Bench): Solute | undefined => {
    const w = b.told(b.the('lye'), 'solute');
    return w === 'KOH' || w === 'NaOH' ? w : undefined;
};
/** Volume to mix, m³: as told, or what cells and columns take where all of that is told. */
function volumeOf(b: Bench): { readonly si: number; readonly by: string } {
    const told = b.num(b.the('lye'), 'fill');
    if (told === told) return { si: told, by: 'as told' };
    const stack = b.the('stack');
    const needed = b.rests(stack, 'lye-needed') ? NaN : b.q(stack, 'lye-needed');
    return { si: needed, by: 'what cells and columns take' };
}
const kilograms = (m: number) => `${m.toFixed(m < 0.995 ? 3 : 2)} kg`;

export default definePaper({
    name: 'lye', place: 30, title: 'Lye to weigh and mix',
    purpose: 'What to weigh, in which order it goes together, and how hot it gets.',
    needs: 'lye: solute, strength, fill; assay, as on the label of the solid',
    cautions: b => [
        'Lye blinds within a minute and eats skin without hurting at first. Tight goggles and face shield, gloves to the elbow, long sleeves, running water within reach before a bag is opened.',
        'The solid goes into the water, a little at a time. Never water onto the solid: it boils at once and spits.',
        'No aluminium, zinc, tin or glass that can crack: lye makes hydrogen with those metals. Nothing in drink bottles. Nobody mixes alone.',
        'In the eye: rinse with running water at once and go on for a quarter of an hour at least, call for help meanwhile. On skin: wet clothes off, rinse.',
        b.told(b.the('lye'), 'solute') === 'NaCl' ? 'Common salt makes poisonous chlorine at the plus plates: it has no place in this rig.' : undefined,
    ],
    make: b => {
        const lye = b.the('lye');
        const solute = hydroxide(b);
        // mol/L and mol/kg are brought to a share of the mass by the quantity; what is not told is not assumed.
        const strength = b.fact(lye, 'strength') && solute ? b.q(lye, 'mass-fraction') : NaN;
        const volume = volumeOf(b);
        const told = b.num(lye, 'assay');
        const usual = solutes.get(b.told(lye, 'solute') ?? '')?.assay;
        const shares = told === told ? [told] : usual ? [usual[0], (usual[0] + usual[1]) / 2, usual[1]] : [];
        const rise = strength === strength ? b.q(lye, 'mixing-rise') : NaN;
        const known = solute && strength > 0 && volume.si > 0;
        const portions = Math.max(4, Math.ceil(rise / PORTION_RISE));
        const middle = known && shares.length ? weighed(solute, volume.si, strength, shares[Math.floor(shares.length / 2)]) : undefined;
        const weighing = known ? shares.map(a => ({ a, w: weighed(solute, volume.si, strength, a) })) : [];
        return [
            pairs([
                ['solute', b.ask(lye, 'solute')], ['strength', b.ask(lye, 'strength')], ['volume at 20 °C', [b.number(volume.si, 'L'), volume.si === volume.si ? ` (${volume.by})` : '']],
                ['water', b.ask(lye, 'water')], ['assay, on its label', told === told ? show(told, '%') : blank()],
            ]),
            heading('To weigh'),
            told === told ? undefined : words('The text does not tell the assay: the share of hydroxide in the solid, which is partly water. Read it on the label, take the line for it, and write it into the text.'),
            table(['assay', 'solid', 'water', 'lye', 'solid weighed', 'water weighed'], [
                ...weighing.map(({ a, w }) => [show(a, '%'), kilograms(w.solid), kilograms(w.water), kilograms(w.lye), blank(), blank()]),
                ...(told === told ? [] : [[blank(), blank(), blank(), middle ? kilograms(middle.lye) : blank(), blank(), blank()]]),
            ]),
            quiet('Solid = lye x strength / assay; water = lye less solid. ', known ? `Density at 20 °C ${show(lyeDensity(solute, strength, ROOM), 'kg/L', 4)}, good to 0.5 %: a hydrometer in the cooled lye must show it.` : solute ? '' : 'Worked out for KOH and NaOH only.'),
            b.told(lye, 'solute-mass') || b.told(lye, 'water-mass') ? words(`The text tells ${b.told(lye, 'solute-mass') ?? 'no mass'} of solid and ${b.told(lye, 'water-mass') ?? 'no mass'} of water: where that differs from the table, find out why before you weigh.`) : undefined,
            heading('How hot it gets'),
            words('Put in at once it would warm by ', rise > 0 ? `${digits(rise, 2)} K, from 20 °C to about ${show(ROOM + rise, '°C', 2)}` : blank(), rise > 0 ? `; this lye boils at ${show(b.q(lye, 'boiling-point'), '°C')}, and spits before. ` : '. ',
                rise > 0 ? `So it goes in by ${portions} portions or more${middle ? `, ${digits(middle.solid / portions * 1000, 2)} g or less each` : ''}, and none while the lye is above ${WAIT_ABOVE} °C.` : `Small portions, and none while the lye is above ${WAIT_ABOVE} °C.`),
            heading('Step by step'),
            steps([
                'Read these steps to the end. Goggles, shield and gloves on; eye rinse tried; the second person is there; animals and children are not.',
                ['Vessel of PP or PE, twice as large as the lye, in a basin of cold water, under a roof but in moving air. Its lid and label ready: ', blank('long'), '.'],
                'Weigh the cold water into the vessel; the solid in a dry covered tub, for it draws water from the air: close the bag at once.',
                'Put in one portion. Stir until it is clear, with a plastic rod; face not above the vessel.',
                [`Thermometer below ${WAIT_ABOVE} °C before the next portion. Highest reading: `, blank(), ' °C.'],
                ['All of it in, tools rinsed with much water: let it cool to 20 °C, covered. Measure its density: ', blank(), ' kg/L', known ? `, expected ${show(lyeDensity(solute, strength, ROOM), 'kg/L', 4)}` : '', '.'],
                'Label: what it is, its strength, the day, "burns eyes and skin".',
                'Fill the rig through its filling point, cold, the stack without current, the tray under it.',
            ]),
            signed(),
        ];
    },
});

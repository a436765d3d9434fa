/** The lye at working temperature. */
import { measures } from '../../units/dimension.js';
import {
    bestConductingStrength, lyeBoilingPoint, lyeConductivity, lyeDensity, lyeFreezingPoint, lyeHeatCapacity, lyeVapourPressure, lyeViscosity,
    mixingRise, molality, strengthFromMasses, strengthFromMolality, strengthFromMolarity, type Solute,
} from '../../physics/lye.js';
import { solutes } from '../../vocabulary/solutes.js';
import { defineQuantity } from '../define.js';
import { assayDoubt, conductivityDoubt } from '../doubts.js';
import { airPressureOf, ROOM } from '../surroundings.js';
import type { View } from '../view.js';

function solute(q: View): Solute | undefined {
    const w = q.word('solute');
    return w === 'KOH' || w === 'NaOH' ? w : undefined;
}
/** K, 50 °C: a stack that has run for an hour. Stands in where the operating point is not known. Common practice, no source. */
const WORKING = 323.15;
/** Lye in ports, channels and hoses, over that between the plates. Common practice, no source. */
const PORTS_AND_HOSES = 1.1;
/** m, a sheet whose thickness is not stated. */
const USUAL_SHEET = 0.5e-3;

/** K, working temperature; 50 °C where the stack is not worked out yet (conductivity and vapour hang on it). */
function warm(q: View): number {
    const t = q.the('stack')?.maybeQ('temperature') ?? NaN;
    return t === t ? t : WORKING;
}
const law = (f: (s: Solute, w: number, t: number) => number) => (q: View) => {
    const s = solute(q);
    return s ? f(s, q.q('mass-fraction'), warm(q)) : NaN;
};

export default [
    defineQuantity({ name: 'mass-fraction', of: 'lye', measure: 'mass-fraction', unit: 'wt%', meaning: 'Hydroxide as a share of the mass of the lye.', formula: 'as stated; from mol/L or mol/kg at 20 °C; from the masses weighed', source: 'definition; density as lye.density for mol/L', work: q => {
        const s = solute(q);
        const n = q.num('strength');
        const amount = q.given('strength').facts.get('')?.amount;
        if (amount && s && amount.dimension === measures.concentration.dimension) return strengthFromMolarity(s, n, ROOM);
        if (amount && s && amount.dimension === measures.molality.dimension) return strengthFromMolality(s, n);
        return n;
    } }),
    defineQuantity({ name: 'strength-from-masses', of: 'lye', measure: 'mass-fraction', unit: 'wt%', meaning: 'Strength that the weighed masses make, with the water in the pellets counted.', formula: 'assay x solute / (solute + water)', source: 'definition; assay as stated, else what is usual for that solid', work: q => {
        const [mass, water] = [q.num('solute-mass'), q.num('water-mass')];
        const usual = q.says('assay') === 'assumed' ? solutes.get(q.word('solute') ?? '')?.assay : undefined;
        if (!usual) return strengthFromMasses(mass, water, q.maybe('assay', 1));
        const [least, most] = usual;
        return strengthFromMasses(mass, water, (least + most) / 2 + q.doubt(assayDoubt, (most - least) / 2));
    } }),
    defineQuantity({ name: 'molality', of: 'lye', measure: 'molality', meaning: 'Moles of hydroxide per kilogram of water.', formula: 'w / (M (1 - w))', source: 'definition', work: q => {
        const s = solute(q);
        return s ? molality(s, q.q('mass-fraction')) : NaN;
    } }),
    defineQuantity({ name: 'conductivity', of: 'lye', measure: 'conductivity', unit: 'S/cm', meaning: 'How well the lye conducts at working temperature.', formula: 'KOH: correlation in molarity and temperature; NaOH: table at 18 °C, carried along the viscosity', source: 'KOH: Gilliam et al., Int. J. Hydrogen Energy 32 (2007) 359, second-hand; NaOH: Kohlrausch & Holborn 1916, from memory', range: '0..100 °C, KOH to 48 wt%, NaOH to 42 wt%', shownAt: 'strength', shownAs: '', work: q => (1 + q.doubt(conductivityDoubt)) * law(lyeConductivity)(q) }),
    defineQuantity({ name: 'conductivity-share', of: 'lye', measure: 'fraction', meaning: 'Conductivity over the best that this solute can have at this temperature.', formula: 'conductivity / conductivity at the best strength', source: 'as conductivity', work: law((s, w, t) => lyeConductivity(s, w, t) / lyeConductivity(s, bestConductingStrength(s, t), t)) }),
    defineQuantity({ name: 'best-strength', of: 'lye', measure: 'mass-fraction', unit: 'wt%', meaning: 'Strength that conducts best at working temperature.', formula: 'crest of the conductivity', source: 'as conductivity', work: law((s, _w, t) => bestConductingStrength(s, t)) }),
    defineQuantity({ name: 'density', of: 'lye', measure: 'density', meaning: 'Density at working temperature.', formula: 'apparent density of the solute mixed with water; for KOH the middle of two correlations', source: 'Laliberté 2009, for KOH also Le Bideau et al. 2019, second-hand; 0.5 %', range: '0..100 °C, to 50 wt%', work: law(lyeDensity) }),
    defineQuantity({ name: 'vapour-pressure', of: 'lye', measure: 'pressure', unit: 'mbar', absolute: true, meaning: 'Pressure of water vapour over the warm lye; less than over water, since the lye binds it. Above vacuum.', formula: 'correlation in molality and the vapour pressure of water', source: 'Balej, Int. J. Hydrogen Energy 10 (1985) 233, second-hand; 3 %', range: 'KOH to 18 mol/kg, NaOH to 25 mol/kg', work: law(lyeVapourPressure) }),
    defineQuantity({ name: 'viscosity', of: 'lye', measure: 'viscosity', meaning: 'Viscosity at working temperature.', formula: 'solute and water mixed by the logarithm', source: 'Laliberté 2009, second-hand; 8 %, above 40 °C (KOH) or 70 °C (NaOH) 15 %', work: law(lyeViscosity) }),
    defineQuantity({ name: 'heat-capacity', of: 'lye', measure: 'number', meaning: 'Heat that warms a kilogram by one kelvin, J/(kg K).', formula: 'apparent heat capacity of the solute mixed with water', source: 'Laliberté 2009, second-hand; 2 %', work: law(lyeHeatCapacity) }),
    defineQuantity({ name: 'freezing-point', of: 'lye', measure: 'temperature', meaning: 'Where the lye begins to freeze.', formula: 'table', source: 'CRC handbook up to 7 wt% KOH and 14 wt% NaOH; beyond, producers\' handbooks, from memory, ± 3 K', shownAt: 'strength', shownAs: 'freezes', work: q => {
        const s = solute(q);
        return s ? lyeFreezingPoint(s, q.q('mass-fraction')) : NaN;
    } }),
    defineQuantity({ name: 'boiling-point', of: 'lye', measure: 'temperature', meaning: 'Where the lye boils at the air pressure of the site.', formula: 'vapour pressure = air pressure', source: 'Balej 1985', work: q => {
        const s = solute(q);
        return s ? lyeBoilingPoint(s, q.q('mass-fraction'), airPressureOf(q)) : NaN;
    } }),
    defineQuantity({ name: 'mixing-rise', of: 'lye', measure: 'temperature-difference', meaning: 'How far the mixture warms if all the solid goes into cold water at once.', formula: 'heat of solution / (mass x heat capacity)', source: 'heats of solution, NBS tables, from memory, ± 10 %', work: q => {
        const s = solute(q);
        const made = q.maybeQ('strength-from-masses');
        return s ? mixingRise(s, made === made ? made : q.q('mass-fraction'), ROOM) : NaN;
    } }),
    defineQuantity({ name: 'lye-needed', of: 'stack', measure: 'volume', meaning: 'Lye that fills cells, ports and columns to the working level.', formula: '1.1 x cells x wetted area x (2 gaps + separator) + columns x level', source: 'geometry; a tenth for ports and channels: common practice, no source', work: q => {
        const w = q.sizes('wetted');
        if (!w) return q.num('wetted');
        const separator = q.the('separator')?.maybe('thickness', USUAL_SHEET) ?? 0;
        const cells = q.q('cells-total') * w[0] * w[1] * (2 * q.num('gap') + separator) * PORTS_AND_HOSES;
        return cells + q.all('column').reduce((sum, c) => sum + Math.PI / 4 * c.num('bore') ** 2 * c.num('level'), 0);
    } }),
];

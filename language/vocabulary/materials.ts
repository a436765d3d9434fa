/**
 * What a part may be made of, and what that bears: the table behind material words, hover and the rules on materials.
 * Every limit is a hint for a warning: the maker's own table of the very grade decides. Where no source is named the
 * figure is from memory.
 */

/** How well a material suits one side. `dry-only`: not where lye or its mist reaches. */
export type Fitness = 'good' | 'fair' | 'dry-only' | 'poor' | 'no';

/** Where a material is usually met; completion offers it there. */
export type MaterialUse = 'plate' | 'vessel' | 'tube' | 'gasket' | 'board' | 'cloth' | 'bag' | 'lead';

export interface Material {
    readonly name: string;
    /** What it is called in full, and what to mind: one or two sentences for hover. */
    readonly doc: string;
    readonly uses: readonly MaterialUse[];
    /** Highest lye temperature [K] that it bears for long, 'never' where lye destroys it at any temperature, undefined if not known. */
    readonly lyeUpToK?: number | 'never';
    /** A condition on that limit: 'weak lye only'. */
    readonly lyeRemark?: string;
    /** On the hydrogen side. */
    readonly hydrogen?: Fitness;
    /** On the oxygen side, dry. */
    readonly oxygen?: Fitness;
    /** As the wetted plate that makes oxygen. */
    readonly anode?: Fitness;
    /** As the wetted plate that makes hydrogen. */
    readonly cathode?: Fitness;
    /** Electrical resistivity at 20 °C [ohm·m]; undefined for what does not conduct, or is not known. */
    readonly resistivityOhmM?: number;
    /** It carries current: a conductor in lye between points of different voltage works as an electrode itself. */
    readonly conducts: boolean;
    readonly densityKgPerM3?: number;
    readonly specificHeatJPerKgK?: number;
    /** Stiffness against bending (Young's modulus) at room temperature [Pa]; plastics lose half of it by about 60 °C. */
    readonly stiffnessPa?: number;
    /** Hydrogen through a wall of it at room temperature [mol/(m·s·Pa)]; real sheets differ by a factor of two. */
    readonly hydrogenPermeability?: number;
    /** Where the figures are from. */
    readonly source: string;
}

interface Figures {
    lye?: number | 'never';
    lyeRemark?: string;
    hydrogen?: Fitness;
    oxygen?: Fitness;
    anode?: Fitness;
    cathode?: Fitness;
    /** µohm·m */
    resistivity?: number;
    conducts?: boolean;
    density?: number;
    heat?: number;
    /** GPa */
    stiffness?: number;
    barrer?: number;
    source?: string;
}

/** mol/(m·s·Pa) in one barrer, 1e-10 cm³(0 °C, 1 atm)·cm/(cm²·s·cmHg). Arithmetic; held equal to `fromBarrer` of the physics. */
const BARRER = 3.3464e-16;

const m = (name: string, uses: string, doc: string, f: Figures): Material => ({
    name, doc, uses: uses.split(' ').filter(Boolean) as MaterialUse[],
    lyeUpToK: typeof f.lye === 'number' ? f.lye + 273.15 : f.lye, lyeRemark: f.lyeRemark,
    hydrogen: f.hydrogen, oxygen: f.oxygen, anode: f.anode, cathode: f.cathode,
    resistivityOhmM: f.resistivity === undefined ? undefined : f.resistivity * 1e-6,
    conducts: f.conducts ?? f.resistivity !== undefined,
    densityKgPerM3: f.density, specificHeatJPerKgK: f.heat,
    stiffnessPa: f.stiffness === undefined ? undefined : f.stiffness * 1e9,
    hydrogenPermeability: f.barrer === undefined ? undefined : f.barrer * BARRER,
    source: f.source ?? 'from memory',
});

const rows: readonly Material[] = [
    // ---- metals --------------------------------------------------------------------------------------------------
    m('nickel', 'plate tube', 'Nickel. The plate of choice on both sides in hydroxide lye.', {
        lye: 100, hydrogen: 'good', oxygen: 'good', anode: 'good', cathode: 'good', resistivity: 0.07, density: 8900, heat: 444, stiffness: 200,
    }),
    m('nickel-plated-steel', 'plate', 'Steel with a layer of nickel. Thin plating has pores, and rust starts in them.', {
        lye: 100, hydrogen: 'good', oxygen: 'good', anode: 'fair', cathode: 'good', resistivity: 0.15, density: 7850, heat: 480, stiffness: 205,
    }),
    m('stainless-304', 'plate vessel tube', 'Stainless steel 304. As the oxygen plate it can release chromate, which is poisonous. Cracks in hot lye above about 120 °C.', {
        lye: 80, hydrogen: 'good', oxygen: 'good', anode: 'poor', cathode: 'good', resistivity: 0.72, density: 7900, heat: 500, stiffness: 195,
        source: 'resistivity: data sheets for 304, ± 3 %; cracking: bulletins on caustic cracking; the rest from memory',
    }),
    m('stainless-316L', 'plate vessel tube', 'Stainless steel 316L. As the oxygen plate it can release chromate, which is poisonous. Cracks in hot lye above about 120 °C.', {
        lye: 80, hydrogen: 'good', oxygen: 'good', anode: 'poor', cathode: 'good', resistivity: 0.74, density: 8000, heat: 500, stiffness: 195,
        source: 'resistivity: ITER materials handbook, ± 3 %; cracking: bulletins on caustic cracking; the rest from memory',
    }),
    m('stainless', 'plate vessel tube', 'Stainless steel of a grade not said. As the oxygen plate it can release chromate, which is poisonous.', {
        lye: 80, hydrogen: 'good', oxygen: 'good', anode: 'poor', cathode: 'good', resistivity: 0.73, density: 7950, heat: 500, stiffness: 195,
    }),
    m('mild-steel', 'plate vessel tube board', 'Plain steel. Good as the hydrogen plate; as the oxygen plate it rusts. Welded steel can crack in lye above about 50 °C.', {
        lye: 50, lyeRemark: 'as welded; 65 °C where it is neither welded nor cold-worked', hydrogen: 'good', oxygen: 'fair', anode: 'poor', cathode: 'good',
        resistivity: 0.15, density: 7850, heat: 480, stiffness: 205, source: 'lye limit: bulletins on caustic cracking; the rest from memory',
    }),
    m('steel', 'tube', 'Plain steel. Welded steel can crack in lye above about 50 °C.', {
        lye: 50, lyeRemark: 'as welded', hydrogen: 'good', oxygen: 'fair', anode: 'poor', cathode: 'good', resistivity: 0.15, density: 7850, heat: 480, stiffness: 205,
    }),
    m('copper', 'tube lead', 'Copper. Never where lye wets it on the oxygen side: the lye turns blue-green and copper settles on the other plate. Good for dry gas after a scrubber.', {
        lye: 'never', lyeRemark: 'wetted on the oxygen side', hydrogen: 'good', oxygen: 'good', anode: 'no', cathode: 'fair', resistivity: 0.0172414,
        density: 8960, heat: 385, stiffness: 120, source: 'resistivity: IEC 60028 (annealed copper, 1/58 ohm·mm2/m); the rest from memory',
    }),
    m('brass', 'tube', 'Brass. Lye draws the zinc out of it. Good for dry gas after a scrubber.', {
        lye: 'never', lyeRemark: 'wetted on the oxygen side', hydrogen: 'good', oxygen: 'good', anode: 'no', cathode: 'poor', resistivity: 0.065, density: 8500, heat: 380, stiffness: 105,
    }),
    m('aluminium', 'lead', 'Aluminium. Any lye dissolves it and makes hydrogen while doing so; anodising does not protect it.', {
        lye: 'never', hydrogen: 'dry-only', oxygen: 'dry-only', anode: 'no', cathode: 'no', resistivity: 0.0282, density: 2700, heat: 897, stiffness: 70,
        source: 'resistivity: IEC 60889 hard-drawn wire, from memory; attack by lye: published studies',
    }),
    m('copper-clad', 'lead', 'Copper-clad aluminium wire: thicker for the same drop, and lye eats its core.', {
        lye: 'never', hydrogen: 'dry-only', oxygen: 'dry-only', resistivity: 0.0265, density: 3300, heat: 700,
    }),
    m('zinc', '', 'Zinc. Any lye dissolves it and makes hydrogen while doing so.', {
        lye: 'never', hydrogen: 'dry-only', oxygen: 'dry-only', anode: 'no', cathode: 'no', resistivity: 0.059, density: 7140, heat: 388,
    }),
    m('galvanised-steel', 'vessel tube', 'Steel under zinc. Lye dissolves the zinc and makes hydrogen while doing so.', {
        lye: 'never', hydrogen: 'dry-only', oxygen: 'dry-only', anode: 'no', cathode: 'no', resistivity: 0.15, density: 7850, heat: 480, stiffness: 205,
    }),
    m('tin', '', 'Tin, and what is tinned or soft-soldered. Lye dissolves it.', {
        lye: 'never', hydrogen: 'dry-only', oxygen: 'dry-only', anode: 'no', cathode: 'poor', resistivity: 0.115, density: 7290, heat: 227,
    }),
    m('lead', '', 'Lead. Belongs to sulphuric acid; hydroxide lye dissolves it slowly.', {
        lye: 'never', hydrogen: 'fair', oxygen: 'fair', anode: 'no', cathode: 'poor', resistivity: 0.208, density: 11340, heat: 128,
    }),
    m('titanium', 'plate', 'Titanium. As the hydrogen plate it takes up hydrogen and turns brittle; as the oxygen plate it stops the current. Burns in oxygen.', {
        hydrogen: 'poor', oxygen: 'no', anode: 'no', cathode: 'poor', resistivity: 0.5, density: 4500, heat: 523, stiffness: 110,
    }),
    m('graphite', 'plate', 'Graphite. Serves as the hydrogen plate; as the oxygen plate it crumbles and its gas holds carbon dioxide.', {
        hydrogen: 'fair', oxygen: 'no', anode: 'no', cathode: 'fair', resistivity: 10, density: 1850, heat: 710, stiffness: 10,
    }),
    // ---- plastics ------------------------------------------------------------------------------------------------
    m('PP', 'vessel tube board', 'Polypropylene. The usual plastic for frames, columns and boards.', {
        lye: 90, hydrogen: 'good', oxygen: 'fair', density: 905, heat: 1900, stiffness: 1.4, barrer: 8,
    }),
    m('PE-HD', 'vessel tube board', 'High-density polyethylene. Creeps where it is warm and loaded.', {
        lye: 60, lyeRemark: 'under load; 80 °C unloaded', hydrogen: 'good', oxygen: 'fair', density: 955, heat: 1900, stiffness: 1.0, barrer: 3,
    }),
    m('PE', 'tube bag', 'Polyethylene, soft. Creeps where it is warm; as film it lets hydrogen through slowly.', {
        lye: 60, lyeRemark: 'unloaded', hydrogen: 'fair', oxygen: 'fair', density: 920, heat: 2100, stiffness: 0.25, barrer: 10,
    }),
    m('PVC', 'tube vessel board bag', 'Polyvinyl chloride. Softens above 60 °C; clear hose is soft far sooner.', {
        lye: 60, hydrogen: 'good', oxygen: 'fair', density: 1400, heat: 950, stiffness: 3.0, barrer: 5,
    }),
    m('ABS', 'vessel', 'ABS, the plastic of grey pipe and printed parts.', {
        lye: 60, hydrogen: 'fair', oxygen: 'fair', density: 1050, heat: 1400, stiffness: 2.2, barrer: 10,
    }),
    m('PTFE', 'vessel tube gasket cloth', 'PTFE. Bears everything here, but flows away slowly under clamping; as cloth it sheds water and must be treated to wet.', {
        lye: 200, hydrogen: 'good', oxygen: 'good', density: 2180, heat: 1000, stiffness: 0.5, barrer: 10,
    }),
    m('PVDF', 'vessel tube', 'PVDF. Good in acid; strong warm lye turns it brown and brittle.', {
        lye: 'never', hydrogen: 'good', oxygen: 'good', density: 1780, heat: 1200, stiffness: 2.0, barrer: 1,
    }),
    m('PA', 'tube bag', 'Polyamide (nylon). Holds hydrogen well; bears lye only cool and for a short time, and burns in oxygen.', {
        lye: 40, lyeRemark: 'cool and short only', hydrogen: 'good', oxygen: 'no', density: 1130, heat: 1700, stiffness: 1.5, barrer: 1,
    }),
    m('PA-laminate', 'bag', 'Polyamide film between polyethylene films: the tight film of gas and food bags.', {
        lye: 'never', hydrogen: 'good', oxygen: 'no', density: 1030, heat: 1900, barrer: 1.5,
    }),
    m('aluminised-film', 'bag', 'Plastic film with a skin of aluminium. Tight while it is not creased, but the skin conducts: it needs earthing, and lye mist eats it.', {
        lye: 'never', hydrogen: 'good', oxygen: 'no', conducts: true, density: 1380, heat: 1200, barrer: 0.05,
    }),
    m('PC', 'vessel', 'Polycarbonate. Lye crazes it until it bursts without warning.', {
        lye: 'never', hydrogen: 'fair', oxygen: 'no', density: 1200, heat: 1200, stiffness: 2.3, barrer: 12,
    }),
    m('PET', 'vessel cloth bag', 'PET, the plastic of drink bottles and polyester cloth. Lye takes it apart.', {
        lye: 'never', hydrogen: 'fair', oxygen: 'no', density: 1380, heat: 1200, stiffness: 2.8, barrer: 0.6,
    }),
    m('polyester', 'cloth', 'Polyester cloth or felt. Lye takes it apart: holes come within weeks.', {
        lye: 'never', hydrogen: 'fair', oxygen: 'no', density: 1380, heat: 1200,
    }),
    m('acrylic', 'vessel board', 'Acrylic glass (PMMA). Lye crazes it; clear, so often used for looking in.', {
        lye: 'never', hydrogen: 'fair', oxygen: 'no', density: 1190, heat: 1470, stiffness: 3.0, barrer: 3,
    }),
    m('PLA', 'vessel', 'PLA, the usual plastic of printed parts. Lye takes it apart, and it softens at 55 °C.', {
        lye: 'never', hydrogen: 'fair', oxygen: 'no', density: 1240, heat: 1800, stiffness: 3.0,
    }),
    m('PU', 'tube bag', 'Polyurethane. Lye takes it apart.', {
        lye: 'never', hydrogen: 'fair', oxygen: 'no', density: 1200, heat: 1800, barrer: 15,
    }),
    // ---- rubbers -------------------------------------------------------------------------------------------------
    m('EPDM', 'gasket tube', 'EPDM rubber. The gasket of choice in lye.', {
        lye: 100, hydrogen: 'good', oxygen: 'fair', density: 1150, heat: 2000, barrer: 40,
    }),
    m('NBR', 'gasket tube', 'Nitrile rubber. Hardens in warm lye.', {
        lye: 60, lyeRemark: 'hardens with time', hydrogen: 'good', oxygen: 'poor', density: 1200, heat: 1900, barrer: 12,
    }),
    m('FKM', 'gasket', 'Fluorocarbon rubber. Good in dry gas; lye destroys it.', {
        lye: 'never', hydrogen: 'good', oxygen: 'good', density: 1850, heat: 1300, barrer: 13,
    }),
    m('rubber', 'tube gasket bag', 'Rubber of a sort not said. Lets hydrogen through, ages in oxygen.', {
        lye: 60, hydrogen: 'fair', oxygen: 'poor', density: 1100, heat: 1900, barrer: 50,
    }),
    m('latex', 'bag', 'Latex, as in balloons. Hydrogen leaves through it within a day.', {
        lye: 60, hydrogen: 'poor', oxygen: 'poor', density: 950, heat: 1900, barrer: 50,
    }),
    m('silicone', 'tube gasket', 'Silicone rubber. Lets hydrogen through as no other hose does; bears only cool, weak lye.', {
        lye: 40, lyeRemark: 'cool and weak lye only', hydrogen: 'poor', oxygen: 'good', density: 1150, heat: 1300, barrer: 650,
    }),
    // ---- glass ---------------------------------------------------------------------------------------------------
    m('borosilicate', 'vessel', 'Laboratory glass. Warm lye etches it slowly; it does not give before it breaks.', {
        lye: 60, lyeRemark: 'etches slowly', hydrogen: 'good', oxygen: 'good', density: 2230, heat: 830, stiffness: 63,
    }),
    m('glass', 'vessel cloth', 'Common soda glass, or cloth of glass fibre. Lye etches it slowly, fibres sooner than jars.', {
        lye: 60, lyeRemark: 'etches slowly; thin fibres not at all when warm', hydrogen: 'good', oxygen: 'good', density: 2500, heat: 840, stiffness: 70,
    }),
    // ---- separators ----------------------------------------------------------------------------------------------
    m('composite', 'cloth', 'Separator sheet of fine ceramic in a plastic binder: the finest pores and a low resistance.', {
        lye: 80, density: 1500, heat: 1000,
    }),
    m('PP-felt', 'cloth', 'Felt of polypropylene. Wide pores; sheds water until it has been wetted.', { lye: 90, density: 905, heat: 1900 }),
    m('PP-woven', 'cloth', 'Woven polypropylene. Sheds water until it has been wetted.', { lye: 90, density: 905, heat: 1900 }),
    m('PPS', 'cloth', 'Cloth of polyphenylene sulphide. Bears hot lye; sheds water until it has been wetted.', { lye: 90, density: 1350, heat: 1000 }),
    m('nylon', 'cloth', 'Polyamide cloth. Bears lye only cool and for a short time.', { lye: 40, lyeRemark: 'cool and short only', hydrogen: 'good', oxygen: 'no', density: 1130, heat: 1700 }),
    m('steel-cloth', 'cloth', 'Woven stainless steel. It conducts: where it touches a plate it becomes an electrode itself, and its pores are wide.', {
        lye: 80, hydrogen: 'good', oxygen: 'good', conducts: true, density: 7950, heat: 500,
    }),
    m('cotton', 'cloth', 'Cotton. Lye swells and weakens it, and oxygen in lye eats it.', { lye: 'never', oxygen: 'no', density: 1540, heat: 1300 }),
    m('paper', 'cloth', 'Paper. Lye and oxygen eat it.', { lye: 'never', oxygen: 'no', density: 800, heat: 1300 }),
    m('asbestos', 'cloth', 'Asbestos. Causes cancer and is banned: never open, cut or reuse it.', { lye: 'never', lyeRemark: 'banned, whatever the lye does' }),
];

/** Every material known by name. A material that is not here can still be named in a text; nothing is then known of it. */
/** Other words of the trade for them; in small letters. */
export const materialsCalled: ReadonlyMap<string, string> = new Map(Object.entries({
    polycarbonate: 'PC', polypropylene: 'PP', polyethylene: 'PE', hdpe: 'PE-HD', pmma: 'acrylic', polyamide: 'PA', aluminum: 'aluminium', 'stainless-steel': 'stainless',
    inox: 'stainless', v4a: 'stainless-316L', v2a: 'stainless-304', '316l': 'stainless-316L', 316: 'stainless-316L', 304: 'stainless-304', polyurethane: 'PU',
}));
export const materials: ReadonlyMap<string, Material> = new Map(rows.map(row => [row.name, row]));

/** Names of the materials usually met in one use, for the word list of a property. */
export function materialsFor(...uses: readonly MaterialUse[]): readonly string[] {
    return rows.filter(row => row.uses.some(use => uses.includes(use))).map(row => row.name);
}

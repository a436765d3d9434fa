/** What can be dissolved to carry the current, and what the bought solid really holds. From memory. */
export interface Solute {
    readonly name: string;
    readonly doc: string;
    readonly family: 'hydroxide' | 'carbonate' | 'chloride' | 'acid';
    readonly molarMassKgPerMol: number;
    /** Share of it in the solid as usually bought, low and high; the rest is mostly water. */
    readonly assay: readonly [low: number, high: number];
}

/** Solutes by name. */
export const solutes: ReadonlyMap<string, Solute> = new Map(([
    { name: 'KOH', doc: 'Potassium hydroxide, caustic potash. Conducts best; its pellets hold 10 to 15 % water. Burns skin and eyes.', family: 'hydroxide', molarMassKgPerMol: 0.056106, assay: [0.85, 0.9] },
    { name: 'NaOH', doc: 'Sodium hydroxide, caustic soda. Cheaper, conducts less well than potash. Burns skin and eyes.', family: 'hydroxide', molarMassKgPerMol: 0.039997, assay: [0.96, 0.99] },
    { name: 'K2CO3', doc: 'Potassium carbonate, potash. Mild, but conducts poorly and foams.', family: 'carbonate', molarMassKgPerMol: 0.138205, assay: [0.98, 0.995] },
    { name: 'NaHCO3', doc: 'Sodium bicarbonate, baking soda. Conducts poorly and gives off carbon dioxide into the gas.', family: 'carbonate', molarMassKgPerMol: 0.084007, assay: [0.98, 1] },
    { name: 'NaCl', doc: 'Common salt. Makes poisonous chlorine instead of oxygen.', family: 'chloride', molarMassKgPerMol: 0.058443, assay: [0.97, 1] },
    { name: 'H2SO4', doc: 'Sulphuric acid. Needs lead or precious plates; eats all that is fit for lye.', family: 'acid', molarMassKgPerMol: 0.098079, assay: [0.93, 0.98] },
] satisfies Solute[]).map(row => [row.name, row]));

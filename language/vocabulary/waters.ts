/** What water of one sort usually holds, until the maker measures it. From memory; real waters differ widely. */
export interface Water {
    readonly name: string;
    readonly doc: string;
    /** [S/m] at 25 °C */
    readonly conductivitySPerM: number;
    /** [kg/m3] */
    readonly chlorideKgPerM3: number;
    /** Whether it may be topped up with for months. */
    readonly fit: boolean;
}

const w = (name: string, conductivityMicroSPerCm: number, chlorideMgPerL: number, fit: boolean, doc: string): Water => ({
    name, doc, conductivitySPerM: conductivityMicroSPerCm * 1e-4, chlorideKgPerM3: chlorideMgPerL * 1e-3, fit,
});

/** Sorts of feed water by name. */
export const waters: ReadonlyMap<string, Water> = new Map([
    w('distilled', 2, 0, true, 'Boiled off and caught again: next to nothing is left in it.'),
    w('deionised', 2, 0, true, 'Run through resin that takes the salts out. Spent resin lets them pass unseen.'),
    w('condensate', 10, 0.5, true, 'From a dryer or an air conditioner: few salts, but dust and metals from the coil.'),
    w('rain', 30, 3, true, 'Few salts, but dirt and zinc of the roof; more salt near the sea.'),
    w('tap', 500, 50, false, 'Chloride pits stainless steel; lime settles in ports and on plates.'),
    w('softened', 600, 50, false, 'The lime is swapped for sodium; all the chloride is still there.'),
    w('sea', 50_000, 19_000, false, 'Makes chlorine instead of oxygen.'),
].map(row => [row.name, row]));

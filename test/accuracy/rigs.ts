/** Rigs in which one thing is set as an outside number asks for it. */

export interface Bench {
    readonly temperature: number;
    readonly solute?: string;
    readonly strength?: string;
    readonly cells?: number;
    readonly amperes?: number;
    readonly stack?: string;
    readonly more?: string;
}
/** A cell on the bench at a stated temperature, current limited, volts to spare. */
export const bench = ({ temperature, solute = 'KOH', strength = '30 wt%', cells = 1, amperes = 10, stack = '', more = '' }: Bench) => `rig "Bench", idea
site { place: outdoors   coldest: 5 °C   hottest: 35 °C }
supply { sort: bench   voltage: ${6 * cells} V   current-limit: ${amperes} A }
lye { solute: ${solute}   strength: ${strength}   fill: 2 L }
stack { cells: ${cells}   wetted: 100 x 100 mm   gap: 2 mm   plate: nickel, 120 x 140 x 1 mm   temperature: ${temperature} °C   ${stack} }
${more}
`;

/** Set points as rungs of one scale. */
import { inUnit, six } from './ask.js';
import type { Figure, Rung } from './figure.js';
import type { SetPoint } from './set-points.js';
import { digits } from '../../units/format.js';

/** Pa, where the pressures of a store begin: below it stand heads of liquid, bags and seals. Own choice. */
const HIGH_SIDE = 0.5e5;
export const isSoft = (p: SetPoint) => p.soft || p.at < HIGH_SIDE;

export function ladderOf(points: readonly SetPoint[], unit: string): Figure {
    const rungs = points.map(({ part, says, sort, at, bounds }) => ({ part, says, sort, at: inUnit(at, unit), low: bounds && inUnit(bounds[0], unit), high: bounds && inUnit(bounds[1], unit) }));
    const top = rungs.at(-1)!;
    return {
        shape: { is: 'ladder', axis: { name: 'pressure above the air outside', unit }, rungs },
        says: `${rungs.length} ${rungs.length === 1 ? 'pressure' : 'pressures'}, up to ${top.part} (${top.says} ${digits(top.at)} ${unit}).${closest(rungs, unit)}`,
        notes: ['Each pressure is told where its part stands: what bubblers and hoses before it cost comes on top at the stack. What is named a difference or across counts between two sides. Gaps are between the middles; a bar along the scale is a ±.'],
        table: { columns: [{ name: 'part', unit: '' }, { name: 'says', unit: '' }, { name: 'pressure', unit }, { name: 'low', unit }, { name: 'high', unit }, { name: 'above the one below', unit }], rows: rungs.map((r, i) => [r.part, r.says, six(r.at), six(r.low ?? NaN), six(r.high ?? NaN), i ? six(r.at - rungs[i - 1].at) : undefined]) },
    };
}
/** The closest two of different parts, one of which runs and the other of which acts or bears: in a sentence. */
function closest(rungs: readonly Rung[], unit: string): string {
    const acting = (r: Rung) => r.sort === 'relief' || r.sort === 'trip';
    let best: readonly [Rung, Rung] | undefined;
    for (let i = 1; i < rungs.length; i++) {
        const [a, b] = [rungs[i - 1], rungs[i]];
        if (a.part === b.part || !(a.at > 0) || acting(a) === acting(b)) continue;
        if (!best || b.at / a.at < best[1].at / best[0].at) best = [a, b];
    }
    return best ? ` Closest: ${best[0].part} (${best[0].says} ${digits(best[0].at)}) and ${best[1].part} (${best[1].says} ${digits(best[1].at)}), ${digits(best[1].at - best[0].at, 2)} ${unit} apart.` : '';
}

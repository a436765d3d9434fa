/** What the text leaves open and was taken for granted, by what hangs on it. */
import { assumptionRows, isKeyNumber } from '../../../reference/quantities.js';
import { cut, defineSection, table, words } from '../define.js';

const MOST = 60;
const NAMED = 3;
/** Of the variance of a number: less is not worth a name. */
const LEAST = 0.02;

interface Weight {
    readonly number: string;
    readonly part: number;
    /** At one end of it there is no such number at all. */
    readonly ends: boolean;
}
export default defineSection({
    name: 'assumed', title: 'Assumed', order: 100, lead: 'What the description leaves out and was taken for granted, the weightiest first: measure or decide these before the others.',
    make: ({ workings, results, hidden }) => {
        const weights = new Map<string, Weight[]>();
        for (const r of results) {
            if (!isKeyNumber(r) || hidden.has(r.part.name)) continue;
            for (const { root, part, atLow, atHigh } of r.spread.shares) {
                const ends = atLow !== atLow || atHigh !== atHigh;
                if (root.sort !== 'assumed' || (part < LEAST && !ends)) continue;
                const weight = { number: `${r.part.name}.${r.quantity.name}`, part, ends };
                const list = weights.get(root.label);
                if (list) list.push(weight);
                else weights.set(root.label, [weight]);
            }
        }
        const rows = assumptionRows(workings).filter(a => !hidden.has(a.name.split('.')[0])).map(a => {
            const moves = [...weights].filter(([label]) => label === a.name || label.startsWith(`${a.name}.`)).flatMap(([, w]) => w).sort((x, y) => Number(y.ends) - Number(x.ends) || y.part - x.part);
            return { a, moves, weight: moves.reduce((most, m) => Math.max(most, m.ends ? 2 : m.part), 0) };
        }).sort((x, y) => y.weight - x.weight);
        if (!rows.length) return [words('Nothing: all that the numbers rest on is told.')];
        const { shown, rest } = cut(rows.filter(r => r.moves.length), MOST, left => `And ${left} more: rigwright show lists them.`);
        const still = rows.filter(r => !r.moves.length).slice(0, MOST);
        return [
            ...table(['what', 'taken as', 'numbers that it moves most, and its share of their ±'], shown.map(({ a, moves }) => [
                a.name, [a.value, a.because],
                [moves.slice(0, NAMED).map(m => (m.ends ? `${m.number} (at one end of its usual spread there is none)` : `${m.number} ${Math.round(100 * m.part)} %`)).join(', '), moves.length > NAMED ? `and ${moves.length - NAMED} more` : ''],
            ])), ...rest,
            ...(still.length ? [words(`${shown.length ? 'None' : 'Taken for granted too, and none'} of the key numbers is moved by much by ${still.map(({ a }) => `${a.name} (${a.value})`).join(', ')}. Findings can rest on them all the same.`)] : []),
        ];
    },
});

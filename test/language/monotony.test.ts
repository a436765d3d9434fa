/** Turned up, a number goes where `monotony.ts` says: on the examples and on random sound rigs. */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { quantityOf } from '../../language/quantities/index.js';
import { trends, type Trend } from './monotony.js';
import { partOf, rigsOfEverySource, withProperty, workingsOf } from './random-rigs.js';

const folder = new URL('../../examples/', import.meta.url);
const examples = readdirSync(folder).filter(f => f.endsWith('.rig') && f !== 'bench-shelf.rig').map(f => readFileSync(new URL(f, folder), 'utf8'));
const shelf = readFileSync(new URL('bench-shelf.rig', folder), 'utf8');
const rigs = [...examples, ...rigsOfEverySource(Math.max(2, Math.round(Number(process.env.RIGWRIGHT_RUNS ?? 0) / 500)), 20260616)];
/** What is found by iteration is good to this share; a fall within it is no fall. */
const SOLVED = 2e-4;

const set = (text: string | undefined, property: string, value: string) => (text === undefined ? undefined : withProperty(text, property, value));
/** Values of the quantity while the input rises; those that are not known are left out. Undefined where the rig has no such part or source. */
function along(trend: Trend, text: string): number[] | undefined {
    const [kind, name] = trend.quantity.split('.');
    // What is added stands for the kind that is asked, or for the one that is turned up.
    const lacks = trend.add && [kind, trend.input.split('.')[0]].some(k => k !== 'site' && !partOf(text, k));
    const start = Object.entries(trend.with ?? {}).reduce<string | undefined>((t, [property, value]) => set(t, property, value), lacks ? `${text}\n${trend.add}\n` : text);
    if (start === undefined || !partOf(start, kind) && kind !== 'site') return undefined;
    const part = partOf(start, kind)?.name ?? kind;
    const values = trend.over.map(value => {
        const text = set(start, trend.input, value);
        const w = text === undefined ? undefined : workingsOf(text, file => (file.endsWith('bench-shelf.rig') ? shelf : undefined));
        return w?.viewOf(part)?.result(name)?.value ?? NaN;
    });
    return values.filter(v => v === v);
}

describe('trends', () => {
    it('are many, of known quantities, and none twice', () => {
        expect(trends.length).toBeGreaterThanOrEqual(40);
        const keys = trends.map(t => `${t.quantity} over ${t.input}: ${t.over[0]}`);
        expect(new Set(keys).size).toBe(keys.length);
        for (const t of trends) expect(quantityOf(t.quantity.split('.')[0]).get(t.quantity.split('.')[1]), t.quantity).toBeDefined();
    });
    it.each(trends)('$quantity goes $goes with $input', { timeout: 600_000 }, trend => {
        let tried = 0;
        let moved = 0;
        for (const text of rigs) {
            const values = along(trend, text);
            if (!values || values.length < 2) continue;
            tried++;
            for (let k = 1; k < values.length; k++) {
                const step = values[k] - values[k - 1];
                const doubt = SOLVED * Math.max(Math.abs(values[k]), Math.abs(values[k - 1]));
                const what = `${trend.over.join(', ')} gave ${values.join(', ')} in\n${text}`;
                if (trend.goes === 'up') expect(step, what).toBeGreaterThanOrEqual(-doubt);
                else if (trend.goes === 'down') expect(step, what).toBeLessThanOrEqual(doubt);
                else expect(step, what).toBe(0);
                if (Math.abs(step) > doubt) moved++;
            }
        }
        expect(tried, 'rigs on which it could be tried').toBeGreaterThan(1);
        if (trend.goes !== 'nowhere') expect(moved, 'steps that moved it').toBeGreaterThan(0);
    });
});

/** All numbers of a rig as a table for a spreadsheet: worked out, stated, assumed and measured ones. */
import type { Workings } from '../quantities/workings.js';
import { fromSi, unitOf } from '../units/unit.js';
import { csvOf } from './csv.js';
import { quantityRows, resultsOf } from './quantities.js';
import { unitOfResult } from './values.js';

const FIGURES = 6;
const rounded = (x: number) => (Number.isFinite(x) ? Number(x.toPrecision(FIGURES)) : undefined);

export function quantitiesCsv(workings: Workings): string {
    const bounds = new Map(resultsOf(workings).map(r => {
        const unit = unitOf(unitOfResult(r));
        const inUnit = (si: number) => rounded(unit ? fromSi(si, unit) : si);
        return [`${r.part.name}.${r.quantity.name}`, { low: inUnit(r.low), high: inUnit(r.high) }];
    }));
    return csvOf([
        ['part', 'quantity', 'value', 'unit', 'low', 'high', 'SI value', 'status', 'source'],
        ...quantityRows(workings).map(row => {
            const dot = row.name.indexOf('.');
            const known = row.value !== null;
            const around = row.status !== 'computed' || !known ? undefined : bounds.get(row.name);
            const half = row.plusMinus ?? 0;
            const [low, high] = around ? [around.low, around.high] : known ? [rounded(row.value - half), rounded(row.value + half)] : [undefined, undefined];
            return [row.name.slice(0, dot), row.name.slice(dot + 1), row.value ?? undefined, row.unit, low, high, row.si === null ? undefined : rounded(row.si), row.status, row.source];
        }),
    ]);
}

/** All numbers of a rig as a table for a spreadsheet: worked out, stated, assumed and measured ones. */
import type { Workings } from '../quantities/workings.js';
import { csvOf } from './csv.js';
import { quantityRows } from './quantities.js';

const FIGURES = 6;
const orNothing = (x: number | null) => (x === null ? undefined : Number(x.toPrecision(FIGURES)));

/** A row for each number: value and bounds in its unit, SI beside, where it comes from. Empty where it is not known. Six figures. */
export function quantitiesCsv(workings: Workings): string {
    return csvOf([
        ['part', 'quantity', 'value', 'unit', 'low', 'high', 'SI value', 'status', 'source'],
        ...quantityRows(workings).map(row => {
            const dot = row.name.indexOf('.');
            return [row.name.slice(0, dot), row.name.slice(dot + 1), orNothing(row.value), row.unit, orNothing(row.low), orNothing(row.high), orNothing(row.si), row.status, row.source];
        }),
    ]);
}

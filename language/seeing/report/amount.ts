/** Numbers with bounds that sections put together from several others. */
import type { Result } from '../../quantities/workings.js';
import { showBounds } from '../../reference/values.js';
import { show } from '../../units/format.js';

/** SI. */
export type Amount = Pick<Result, 'value' | 'low' | 'high'>;
export const amountOf = ({ value, low, high }: Result): Amount => ({ value, low, high });
export const times = (a: Amount, by: number): Amount => ({ value: a.value * by, low: a.low * by, high: a.high * by });
/** Their bounds added as they are: what leaves both open may be the same. */
export const plus = (a: Amount, b: Amount): Amount => ({ value: a.value + b.value, low: a.low + b.low, high: a.high + b.high });
export const shown = (a: Amount, unit: string): string => `${show(a.value, unit)} ${showBounds(a, unit)}`.trim();

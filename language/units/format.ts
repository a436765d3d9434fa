/**
 * Numbers as the maker reads them: three significant figures (four where three would hide a difference), a plain
 * minus, the unit after a blank.
 */
import { fromSi, unitOf, type Unit } from './unit.js';

/** A number with up to `digits` significant figures, without trailing zeros, without exponents between 0.001 and 999 999. */
export function digits(value: number, figures = 3): string {
    if (value !== value) return 'unknown';
    if (!Number.isFinite(value)) return value > 0 ? 'without limit' : 'below any limit';
    if (value === 0) return '0';
    const size = Math.abs(value);
    if (size >= 1e6 || size < 1e-4) return Number(value.toPrecision(figures)).toExponential().replace('e+', 'e');
    if (size >= 10 ** figures) return String(Math.round(value));
    return String(Number(value.toPrecision(figures)));
}

/** An SI value in a unit: `show(2.1, 'V')` is '2.1 V'. A unit of percent stands close to its number. */
export function show(si: number, unitText: string, figures = 3): string {
    if (si !== si) return 'unknown';
    const unit = unitText ? unitOf(unitText) : undefined;
    if (!unit) return digits(si, figures);
    return withUnit(fromSi(si, unit), unit, figures);
}
export function withUnit(value: number, unit: Unit, figures = 3): string {
    return `${digits(value, figures)} ${unit.text}`;
}
/** A duration in the words of the bench: '40 s', '25 min', '3 h 20 min', '2.5 days'. */
export function duration(seconds: number): string {
    if (seconds !== seconds) return 'unknown';
    if (!Number.isFinite(seconds)) return 'never';
    if (seconds < 90) return `${digits(seconds, 2)} s`;
    if (seconds < 5400) return `${digits(seconds / 60, 2)} min`;
    if (seconds < 36 * 3600) {
        const minutes = Math.round(seconds / 60);
        const rest = minutes % 60;
        return rest ? `${Math.floor(minutes / 60)} h ${rest} min` : `${Math.floor(minutes / 60)} h`;
    }
    return seconds < 90 * 86400 ? `${digits(seconds / 86400, 2)} days` : `${digits(seconds / (30.4375 * 86400), 2)} months`;
}

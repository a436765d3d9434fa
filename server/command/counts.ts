import type { Finding } from '../../language/index.js';

/** How many findings there are of each severity. */
export function counts(findings: readonly Finding[]): { errors: number; warnings: number; hints: number } {
    const of = (severity: Finding['severity']) => findings.filter(f => f.severity === severity).length;
    return { errors: of('error'), warnings: of('warning'), hints: of('hint') };
}

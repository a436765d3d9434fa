/** What stands in a bundle, told by itself in `manifest.json`. */
export const MANIFEST = 'manifest.json';
export const FORM = 1;
export type Role = 'rig' | 'used' | 'log' | 'report';
export interface Listed {
    readonly name: string;
    readonly role: Role;
    readonly bytes: number;
    readonly sha256: string;
    /** Its text names files where they stand in the bundle, not where they stood before. */
    readonly renamed?: true;
}
export interface Manifest {
    readonly bundle: typeof FORM;
    readonly 'made-by': string;
    readonly title: string;
    /** Name of the rig's first file. */
    readonly rig: string;
    readonly files: readonly Listed[];
}
const isRecord = (x: unknown): x is Record<string, unknown> => typeof x === 'object' && x !== null && !Array.isArray(x);

/** Undefined where it is none that can be relied on. */
export function manifestOf(text: string): Manifest | undefined {
    let m: unknown;
    try {
        m = JSON.parse(text);
    } catch {
        return undefined;
    }
    if (!isRecord(m) || m.bundle !== FORM || typeof m.rig !== 'string' || typeof m.title !== 'string' || typeof m['made-by'] !== 'string' || !Array.isArray(m.files)) return undefined;
    const sound = (f: unknown) => isRecord(f) && typeof f.name === 'string' && ['rig', 'used', 'log', 'report'].includes(f.role as string) && Number.isSafeInteger(f.bytes) && (f.bytes as number) >= 0 && typeof f.sha256 === 'string' && /^[0-9a-f]{64}$/.test(f.sha256);
    if (!m.files.every(sound)) return undefined;
    const files = m.files as Listed[];
    return files.some(f => f.name === m.rig && f.role === 'rig') ? m as unknown as Manifest : undefined;
}

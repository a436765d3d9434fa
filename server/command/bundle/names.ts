/** Names inside of a bundle: such that they mean the same file on every machine, and none outside of the folder it is unpacked to. */

/** Names that are devices on some machines, whatever stands behind their first dot. */
const device = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³]|conin\$|conout\$|clock\$) *(?:[.:]|$)/i;
/** Forbidden in file names somewhere, or invisible: control characters, and those that turn the direction of writing. */
const forbidden = /[\u0000-\u001f\u007f-\u009f<>:"|?*\\\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/u;
/** Half of a character. */
const half = /\p{Surrogate}/u;
// Characters, and steps: what common file systems still take with a folder before it (Windows: 260 for all of a path, from memory). Own choice within that.
const LONGEST = 240;
const LONGEST_STEP = 120;
const DEEPEST = 12;

/** Why a name cannot be used; undefined where it can. */
export function trouble(name: string): string | undefined {
    if (!name || name.length > LONGEST) return 'is empty or too long';
    if (name.startsWith('/') || /^[a-z]:/i.test(name)) return 'begins at the top of a disk';
    if (name.includes('\\')) return 'has a backslash';
    const steps = name.split('/');
    if (steps.length > DEEPEST) return 'lies too deep';
    for (const step of steps) {
        if (step === '..' || step === '.') return 'leads out of its folder';
        if (!step || step.length > LONGEST_STEP) return 'has an empty or too long step';
        if (forbidden.test(step) || half.test(step)) return 'has characters that file names cannot have everywhere';
        if (/[. ]$/.test(step) || step.startsWith(' ')) return 'has a step that begins with a blank or ends with a dot or a blank';
        if (device.test(step)) return 'is the name of a device on some machines';
    }
    return undefined;
}
/** Two names with one key are one file on some machines. */
export const keyOf = (name: string): string => name.normalize('NFKC').toUpperCase().toLowerCase();

/** The nearest name of one step that can be used: what cannot stand in it is written as _XX. Not by %: in a `use` line an editor reads that as an address. */
export function usable(step: string): string {
    const coded = (c: string) => [...Buffer.from(half.test(c) ? '?' : c)].map(b => `_${b.toString(16).toUpperCase().padStart(2, '0')}`).join('');
    let name = [...step].map(c => (forbidden.test(c) || c === '/' || half.test(c) ? coded(c) : c)).join('');
    name = name.replace(/^ /, coded).replace(/[. ]$/, coded);
    if (device.test(name)) name = `_${name}`;
    if (name.length > LONGEST_STEP) name = name.slice(0, LONGEST_STEP / 2) + name.slice(-20);
    return trouble(name) ? 'file' : name;
}

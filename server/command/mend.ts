/** Applies the fixes that keep the meaning of the text: what `check --fix` does. */
import { writeFileSync } from 'node:fs';
import { applyFix, type Finding, type Fix } from '../../language/index.js';
import { isText, readText } from './files.js';

export interface Mended {
    /** How many findings a fix was applied for. */
    readonly fixes: number;
    readonly files: readonly string[];
    /** Files that were left alone, since they are no UTF-8 text. */
    readonly leftAlone: readonly string[];
}
/** Writes the first fix of each finding that keeps the meaning; where two touch each other, the earlier one. */
export function mend(findings: readonly Finding[]): Mended {
    const edits: Fix['edits'][number][] = [];
    let fixes = 0;
    const touches = (a: Fix['edits'][number], b: Fix['edits'][number]) => a.span.file === b.span.file && a.span.start <= b.span.end && b.span.start <= a.span.end;
    for (const f of findings) {
        const fix = f.fixes.find(x => x.keepsMeaning);
        if (!fix || fix.edits.some(e => edits.some(o => touches(e, o)))) continue;
        edits.push(...fix.edits);
        fixes++;
    }
    const files: string[] = [];
    const leftAlone: string[] = [];
    for (const file of new Set(edits.map(e => e.span.file))) {
        const text = readText(file);
        if (text === undefined) continue;
        if (!isText(file, text)) {
            leftAlone.push(file);
            continue;
        }
        const after = applyFix(text, file, { title: '', edits });
        if (after === text) continue;
        writeFileSync(file, after);
        files.push(file);
    }
    return { fixes: files.length ? fixes : 0, files, leftAlone };
}

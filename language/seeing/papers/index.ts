/** The build papers of a rig: one page to print, and the files that go with it. */
import type { Analysis } from '../../index.js';
import type { Faults } from '../../run/faults.js';
import { Bench, ASSUMED } from './bench.js';
import { documentOf, type PageSize } from './page.js';
import { quiet } from './page.js';
import type { Paper, PaperFile } from './paper.js';
import { allPapers as unordered } from './papers.generated.js';

export const allPapers: readonly Paper[] = [...unordered].sort((a, b) => a.place - b.place);
/** Said on every paper. */
const OPEN_ERRORS = 'of this rig say that something is wrong. Settle them before anything is built or run from these papers.';

export interface PapersAsked {
    /** Names of papers; all of them if left out. */
    readonly only?: readonly string[];
    readonly size?: PageSize;
    /** Day of printing. */
    readonly date?: string;
    /** What single failures lead to, if that was worked out. */
    readonly faults?: Faults;
}
export interface Papers {
    readonly html: string;
    readonly files: readonly PaperFile[];
}
export function papersOf(analysis: Analysis, asked: PapersAsked = {}): Papers {
    const wanted = allPapers.filter(p => !asked.only || asked.only.includes(p.name));
    return analysis.workings.unnoted(() => {
        const b = new Bench(analysis, asked.faults);
        const wrong = b.errors ? `${b.errors} finding${b.errors === 1 ? '' : 's'} ${OPEN_ERRORS}` : undefined;
        const sheets = wanted.map(p => {
            const body = p.make(b).filter(m => m !== undefined && m !== false);
            const marked = body.some(m => m.text.includes(`<sup>${ASSUMED}</sup>`));
            return {
                title: p.title, purpose: p.purpose, cautions: [wrong, ...p.cautions(b)].filter(c => c !== undefined),
                body: marked ? [...body, quiet(`${ASSUMED} rests on something that the text does not tell and the language assumes: measure it, write it into the text, print again.`)] : body,
            };
        });
        return { html: documentOf(b.title, asked.size ?? 'a4', asked.date, sheets), files: wanted.flatMap(p => p.files?.(b) ?? []) };
    });
}

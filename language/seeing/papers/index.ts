/** The build papers of a rig: one page to print, and the files that go with it. */
import type { Analysis } from '../../index.js';
import type { Faults } from '../../run/faults.js';
import { caution } from '../../reference/caution.js';
import { Bench, ASSUMED } from './bench.js';
import { documentOf, quiet, type PageSize } from './page.js';
import type { Paper, PaperFile } from './paper.js';
import { allPapers as unordered } from './papers.generated.js';

export const allPapers: readonly Paper[] = [...unordered].sort((a, b) => a.place - b.place);
/** Assumed values named below a paper before the rest is only counted. */
const MOST_ASSUMED = 16;
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
            const assumed = b.takeAssumed();
            const list = `${assumed.slice(0, MOST_ASSUMED).join(', ')}${assumed.length > MOST_ASSUMED ? ` and ${assumed.length - MOST_ASSUMED} more` : ''}`;
            return {
                title: p.title, purpose: p.purpose, cautions: [wrong, ...p.cautions(b), `${caution} What the text of the rig does not tell is left blank.`].filter(c => c !== undefined),
                body: assumed.length ? [...body, quiet(`${ASSUMED} rests on what the text does not tell and the language assumes (${list}): find it out, write it into the text, print again.`)] : body,
            };
        });
        return { html: documentOf(b.title, asked.size ?? 'a4', asked.date, sheets), files: wanted.flatMap(p => p.files?.(b) ?? []) };
    });
}

import type { CodeLens, Command } from 'vscode-languageserver';
import { assumptionRows } from '../../../language/reference/quantities.js';
import { capital } from '../../../language/values/evaluate.js';
import { standingOf } from '../expectation.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';

/** On the title line: how many findings, how many numbers near a limit, how much is assumed. On an expectation: how it stands. */
const codeLenses: Feature = {
    name: 'code-lenses',
    capabilities: () => ({ codeLensProvider: { resolveProvider: false } }),
    register(connection, house) {
        connection.onCodeLens(({ textDocument }) => lensesOf(house, textDocument.uri));
    },
};
export default codeLenses;

export function lensesOf(house: House, uri: string): CodeLens[] {
    const sight = house.sight(uri);
    if (!sight) return [];
    const { page, doc, analysis } = sight;
    const lenses: CodeLens[] = [];
    // A client that is not our own extension does not know our commands: there a lens is words only.
    const put = (span: { start: number; end: number }, title: string, command = '') => {
        const c: Command = { title, command: house.ownClient ? command : '' };
        lenses.push({ range: doc.lines.range(span), command: c });
    };
    if (page.title && page.sort === 'rig') {
        const { findings } = analysis;
        const count = (s: string, word: string) => {
            const n = findings.filter(f => f.severity === s).length;
            return n ? `${n} ${word}${n > 1 ? 's' : ''}` : '';
        };
        const described = [...analysis.rig.parts.values()].some(p => !p.implied);
        put(page.title.span, [count('error', 'error'), count('warning', 'warning'), count('hint', 'hint')].filter(Boolean).join(', ') || (described ? 'nothing found' : 'no part described yet'), 'workbench.actions.view.problems');
        const assumed = described ? assumptionRows(analysis.workings).length : 0;
        const { near } = analysis;
        if (near.length) put(page.title.span, `${near.length} near a limit`);
        if (assumed) put(page.title.span, `${assumed} assumed`, 'rigwright.writeAssumptions');
        put(page.title.span, 'local codes and licensed practice decide');
    }
    for (const e of page.expects) {
        // Half typed, it has nothing to stand for: a line that comes and goes above it would only jump.
        if (e.broken) continue;
        const { is, now, missing } = standingOf(analysis.workings, e);
        put(e.span, is === 'not known' && missing.length ? `Not known: ${missing.slice(0, 2).join(', ')} ${missing.length > 1 ? 'are' : 'is'} missing` : is === 'held against a run' ? 'Held against a run' : `${capital(is)}${now ? `: ${now}` : ''}`);
    }
    return lenses;
}

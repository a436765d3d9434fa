import type { CodeLens } from 'vscode-languageserver';
import { assumptionRows } from '../../../language/reference/quantities.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { pageIn } from '../spot.js';

/** On the title line: how many findings, how much is assumed. */
const codeLenses: Feature = {
    name: 'code-lenses',
    capabilities: () => ({ codeLensProvider: { resolveProvider: false } }),
    register(connection, house) {
        connection.onCodeLens(({ textDocument }) => lensesOf(house, textDocument.uri));
    },
};
export default codeLenses;

export function lensesOf(house: House, uri: string): CodeLens[] {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri);
    const doc = house.doc(uri);
    if (!analysis || !page?.title || !doc || analysis.rig.isLibrary) return [];
    const range = doc.lines.range(page.title.span);
    const count = (s: string) => analysis.findings.filter(f => f.severity === s).length;
    const say = (n: number, word: string) => `${n || 'no'} ${word}${n === 1 ? '' : 's'}`;
    const assumed = assumptionRows(analysis.workings).length;
    return [
        { range, command: { title: `${say(count('error'), 'error')}, ${say(count('warning'), 'warning')}, ${say(count('hint'), 'hint')}`, command: '' } },
        ...(assumed ? [{ range, command: { title: `${assumed} values assumed`, command: '' } }] : []),
        { range, command: { title: 'local codes and licensed practice decide', command: '' } },
    ];
}

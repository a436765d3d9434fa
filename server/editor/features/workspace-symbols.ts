import { SymbolKind, type SymbolInformation } from 'vscode-languageserver';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';

/** An editor's list; more is no help. */
const MOST = 500;

/** Names of parts and values in every file that is known. */
const workspaceSymbols: Feature = {
    name: 'workspace-symbols',
    capabilities: () => ({ workspaceSymbolProvider: true }),
    register(connection, house) {
        connection.onWorkspaceSymbol(({ query }) => namesLike(house, query));
    },
};
export default workspaceSymbols;

/** Letters of the query must stand in a name in their order. */
export function namesLike(house: House, query: string): SymbolInformation[] {
    const letters = [...query.toLowerCase()];
    const fits = (name: string) => {
        let at = -1;
        return letters.every(c => (at = name.toLowerCase().indexOf(c, at + 1)) >= 0);
    };
    const found: SymbolInformation[] = [];
    for (const { uri } of house.allDocs()) {
        const page = house.page(uri);
        for (const p of page?.parts ?? []) if (fits(p.name)) found.push({ name: p.name, kind: SymbolKind.Object, containerName: p.kindWord, location: house.location(p.nameSpan) });
        for (const l of page?.lets ?? []) if (fits(l.name)) found.push({ name: l.name, kind: SymbolKind.Constant, containerName: 'let', location: house.location(l.nameSpan) });
        if (found.length >= MOST) break;
    }
    return found.slice(0, MOST);
}

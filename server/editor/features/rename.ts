import { LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import { lineWords } from '../../../language/grammar/scanner.js';
import { pathEnds } from '../../../language/rig/assemble.js';
import type { Feature } from '../feature.js';
import { nameAt } from '../names.js';
import type { House } from '../house.js';

/** Gives a part or a named value another name everywhere; refuses with a reason a person can use. */
const rename: Feature = {
    name: 'rename',
    capabilities: client => ({ renameProvider: client.textDocument?.rename?.prepareSupport ? { prepareProvider: true } : true }),
    register(connection, house) {
        connection.onPrepareRename(({ textDocument, position }) => {
            const found = nameAt(house, textDocument.uri, position);
            const refusal = found ? refuse(found) : 'Only the name of a part or of a named value can be changed here.';
            if (refusal) throw new ResponseError(LSPErrorCodes.RequestFailed, refusal);
            return { range: house.linesOf(textDocument.uri).range(found!.here), placeholder: found!.name };
        });
        connection.onRenameRequest(({ textDocument, position, newName }) => {
            const found = nameAt(house, textDocument.uri, position);
            const refusal = found ? refuse(found) ?? badName(house, textDocument.uri, found.name, newName) : 'Only the name of a part or of a named value can be changed here.';
            if (refusal) throw new ResponseError(LSPErrorCodes.RequestFailed, refusal);
            const changes: Record<string, { range: ReturnType<ReturnType<House['linesOf']>['range']>; newText: string }[]> = {};
            const part = house.analysis(textDocument.uri)!.rig.parts.get(found!.name);
            for (const p of found!.places) {
                // A part that bears the name of its kind has no name of its own yet: it gets one after its kind.
                const unnamed = p.write && part && !part.named && part.nameSpan.start === p.start && part.file === p.file;
                (changes[p.file] ??= []).push(unnamed
                    ? { range: house.linesOf(p.file).range({ start: p.end, end: p.end }), newText: ` ${newName}` }
                    : { range: house.linesOf(p.file).range(p), newText: newName });
            }
            return { changes };
        });
    },
};
export default rename;

function refuse(found: NonNullable<ReturnType<typeof nameAt>>): string | undefined {
    if (found.shipped) return `${found.name} stands in a library that comes with Rigwright; its name cannot be changed.`;
    if (!found.places.some(p => p.write)) return `${found.name} is not named in a text of its own; write a block for it first.`;
    return undefined;
}
function badName(house: House, uri: string, before: string, name: string): string | undefined {
    if (!/^[\p{L}_][\p{L}\p{N}_]*(?:-[\p{L}\p{N}_]+)*$/u.test(name)) return 'A name begins with a letter and has letters, digits and hyphens only.';
    if ((lineWords as readonly string[]).includes(name) || ['like', 'none', 'unknown', 'x', 'at'].includes(name) || pathEnds.has(name)) return `${name} has a meaning of its own in a rig text.`;
    const { rig } = house.analysis(uri)!;
    if (name !== before && (rig.parts.get(name)?.implied === undefined && (rig.parts.has(name) || rig.lets.has(name)))) return `${name} is taken.`;
    return undefined;
}

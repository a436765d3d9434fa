import { ResponseError, LSPErrorCodes, type TextEdit, type WorkspaceEdit } from 'vscode-languageserver';
import { lineWords } from '../../../language/grammar/scanner.js';
import { pathEnds } from '../../../language/rig/assemble.js';
import { joiningWords } from '../../../language/values/parse-value.js';
import { kinds } from '../../../language/vocabulary/index.js';
import type { Feature } from '../feature.js';
import type { House, Position, Range } from '../house.js';
import { nameAt, type NameAt } from '../names.js';

/** Gives a part or a named value another name everywhere; refuses with a reason that a person can use. */
const rename: Feature = {
    name: 'rename',
    capabilities: client => ({ renameProvider: client.textDocument?.rename?.prepareSupport ? { prepareProvider: true } : true }),
    register(connection, house) {
        const orRefuse = <T>(answer: T | string): T => {
            if (typeof answer === 'string') throw new ResponseError(LSPErrorCodes.RequestFailed, answer);
            return answer;
        };
        connection.onPrepareRename(({ textDocument, position }) => orRefuse(prepareRename(house, textDocument.uri, position)));
        connection.onRenameRequest(({ textDocument, position, newName }) => orRefuse(renameTo(house, textDocument.uri, position, newName.trim())));
    },
};
export default rename;

const NO_NAME = 'There is no name to change here: put the cursor on the name of a part or of a value.';
/** Words with a meaning of their own in a text. */
const taken = new Set<string>([...lineWords, ...joiningWords, ...pathEnds, 'like', 'none', 'unknown', 'yes', 'no', 'each', 'side', 'with', 'during', 'if', 'always', 'never', 'within']);

/** The name and its place, or why it cannot be changed. */
export function prepareRename(house: House, uri: string, position: Position): { range: Range; placeholder: string } | string {
    const found = nameAt(house, uri, position);
    const refusal = found ? whyNot(found) : NO_NAME;
    return refusal ?? { range: house.linesOf(uri).range(found!.here), placeholder: found!.name };
}
/** The edit, or why it cannot be made. */
export function renameTo(house: House, uri: string, position: Position, newName: string): WorkspaceEdit | string {
    const found = nameAt(house, uri, position);
    const refusal = found ? whyNot(found) ?? badName(found, newName) : NO_NAME;
    if (refusal) return refusal;
    const changes: Record<string, TextEdit[]> = {};
    for (const p of found!.places) {
        const lines = house.linesOf(p.file);
        // A part that bears the name of its kind has no name of its own yet: it gets one after its kind.
        const unnamed = found!.part && !found!.part.named && p.write;
        (changes[p.file] ??= []).push(unnamed ? { range: lines.range({ start: p.end, end: p.end }), newText: ` ${newName}` } : { range: lines.range(p), newText: newName });
    }
    return { changes };
}
function whyNot(found: NameAt): string | undefined {
    if (found.shipped) return `${found.name} stands in a library that comes with Rigwright; its name cannot be changed.`;
    if (found.part?.implied || !found.places.some(p => p.write)) return `${found.name} is in no text of its own yet: write ${found.name} { } first, then give it a name.`;
    return undefined;
}
function badName(found: NameAt, name: string): string | undefined {
    if (!/^[\p{L}_][\p{L}\p{N}_]*(?:-[\p{L}\p{N}_]+)*$/u.test(name)) return 'A name begins with a letter and has letters, digits and hyphens only, without blanks.';
    if (taken.has(name)) return `${name} has a meaning of its own in a rig text; take another name.`;
    if (name === found.name) return undefined;
    if (kinds.has(name)) return `${name} is a kind of part; as the name of one it would be misread.`;
    for (const rig of found.rigs) {
        const other = rig.parts.get(name) ?? rig.patterns.get(name);
        if ((other && !other.implied) || rig.lets.has(name)) return `${name} is taken by another ${other ? 'part' : 'value'}; take another name.`;
    }
    return undefined;
}

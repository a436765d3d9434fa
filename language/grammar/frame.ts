/**
 * Text -> frame: the items of a rig text as plain data. The only file that touches Langium's trees.
 *
 * The text is cut at its top-level items; each piece is parsed by Langium once and kept as long as its text stays in
 * the file, so an edit costs the piece it touches. Offsets inside a piece are relative, which is what lets pieces
 * move. This folder never knows a kind, a property or a unit, and never reports that something is wrong.
 */
import './polyfill.js';
import {
    createDefaultCoreModule, createDefaultSharedCoreModule, DefaultTokenBuilder, EmptyFileSystem, inject,
    type CompositeCstNode, type CstNode, type Lexer, type LexerResult, type LeafCstNode,
} from 'langium';
import type { IToken, TokenType as LangiumToken } from 'chevrotain';
import { RigTextGeneratedModule, RigTextGeneratedSharedModule } from './generated/module.js';
import type { Frame as FrameNode, Item as ItemNode } from './generated/ast.js';
import { scan, type LineWord, type Scanned, type Token } from './scanner.js';

/** `at` values are offsets relative to the start of the piece. */
export interface PropertyItem { is: 'property'; start: number; end: number; key: string; value?: string; valueAt: number }
export interface BlockItem {
    is: 'block'; start: number; end: number;
    kind: string; name?: string; nameAt: number; like: boolean; base?: string; baseAt: number;
    /** undefined: no braces. */
    items?: Item[];
    openAt: number;
    /** undefined: the closing brace is missing. */
    closeAt?: number;
}
export interface LineItem { is: 'line'; start: number; end: number; word: LineWord; text?: string; textAt: number }
export interface OddItem { is: 'stray' | 'junk'; start: number; end: number; text: string }
export type Item = PropertyItem | BlockItem | LineItem | OddItem;

export interface Piece { at: number; items: readonly Item[] }
export interface Frame {
    text: string;
    pieces: Piece[];
    notes: { start: number; end: number }[];
}

class RigLexer implements Lexer {
    readonly definition: Record<string, LangiumToken> = {};
    /** Set by `parsePiece`, so that a piece gets exactly the tokens that it has in the whole text. */
    ready: Token[] | undefined;
    constructor(grammar: Parameters<DefaultTokenBuilder['buildTokens']>[0]) {
        for (const type of new DefaultTokenBuilder().buildTokens(grammar, { caseInsensitive: false }) as LangiumToken[]) {
            this.definition[type.name] = type;
        }
    }
    tokenize(text: string): LexerResult {
        const tokens = this.ready ?? scan(text).tokens;
        return { tokens: tokens.map(t => this.langiumToken(text, t)), hidden: [], errors: [] };
    }
    private langiumToken(text: string, t: Token): IToken {
        const tokenType = this.definition[t.type];
        return {
            tokenType, tokenTypeIdx: tokenType.tokenTypeIdx!, image: text.slice(t.start, t.end),
            startOffset: t.start, endOffset: t.end - 1,
            startLine: 1, startColumn: t.start + 1, endLine: 1, endColumn: t.end,
        } as IToken;
    }
}

let lexer: RigLexer | undefined;
function createParser() {
    const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), RigTextGeneratedSharedModule);
    const services = inject(createDefaultCoreModule({ shared }), RigTextGeneratedModule, {
        parser: { Lexer: (s: { Grammar: never }) => (lexer = new RigLexer(s.Grammar)) },
    } as never) as ReturnType<typeof createDefaultCoreModule> extends never ? never : any;
    shared.ServiceRegistry.register(services);
    return services.parser.LangiumParser as { parse(text: string): { value: FrameNode; parserErrors: unknown[] } };
}
let parser: ReturnType<typeof createParser> | undefined;

/** Parses a text whole, by Langium alone. For tests and for pieces; also tells how many parser errors there were (always 0). */
export function parseWhole(text: string, tokens?: Token[]): { items: Item[]; errors: number } {
    parser ??= createParser();
    lexer!.ready = tokens;
    const result = parser.parse(text);
    lexer!.ready = undefined;
    return { items: result.value.items.map(plain), errors: result.parserErrors.length };
}

function leavesOf(node: CstNode): LeafCstNode[] {
    return ((node as CompositeCstNode).content ?? []) as LeafCstNode[];
}
function plain(node: ItemNode): Item {
    const cst = node.$cstNode!;
    const leaves = leavesOf(cst);
    const find = (type: string) => leaves.find(l => l.tokenType?.name === type);
    const range = { start: cst.offset, end: cst.end };
    switch (node.$type) {
        case 'Property':
            return { is: 'property', ...range, key: node.key, value: node.value, valueAt: find('RAW')?.offset ?? range.end };
        case 'Line':
            return { is: 'line', ...range, word: node.word as LineWord, text: node.text, textAt: find('RAW')?.offset ?? range.end };
        case 'Block': {
            const names = leaves.filter(l => l.tokenType?.name === 'NAME');
            const open = find('{');
            const close = find('}');
            return {
                is: 'block', ...range, kind: node.kind, name: node.name, nameAt: node.name !== undefined ? names[0].offset : range.start,
                like: node.like, base: node.base, baseAt: names.at(-1)?.offset ?? range.start,
                items: open ? node.items.map(plain) : undefined, openAt: open?.offset ?? range.end,
                closeAt: close && close.length > 0 ? close.offset : undefined,
            };
        }
        case 'Stray':
            return { is: 'stray', ...range, text: node.text };
        default:
            return { is: 'junk', ...range, text: node.text };
    }
}

/** Reads frames, and remembers the pieces of the last reading of each file. */
export class FrameReader {
    private readonly kept = new Map<string, Map<string, readonly Item[]>>();

    /** @param file any name; pieces are remembered per file */
    read(file: string, text: string): Frame {
        const scanned = scan(text);
        const before = this.kept.get(file);
        const now = new Map<string, readonly Item[]>();
        const pieces: Piece[] = [];
        for (let k = 0; k < scanned.tops.length; k++) pieces.push(this.piece(text, scanned, k, before, now));
        this.kept.set(file, now);
        return { text, pieces, notes: scanned.notes };
    }
    forget(file: string): void {
        this.kept.delete(file);
    }
    private piece(text: string, scanned: Scanned, k: number, before: Map<string, readonly Item[]> | undefined, now: Map<string, readonly Item[]>): Piece {
        const first = scanned.tops[k];
        const last = (scanned.tops[k + 1] ?? scanned.tokens.length) - 1;
        const at = scanned.tokens[first].start;
        let end = at;
        for (let t = first; t <= last; t++) end = Math.max(end, scanned.tokens[t].end);
        const slice = text.slice(at, end);
        // The same characters can be tokens of another kind in another place (a `}` that closes nothing): the first type tells them apart.
        const key = `${scanned.tokens[first].type}${last - first}\n${slice}`;
        let items = now.get(key) ?? before?.get(key);
        if (!items) {
            const tokens = scanned.tokens.slice(first, last + 1).map(t => ({ type: t.type, start: Math.min(t.start, end) - at, end: Math.min(t.end, end) - at }));
            items = parseWhole(slice, tokens).items;
        }
        now.set(key, items);
        return { at, items };
    }
}

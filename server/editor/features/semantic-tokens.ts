import { SemanticTokensBuilder } from 'vscode-languageserver';
import { walk } from '../../../language/values/parse-value.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { pageIn } from '../spot.js';

const types = ['class', 'property', 'variable', 'number', 'type', 'enumMember', 'keyword', 'function'] as const;
const modifiers = ['declaration', 'defaultLibrary'] as const;
type TokenName = (typeof types)[number];

/** Colours by meaning: kind of part, property, name, number, unit, word, what is worked out. */
const semanticTokens: Feature = {
    name: 'semantic-tokens',
    capabilities: () => ({ semanticTokensProvider: { legend: { tokenTypes: [...types], tokenModifiers: [...modifiers] }, full: true, range: true } }),
    register(connection, house) {
        connection.languages.semanticTokens.on(({ textDocument }) => build(house, textDocument.uri, 0, Infinity));
        connection.languages.semanticTokens.onRange(({ textDocument, range }) => build(house, textDocument.uri, range.start.line, range.end.line));
    },
};
export default semanticTokens;

export interface SemanticToken { start: number; end: number; type: TokenName; modifier: number }
export function tokensOf(house: House, uri: string): SemanticToken[] {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri) ?? house.page(uri);
    if (!page) return [];
    const tokens: SemanticToken[] = [];
    const put = (start: number, end: number, type: TokenName, modifier = 0) => end > start && tokens.push({ start, end, type, modifier });
    const names = (n: string) => analysis?.rig.parts.has(n) || analysis?.rig.patterns.has(n) || analysis?.rig.lets.has(n);
    const value = (v: { list: readonly (readonly import('../../../language/values/parse-value.js').Node[])[] } | undefined, at: number) => {
        if (!v) return;
        for (const sequence of v.list) {
            for (const node of sequence) {
                walk(node, n => {
                    if (n.is === 'number') put(at + n.start, at + n.end, 'number');
                    else if (n.is === 'quantity') {
                        if (n.unitStart > n.start) put(at + n.start, at + Math.max(n.start, n.unitStart), 'number');
                        put(at + n.unitStart, at + n.end, 'type');
                    } else if (n.is === 'date' || n.is === 'clock') put(at + n.start, at + n.end, 'number');
                    else if (n.is === 'unit') put(at + n.start, at + n.end, 'type');
                    else if (n.is === 'name') {
                        if (n.names.length === 1) put(at + n.start, at + n.end, names(n.names[0]) ? 'variable' : 'enumMember');
                        else {
                            const first = at + n.start + n.names[0].length;
                            put(at + n.start, first, 'variable');
                            put(first + 1, at + n.end, 'function');
                        }
                    } else if (n.is === 'word') put(at + n.start, at + n.end, 'keyword');
                });
            }
        }
    };
    for (const p of page.parts) {
        put(p.kindSpan.start, p.kindSpan.end, 'class', p.kind ? 2 : 0);
        if (p.named) put(p.nameSpan.start, p.nameSpan.end, 'variable', 1);
        if (p.base) put(p.base.span.start, p.base.span.end, 'variable');
        for (const e of p.entries.values()) {
            put(e.keySpan.start, e.keySpan.end, 'property');
            value(e.value, e.span.start);
        }
    }
    for (const l of page.lets) {
        put(l.nameSpan.start, l.nameSpan.end, 'variable', 1);
        value(l.value, l.span.start);
    }
    for (const p of page.paths) {
        put(p.mediumSpan.start, p.mediumSpan.end, 'enumMember');
        for (const s of p.stops) put(s.span.start, s.span.end, 'variable');
    }
    for (const e of page.expects) value(e.value, e.valueSpan.start);
    for (const a of page.allows) put(a.ruleSpan.start, a.ruleSpan.end, 'function');
    return tokens.sort((a, b) => a.start - b.start).filter((t, i, all) => !i || t.start >= all[i - 1].end);
}
function build(house: House, uri: string, from: number, to: number) {
    const doc = house.doc(uri);
    const builder = new SemanticTokensBuilder();
    if (doc) {
        for (const t of tokensOf(house, uri)) {
            const { start, end } = doc.lines.range(t);
            if (start.line >= from && end.line <= to && start.line === end.line) builder.push(start.line, start.character, end.character - start.character, types.indexOf(t.type), t.modifier);
        }
    }
    return builder.build();
}

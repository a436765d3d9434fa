import { SemanticTokensBuilder, type SemanticTokens } from 'vscode-languageserver';
import { quantityOf } from '../../../language/quantities/index.js';
import { momentary } from '../../../language/vocabulary/momentary.js';
import { walk, type ParsedValue } from '../../../language/values/parse-value.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { meaningOf } from '../names.js';

const types = ['class', 'property', 'variable', 'number', 'type', 'enumMember', 'keyword', 'function', 'unknown'] as const;
const modifiers = ['declaration', 'defaultLibrary'] as const;
export type TokenName = (typeof types)[number];
const DECLARATION = 1;
const OWN_WORD = 2;

/** Colours by meaning: kind of part, property, name, number, unit, word, what is worked out, what is not known. */
const semanticTokens: Feature = {
    name: 'semantic-tokens',
    capabilities: client => (client.textDocument?.semanticTokens ? { semanticTokensProvider: { legend: { tokenTypes: [...types], tokenModifiers: [...modifiers] }, full: true, range: true } } : {}),
    register(connection, house) {
        connection.languages.semanticTokens.on(({ textDocument }) => build(house, textDocument.uri, 0, Infinity));
        connection.languages.semanticTokens.onRange(({ textDocument, range }) => build(house, textDocument.uri, range.start.line, range.end.line));
    },
};
export default semanticTokens;

export interface SemanticToken {
    readonly start: number;
    readonly end: number;
    readonly type: TokenName;
    readonly modifier: number;
}
export function tokensOf(house: House, uri: string): SemanticToken[] {
    const sight = house.sight(uri);
    if (!sight) return [];
    const { page, analysis: { rig } } = sight;
    const tokens: SemanticToken[] = [];
    const put = (start: number, end: number, type: TokenName, modifier = 0) => {
        if (end > start) tokens.push({ start, end, type, modifier });
    };
    const name = (names: readonly string[], start: number, end: number, otherwise: TokenName) => {
        const meant = meaningOf(rig, page, names[0]);
        if (names.length === 1) return put(start, end, meant ? 'variable' : otherwise);
        const first = start + names[0].length;
        put(start, first, meant ? 'variable' : 'unknown');
        const second = names.slice(1).join('.');
        const computed = meant && 'kindWord' in meant && (quantityOf(meant.kindWord).has(second) || (!meant.kind?.properties[names[1]] && momentary.has(second)));
        put(first + 1, end, computed ? 'function' : meant && 'kindWord' in meant && meant.kind?.properties[names[1]] ? 'property' : 'unknown');
    };
    /** @param words the value is words that name no part: the step `wet separator`, the sort `converter` */
    const value = (v: ParsedValue | undefined, at: number, words = false) => {
        for (const sequence of v?.list ?? []) {
            for (const node of sequence) {
                walk(node, n => {
                    if (n.is === 'number' || n.is === 'date' || n.is === 'clock') put(at + n.start, at + n.end, 'number');
                    else if (n.is === 'quantity') {
                        // AWG stands before its number.
                        const split = n.unitStart > n.start ? n.unitStart : n.start + n.unit.text.length;
                        put(at + n.start, at + split, n.unitStart > n.start ? 'number' : 'type');
                        put(at + split, at + n.end, n.unitStart > n.start ? 'type' : 'number');
                    } else if (n.is === 'unit') put(at + n.start, at + n.end, 'type');
                    else if (n.is === 'name') words ? put(at + n.start, at + n.end, 'enumMember') : name(n.names, at + n.start, at + n.end, 'enumMember');
                    else if (n.is === 'word') put(at + n.start, at + n.end, 'keyword');
                    else if (n.is === 'call') put(at + n.start, at + n.start + n.name.length, 'function');
                });
            }
        }
    };
    for (const p of page.parts) {
        put(p.kindSpan.start, p.kindSpan.end, p.kind ? 'class' : 'unknown', p.kind ? OWN_WORD : 0);
        if (p.named) put(p.nameSpan.start, p.nameSpan.end, 'variable', DECLARATION);
        if (p.base) put(p.base.span.start, p.base.span.end, meaningOf(rig, page, p.base.name) ? 'variable' : 'unknown');
        for (const e of p.entries.values()) {
            const dotted = e.key.split('.');
            if (e.property || !p.kind) put(e.keySpan.start, e.keySpan.end, 'property');
            else if (dotted.length > 1) name(dotted, e.keySpan.start, e.keySpan.end, 'unknown');
            else put(e.keySpan.start, e.keySpan.end, meaningOf(rig, page, e.key) ? 'variable' : 'unknown');
            value(e.value, e.span.start, e.property?.items.every(i => i.every(a => typeof a === 'string' || a.type === 'text' || (typeof a.type === 'object' && 'words' in a.type))));
        }
    }
    for (const l of page.lets) {
        put(l.nameSpan.start, l.nameSpan.end, 'variable', DECLARATION);
        value(l.value, l.span.start);
    }
    for (const p of page.paths) {
        put(p.mediumSpan.start, p.mediumSpan.end, 'enumMember');
        for (const s of p.stops) put(s.span.start, s.span.start + s.name.length, meaningOf(rig, page, s.name) ? 'variable' : 'enumMember');
    }
    for (const e of page.expects) value(e.value, e.valueSpan.start);
    for (const a of page.allows) {
        put(a.ruleSpan.start, a.ruleSpan.end, 'function');
        if (a.on) put(a.on.span.start, a.on.span.end, meaningOf(rig, page, a.on.name) ? 'variable' : 'unknown');
    }
    let end = 0;
    return tokens.sort((a, b) => a.start - b.start || a.end - b.end).filter(t => t.start >= end && (end = t.end) > 0);
}
function build(house: House, uri: string, from: number, to: number): SemanticTokens {
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

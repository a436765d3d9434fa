import { readFileSync } from 'node:fs';

/** A stretch of a line and the scope that colours it. */
export interface Coloured {
    text: string;
    scope: string;
}

interface Rule {
    match?: string;
    name?: string;
    captures?: Record<string, { name: string }>;
    include?: string;
}

const grammar = JSON.parse(readFileSync(new URL('../../extension/syntaxes/rig.tmLanguage.json', import.meta.url), 'utf8')) as {
    patterns: Rule[];
    repository: Record<string, Rule>;
};
const rules = grammar.patterns.map(({ include }) => {
    const rule = grammar.repository[include!.slice(1)];
    if (!rule.match || Object.keys(rule).some(key => !['match', 'name', 'captures'].includes(key))) {
        throw new Error(`${include}: only rules of one line are expected in this grammar`);
    }
    return { ...rule, pattern: new RegExp(rule.match, 'dgu') };
});

/**
 * What the TextMate grammar colours on one line: the leftmost match wins, the earlier rule among equals. The grammar
 * has rules of one line only, so this is all that an editor does with it.
 */
export function tokenise(line: string): Coloured[] {
    const result: Coloured[] = [];
    for (let from = 0; from < line.length;) {
        const { match, rule } = leftmost(line, from);
        if (!match || !rule) break;
        if (rule.name) result.push({ text: match[0], scope: rule.name });
        for (const [group, { name }] of Object.entries(rule.captures ?? {})) {
            const place = match.indices![Number(group)];
            if (place) result.push({ text: line.slice(...place), scope: name });
        }
        from = match.index + Math.max(1, match[0].length);
    }
    return result;
}

function leftmost(line: string, from: number) {
    let best: { match?: RegExpExecArray; rule?: (typeof rules)[number] } = {};
    for (const rule of rules) {
        rule.pattern.lastIndex = from;
        const match = rule.pattern.exec(line);
        if (match && (!best.match || match.index < best.match.index)) best = { match, rule };
    }
    return best;
}

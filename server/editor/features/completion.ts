/** What may come next, from the vocabulary and the rig: never a second parse. */
import { CompletionItemKind, CompletionTriggerKind, InsertTextFormat, type CompletionItem } from 'vscode-languageserver';
import { namesAfterPoint } from '../../../language/quantities/check-names.js';
import { quantityOf } from '../../../language/quantities/index.js';
import { explain, propertyText } from '../../../language/reference/explain.js';
import { templates } from '../../../language/reference/templates.js';
import { showResult } from '../../../language/reference/values.js';
import { pathEnds, shippedNames } from '../../../language/rig/assemble.js';
import { levels, stages, type Page, type Part, type Rig } from '../../../language/rig/rig.js';
import { allRules } from '../../../language/rules/index.js';
import { gasDifference, measures, type MeasureName } from '../../../language/units/dimension.js';
import { unitOf } from '../../../language/units/unit.js';
import { parseValue } from '../../../language/values/parse-value.js';
import { media, type Kind, type Medium, type Property, type SlotType } from '../../../language/vocabulary/define.js';
import { kinds } from '../../../language/vocabulary/index.js';
import { momentary } from '../../../language/vocabulary/momentary.js';
import type { Analysis } from '../../../language/index.js';
import type { Feature } from '../feature.js';
import type { House, Position } from '../house.js';
import { nextInValue } from '../next-in-value.js';
import { markup, plainTemplate } from '../plain-text.js';
import { quietAt } from '../spot.js';

const completion: Feature = {
    name: 'completion',
    capabilities: () => ({ completionProvider: { triggerCharacters: [':', '.', ' ', '>', '"'], resolveProvider: false } }),
    register(connection, house) {
        connection.onCompletion(({ textDocument, position, context }) =>
            completionsAt(house, textDocument.uri, position, context?.triggerKind === CompletionTriggerKind.TriggerCharacter ? context.triggerCharacter : undefined));
    },
};
export default completion;

/** A suggestion before it is fitted to the place and the client. */
interface Idea {
    readonly label: string;
    readonly kind: CompletionItemKind;
    /** What is put in; the label if left out. */
    readonly text?: string;
    /** `text` has tab stops. */
    readonly template?: boolean;
    readonly detail?: string;
    readonly doc?: string;
    /** Small first. */
    readonly rank?: number;
    /** Opens the list again behind it: after `part.`. */
    readonly again?: boolean;
    /** Replaces as many characters before the cursor; the word being typed if left out. */
    readonly over?: number;
}
/** A blank opens the list by itself only where something is expected. */
const expectsMore = /(?:[:>,]|\d|\b(?:allow|weigh|as|on|use|path|like|expect|until|with|during|if|and|or|at))\s$/;

/** @param trigger the character that opened the list by itself, if one did */
export function completionsAt(house: House, uri: string, position: Position, trigger?: string): CompletionItem[] {
    const sight = house.sight(uri);
    if (!sight) return [];
    const { doc, page, analysis } = sight;
    const line = doc.lines.lineText(position.line);
    const before = line.slice(0, position.character);
    const quiet = quietAt(line, before.length);
    if (quiet === 'comment' || (quiet === 'quoted' && !/^\s*use\s+"[^"]*$/.test(before))) return [];
    if (trigger === ' ' && !expectsMore.test(before)) return [];
    if (trigger === '>' && !/->$/.test(before)) return [];
    if (trigger === '"' && !/^\s*use\s+"$/.test(before)) return [];
    const ideas = new Completer(house, analysis, page, doc.lines.offset({ line: position.line, character: before.length }), before, line.slice(before.length)).ideas();
    const can = house.client.textDocument?.completion?.completionItem;
    const word = /[\p{L}\p{N}_-]*$/u.exec(before)![0].length;
    const seen = new Set<string>();
    return ideas.filter(i => !seen.has(i.label) && seen.add(i.label)).map((i, n) => {
        const over = i.over ?? word;
        const snippet = !!i.template && !!can?.snippetSupport;
        const item: CompletionItem = {
            label: i.label, kind: i.kind, sortText: `${String(i.rank ?? 5).padStart(2, '0')}${String(n).padStart(4, '0')}`, filterText: i.label,
            textEdit: { range: { start: { line: position.line, character: before.length - over }, end: position }, newText: i.template && !snippet ? plainTemplate(i.text ?? i.label) : i.text ?? i.label },
        };
        if (snippet) item.insertTextFormat = InsertTextFormat.Snippet;
        if (i.detail) item.detail = i.detail;
        if (i.doc) item.documentation = markup(i.doc, can?.documentationFormat);
        if (i.again && house.ownClient) item.command = { title: 'more', command: 'editor.action.triggerSuggest' };
        return item;
    });
}

/** Where values stand that are lined up, counted from the start of their key. */
const COLUMN = 18;
const NAME = '[\\p{L}_][\\p{L}\\p{N}_-]*';
const driving = new Set([
    'switch', 'trip', 'contactor', 'relay', 'timer', 'button', 'stop-button', 'analyser', 'detector', 'solid-state-relay', 'controller',
    'override', 'sensor',
]);
/** In the order in which a rig is usually written down. */
const groupOrder = ['current', 'cells', 'low side', 'use', 'world', 'high side', 'control', 'records', 'statements'] as const;
const usualEnds: Record<Medium, readonly string[]> = { hydrogen: ['outdoors', 'room', 'plugged', 'user'], oxygen: ['outdoors', 'room', 'plugged'], lye: ['drain', 'plugged'], water: ['tap', 'drain'], current: ['mains'] };
/** Gas and lye come from the stack, current from what feeds it. */
const beginsPath = (medium: Medium, kind: string) => (medium === 'current' ? ['battery', 'supply', 'transformer', 'panels'].includes(kind) : medium !== 'water' && kind === 'stack');
/** What a switch or trip usually watches. */
const watched = new Set(['bag', 'gasometer', 'stack', 'column', 'cylinder', 'bubbler', 'compressor', 'cooler', 'lye']);
/** Numbers that makers ask for first. */
const askedFirst = ['hydrogen-rate', 'volts-per-cell', 'temperature', 'current', 'voltage'];
const onEveryPart = new Set(['note', 'source', 'price', 'only-in']);

/** What a kind is, and what its template asks for: the words that stand to be chosen there say too little by themselves. */
function asked(kind: Kind): string {
    const lines = (kind.template ?? []).map(line => kind.properties[line.slice(0, line.indexOf(':'))]).filter(p => p);
    return [kind.doc, lines.map(p => `- ${p.name}: ${/^.*?[.?](?= |$)/.exec(p.doc)?.[0] ?? p.doc}`).join('\n')].filter(Boolean).join('\n\n');
}

class Completer {
    private readonly rig: Rig;
    constructor(
        private readonly house: House, private readonly analysis: Analysis, private readonly page: Page, private readonly offset: number,
        private readonly before: string, private readonly behind: string,
    ) {
        this.rig = analysis.rig;
    }
    ideas(): Idea[] {
        const { before } = this;
        let m: RegExpExecArray | null;
        if ((m = /^\s*use\s+("?)([^"]*)$/.exec(before))) return this.files(m[1] === '"', m[2]);
        if (/^\s*rig\s+"[^"]*"\s*,\s*[\w-]*$/.test(before)) return stages.map((s, n) => ({ label: s, kind: CompletionItemKind.EnumMember, doc: explain(s)?.markdown.replace(/^#[^\n]*\n+/, ''), rank: n }));
        if (/^\s*(?:rig|library)\s/.test(before)) return [];
        if ((m = /^\s*path\s+(.*)$/.exec(before))) return this.path(m[1]);
        const going = this.openPath();
        if (going) return this.stops(going.medium, going.last);
        if ((m = /^\s*allow\s+(.*)$/.exec(before))) return this.allow(m[1]);
        if ((m = /^\s*weigh\s+(.*)$/.exec(before))) return this.weigh(m[1]);
        if ((m = /^\s*expect\s+(.*)$/.exec(before))) return this.expectation(m[1]);
        if ((m = new RegExp(`^\\s*let\\s+${NAME}\\s*=\\s*(.*)$`, 'u').exec(before))) return this.expression(m[1]);
        if (/^\s*let\s/.test(before)) return [];
        const part = this.blockHere();
        if (part?.kind) return this.inside(part, part.kind);
        if ((m = new RegExp(`^\\s*(${NAME})(?:\\s+${NAME})?\\s+like\\s+[\\p{L}\\p{N}_-]*$`, 'u').exec(before))) return this.alike(m[1]);
        if ((m = new RegExp(`^\\s*(${NAME})(?:\\s+${NAME})?\\s+[a-z]*$`, 'u').exec(before)) && kinds.has(m[1])) {
            if (!this.alike(m[1]).length) return [];
            return [{ label: 'like', kind: CompletionItemKind.Keyword, text: 'like ', again: true, doc: 'Copies the properties of another part of the same kind.' }];
        }
        if (/^\s*[\p{L}\p{N}_-]*$/u.test(before)) return this.lineStart();
        return [];
    }

    // ---- where a line begins --------------------------------------------------------------------------------------

    private lineStart(): Idea[] {
        const later = this.inAYear();
        const words: [string, string, string][] = [
            ['expect', 'expect ${1:stack.volts-per-cell} < ${2:2.2 V}', 'A requirement of your own, checked as you type.'],
            ['let', 'let ${1:name} = ${2:value}', 'A named value.'],
            ['use', 'use "${1:parts.rig}"', 'Another file of this rig, or a library.'],
            ['allow', `allow \${1:rule} on \${2:part} until \${3:${later}} by \${4:name} because "\${5:reason}"`, 'Turns a rule down, with a reason and an end.'],
            ['weigh', 'weigh ${1:rule} as ${2|hint,warning,error,nothing|} because "${3:reason}"', 'Gives the findings of a rule another weight.'],
        ];
        if (!this.page.title) {
            words.unshift(
                ['rig', 'rig "${1:Title}", ${2|idea,drawn,built,running,retired|}', 'The title line: name and stage.'],
                ['library', 'library "${1:Title}"', 'A file of patterns, in no rig until like names them.'],
            );
        }
        const present = new Set([...this.rig.parts.values()].filter(p => !p.implied).map(p => p.kind));
        // What no rig gives numbers without comes first while it is missing.
        const needed = ['supply', 'lye', 'stack', ...(present.has(kinds.get('stack')!) ? ['separator', 'column', 'bubbler', 'site'] : [])];
        const fed = present.has(kinds.get('battery')!) ? needed.filter(n => n !== 'supply') : needed;
        const rank = (k: Kind) => {
            const there = present.has(k);
            return !there && fed.includes(k.name) ? 1 : 2 + (there && (k.single || k.always) ? 12 : there ? 2 : 0) + groupOrder.indexOf(k.group);
        };
        const blank = !this.page.text.trim() || /^\s*[\p{L}-]*\s*$/u.test(this.page.text);
        return [
            ...(blank ? templates.map(t => ({ label: `rig: ${t.name}`, kind: CompletionItemKind.Snippet, text: t.text, detail: t.title, doc: t.description, rank: 1 })) : []),
            { label: 'path', kind: CompletionItemKind.Keyword, text: 'path ', again: true, doc: 'What is joined to what, in order: path hydrogen: stack -> bubbler -> burner.', rank: this.page.title ? 5 : 2 },
            ...words.map(([label, text, doc], n) => ({ label, kind: CompletionItemKind.Keyword, text, template: true, doc, rank: this.page.title || n > 1 ? 5 : n ? 2 : 0 })),
            ...[...kinds.values()].sort((a, b) => (needed.indexOf(a.name) + 100) % 100 - (needed.indexOf(b.name) + 100) % 100).map(k => ({ label: k.name, kind: CompletionItemKind.Class, text: this.block(k), template: true, detail: k.group, doc: asked(k), rank: rank(k) })),
        ];
    }
    /** A new part of a kind, with its usual lines. The name comes first where it needs one. */
    private block(kind: Kind): string {
        const namesake = this.rig.parts.get(kind.name);
        const nameless = (kind.single || kind.always || kind.group === 'cells' || kind.group === 'current') && (!namesake || namesake.implied);
        let name = '';
        if (!nameless) {
            let n = 1;
            while (this.rig.parts.has(`${kind.name}-${n}`)) n++;
            name = ` \${1:${kind.name}-${n}}`;
        }
        if (!kind.template?.length) return Object.keys(kind.properties).length <= onEveryPart.size + 2 ? `${kind.name}${name}` : `${kind.name}${name} {\n  $0\n}`;
        const lines = (kind.template ?? []).map(l => this.ofThisRig(l));
        const shifted = nameless ? lines : lines.map(l => l.replace(/\$\{(\d+)/g, (_, n: string) => `\${${Number(n) + 1}`));
        return `${kind.name}${name} {\n${shifted.map(l => {
            const key = l.slice(0, l.indexOf(':'));
            return `  ${keyed(key, unclaimed(kind.properties[key], l.slice(l.indexOf(':') + 1).trim()))}`;
        }).join('\n')}\n}`;
    }
    /** A template speaks of `bag.volume`; where the rig has a bag by another name, that one is meant. */
    private ofThisRig(line: string): string {
        return line.replace(/\$\{(\d+):([a-z][a-z0-9-]*)\./g, (all, n: string, word: string) => {
            if (!kinds.has(word) || this.rig.parts.has(word)) return all;
            const part = [...this.rig.parts.values()].find(p => p.kindWord === word && !p.pattern);
            return part ? `\${${n}:${part.name}.` : all;
        });
    }
    private alike(kindWord: string): Idea[] {
        return [...this.rig.parts.values(), ...this.rig.patterns.values()].filter(p => p.kindWord === kindWord && !p.implied).map(p => this.partIdea(p));
    }
    private files(quoted: boolean, typed: string): Idea[] {
        const folder = this.page.file.slice(0, this.page.file.lastIndexOf('/') + 1);
        const known = new Set([...this.house.neighbours(this.page.file), ...[...this.house.allDocs()].map(d => d.uri)]);
        const names = [...known].filter(u => u !== this.page.file && u.startsWith(folder)).map(u => decode(u.slice(folder.length))).sort();
        const over = quoted ? typed.length : undefined;
        return [
            ...names.map(f => ({ label: f, kind: CompletionItemKind.File, text: quoted ? f : `"${f}"`, over, rank: 1 })),
            ...(quoted ? [] : shippedNames().map(n => ({ label: n, kind: CompletionItemKind.Module, doc: 'A library that comes with Rigwright.' }))),
        ];
    }

    // ---- paths ------------------------------------------------------------------------------------------------------

    private path(rest: string): Idea[] {
        if (/^[\p{L}-]*$/u.test(rest)) return media.map(m => ({ label: m, kind: CompletionItemKind.EnumMember, text: this.behind.trimStart().startsWith(':') ? m : `${m}: `, again: true }));
        const medium = rest.split(':')[0].trim() as Medium;
        const stops = rest.slice(rest.indexOf(':') + 1).split('->').map(s => s.trim());
        if (stops.length > 1 || /:\s*[\p{L}\p{N}_.-]*$/u.test(rest)) {
            // Behind a whole name and a blank comes the arrow.
            if (/[\p{L}\p{N}_-]\s+$/u.test(rest)) return [{ label: '->', kind: CompletionItemKind.Operator, text: '-> ', again: true }];
            return this.stops(medium, stops.at(-2));
        }
        return /[\p{L}\p{N}_-]\s+$/u.test(rest) ? [{ label: '->', kind: CompletionItemKind.Operator, text: '-> ', again: true }] : [];
    }
    /** A path that goes on from a line before. */
    private openPath(): { medium: Medium; last: string | undefined } | undefined {
        if (!/^\s*(?:[\p{L}\p{N}_.-]+\s*->\s*)*[\p{L}\p{N}_.-]*$/u.test(this.before)) return undefined;
        const upTo = this.page.text.slice(Math.max(0, this.offset - 2000), this.offset);
        const m = /(?:^|\n)[ \t]*path[ \t]+([\p{L}-]+)[ \t]*:([^:{}"]*)$/u.exec(upTo);
        if (!m || !/->\s*(?:#[^\n]*)?\n[ \t]*(?:[\p{L}\p{N}_.-]+\s*->\s*)*[\p{L}\p{N}_.-]*$/u.test(m[2]) || /\n\s*\n/.test(m[2])) return undefined;
        return { medium: m[1] as Medium, last: m[2].split('->').map(s => s.trim()).at(-2) };
    }
    private stops(medium: Medium, last: string | undefined): Idea[] {
        const used = new Set(this.rig.paths.filter(p => p.medium === medium).flatMap(p => p.stops.map(s => s.name)));
        const fits = [...this.rig.parts.values()].filter(p => !p.pattern && !p.implied && p.kind?.on.includes(medium) && p.name !== last);
        const stacks = medium === 'lye' ? [...this.rig.parts.values()].filter(p => p.kindWord === 'stack') : [];
        const ports = stacks.flatMap(p => ['hydrogen', 'oxygen'].map(side => `${p.name}.${side}`));
        const word = /[\p{L}\p{N}_.-]*$/u.exec(this.before)![0].length;
        return [
            ...fits.map(p => ({ ...this.partIdea(p), rank: last === undefined && beginsPath(medium, p.kindWord) ? 1 : used.has(p.name) ? 4 : 3 })),
            ...ports.map(label => ({ label, kind: CompletionItemKind.Field, over: word, rank: 4 })),
            ...[...pathEnds].map(e => ({ label: e, kind: CompletionItemKind.EnumMember, detail: 'where the path ends', rank: last === undefined && !(medium === 'current' || medium === 'water') ? 9 : usualEnds[medium]?.includes(e) ? 5 : 9 })),
            ...[...kinds.values()].filter(k => k.on.includes(medium) && !fits.some(p => p.name === k.name)).map(k => ({ label: k.name, kind: CompletionItemKind.Class, detail: 'a part of this kind, all of it assumed', doc: k.doc, rank: last === undefined && beginsPath(medium, k.name) ? 2 : 6 })),
        ];
    }

    // ---- permissions and expectations -----------------------------------------------------------------------------

    private allow(rest: string): Idea[] {
        if (/^[\w-]*$/.test(rest)) {
            const told = new Set(this.analysis.findings.map(f => f.rule));
            return allRules.filter(r => r.check).map(r => ({
                label: r.name, kind: CompletionItemKind.Function, detail: r.severity, doc: r.summary, rank: told.has(r.name) ? 1 : 5,
            }));
        }
        if (/\bon\s+[\p{L}\p{N}_-]*$/u.test(rest)) return this.parts(p => !p.kind?.statement);
        if (/\buntil\s+[\d-]*$/.test(rest)) return [{ label: this.inAYear(), kind: CompletionItemKind.Value, detail: 'a year from now', over: /[\d-]*$/.exec(rest)![0].length }];
        if (/\b(?:by|because)\s+\S*$/.test(rest)) return [];
        return [['on', 'on ${1:part}'], ['until', `until \${1:${this.inAYear()}}`], ['by', 'by ${1:name}'], ['because', 'because "${1:reason}"']]
            .filter(([w]) => !new RegExp(`\\b${w}\\b`).test(rest))
            .map(([label, text]) => ({ label, kind: CompletionItemKind.Keyword, text, template: true }));
    }
    private weigh(rest: string): Idea[] {
        if (/^[\w-]*$/.test(rest)) return this.allow(rest);
        if (/\bas\s+\w*$/.test(rest)) return levels.map((label, rank) => ({ label, kind: CompletionItemKind.EnumMember, rank }));
        if (/\bon\s+[\p{L}\p{N}_-]*$/u.test(rest)) return this.parts(p => !p.kind?.statement);
        if (/\bbecause\s+\S*$/.test(rest)) return [];
        return [['as', 'as ${1|hint,warning,error,nothing|}'], ['on', 'on ${1:part}'], ['because', 'because "${1:reason}"']]
            .filter(([w]) => !new RegExp(`\\b${w}\\b`).test(rest)).map(([label, text]) => ({ label, kind: CompletionItemKind.Keyword, text, template: true }));
    }
    private expectation(rest: string): Idea[] {
        const parts = (of: (p: Part) => boolean) => this.parts(of);
        if (/^with\s+(?:[^:]*,\s*)?[\p{L}\p{N}_-]*$/u.test(rest)) return parts(p => p.kindWord === 'variant');
        if (/^during\s+[\p{L}\p{N}_-]*$/u.test(rest)) return parts(p => p.kindWord === 'scenario');
        const happening = new RegExp(`^if\\s+(${NAME})\\s+([\\p{L} -]*)$`, 'u').exec(rest);
        if (happening) return this.can(happening[1], 'events', happening[2].length);
        if (/^if\s+[\p{L}\p{N}_-]*$/u.test(rest)) return parts(p => !!p.kind?.events.length);
        const clause = rest.slice(/^(?:with|during|if)\b/.test(rest) ? rest.indexOf(':') + 1 : 0).split(',').at(-1)!.trimStart();
        const timed = /^(?:always|never|before \d{1,2}:\d{2}|at end|at \d{1,2}:\d{2}|within \S+ \S+(?: of \d{1,2}:\d{2})?|after \S+ \S+|from \d{1,2}:\d{2} to \d{1,2}:\d{2}(?: always| never)?)\s+(.*)$/.exec(clause)?.[1];
        const state = new RegExp(`^(${NAME})\\s+(?:not\\s+)?([\\p{L} -]*)$`, 'u').exec(timed ?? (/:/.test(rest) ? clause : ''));
        if (state && this.rig.parts.has(state[1])) return [...this.can(state[1], 'states', state[2].length), { label: 'not', kind: CompletionItemKind.Keyword, text: 'not ' }];
        const ideas = this.expression(timed ?? clause);
        if (rest.trim() && !/:\s*$/.test(rest)) return ideas;
        const when = rest.trim() ? [] : [
            ['with', 'with ${1:variant}: ${2}', 'In a variant of the rig.'],
            ['if', 'if ${1:part} ${2:lost}: ${3}', 'After something has happened.'],
            ['during', 'during ${1:scenario}: ${2}', 'While a scenario runs.'],
        ];
        const times = [
            ['always', 'always ${1}', 'At all times.'], ['never', 'never ${1}', 'At no time.'],
            ['within', 'within ${1:2 s} ${2}', 'At the latest then.'], ['before', 'before ${1:12:00} ${2}', 'At some time before.'], ['at end', 'at end ${1}', 'When the scenario is over.'],
        ];
        return [...ideas, ...[...when, ...times].map(([label, text, doc]) => ({ label, kind: CompletionItemKind.Keyword, text, template: true, doc, rank: 6 }))];
    }
    /** What a part can be, or what can befall it: may be several words. */
    private can(name: string, what: 'states' | 'events', over: number): Idea[] {
        const kind = this.rig.parts.get(name)?.kind;
        const first = kind?.[what] ?? [];
        return [...first, ...(what === 'states' ? kind?.events ?? [] : [])].map((label, n) => ({ label, kind: CompletionItemKind.EnumMember, over, rank: n < first.length ? 3 : 5 }));
    }
    /** Arithmetic on names: a part's numbers after its point, units after a number. */
    private expression(typed: string): Idea[] {
        const after = this.afterPoint(typed);
        if (after) return after;
        // The unit follows what is compared or added: the number named last.
        const named = [...typed.matchAll(new RegExp(`(${NAME})\\.([\\p{L}][\\p{L}\\p{N}_.-]*)`, 'gu'))].at(-1);
        const part = named && this.rig.parts.get(named[1]);
        const measure = part && this.measureOf(part, named[2]);
        const units = this.units(typed, measure ? [measure] : undefined, measure && part ? quantityOf(part.kindWord).get(named[2])?.unit : undefined);
        if (units) return units;
        if (/[\p{L}\p{N}_]\s+[\p{L}]*$/u.test(typed) && !/(?:\b(?:and|between)|[-<>=+*/(])\s*[\p{L}]*$/u.test(typed)) {
            return [['<', 'less than'], ['>', 'more than'], ['between', 'between … and …']].filter(([w]) => !typed.includes(w)).map(([label, detail]) => {
                const between = label === 'between';
                return { label, kind: CompletionItemKind.Operator, text: between ? 'between ${1} and ${2}' : `${label} `, template: between, detail };
            });
        }
        return [...this.parts(p => !p.kind?.statement, '.'), ...this.lets()];
    }

    // ---- in a block -------------------------------------------------------------------------------------------------

    /** The part in whose block the cursor is; a block that nobody has closed yet reaches to the next line that begins something. */
    private blockHere(): Part | undefined {
        const { text } = this.page;
        let found: Part | undefined;
        for (const p of this.page.parts) {
            if (!p.inside || p.inside.start > this.offset) continue;
            const closed = text[p.inside.end] === '}';
            if (this.offset <= p.inside.end || (!closed && !text.slice(p.inside.end, this.offset).trim())) found = p;
        }
        return found;
    }
    private inside(part: Part, kind: Kind): Idea[] {
        const upTo = this.page.text.slice(part.inside!.start, this.offset);
        const entry = [...part.entries.values()].filter(e => e.keySpan.end <= this.offset).at(-1);
        const colon = entry ? this.page.text.indexOf(':', entry.keySpan.end) : -1;
        if (!entry || colon < 0 || colon >= this.offset) return this.keys(part, kind);
        const typed = this.page.text.slice(colon + 1, this.offset);
        // On a later line the value goes on only if it plainly does, as after a comma.
        if (typed.includes('\n') && !/[,+*/(]\s*(?:#[^\n]*)?\n\s*[^\n]*$|->\s*\n[^\n]*$/.test(typed)) return this.keys(part, kind);
        const oneLine = !upTo.includes('\n');
        const value = this.value(part, kind, entry.key, typed);
        if (!oneLine || !/\S\s+[\p{L}-]*$/u.test(typed)) return value;
        // In a block on one line a whole value may be followed by the next property.
        const whole = typed.replace(/[\p{L}-]*$/u, '');
        const property = entry.property;
        const complete = property ? nextInValue(property, whole).complete : true;
        if (/\s{2,}[\p{L}-]*$/u.test(typed) && complete) return this.keys(part, kind);
        return complete && !/,\s*$/.test(whole) ? [...value, ...this.keys(part, kind).map(i => ({ ...i, rank: 8, text: `  ${i.text ?? i.label}` }))] : value;
    }
    private keys(part: Part, kind: Kind): Idea[] {
        const word = /[\p{L}\p{N}_.-]*$/u.exec(this.before)![0];
        if (word.includes('.')) return kind.statement ? this.afterPoint(word) ?? [] : [];
        const { text } = this.page;
        const oneLine = !text.slice(part.inside!.start, part.inside!.end).includes('\n');
        const order = kind.template?.map(t => t.slice(0, t.indexOf(':'))) ?? [];
        const rank = (p: Property) => (order.includes(p.name) ? 1 : onEveryPart.has(p.name) ? 9 : p.neverAssumed ? 3 : p.assume ? 5 : 4);
        const column = this.valueColumn(part);
        // Where a colon stands behind the word already, its value stays.
        const valued = /^[\p{L}\p{N}_-]*\s*:/u.test(this.behind);
        // A property that is being typed is not there yet.
        const given = (p: Property) => {
            const entry = part.entries.get(p.name);
            return !!entry && !(this.offset >= entry.keySpan.start && this.offset <= entry.keySpan.end);
        };
        const ideas: Idea[] = Object.values(kind.properties).filter(p => !given(p)).sort((a, b) => order.indexOf(a.name) - order.indexOf(b.name)).map(p => ({
            label: p.name, kind: CompletionItemKind.Property, rank: rank(p), doc: propertyText(p),
            detail: p.assume ? `assumed ${p.assume.value}` : p.neverAssumed ? 'never assumed' : undefined,
            text: valued ? p.name : oneLine ? `${p.name}: ${unclaimed(p, p.example)}` : keyed(p.name, unclaimed(p, p.example), column), template: !valued,
        }));
        return kind.statement ? [...ideas, ...this.parts(p => !p.kind?.statement, '.').map(i => ({ ...i, rank: 2 }))] : ideas;
    }
    /** How far behind the start of its key the values of this block stand: 0 where they follow their colons closely. */
    private valueColumn(part: Part): number {
        const { text } = this.page;
        const widths = [...part.entries.values()].filter(e => e.value && e.span.start > e.keySpan.start && !text.slice(e.keySpan.start, e.span.start).includes('\n')).map(e => e.span.start - e.keySpan.start);
        const tight = [...part.entries.values()].filter(e => e.value && e.span.start === e.keySpan.end + 2).length;
        return !widths.length ? COLUMN : tight === widths.length ? 0 : Math.max(...widths);
    }
    /** @param typed what stands behind the colon, up to the cursor */
    private value(part: Part, kind: Kind, key: string, typed: string): Idea[] {
        const dotted = key.split('.');
        const target = dotted.length > 1 ? this.rig.parts.get(dotted[0]) : undefined;
        const property = dotted.length > 1 ? target?.kind?.properties[dotted[1]] : kind.properties[key];
        const item = typed.slice(typed.lastIndexOf(',') + 1);
        const after = this.afterPoint(item);
        // A switch senses what stands there at this moment, not what is worked out for the whole.
        if (after) return key === 'senses' ? after.map(i => ({ ...i, rank: momentary.has(i.label) ? (i.kind === CompletionItemKind.Event ? 2 : 1) : 6 })) : after;
        if (!property) {
            const measure = target && this.measureOf(target, dotted.slice(1).join('.'));
            return this.units(item, measure ? [measure] : undefined) ?? [];
        }
        const word = /[\p{L}][\p{L}\p{N}_.-]*$/u.exec(typed)?.[0] ?? '';
        // Directly behind a digit, letters are the beginning of a unit.
        const glued = /\d$/.test(typed.slice(0, typed.length - word.length));
        const next = nextInValue(property, typed.slice(0, typed.length - word.length));
        const units = next.ofNumber.length ? this.units(item, next.ofNumber.map(s => s.type), property.unit, part) : undefined;
        if (units && (glued || /\d$/.test(typed))) return units;
        const ideas: Idea[] = [...(units ?? [])];
        if (/\S$/.test(typed) && !word) return ideas;
        for (const words of next.words) if (next.begun) ideas.push({ label: words, kind: CompletionItemKind.Keyword, rank: 2, text: next.slots.length || /^(?:at|of|to|for|curve)$/.test(words) ? `${words} ` : words });
        for (const { type } of next.slots) ideas.push(...this.fills(type, part, typed));
        const empty = !typed.slice(0, typed.length - word.length).trim();
        if (empty) {
            // A whole value as an example only where none of it stands behind the cursor.
            if (!this.behind.replace(/^[\p{L}\p{N}_.-]*/u, '').split(/[}#]|\s{2,}/)[0].trim()) ideas.unshift(...this.example(property));
            if (property.none) ideas.push({ label: 'none', kind: CompletionItemKind.EnumMember, doc: 'There is none.', rank: 7 });
            ideas.push({ label: 'unknown', kind: CompletionItemKind.EnumMember, doc: 'Somebody looked, and could not find out. The line stays as a reminder.', rank: 8 });
        }
        if (next.slots.some(s => isNumber(s.type))) ideas.push(...this.lets().map(i => ({ ...i, rank: 6 })));
        const joined = /[\p{L}\p{N}_-]\s+[a-z]*$/u.test(item) && property.items.some(i => i.some(a => typeof a !== 'string' && a.type === 'condition'));
        if (joined) for (const label of ['or', 'and']) ideas.push({ label, kind: CompletionItemKind.Keyword, text: `${label} `, rank: 2 });
        return ideas;
    }
    /** What can stand in a slot. */
    private fills(type: SlotType, part: Part, typed: string): Idea[] {
        const enumMember = (label: string): Idea => ({ label, kind: CompletionItemKind.EnumMember, rank: 3 });
        const named = (p: Part) => new RegExp(`(?:^|[\\s,])${p.name}(?=$|[\\s,.])`).test(typed);
        const others = (wanted: (p: Part) => boolean, after = '') => this.parts(p => p !== part && p.name !== part.name && wanted(p) && !named(p), after);
        if (typeof type === 'object') {
            if ('words' in type) return type.words.map(enumMember);
            return 'part' in type ? others(p => (type.part.length ? type.part.includes(p.kindWord) : !p.kind?.statement && !(p.implied && p.kind?.group === 'world'))) : [];
        }
        switch (type) {
            case 'yes-no': return ['yes', 'no'].map(enumMember);
            case 'condition': return others(p => driving.has(p.kindWord));
            case 'quantity': {
                const first = (name: string) => (part.kindWord === 'detector' ? name === 'site' : watched.has(this.rig.parts.get(name)?.kindWord ?? ''));
                return others(p => !p.kind?.statement && p.kind?.group !== 'control' && p.kindWord !== 'routine' && p.kindWord !== 'purpose' && !(p.implied && p.name !== 'site'), '.').map(i => ({ ...i, rank: first(i.label) ? 2 : 6 }));
            }
            case 'date': return [{ label: this.house.today, kind: CompletionItemKind.Value, detail: 'today', rank: 1 }];
            default: return [];
        }
    }
    private example(property: Property): Idea[] {
        const label = plainTemplate(property.example);
        const useful = /\d/.test(label) && property.items.some(i => i.some(a => typeof a !== 'string' && isNumber(a.type)));
        return useful ? [{ label, kind: CompletionItemKind.Value, text: property.example, template: true, rank: 1, detail: property.assume?.value === label ? `as assumed: ${property.assume.because}` : 'for instance' }] : [];
    }

    // ---- pieces -----------------------------------------------------------------------------------------------------

    private inAYear(): string {
        const [year, ...rest] = this.house.today.split('-');
        return [Number(year) + 1, ...rest].join('-').replace(/02-29$/, '02-28');
    }
    private partIdea(p: Part, after = ''): Idea {
        return {
            label: p.name, kind: CompletionItemKind.Variable, detail: p.name === p.kindWord ? p.kind?.group : p.kindWord, doc: p.note ?? p.kind?.doc,
            rank: p.implied ? 5 : 4, ...(after ? { text: p.name + after, again: true } : {}),
        };
    }
    private parts(wanted: (p: Part) => boolean, after = ''): Idea[] {
        return [...this.rig.parts.values()].filter(p => !p.pattern && wanted(p)).map(p => this.partIdea(p, after));
    }
    private lets(): Idea[] {
        return [...this.rig.lets.values()].map(l => ({ label: l.name, kind: CompletionItemKind.Constant, detail: l.value?.text, doc: l.note }));
    }
    /** After `part.`: quantities with their value now, properties, what can be read off it. */
    private afterPoint(text: string): Idea[] | undefined {
        const m = new RegExp(`(${NAME})\\.([\\p{L}\\p{N}_-]*)$`, 'u').exec(text);
        if (!m) return undefined;
        const part = this.rig.parts.get(m[1]);
        if (!part) return [];
        return namesAfterPoint(part).filter(n => !onEveryPart.has(n)).map((label): Idea => {
            const q = quantityOf(part.kindWord).get(label);
            if (q) {
                const r = this.analysis.workings.quantity(part, label)!;
                return { label, kind: CompletionItemKind.Field, detail: r.value === r.value ? `≈ ${showResult(r)}` : 'not known yet', doc: q.meaning, rank: askedFirst.includes(label) ? 1 : q.shownAt ? 2 : 3 };
            }
            const p = part.kind?.properties[label];
            return { label, kind: p ? CompletionItemKind.Property : CompletionItemKind.Event, detail: p ? part.entries.get(label)?.value?.text ?? p.assume?.value : 'read off it', doc: p?.doc ?? momentary.get(label)?.doc, rank: p ? 4 : 6 };
        });
    }
    /** Behind a number: units of the right dimension. Undefined where no number stands before the cursor. */
    private units(typed: string, types?: readonly (SlotType | MeasureName)[], first?: string, part?: Part): Idea[] | undefined {
        const m = /(?:^|[^\p{L}\p{N}_.-])[-−]?\d[\d.]*(\s*)([A-Za-zµ°%‰Ω€²³][^\s,{}"]*)?$/u.exec(typed);
        if (!m || /\d{4}-\d{1,2}(?:-\d{0,2})?\s*$|\d{1,2}:\d{0,2}\s*$/.test(typed)) return undefined;
        const wanted = (types ?? (Object.keys(measures) as MeasureName[])).flatMap((t): MeasureName[] => {
            if (t === 'sensed') return part ? this.sensed(part) : [];
            return typeof t === 'string' && t in measures ? [t as MeasureName] : typeof t === 'object' && 'size' in t ? [t.of] : [];
        });
        if (!wanted.length) return undefined;
        const typedUnit = m[2] ?? '';
        const gap = m[1] ? '' : ' ';
        const fits = (u: string, w: MeasureName) => {
            const dimension = unitOf(u)?.dimension;
            return dimension === measures[w].dimension || gasDifference(dimension ?? measures.number.dimension, measures[w].dimension) !== undefined;
        };
        const labels = [...(first ? [first] : []), ...wanted.flatMap(w => measures[w].units.filter(u => u && fits(u, w)))];
        return [...new Set(labels)].map(u => {
            const name = unitOf(u)?.name;
            return { label: u, kind: CompletionItemKind.Unit, text: gap + u, detail: name === u ? undefined : name, over: typedUnit.length, rank: 1 };
        });
    }
    private measureOf(part: Part, name: string): MeasureName | undefined {
        const known = quantityOf(part.kindWord).get(name)?.measure ?? momentary.get(name)?.measure;
        if (known) return known;
        const type = part.kind?.properties[name.split('.')[0]]?.items[0]?.find(a => typeof a !== 'string');
        return typeof type === 'object' && typeof type.type === 'string' && type.type in measures ? (type.type as MeasureName) : undefined;
    }
    /** Of what a switch or trip senses. */
    private sensed(part: Part): MeasureName[] {
        const text = part.entries.get('senses')?.value?.text;
        const node = text ? parseValue(text).list[0]?.[0] : undefined;
        const of = node?.is === 'name' ? this.rig.parts.get(node.names[0]) : undefined;
        const m = of && node?.is === 'name' ? this.measureOf(of, node.names.slice(1).join('.')) : undefined;
        return m ? [m] : ['pressure', 'temperature', 'volume', 'length', 'fraction', 'current'];
    }
}
function isNumber(type: SlotType): boolean {
    return (typeof type === 'string' && (type in measures || type === 'count' || type === 'sensed')) || (typeof type === 'object' && 'size' in type);
}
/** `key:` and its value, values in one column. */
function keyed(key: string, value: string, column = COLUMN): string {
    return `${`${key}: `.padEnd(column)}${value}`;
}
/** What decides what a part is, and is seen at once if it is wrong. */
const seenAtOnce = new Set(['sort', 'place']);
/**
 * A template with `unknown` before the words that would claim something: whoever only tabs through it must not have
 * written that a wire fails safe, that a supply is isolated, or that a test was passed.
 */
function unclaimed(property: Property | undefined, template: string): string {
    return property && (property.neverAssumed || property.name === 'result') && !seenAtOnce.has(property.name) ? template.replace(/^\$\{(\d+)\|(?!unknown)/, '${$1|unknown,') : template;
}
function decode(s: string): string {
    try {
        return decodeURIComponent(s);
    } catch {
        return s;
    }
}

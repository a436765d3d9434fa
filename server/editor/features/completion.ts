/** What may come next, from the vocabulary and the rig: never a second parse. */
import { CompletionItemKind, InsertTextFormat, type CompletionItem } from 'vscode-languageserver';
import { namesAfterPoint } from '../../../language/quantities/check-names.js';
import { quantityOf } from '../../../language/quantities/index.js';
import { propertyText } from '../../../language/reference/explain.js';
import { showResult } from '../../../language/reference/values.js';
import { pathEnds, shippedNames } from '../../../language/rig/assemble.js';
import { stages, type Page, type Part, type Rig } from '../../../language/rig/rig.js';
import { allRules } from '../../../language/rules/index.js';
import { gasDifference, measures, type MeasureName } from '../../../language/units/dimension.js';
import { unitOf } from '../../../language/units/unit.js';
import { media, type Kind, type Medium, type Property, type SlotType } from '../../../language/vocabulary/define.js';
import { kinds } from '../../../language/vocabulary/index.js';
import { momentary } from '../../../language/vocabulary/momentary.js';
import type { Analysis } from '../../../language/index.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';
import { pageIn } from '../spot.js';

const completion: Feature = {
    name: 'completion',
    capabilities: () => ({ completionProvider: { triggerCharacters: [':', '.', ' ', '>', '-', '"'], resolveProvider: false } }),
    register(connection, house) {
        connection.onCompletion(({ textDocument, position, context }) => {
            // A blank opens the list only where something is expected: after a colon, an arrow, a number.
            const items = completionsAt(house, textDocument.uri, position);
            return context?.triggerCharacter === ' ' && items.length > 40 ? [] : items;
        });
    },
};
export default completion;

const item = (label: string, kind: CompletionItemKind, more: Partial<CompletionItem> = {}): CompletionItem => ({ label, kind, ...more });

export function completionsAt(house: House, uri: string, position: { line: number; character: number }): CompletionItem[] {
    const analysis = house.analysis(uri);
    const page = pageIn(analysis, uri) ?? house.page(uri);
    const doc = house.doc(uri);
    if (!analysis || !page || !doc) return [];
    const offset = doc.lines.offset(position);
    const before = doc.lines.lineText(position.line).slice(0, position.character);
    if (/(?:^|[^"])#/.test(before.replace(/"[^"]*"/g, '')) && before.includes('#')) return [];
    const items = new Completer(house, analysis, page, offset, before).list();
    const snippets = house.client.textDocument?.completion?.completionItem?.snippetSupport ?? false;
    return items.map((i, n) => {
        const ready = { ...i, sortText: i.sortText ?? String(n).padStart(4, '0') };
        if (!snippets && ready.insertTextFormat === InsertTextFormat.Snippet) {
            ready.insertText = plainText(ready.insertText ?? ready.label);
            delete ready.insertTextFormat;
        }
        return ready;
    });
}
/** A template without its tab stops. */
export function plainText(snippet: string): string {
    return snippet.replace(/\$\{\d+\|([^,|]*)[^}]*\}/g, '$1').replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$\{?\d+\}?/g, '');
}

class Completer {
    private readonly rig: Rig;
    constructor(private readonly house: House, private readonly analysis: Analysis, private readonly page: Page, private readonly offset: number, private readonly before: string) {
        this.rig = analysis.rig;
    }
    list(): CompletionItem[] {
        const { before } = this;
        const use = /^\s*use\s+("?)([^"]*)$/.exec(before);
        if (use) return this.files(use[1] === '"');
        const title = /^\s*rig\s+"[^"]*"\s*,\s*[\w-]*$/.exec(before);
        if (title) return stages.map(s => item(s, CompletionItemKind.EnumMember, { documentation: 'How far the rig is.' }));
        const path = /^\s*path\s+(.*)$/.exec(before);
        if (path) return this.path(path[1]);
        const continued = this.openPath();
        if (continued) return this.stops(continued.medium, continued.last);
        const allow = /^\s*allow\s+(.*)$/.exec(before);
        if (allow) return this.allow(allow[1]);
        const expect = /^\s*(?:expect|let\s+[\p{L}\p{N}_-]+\s*=)\s+(.*)$/u.exec(before);
        if (expect) return this.afterPoint(expect[1]) ?? this.units(expect[1]) ?? [...this.parts(() => true, '.'), ...this.lets(), ...this.expectWords(expect[1], before.trimStart().startsWith('expect'))];
        const like = /^\s*(\S+)(?:\s+\S+)?\s+like\s+[\p{L}\p{N}_-]*$/u.exec(before);
        if (like) return this.parts(p => p.kindWord === like[1], '', true);
        const part = this.page.parts.find(p => p.inside && p.inside.start <= this.offset && this.offset <= Math.max(p.inside.end, p.inside.start));
        if (part?.kind) return this.inside(part, part.kind);
        if (/^\s*[\p{L}\p{N}_-]*$/u.test(before)) return this.lineStart();
        return [];
    }

    // ---- where a line begins --------------------------------------------------------------------------------------

    private lineStart(): CompletionItem[] {
        const missing = (k: Kind) => (!(this.rig.parts.get(k.name) && !this.rig.parts.get(k.name)!.implied) ? 0 : 1);
        const words: [string, string, string][] = [
            ['path', 'path ${1|hydrogen,oxygen,lye,water,current|}: ${2:stack} -> ${3}', 'What is joined to what, in order.'],
            ['expect', 'expect ${1:stack.volts-per-cell} < ${2:2.2 V}', 'A requirement of your own, checked as you type.'],
            ['let', 'let ${1:name} = ${2:value}', 'A named value.'],
            ['use', 'use "${1:parts.rig}"', 'Another file of this rig, or a library.'],
            ['allow', 'allow ${1:rule} on ${2:part} until ${3:2027-01-31} by ${4:name} because "${5:reason}"', 'Turn a rule down, with a reason and an end.'],
        ];
        if (!this.page.title) words.unshift(['rig', 'rig "${1:Title}", ${2|idea,drawn,built,running,retired|}', 'The title line: name and stage.'], ['library', 'library "${1:Title}"', 'A file of patterns.']);
        const kindItems = [...kinds.values()].sort((a, b) => missing(a) - missing(b) || (a.group === 'statements' || a.group === 'records' ? 1 : 0) - (b.group === 'statements' || b.group === 'records' ? 1 : 0)).map(k =>
            item(k.name, CompletionItemKind.Class, { detail: k.group, documentation: k.doc, insertText: blockTemplate(k), insertTextFormat: InsertTextFormat.Snippet, sortText: `${missing(k) ? '2' : '1'}${k.group === 'statements' || k.group === 'records' ? 'z' : 'a'}${k.name}` }));
        return [...words.map(([label, text, doc]) => item(label, CompletionItemKind.Keyword, { insertText: text, insertTextFormat: InsertTextFormat.Snippet, documentation: doc, sortText: `1b${label}` })), ...kindItems];
    }
    private files(quoted: boolean): CompletionItem[] {
        const here = this.page.file.split('/').slice(0, -1).join('/');
        const files = [...this.house.allDocs()].filter(d => d.uri !== this.page.file && d.uri.startsWith(`${here}/`)).map(d => decodeURIComponent(d.uri.slice(here.length + 1)));
        return [...files.map(f => item(f, CompletionItemKind.File, { insertText: quoted ? f : `"${f}"` })), ...(quoted ? [] : shippedNames().map(n => item(n, CompletionItemKind.Module, { documentation: 'A library that comes with Rigwright.' })))];
    }

    // ---- paths ------------------------------------------------------------------------------------------------------

    private path(rest: string): CompletionItem[] {
        const head = /^([\p{L}-]*)$/u.exec(rest);
        if (head) return media.map(m => item(m, CompletionItemKind.EnumMember, { insertText: `${m}: ` }));
        const medium = rest.split(':')[0].trim() as Medium;
        const stops = rest.slice(rest.indexOf(':') + 1).split('->').map(s => s.trim());
        return this.stops(medium, stops.at(-2));
    }
    /** A path that goes on from a line before. */
    private openPath(): { medium: Medium; last: string | undefined } | undefined {
        if (!/^\s*(?:[\p{L}\p{N}_.-]+\s*->\s*)*[\p{L}\p{N}_.-]*$/u.test(this.before)) return undefined;
        const upTo = this.page.text.slice(0, this.offset);
        const m = /(?:^|\n)[ \t]*path[ \t]+([\p{L}-]+)[ \t]*:([^:{}"]*)$/u.exec(upTo);
        if (!m || !/->\s*(?:\n\s*)?[\p{L}\p{N}_.-]*$/u.test(m[2]) || /\n\s*\n/.test(m[2])) return undefined;
        return { medium: m[1] as Medium, last: m[2].split('->').map(s => s.trim()).at(-2) };
    }
    private stops(medium: Medium, last: string | undefined): CompletionItem[] {
        const used = new Set(this.rig.paths.filter(p => p.medium === medium).flatMap(p => p.stops.map(s => s.name)));
        const fits = [...this.rig.parts.values()].filter(p => !p.pattern && p.kind?.on.includes(medium) && p.name !== last);
        return [
            ...fits.sort((a, b) => Number(used.has(a.name)) - Number(used.has(b.name))).map(p => item(p.name, CompletionItemKind.Variable, { detail: p.kindWord, documentation: p.kind?.doc })),
            ...[...pathEnds].map(e => item(e, CompletionItemKind.EnumMember, { documentation: 'Where the path ends.' })),
            ...[...kinds.values()].filter(k => k.on.includes(medium) && !this.rig.parts.has(k.name)).map(k => item(k.name, CompletionItemKind.Class, { detail: 'a part of this kind, all assumed', documentation: k.doc })),
        ];
    }
    private allow(rest: string): CompletionItem[] {
        if (/^[\w-]*$/.test(rest)) {
            const fired = new Set(this.analysis.findings.map(f => f.rule));
            return allRules.filter(r => r.check).map(r => item(r.name, CompletionItemKind.Function, { detail: r.severity, documentation: r.summary, sortText: `${fired.has(r.name) ? 0 : 1}${r.name}` }));
        }
        if (/\bon\s+[\p{L}\p{N}_-]*$/u.test(rest)) return this.parts(() => true);
        return [['on', 'on ${1:part}'], ['until', 'until ${1:2027-01-31}'], ['by', 'by ${1:name}'], ['because', 'because "${1:reason}"']].filter(([w]) => !new RegExp(`\\b${w}\\b`).test(rest))
            .map(([label, text]) => item(label, CompletionItemKind.Keyword, { insertText: text, insertTextFormat: InsertTextFormat.Snippet }));
    }

    // ---- in a block -------------------------------------------------------------------------------------------------

    private inside(part: Part, kind: Kind): CompletionItem[] {
        const entry = [...part.entries.values()].find(e => e.keySpan.end <= this.offset && this.offset <= Math.max(e.span.end, e.keySpan.end + 1) + 1 && /:/.test(this.page.text.slice(e.keySpan.end, this.offset)));
        const sameLine = /([\p{L}_][\p{L}\p{N}_.-]*)[ \t]*:([^:]*)$/u.exec(this.before);
        const key = entry && this.page.text.slice(entry.keySpan.end, this.offset).split('\n').length > 1 ? entry.key : sameLine?.[1] ?? entry?.key;
        const typed = entry && key === entry.key ? this.page.text.slice(entry.keySpan.end, this.offset).replace(/^\s*:/, '') : sameLine?.[2];
        // Three blanks after a value in a one-line block begin the next key.
        if (key && typed !== undefined && !(/\S\s{2,}[\p{L}-]*$/u.test(typed) && !typed.includes('\n'))) return this.value(part, kind, key, typed);
        if (/\.$|[\p{L}\p{N}_-]\.[\p{L}\p{N}_-]*$/u.test(this.before) && kind.statement) return this.afterPoint(this.before) ?? [];
        return this.keys(part, kind);
    }
    private keys(part: Part, kind: Kind): CompletionItem[] {
        const given = new Set(part.entries.keys());
        const oneLine = part.inside ? !this.page.text.slice(part.inside.start, part.inside.end).includes('\n') : false;
        const order = kind.template?.map(t => t.split(':')[0]) ?? [];
        const rank = (p: Property) => (order.includes(p.name) ? order.indexOf(p.name) : p.neverAssumed ? 100 : ['note', 'source', 'price', 'only-in'].includes(p.name) ? 900 : 300);
        const items = Object.values(kind.properties).filter(p => !given.has(p.name)).sort((a, b) => rank(a) - rank(b)).map(p =>
            item(p.name, CompletionItemKind.Property, {
                detail: p.assume ? `assumed ${p.assume.value}` : p.neverAssumed ? 'never assumed' : undefined, documentation: { kind: 'markdown', value: propertyText(p) },
                insertText: oneLine ? `${p.name}: ${p.example}` : `${`${p.name}:`.padEnd(18)}${p.example}`, insertTextFormat: InsertTextFormat.Snippet,
            }));
        return kind.statement ? [...items, ...this.parts(p => !p.kind?.statement, '.')] : items;
    }
    private value(part: Part, kind: Kind, key: string, typed: string): CompletionItem[] {
        const dotted = key.includes('.') ? key.split('.') : undefined;
        const target = dotted && this.rig.parts.get(dotted[0]);
        const property = dotted ? target?.kind?.properties[dotted[1]] : kind.properties[key];
        const last = typed.split(',').at(-1)!;
        const afterPoint = this.afterPoint(last);
        if (afterPoint) return afterPoint;
        const slots = property?.items.flatMap(i => i.filter((a): a is Exclude<typeof a, string> => typeof a !== 'string').map(a => a.type)) ?? [];
        const measure = dotted && !property ? this.measureOf(target, dotted.slice(1).join('.')) : undefined;
        const units = this.units(last, measure ? [measure] : key === 'makes' || key === 'breaks' || key === 'trips' || key === 'alarm' ? this.sensedMeasures(part) : slots);
        if (units) return units;
        const items: CompletionItem[] = [];
        for (const type of slots) {
            if (typeof type === 'object' && 'words' in type) items.push(...type.words.map(w => item(w, CompletionItemKind.EnumMember)));
            else if (type === 'yes-no') items.push(item('yes', CompletionItemKind.EnumMember), item('no', CompletionItemKind.EnumMember));
            else if (typeof type === 'object' && 'part' in type) items.push(...this.parts(p => (type.part.length ? type.part.includes(p.kindWord) : !p.kind?.statement) && p.name !== part.name));
            else if (type === 'condition') items.push(...this.parts(p => ['switch', 'trip', 'contactor', 'relay', 'timer', 'button', 'stop-button', 'analyser', 'detector', 'solid-state-relay', 'controller', 'override', 'sensor'].includes(p.kindWord) && p.name !== part.name));
            else if (type === 'quantity') items.push(...this.parts(p => !p.kind?.statement && p.kind?.group !== 'control', '.'));
        }
        if (property && !last.trim()) {
            items.unshift(...this.example(property));
            if (property.none && !items.some(i => i.label === 'none')) items.push(item('none', CompletionItemKind.EnumMember, { documentation: 'There is none.', sortText: '8' }));
            items.push(item('unknown', CompletionItemKind.EnumMember, { documentation: 'Looked, and could not find out.', sortText: '9' }));
        }
        if (!slots.length || slots.some(isNumber)) items.push(...this.lets());
        return [...new Map(items.map(i => [i.label, i])).values()];
    }
    private example(property: Property): CompletionItem[] {
        const text = plainText(property.example);
        return text && /\d/.test(text) && property.items.some(i => i.some(a => typeof a !== 'string' && isNumber(a.type)))
            ? [item(text, CompletionItemKind.Value, { detail: property.assume ? `assumed: ${property.assume.because}` : 'as in', insertText: property.example, insertTextFormat: InsertTextFormat.Snippet, sortText: '0' })] : [];
    }

    // ---- pieces -----------------------------------------------------------------------------------------------------

    private parts(wanted: (p: Part) => boolean, after = '', patterns = false): CompletionItem[] {
        const all = [...this.rig.parts.values(), ...(patterns ? this.rig.patterns.values() : [])];
        return all.filter(p => wanted(p)).map(p => item(p.name, CompletionItemKind.Variable, { detail: p.kindWord, documentation: p.note ?? p.kind?.doc, ...(after ? { insertText: p.name + after, command: { title: 'more', command: 'editor.action.triggerSuggest' } } : {}) }));
    }
    private lets(): CompletionItem[] {
        return [...this.rig.lets.values()].map(l => item(l.name, CompletionItemKind.Constant, { detail: l.value?.text }));
    }
    /** After `part.`: quantities with their value now, properties, what can be read off. */
    private afterPoint(text: string): CompletionItem[] | undefined {
        const m = /([\p{L}_][\p{L}\p{N}_-]*)\.[\p{L}\p{N}_-]*$/u.exec(text);
        const part = m && this.rig.parts.get(m[1]);
        if (!m) return undefined;
        if (!part) return [];
        return namesAfterPoint(part).map(name => {
            const q = quantityOf(part.kindWord).get(name);
            if (q) {
                const r = this.analysis.workings.quantity(part, name)!;
                return item(name, CompletionItemKind.Field, { detail: r.value === r.value ? showResult(r) : 'not known yet', documentation: q.meaning, sortText: `0${name}` });
            }
            const p = part.kind?.properties[name];
            return item(name, p ? CompletionItemKind.Property : CompletionItemKind.Event, { documentation: p?.doc ?? momentary.get(name)?.doc, sortText: `${p ? 2 : 1}${name}` });
        });
    }
    /** After a number: units of the right dimension. */
    private units(typed: string, types?: readonly (SlotType | MeasureName)[]): CompletionItem[] | undefined {
        const m = /\d\s*([A-Za-zµ°%/()·0-9²³Ω€]*)$/.exec(typed);
        if (!m || /[A-Za-z_]-?\d*$/.test(typed.replace(/\s*[A-Za-zµ°%/()·²³Ω€]*$/, '').slice(-2)) || /^\d{4}-/.test(typed.trim())) return undefined;
        const wanted = (types ?? (Object.keys(measures) as MeasureName[])).map(t => (typeof t === 'string' && t in measures ? (t as MeasureName) : typeof t === 'object' && 'size' in t ? t.of : undefined)).filter((t): t is MeasureName => !!t);
        if (!wanted.length) return undefined;
        const space = /\s$/.test(typed) || m[1] ? '' : ' ';
        const labels = [...new Set(wanted.flatMap(w => measures[w].units.filter(u => u && (unitOf(u)?.dimension === measures[w].dimension || gasDifference(unitOf(u)!.dimension, measures[w].dimension) !== undefined))))];
        return labels.map(u => item(u, CompletionItemKind.Unit, { insertText: space + u, filterText: u, detail: unitOf(u)?.name }));
    }
    private measureOf(part: Part | undefined, name: string): MeasureName | undefined {
        return part ? quantityOf(part.kindWord).get(name)?.measure ?? momentary.get(name)?.measure : undefined;
    }
    private sensedMeasures(part: Part): MeasureName[] {
        const sensed = this.rig.parts.get(part.name) === part ? this.analysis.workings.given(part, 'senses').facts.get('')?.names : undefined;
        const m = sensed && this.measureOf(this.rig.parts.get(sensed[0]), sensed.slice(1).join('.'));
        return m ? [m] : ['pressure', 'temperature', 'volume', 'length'];
    }
    private expectWords(rest: string, isExpect: boolean): CompletionItem[] {
        if (!isExpect || rest.trim()) return [];
        return [['with', 'with ${1:variant}: '], ['if', 'if ${1:part} ${2:event}: '], ['during', 'during ${1:scenario}: ']].map(([label, text]) => item(label, CompletionItemKind.Keyword, { insertText: text, insertTextFormat: InsertTextFormat.Snippet }));
    }
}
function isNumber(type: SlotType): boolean {
    return (typeof type === 'string' && (type in measures || type === 'count' || type === 'sensed')) || (typeof type === 'object' && 'size' in type);
}
function blockTemplate(kind: Kind): string {
    const lines = kind.template ?? [];
    const name = kind.single || kind.always ? '' : ` \${20:${kind.name}-1}`;
    if (!lines.length) return kind.properties && kind.ports !== 'none' && Object.keys(kind.properties).length <= 6 ? `${kind.name}${name}` : `${kind.name}${name} {\n  $0\n}`;
    const body = lines.map(l => {
        const [key, ...rest] = l.split(':');
        return `  ${`${key}:`.padEnd(18)}${rest.join(':').trim()}`;
    });
    return `${kind.name}${name} {\n${body.join('\n')}\n}`;
}

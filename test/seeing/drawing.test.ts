/** The flow drawing: what is drawn, that nothing lies on anything, that it stays where it was, that no name breaks it. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { Analyst, analyseText, type Analysis } from '../../language/index.js';
import { FONT } from '../../language/seeing/svg.js';
import { drawingOf, layers, type DrawingOptions } from '../../language/seeing/drawing/index.js';
import { printed } from '../../language/seeing/palette.js';
import { graphOf } from '../../language/seeing/drawing/graph.js';
import { widthOf } from '../../language/seeing/plots/text-width.js';
import { layOut, type Layout } from '../../language/seeing/drawing/layout/index.js';
import { ends, symbols } from '../../language/seeing/drawing/symbols/index.js';
import { pathEnds } from '../../language/rig/assemble.js';
import { kinds } from '../../language/vocabulary/index.js';
import { drawing as drawn, wholeRig } from '../rules/whole-rigs.js';
import { bends, crossings, outside, overlaps, shared, slanted, throughParts } from './measure-drawing.js';

const examples = path.resolve(import.meta.dirname, '../../examples');
const files = readdirSync(examples).filter(f => f.endsWith('.rig') && f !== 'bench-shelf.rig').map(f => path.join(examples, f));
const mistakes = readdirSync(path.join(examples, 'mistakes')).map(f => path.join(examples, 'mistakes', f));
const analyst = new Analyst(f => (existsSync(f) ? readFileSync(f, 'utf8') : undefined));
const opened = (file: string): Analysis => analyst.analyse(file, { today: '2026-06-15' });
const drawing = (a: Analysis, options?: DrawingOptions) => drawingOf(a, printed, options)!;
const laidOut = (a: Analysis): Layout => layOut(graphOf(a.workings));
const wholes = Array.from({ length: 200 }, (_, i) => wholeRig(i + 1).text);
const ofText = (text: string) => laidOut(new Analyst(() => text).analyse('x.rig'));
let laid: Layout[] | undefined;
const allLaid = () => (laid ??= wholes.map(ofText));

/** Throws where text is not well-formed XML: every element closed in its order, attributes quoted and each once, no bare & or <. */
function elementsOf(xml: string): { name: string; attributes: Map<string, string>; within: number }[] {
    const found: { name: string; attributes: Map<string, string>; within: number }[] = [];
    const open: number[] = [];
    let at = 0;
    const tag = /<(\/?)([a-zA-Z][\w-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/y;
    while (at < xml.length) {
        const next = xml.indexOf('<', at);
        const text = xml.slice(at, next < 0 ? undefined : next);
        if (/&(?!#\d+;)/.test(text) || /[\u0000-\u0008\u000b\u000c\u000e-\u001f]/.test(text)) throw new Error(`bare text ${text.slice(0, 60)}`);
        if (!open.length && text.trim()) throw new Error(`text outside: ${text.slice(0, 60)}`);
        if (next < 0) break;
        tag.lastIndex = next;
        const m = tag.exec(xml);
        if (!m) throw new Error(`no tag: ${xml.slice(next, next + 80)}`);
        if (m[1]) {
            if (found[open.pop() ?? -1]?.name !== m[2]) throw new Error(`</${m[2]}> closes nothing`);
        } else {
            const attributes = new Map<string, string>();
            for (const [, name, value] of m[3].matchAll(/([\w:-]+)="([^"]*)"/g)) {
                if (attributes.has(name) || /&(?!#\d+;)/.test(value)) throw new Error(`attribute ${name} of ${m[2]}`);
                attributes.set(name, value);
            }
            found.push({ name: m[2], attributes, within: open.at(-1) ?? -1 });
            if (!m[4]) open.push(found.length - 1);
        }
        at = tag.lastIndex;
    }
    if (open.length) throw new Error('something is not closed');
    return found;
}

describe('symbols', () => {
    it('every kind of part that may stand on a path has one, and every end', () => {
        const missing = [...kinds.values()].filter(k => k.on.length && !Object.hasOwn(symbols, k.name)).map(k => k.name);
        expect(missing).toEqual([]);
        expect([...pathEnds].filter(e => !Object.hasOwn(ends, e))).toEqual([]);
    });
    it('are of kinds and sorts that exist', () => {
        for (const name of Object.keys(symbols)) {
            const [kind, sort] = name.split('/');
            expect(kinds.has(kind), name).toBe(true);
            if (sort) expect(JSON.stringify(kinds.get(kind)!.properties.sort.items), name).toContain(`"${sort}"`);
        }
    });
    it('draw nothing beyond the room they claim', () => {
        const beyond: string[] = [];
        for (const [name, s] of Object.entries({ ...symbols, ...ends })) {
            for (const d of [s.body, s.thin, s.dashed, s.solid]) {
                for (const [x, y] of d ? pointsOf(d) : []) if (Math.abs(x) > s.half + 0.5 || -y > s.up + 0.5 || y > s.down + 0.5) beyond.push(`${name}: ${x} ${y}`);
            }
        }
        expect(beyond).toEqual([]);
    });
});
/** Ends of all pieces of a path; what bulges out between them is not counted. */
function pointsOf(d: string): [number, number][] {
    const points: [number, number][] = [];
    let [x, y, sx, sy] = [0, 0, 0, 0];
    for (const [, command, rest] of d.matchAll(/([MLHVCQTAZmlhvcqtaz])([^MLHVCQTAZmlhvcqtaz]*)/g)) {
        const n = (rest.match(/-?\d*\.?\d+/g) ?? []).map(Number);
        const upper = command.toUpperCase();
        const relative = command !== upper;
        if (upper === 'Z') { [x, y] = [sx, sy]; continue; }
        const size = { M: 2, L: 2, T: 2, H: 1, V: 1, C: 6, Q: 4, A: 7 }[upper]!;
        for (let k = 0; k + size <= n.length; k += size) {
            const last = n.slice(k, k + size);
            if (upper === 'H') x = (relative ? x : 0) + last[0];
            else if (upper === 'V') y = (relative ? y : 0) + last[0];
            else [x, y] = [(relative ? x : 0) + last[size - 2], (relative ? y : 0) + last[size - 1]];
            points.push([x, y]);
            if (upper === 'M' && k === 0) [sx, sy] = [x, y];
        }
    }
    return points;
}

describe('what is drawn', () => {
    /** Parts by layer, what sits on them, lines with their ends, contacts: everything but places. */
    const structure = (svg: string) => {
        const all = elementsOf(svg);
        const layerOf = (i: number): string => (i < 0 ? '' : all[i].attributes.get('data-layer') ?? all[i].attributes.get('data-media') ?? layerOf(all[i].within));
        const list = (pick: (a: Map<string, string>) => string | undefined) => all.flatMap(({ attributes, within }) => {
            const text = pick(attributes);
            return text === undefined ? [] : [`${attributes.get('data-media') ?? layerOf(within)}: ${text}`];
        });
        return [
            ...list(a => (a.has('data-kind') ? `${a.get('data-kind')} ${a.get('data-part') ?? '(end)'}` : undefined)),
            ...list(a => (a.has('data-mount') ? `${a.get('data-mount')} ${a.get('data-part')}` : undefined)),
            ...list(a => (a.has('data-from') ? `${a.get('data-medium')} ${a.get('data-from')} -> ${a.get('data-to')}` : undefined)),
            ...list(a => (a.has('data-drives') ? `${a.get('data-contact')} ${a.get('data-part')} in ${a.get('data-drives')}` : undefined)),
            ...list(a => (a.has('data-severity') ? `${a.get('data-severity')} at ${a.get('data-part')}` : undefined)),
            ...list(a => (a.has('data-quantity') ? `${a.get('data-quantity')}` : undefined)),
        ].join('\n');
    };
    it.each(files.map(f => [path.basename(f, '.rig'), f]))('%s', async (name, file) => {
        await expect(`${structure(drawing(opened(file)).text)}\n`).toMatchFileSnapshot(`drawings/${name}.txt`);
    });
    it('every part on a path, every link, and every instrument that senses a part', () => {
        for (const file of files) {
            const analysis = opened(file);
            const svg = drawing(analysis).text;
            for (const l of analysis.workings.paths.links) {
                for (const s of [l.from, l.to]) if (analysis.rig.parts.has(s.name)) expect(svg, s.name).toContain(`data-part="${s.name}" data-kind=`);
            }
            expect(svg.split('class="line"').length - 1, file).toBe(analysis.workings.paths.links.length);
        }
    });
    it('a layer that is left out leaves nothing, and moves nothing', () => {
        const analysis = opened(files[0]);
        const all = drawing(analysis).text;
        for (const layer of layers) {
            expect(all).toContain(`data-layer="${layer}"`);
            const without = drawing(analysis, { layers: layers.filter(l => l !== layer) }).text;
            expect(without).not.toContain(`data-layer="${layer}"`);
            // What is left is there word for word: nothing has another place.
            const left = elementsOf(without).map(e => `${e.name} ${[...e.attributes].join()}`);
            const had = new Set(elementsOf(all).map(e => `${e.name} ${[...e.attributes].join()}`));
            expect(left.filter(e => !had.has(e))).toEqual([]);
            expect(left.length).toBeGreaterThan(50);
        }
    });
    it('a part is there as long as one of its media is, and all that stands at it', () => {
        const analysis = opened(path.join(examples, 'jeweller-torch-store.rig'));
        const gas = drawing(analysis, { layers: ['hydrogen', 'values', 'control', 'findings'] }).text;
        for (const there of ['data-part="cylinder" data-kind', 'data-part="stack" data-kind', '10.5 bar']) expect(gas.includes(there), there).toBe(true);
        for (const gone of ['data-part="h2-cooler"', 'data-part="main-fuse"', '30 A', 'data-part="o2-level-low" data-mount']) expect(gas.includes(gone), gone).toBe(false);
        expect(drawing(analysis, { layers: ['water'] }).text).toContain('data-part="h2-cooler" data-kind');
    });
    it('a part that is left out is told nowhere, nor what senses it', () => {
        const analysis = opened(path.join(examples, 'jeweller-torch-store.rig'));
        const svg = drawing(analysis, { without: new Set(['cylinder', 'compressor', 'compressor-contactor']) }).text;
        for (const name of ['cylinder', 'compressor', 'compressor-contactor', 'cut-off<', 'high-high<']) expect(new RegExp(`(>|")${name}`).test(svg), name).toBe(false);
        expect(svg).toContain('data-part="store-bag"');
        elementsOf(svg);
    });
    it('whatever can be pointed at is a part of the text', () => {
        for (const text of [...files.map(f => readFileSync(f, 'utf8')), ...wholes.slice(0, 40)]) {
            const analysis = new Analyst(f => (f === 'x.rig' ? text : undefined)).analyse('x.rig');
            const names = [...drawing(analysis).text.matchAll(/data-part="([^"]*)"/g)].map(m => m[1]);
            expect(names.length).toBeGreaterThan(10);
            expect(names.filter(n => !analysis.rig.parts.has(n))).toEqual([]);
        }
    });
    it('a finding stands at its part by shape and word', () => {
        const svg = drawing(opened(path.join(examples, 'mistakes', 'relief-missing.rig'))).text;
        expect(svg).toMatch(/data-part="[\w-]+"[^>]* data-severity="error"><title>error: [^<]+<\/title><path d="M-2.7[^>]*><text[^>]*>[!\d]+<\/text><text[^>]*>errors?<\/text>/);
    });
    it('what is not known is told as not known', () => {
        expect(drawing(analyseText('rig "R", idea\nstack { }\ncolumn c\npath hydrogen: stack -> c')).text).toMatch(/data-quantity="voltage">voltage \?</);
    });
    it('half-written rigs and rigs with mistakes are drawn as far as they go', () => {
        for (const file of mistakes) elementsOf(drawing(opened(file)).text);
        for (const text of ['', 'rig', 'rig "A"\npath hydrogen: a -> ', 'rig "A"\npath hydrogen: stack -> stack -> x', 'rig "A"\ntee a\ntee b\npath hydrogen: a -> b -> a', 'rig "A"\npath smoke: a -> b', 'rig "A"\nbag\ncylinder\ncompressor']) {
            const analysis = analyseText(text);
            elementsOf(drawingOf(analysis, printed)?.text ?? '');
            const layout = laidOut(analysis);
            expect([overlaps(layout), throughParts(layout), shared(layout)], text).toEqual([[], [], []]);
        }
    });
});

describe('layout', () => {
    it('measures find what they look for', () => {
        const layout = laidOut(opened(files[0]));
        const [first, second] = layout.placed;
        expect(overlaps({ ...layout, placed: layout.placed.map(p => (p === second ? { ...p, x: first.x, y: first.y } : p)) })).not.toEqual([]);
        expect(outside({ ...layout, width: layout.width - 60 })).not.toEqual([]);
        const { x, y } = first;
        const line = { ...layout.drawn[0], points: [[x - 200, y + 1], [x + 200, y + 1]] as const };
        expect(throughParts({ ...layout, drawn: [...layout.drawn, line] })).not.toEqual([]);
        expect(shared({ ...layout, drawn: [line, { ...line, net: -1 }] })).not.toEqual([]);
        const across = { ...line, net: -1, points: [[x, y - 50], [x, y + 50]] as const };
        expect(crossings({ ...layout, drawn: [line, across] })).toBe(1);
        expect(slanted({ ...layout, drawn: [{ ...line, points: [[0, 0], [5, 5]] }] })).toBe(1);
    });
    it('of the examples: nothing on anything, nothing cut, lines level or upright', () => {
        for (const file of [...files, ...mistakes]) {
            const layout = laidOut(opened(file));
            expect([overlaps(layout), outside(layout), throughParts(layout), shared(layout), slanted(layout)], file).toEqual([[], [], [], [], 0]);
        }
    });
    it('of 200 whole rigs: nothing on anything, nothing cut, lines level or upright', { timeout: 240_000 }, () => {
        for (const [i, layout] of allLaid().entries()) {
            expect([overlaps(layout), outside(layout), throughParts(layout), shared(layout), slanted(layout)], `seed ${i + 1}`).toEqual([[], [], [], [], 0]);
        }
    });
    it('few crossings and bends', { timeout: 240_000 }, () => {
        const counts = allLaid().map(crossings);
        const mean = counts.reduce((a, b) => a + b, 0) / counts.length;
        // elkjs 0.12.1, a general library for layered graphs with the same ports, draws these 200 with 6.0 crossings in the mean and 15 at most;
        // held to the order of the text, so that it moves as little, with 8.4 and 26.
        expect(mean).toBeLessThan(5);
        expect(Math.max(...counts)).toBeLessThanOrEqual(9);
        expect(allLaid().reduce((sum, l) => sum + bends(l), 0) / counts.length).toBeLessThan(46);
    });
});

describe('the sheet', () => {
    /** Every line of text with the room it takes. */
    const textsOf = (svg: string) => {
        const all = elementsOf(svg);
        const shift = (i: number): [number, number] => {
            if (i < 0) return [0, 0];
            const [x, y] = shift(all[i].within);
            const m = /^translate\(([-\d.]+) ([-\d.]+)\)/.exec(all[i].attributes.get('transform') ?? '');
            return m ? [x + Number(m[1]), y + Number(m[2])] : [x, y];
        };
        const words = [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(m => m[1].replace(/&#(\d+);/g, (_, n) => String.fromCodePoint(Number(n))));
        return all.filter(e => e.name === 'text').map(({ attributes, within }, k) => {
            const size = Number(attributes.get('font-size'));
            const [dx, dy] = shift(within);
            const [x, y, w] = [Number(attributes.get('x')) + dx, Number(attributes.get('y')) + dy, widthOf(words[k], size) * (attributes.has('font-weight') ? 1.08 : 1)];
            const left = { middle: x - w / 2, start: x }[attributes.get('text-anchor') ?? 'start']!;
            return { text: words[k], x0: left, x1: left + w, y0: y - 0.73 * size, y1: y + 0.2 * size };
        });
    };
    it('every word is on the sheet and on no other word', { timeout: 60_000 }, () => {
        const analyses = [...files.map(opened), ...[...wholes, 'rig "A"\nbag\ncylinder\ncompressor'].map(t => new Analyst(() => t).analyse('x.rig'))];
        for (const analysis of analyses) {
            const svg = drawingOf(analysis, printed)?.text;
            if (!svg) continue;
            const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(svg)!.map(Number);
            expect(width / height).toBeGreaterThan(1.41);
            const texts = textsOf(svg);
            expect(texts.filter(t => t.x0 < 8 || t.y0 < 8 || t.x1 > width - 8 || t.y1 > height - 8), analysis.rig.title).toEqual([]);
            const pairs = texts.flatMap((a, i) => texts.slice(i + 1).filter(b => a.x0 < b.x1 - 0.5 && b.x0 < a.x1 - 0.5 && a.y0 < b.y1 - 0.5 && b.y0 < a.y1 - 0.5).map(b => `${a.text} / ${b.text}`));
            expect(pairs, analysis.rig.title).toEqual([]);
        }
    });
});

describe('stability', () => {
    it('a changed value moves nothing', { timeout: 240_000 }, () => {
        for (let seed = 1; seed <= 60; seed++) {
            const text = wholes[seed - 1];
            const random = drawn(seed + 500);
            const numbers = [...text.matchAll(/: +(\d+(?:\.\d+)?) (?:V|A|mm|L|kPa|bar|h|m)\b/g)];
            const m = numbers[Math.floor(random() * numbers.length)];
            const at = m.index + m[0].indexOf(m[1]);
            const changed = `${text.slice(0, at)}${Number(m[1]) * 37.5}${text.slice(at + m[1].length)}`;
            const [a, b] = [allLaid()[seed - 1], ofText(changed)];
            expect(b.placed.map(p => [p.node.id, p.x, p.y]), m[0]).toEqual(a.placed.map(p => [p.node.id, p.x, p.y]));
            expect(b.drawn.map(d => d.points), m[0]).toEqual(a.drawn.map(d => d.points));
        }
    });
    it('a part put into a path leaves all others in their order', { timeout: 240_000 }, () => {
        let pairs = 0;
        const swapped: string[] = [];
        for (const [i, text] of wholes.entries()) {
            const random = drawn(i + 1001);
            const arrows = [...text.matchAll(/^path (hydrogen|oxygen|current):.*$/gm)].flatMap(m => [...m[0].matchAll(/->/g)].map(k => [m.index + k.index, m[1]] as const));
            const [at, medium] = arrows[Math.floor(random() * arrows.length)];
            const after = new Map(ofText(`${text.slice(0, at)}-> added ${text.slice(at)}\n${medium === 'current' ? 'fuse' : 'tube'} added\n`).placed.map(p => [p.node.id, p]));
            expect(after.has('added')).toBe(true);
            const both = allLaid()[i].placed.flatMap(p => (after.has(p.node.id) ? [[p, after.get(p.node.id)!] as const] : []));
            for (const [k, [p, u]] of both.entries()) {
                for (const [q, v] of both.slice(k + 1)) {
                    pairs++;
                    if ((p.x - q.x) * (u.x - v.x) < 0 || (p.y - q.y) * (u.y - v.y) < 0) swapped.push(`seed ${i + 1}: ${p.node.id}, ${q.node.id}`);
                }
            }
        }
        expect(pairs).toBeGreaterThan(50_000);
        expect(swapped).toEqual([]);
    });
    it('a part without a path yet moves no other', () => {
        const text = wholes[0];
        const after = new Map(ofText(`${text}\nfilter spare { }\n`).placed.map(p => [p.node.id, p]));
        for (const p of allLaid()[0].placed) expect(after.get(p.node.id)!.y).toBe(p.y);
        expect(after.get('spare')!.y).toBeGreaterThan(Math.max(...allLaid()[0].placed.map(p => p.y)));
    });
});

describe('whatever a rig is called', () => {
    const hostile = '"><script>alert(1)</script>&amp;\u0007\u202e <b onload=x>';
    it('titles are text', () => {
        const svg = drawing(analyseText(`rig "${hostile.replace(/"/g, '')}", idea\ntee a\ntee b\npath hydrogen: a -> b`)).text;
        expect(svg).not.toMatch(/<script|<b |\u0007/);
        elementsOf(svg);
    });
    it('names of parts, media and what they are like are text', () => {
        const analysis = analyseText('rig "R", idea\nstack { }\ntee xx\nbag yy { volume: 20 L }\nswitch zz { senses: yy.volume   breaks: above 15 L }\ncontactor main { stopped-by: zz }\nvalve ww { needs: main }\npath hydrogen: stack -> xx -> yy\n');
        // No text can bear such names: they are put into what was read of it.
        const rename = (value: unknown, seen = new Set<unknown>()): void => {
            if (typeof value !== 'object' || value === null || seen.has(value)) return;
            seen.add(value);
            for (const [k, v] of Object.entries(value)) {
                if (typeof v === 'string' && ['xx', 'yy', 'zz', 'hydrogen'].includes(v)) (value as Record<string, unknown>)[k] = `${v}${hostile}`;
                else rename(v, seen);
            }
        };
        const { placed } = laidOut(analysis);
        expect(placed.length).toBeGreaterThan(3);
        rename(analysis.rig.parts.get('xx'));
        rename(analysis.rig.paths);
        const svg = drawing(analysis).text;
        expect(svg).toContain('&#60;script');
        expect(svg).not.toMatch(/<script|<b /);
        elementsOf(svg);
    });
    it('very long names are cut, and do not break the sheet', () => {
        const long = `a${'b'.repeat(300)}`;
        const analysis = analyseText(`rig "${'W'.repeat(400)}", idea\ntee ${long}\nvalve ${long}-${long} { }\npath hydrogen: ${long} -> ${long}-${long} -> outdoors`);
        const layout = laidOut(analysis);
        expect([overlaps(layout), outside(layout), throughParts(layout)]).toEqual([[], [], []]);
        expect(layout.width).toBeLessThan(700);
    });
    it('styles, scripts and ids that others might bear are not used', () => {
        const svg = drawing(opened(files[0]), { id: 'one' }).text;
        expect(svg).not.toMatch(/ style=|<style|<script|href=/);
        expect([...svg.matchAll(/ id="([^"]*)"/g)].every(m => m[1].startsWith('one-'))).toBe(true);
        expect(svg).toContain(FONT.replace(/"/g, '&#34;'));
    });
});

describe('enormous rigs', () => {
    const rows = (n: number) => `rig "Many", idea\nstack { }\ncolumn c\n${Array.from({ length: n }, (_, i) => `valve v${i} { sort: hand }\nbag b${i} { volume: 50 L }\ncheck-valve k${i}\n`).join('')}tee join\npath hydrogen: stack -> c\n${Array.from({ length: n }, (_, i) => `path hydrogen: c -> v${i} -> b${i} -> k${i} -> join`).join('\n')}\npath hydrogen: join -> outdoors\n`;
    it('draw like rows once, with a count', () => {
        const analysis = analyseText(rows(40));
        const svg = drawing(analysis).text;
        expect(svg).toContain('× 40');
        expect(svg.match(/data-kind="bag"/g)).toHaveLength(1);
        expect(svg).toContain(`data-like="${Array.from({ length: 40 }, (_, i) => `b${i}`).join(' ')}"`);
        const layout = laidOut(analysis);
        expect(layout.width).toBeLessThan(1400);
        expect([overlaps(layout), outside(layout), throughParts(layout), shared(layout)]).toEqual([[], [], [], []]);
    });
    it('draw like rigs side by side once, with a count', () => {
        const one = (i: number) => `panels p${i}\nfuse f${i}\nisolator i${i}\nbattery a${i}\npath current: p${i} -> f${i} -> i${i} -> a${i}\n`;
        const svg = drawing(analyseText(`rig "Rows", idea\n${Array.from({ length: 20 }, (_, i) => one(i)).join('')}`)).text;
        expect(svg.match(/× 20/g)).toHaveLength(4);
    });
    it('few like ones are drawn each by itself', () => {
        expect(drawing(analyseText(rows(6))).text).not.toContain('×');
    });
    it('and those without likes are laid out in their time', { timeout: 60_000 }, () => {
        const n = 60;
        const text = `rig "Long", idea\nstack { }\n${Array.from({ length: n }, (_, i) => `valve v${i} { }\nfilter w${i} { }\ntee t${i}\n`).join('')}path hydrogen: stack -> ${Array.from({ length: n }, (_, i) => `t${i} -> v${i}`).join(' -> ')} -> outdoors\n${Array.from({ length: n - 9 }, (_, i) => `path hydrogen: t${i} -> w${i} -> t${i + 7}`).join('\n')}`;
        const layout = laidOut(analyseText(text));
        expect([overlaps(layout), outside(layout), throughParts(layout), shared(layout)]).toEqual([[], [], [], []]);
    });
});

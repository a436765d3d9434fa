/** What shows the shape of a text: outline, folding, selection, colours, links, lenses, formatting, all names. */
import { describe, expect, it } from 'vitest';
import { formatText } from '../../language/rig/format.js';
import { lensesOf } from '../../server/editor/features/code-lenses.js';
import { foldsOf } from '../../server/editor/features/folding.js';
import { formatAll, formatLines } from '../../server/editor/features/formatting.js';
import { linksOf } from '../../server/editor/features/links.js';
import { selectionAt } from '../../server/editor/features/selection-ranges.js';
import { tokensOf } from '../../server/editor/features/semantic-tokens.js';
import { outline } from '../../server/editor/features/symbols.js';
import { namesLike } from '../../server/editor/features/workspace-symbols.js';
import type { Range } from '../../server/editor/house.js';
import { apply, marked, open } from './marked.js';

const rig = `rig "A", idea

supply { sort: bench   voltage: 24 V   current-limit: 10 A }
# ==== Cells ====
stack {
  cells:            10
  wetted:           80 x 100 mm
}
# ==== Gas ====
# two bubblers,
# both alike
bubbler h2-bubbler
bubbler o2-bubbler like h2-bubbler
path hydrogen: stack -> h2-bubbler -> outdoors
path oxygen:   stack -> o2-bubbler -> outdoors
let spare = 3 bar
`;

describe('outline', () => {
    const o = open(rig);
    const tree = outline(o.house, o.uri);
    it('puts parts under their headings', () => {
        expect(tree.map(s => [s.name, s.children!.map(c => c.name)])).toEqual([
            ['supply', []], ['Cells', ['stack']], ['Gas', ['h2-bubbler', 'o2-bubbler', 'stack to outdoors', 'stack to outdoors', 'spare']],
        ]);
    });
    it('shows the number that tells most', () => {
        expect(tree[1].children![0].detail).toMatch(/^[12](\.\d+)? V$/);
        expect(tree[2].children![0].detail).toMatch(/^bubbler/);
        expect(tree[2].children!.at(-1)!.detail).toBe('3 bar');
    });
    it('has every name inside its range, and every range inside that above it', () => {
        const lies = (a: Range, b: Range) => (a.start.line > b.start.line || (a.start.line === b.start.line && a.start.character >= b.start.character)) && (a.end.line < b.end.line || (a.end.line === b.end.line && a.end.character <= b.end.character));
        for (const text of [rig, rig.replace('}\n# ==== Gas', '\n# ==== Gas'), 'stack {\n# ==== x ====\ncells: 1', 'let a =\npath x:\nbag']) {
            const p = open(text);
            for (const s of outline(p.house, p.uri)) {
                expect(lies(s.selectionRange, s.range)).toBe(true);
                for (const c of s.children ?? []) {
                    expect(lies(c.selectionRange, c.range), `${c.name} ${JSON.stringify(c)}`).toBe(true);
                    expect(lies(c.range, s.range)).toBe(true);
                }
            }
        }
    });
});

describe('folding', () => {
    const folds = (text: string) => {
        const o = open(text);
        return foldsOf(o.house, o.uri).map(f => `${f.startLine}-${f.endLine}${f.kind ? ` ${f.kind}` : ''}`).sort();
    };
    it('blocks keep their closing brace in sight; runs of paths, comments and headings fold', () => {
        expect(folds(rig)).toEqual(['13-14', '3-7 region', '4-6', '8-15 region', '9-10 comment']);
    });
    it('works while a block is open', () => {
        expect(folds('stack {\n  cells: 1\n  wetted: 1 x 1 mm\nbag {\n  volume: 1 L\n}')).toEqual(['0-2', '3-4']);
    });
});

describe('growing selection', () => {
    const grown = (source: string) => {
        const o = open(source);
        const out: string[] = [];
        for (let r = selectionAt(o.house, o.uri, o.at) as ReturnType<typeof selectionAt> | undefined; r; r = r.parent) out.push(o.read(r.range));
        return out;
    };
    it('goes from the word to the item, the value, the line, the block, the text', () => {
        expect(grown('stack {\n  plate: nickel, 130 x 1<|>50 x 1 mm\n}\nbag { }')).toEqual([
            '150', '130 x 150 x 1 mm', 'nickel, 130 x 150 x 1 mm', 'plate: nickel, 130 x 150 x 1 mm', '  plate: nickel, 130 x 150 x 1 mm', '\n  plate: nickel, 130 x 150 x 1 mm\n',
            'stack {\n  plate: nickel, 130 x 150 x 1 mm\n}', 'stack {\n  plate: nickel, 130 x 150 x 1 mm\n}\nbag { }',
        ]);
        expect(grown('path lye: sta<|>ck -> bag').slice(0, 2)).toEqual(['stack', 'path lye: stack -> bag']);
    });
    it('gives something everywhere', () => {
        for (const source of ['<|>', 'bag { <|>}', '# so<|>me words', '}}}<|>{{{']) expect(grown(source).length).toBeGreaterThan(0);
    });
});

describe('colours by meaning', () => {
    it('kind, name, property, number, unit, word, computed, unknown', () => {
        const source = `column left { level: 230 mm   colour: red }
#^^^^^ class
#      ^^^^ variable
#             ^^^^^ property
#                    ^^^ number
#                        ^^ type
#                             ^^^^^^ unknown
column right like left
#            ^^^^ keyword?
trip low { senses: left.level   trips: below 100 mm ± 2 % }
#                  ^^^^ variable
#                       ^^^^^ property
#                                      ^^^^^ keyword
expect stack.voltage < 30 V
#            ^^^^^^^ function
lye { solute: KOH }
#             ^^^ enumMember
foo bar { }
#^^ unknown
allow oxygen-kept on nobody
#     ^^^^^^^^^^^ function
#                    ^^^^^^ unknown
`.replace(/^#\^/gm, '# ^').replace('#            ^^^^ keyword?\n', '');
        // The marks count from column 0; a mark over the first letters begins one further in.
        const m = marked(`stack { cells: 2 }\n${source}`);
        const o = open(m.text);
        const tokens = tokensOf(o.house, o.uri);
        const { lines } = o.house.doc(o.uri)!;
        for (const mark of m.marks) {
            const offset = lines.offset(mark.range.start);
            const token = tokens.find(t => t.start <= offset && offset < t.end);
            expect(token?.type, `${mark.over} in ${lines.lineText(mark.range.start.line)}`).toBe(mark.label);
        }
        expect(m.marks.length).toBe(14);
    });
    it('words that happen to be the names of parts stay words', () => {
        const o = open('rig "A", idea\n\nsupply converter { sort: converter   voltage: 20 V }\nseparator { material: PP-felt }\nroutine { steps: wet separator, start }\n');
        const typeAt = (text: string, n: number) => tokensOf(o.house, o.uri).find(t => t.start <= o.text.indexOf(text) + n && o.text.indexOf(text) + n < t.end)?.type;
        expect(typeAt('converter { sort', 0)).toBe('variable');
        expect(typeAt('sort: converter', 6)).toBe('enumMember');
        expect(typeAt('wet separator', 4)).toBe('enumMember');
    });
    it('never overlap, and go through the text in order', () => {
        const o = open(rig);
        const tokens = tokensOf(o.house, o.uri);
        expect(tokens.length).toBeGreaterThan(30);
        tokens.reduce((end, t) => {
            expect(t.start).toBeGreaterThanOrEqual(end);
            return t.end;
        }, 0);
    });
});

describe('links', () => {
    it('files that are used, addresses and papers', () => {
        const o = open('use "my shelf.rig"\n# see https://example.org/a_(b), and doi:10.1000/abc.\n');
        expect(linksOf(o.house, o.uri).map(l => [o.read(l.range), l.target])).toEqual([
            ['my shelf.rig', 'file:///rigs/my%20shelf.rig'], ['https://example.org/a_(b)', 'https://example.org/a_(b)'], ['doi:10.1000/abc', 'https://doi.org/10.1000/abc'],
        ]);
    });
});

describe('lenses', () => {
    const lenses = (text: string, own = true) => {
        const o = open(text, { own });
        return lensesOf(o.house, o.uri).map(l => ({ title: l.command!.title, command: l.command!.command, line: l.range.start.line }));
    };
    it('on the title: findings and assumptions, with a word of care', () => {
        const [findings, assumed, care] = lenses(rig).filter(l => !l.title.endsWith('near a limit'));
        expect(findings.title).toMatch(/^(nothing found|\d+ (error|warning|hint)s?)/);
        expect(assumed).toMatchObject({ title: expect.stringMatching(/^\d+ assumed$/), command: 'rigwright.writeAssumptions', line: 0 });
        expect(care.title).toContain('licensed practice');
    });
    it('on the title: how many numbers are near a limit, if any', () => {
        const titles = (bears: number) => lenses(`rig "A", drawn\ncylinder { volume: 20 L   rating: 16 bar }\nregulator { listed-for: hydrogen   inlet-rating: ${bears} bar }\npath hydrogen: cylinder -> regulator -> burner\n`).map(l => l.title);
        expect(titles(17)).toContain('1 near a limit');
        expect(titles(30).join()).not.toContain('near a limit');
    });
    it('a rig without parts is not one where nothing was found; half an expectation has no lens that comes and goes', () => {
        expect(lenses('rig "A", idea\n').map(l => l.title)).toEqual(['no part described yet', 'local codes and licensed practice decide']);
        expect(lenses(`${rig}expect stack.`)).toHaveLength(lenses(rig).length);
    });
    it('on expectations: how each stands', () => {
        const stands = (line: string) => lenses(`${rig}${line}`).at(-1)!.title;
        expect(stands('expect stack.voltage < 2 kV')).toMatch(/^Holds: [\d.]+ k?V ± /);
        expect(stands('expect stack.voltage between 1 V and 2 V')).toMatch(/^Does not hold: [\d.]+ V ± [\d.]+ V$/);
        expect(stands('expect bag.fill-time < 2 h')).toMatch(/^Not known/);
        expect(stands('expect if control lost: always stack stopped')).toBe('Held against a run');
        expect(stands('variant winter { stack.cells: 6 }\nexpect with winter: stack.voltage < 30 V')).toMatch(/^Holds: /);
        const o = open(rig);
        const analysis = o.house.analysis(o.uri)!;
        const v = analysis.workings.quantity(analysis.rig.parts.get('stack')!, 'volts-per-cell')!;
        expect(stands(`expect stack.volts-per-cell < ${((v.value + v.high) / 2).toFixed(4)} V`)).toMatch(/^May not hold/);
    });
    it('never disagree with the finding on the same line', () => {
        for (const line of ['expect stack.voltage > 2 kV', 'expect stack.voltage < 2 kV', 'expect stack.hydrogen-rate > 1 L/h', 'expect stack.gasket-squeeze < 30 %', 'expect site.air-pressure > 50 kPa']) {
            const o = open(`${rig}${line}`);
            const told = o.house.findingsIn(o.uri).find(f => f.rule === 'expectation-not-met')?.severity;
            expect(lensesOf(o.house, o.uri).at(-1)!.command!.title, line).toMatch(told === 'error' ? /^Does not hold/ : told === 'hint' ? /^Not known/ : /^(Holds|May not hold)/);
        }
    });
    it('are words only where the client does not know our commands', () => {
        expect(lenses(rig, false).every(l => l.command === '')).toBe(true);
    });
});

describe('formatting', () => {
    const messy = 'rig "A",idea\nstack   {\ncells:10\n      wetted :  80 x 100 mm   # window\n}\nbag {\n  volume 80 L\n rating:2 kPa\n}\n\n\n\n\nexpect   stack.voltage<30 V';
    it('is what the command makes, by edits that do not overlap', () => {
        for (const text of [messy, messy.replaceAll('\n', '\r\n'), rig, '', '\n\n\n', `${rig}\n\n\n`]) {
            const o = open(text);
            expect(apply(text, formatAll(o.house, o.uri))).toBe(formatText(text));
        }
    });
    it('changes nothing that is tidy already', () => {
        const tidy = formatText(messy);
        const o = open(tidy);
        expect(formatAll(o.house, o.uri)).toEqual([]);
    });
    it('of a stretch leaves other lines alone', () => {
        const o = open(messy);
        const lines = apply(messy, formatLines(o.house, o.uri, 2, 2)).split('\n');
        expect(lines[2]).toBe('  cells:            10');
        expect(lines[3]).toBe(messy.split('\n')[3]);
    });
    it('works while another line is broken', () => {
        const o = open(messy);
        expect(apply(messy, formatAll(o.house, o.uri))).toContain('  rating:           2 kPa');
    });
});

describe('all names', () => {
    it('are found by letters in their order, in every file that is known', () => {
        const o = open(`${rig}use "s.rig"\n`, { others: { 's.rig': 'library "S"\nbag hb-bag { }\n' } });
        o.house.analysis(o.uri);
        expect(namesLike(o.house, 'h2b').map(s => s.name)).toEqual(['h2-bubbler']);
        expect(namesLike(o.house, 'HB').map(s => s.name)).toEqual(['h2-bubbler', 'hb-bag']);
        expect(namesLike(o.house, 'spare')).toHaveLength(1);
    });
});

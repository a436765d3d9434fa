/** Definition, references, highlights, rename. */
import { describe, expect, it } from 'vitest';
import { definitionAt } from '../../server/editor/features/definition.js';
import { prepareRename, renameTo } from '../../server/editor/features/rename.js';
import { nameAt, valueAt } from '../../server/editor/names.js';
import { applyTo, main, open } from './marked.js';

const definition = (source: string, others: Record<string, string> = {}) => {
    const o = open(source, { others });
    const span = definitionAt(o.house, o.uri, o.at);
    return span && { file: span.file.slice('file:///rigs/'.length), text: o.house.linesOf(span.file).text.slice(span.start, span.end), line: o.house.linesOf(span.file).at(span.start).line };
};
describe('definition', () => {
    it('of a part, from a path, a list, a key and a value', () => {
        const rig = 'rig "A", idea\ncolumn left { level: 200 mm }\ntrip low { senses: left.level   trips: below 100 mm }\ncontactor main { stopped-by: low }\n';
        expect(definition(`${rig}path lye: le<|>ft -> stack`)).toEqual({ file: 'a.rig', text: 'left', line: 1 });
        expect(definition(rig.replace('stopped-by: low', 'stopped-by: l<|>ow'))).toMatchObject({ text: 'low', line: 2 });
        expect(definition(rig.replace('left.level ', 'left.lev<|>el '))).toMatchObject({ text: 'level', line: 1 });
        expect(definition(`${rig}reading r { le<|>ft.level: 190 mm }`)).toMatchObject({ text: 'left', line: 1 });
    });
    it('of a worked-out number leads to the line that shows it', () => {
        expect(definition('rig "A", idea\nstack {\n  cells: 10\n}\nexpect stack.volts-per-<|>cell < 2 V')).toMatchObject({ text: 'cells', line: 2 });
    });
    it('of a named value and of what a part is like', () => {
        expect(definition('let spare = 1 bar\nexpect spa<|>re > 0 bar')).toMatchObject({ text: 'spare', line: 0 });
        expect(definition('rig "A", idea\nuse "shelf.rig"\nbag mine like big<|>-bag', { 'shelf.rig': 'library "S"\n\nbag big-bag { volume: 200 L }' })).toEqual({ file: 'shelf.rig', text: 'big-bag', line: 2 });
    });
    it('of a file that is used; nothing where there is none', () => {
        expect(definition('rig "A", idea\nuse "she<|>lf.rig"', { 'shelf.rig': 'library "S"' })).toMatchObject({ file: 'shelf.rig', line: 0 });
        expect(definition('rig "A", idea\nuse "no<|>ne.rig"')).toBeUndefined();
        expect(definition('rig "A", id<|>ea')).toBeUndefined();
    });
});

describe('references', () => {
    const places = (source: string, others: Record<string, string> = {}) => {
        const o = open(source, { others });
        return (nameAt(o.house, o.uri, o.at)?.places ?? valueAt(o.house, o.uri, o.at) ?? []).map(p => `${p.file.slice('file:///rigs/'.length)}:${o.house.linesOf(p.file).at(p.start).line}${p.write ? ' !' : ''}`);
    };
    it('of a part: its header, paths, lists, dotted keys, other pages', () => {
        expect(places('rig "A", idea\nuse "b.rig"\nbag sto<|>re { volume: 80 L }\npath hydrogen: stack -> store\nreading r { store.volume: 3 L }\nexpect store.volume > 1 L', { 'b.rig': 'path hydrogen: store -> burner\n' }))
            .toEqual(['a.rig:2 !', 'a.rig:3', 'a.rig:4', 'a.rig:5', 'b.rig:0']);
    });
    it('of one value of a part', () => {
        expect(places('rig "A", idea\ncolumn left { lev<|>el: 200 mm }\ncolumn right { level: 200 mm }\ntrip low { senses: left.level   trips: below 100 mm }\nexpect right.level > 1 mm')).toEqual(['a.rig:1 !', 'a.rig:3']);
    });
    it('a pattern and a part of one name are two things', () => {
        expect(places('rig "A", idea\nuse "s.rig"\nbag b<|>ig { volume: 80 L }\npath hydrogen: stack -> big', { 's.rig': 'library "S"\nbag big { volume: 1 L }\nbag bigger like big' })).toEqual(['a.rig:2 !', 'a.rig:3']);
    });
    it('of a pattern go through every rig on screen that uses its library', () => {
        const o = open('library "S"\nbag bi<|>g { volume: 1 L }\n');
        o.house.open('file:///rigs/one.rig', 'rig "1", idea\nuse "a.rig"\nbag mine like big\n', 1);
        o.house.open('file:///rigs/two.rig', 'rig "2", idea\nuse "a.rig"\nbag other like big\n', 1);
        expect(nameAt(o.house, main, o.at)!.places.map(p => p.file.slice(-7))).toEqual(['s/a.rig', 'one.rig', 'two.rig']);
    });
});

describe('rename', () => {
    const rename = (source: string, to: string, others: Record<string, string> = {}) => {
        const o = open(source, { others });
        const edit = renameTo(o.house, o.uri, o.at, to);
        if (typeof edit === 'string') return edit;
        return Object.fromEntries(Object.keys(edit.changes!).map(uri => [uri.slice('file:///rigs/'.length), applyTo(o.house.linesOf(uri).text, edit, uri)]));
    };
    it('reaches every place, other pages and dotted keys included', () => {
        expect(rename('rig "A", idea\nuse "b.rig"\nbag sto<|>re { volume: 80 L }\npath hydrogen: stack -> store\nreading r { store.volume: 3 L }\nexpect store.volume > 1 L', 'big-bag', { 'b.rig': 'path hydrogen: store -> burner\n' })).toEqual({
            'a.rig': 'rig "A", idea\nuse "b.rig"\nbag big-bag { volume: 80 L }\npath hydrogen: stack -> big-bag\nreading r { big-bag.volume: 3 L }\nexpect big-bag.volume > 1 L',
            'b.rig': 'path hydrogen: big-bag -> burner\n',
        });
    });
    it('gives a name to a part that bore that of its kind', () => {
        expect(rename('rig "A", idea\nbag { volume: 80 L }\npath hydrogen: stack -> ba<|>g', 'store')).toEqual({ 'a.rig': 'rig "A", idea\nbag store { volume: 80 L }\npath hydrogen: stack -> store' });
    });
    it('changes a named value, and no part that only begins alike', () => {
        expect(rename('let spa<|>re = 1 bar\nbag spare-bag { rating: spare }', 'left')).toEqual({ 'a.rig': 'let left = 1 bar\nbag spare-bag { rating: left }' });
    });
    it('keeps what a text says', () => {
        const o = open('rig "A", idea\nstack { cells: 10   wetted: 80 x 100 mm }\nsupply { voltage: 24 V }\nbubbler fi<|>rst { immersion: 90 mm }\nbubbler second like first\npath hydrogen: stack -> first -> outdoors\n');
        const messages = () => o.house.findingsIn(main).map(f => `${f.rule} ${f.message}`.replaceAll('wash', 'first'));
        const before = messages();
        const edit = renameTo(o.house, o.uri, o.at, 'wash');
        o.house.change(main, 2, [{ text: applyTo(o.text, edit as never) }]);
        expect(messages()).toEqual(before);
    });
    for (const [why, source, to, says] of [
        ['no name', 'rig "A", id<|>ea', 'x', /There is no name to change here/],
        ['a property', 'bag { vol<|>ume: 80 L }', 'x', /There is no name to change here/],
        ['a part in no text', 'rig "A", idea\npath hydrogen: stack -> bur<|>ner', 'x', /burner is in no text of its own yet/],
        ['blanks in the name', 'bag b<|>ig { }', 'very big', /without blanks/],
        ['a word of the language', 'bag b<|>ig { }', 'path', /meaning of its own/],
        ['an end of paths', 'bag b<|>ig { }', 'outdoors', /meaning of its own/],
        ['a kind', 'bag b<|>ig { }', 'stack', /is a kind of part/],
        ['a name that is taken', 'bag b<|>ig { }\nbag small { }', 'small', /taken by another part/],
        ['a value that is taken', 'bag b<|>ig { }\nlet small = 3', 'small', /taken by another value/],
    ] as const) it(`is refused in plain words: ${why}`, () => expect(rename(source, to)).toMatch(says));
    it('is prepared with the name alone', () => {
        const o = open('rig "A", idea\nbag <|>store { }\nreading r { store.volume: 3 L }');
        expect(prepareRename(o.house, o.uri, { line: 2, character: 14 })).toEqual({ range: { start: { line: 2, character: 12 }, end: { line: 2, character: 17 } }, placeholder: 'store' });
        expect(prepareRename(o.house, o.uri, { line: 2, character: 20 })).toMatch(/no name to change/);
    });
});

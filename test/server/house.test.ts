/** Texts, rigs of several files, and what happens when analysis itself fails. */
import { describe, expect, it } from 'vitest';
import { Analyst } from '../../language/index.js';
import { House, type Change } from '../../server/editor/house.js';
import { main, open } from './marked.js';

const rig = 'rig "A", drawn\nstack { cells: 10   wetted: 80 x 100 mm }\nsupply { voltage: 24 V }\n';
const edit = (line: number, from: number, to: number, text: string): Change => ({ range: { start: { line, character: from }, end: { line, character: to } }, text });

describe('texts', () => {
    it('take several changes of one step in their order', () => {
        const o = open('abc\ndef');
        o.house.change(main, 2, [edit(0, 0, 1, 'xy\n'), edit(1, 0, 1, 'B'), { text: 'whole' }, edit(0, 5, 5, '!')]);
        expect(o.house.doc(main)).toMatchObject({ text: 'whole!', version: 2 });
    });
    it('count UTF-16 units, and bear places beyond a line or the text', () => {
        const o = open('a 😀 °C\r\nend');
        o.house.change(main, 2, [edit(0, 4, 4, 'X'), edit(0, 99, 99, '!'), edit(99, 0, 99, '.')]);
        expect(o.house.doc(main)!.text).toBe('a 😀X °C!\r\nend.');
    });
    it('are left alone where nothing is open', () => {
        const o = open('abc');
        o.house.change('file:///rigs/other.rig', 2, [{ text: 'x' }]);
        expect(o.house.doc('file:///rigs/other.rig')).toBeUndefined();
    });
});

describe('analysis', () => {
    it('is of the text as it is now, and made once for a text', () => {
        const o = open(rig);
        const first = o.house.analysis(main)!;
        expect(o.house.analysis(main)).toBe(first);
        o.house.change(main, 2, [edit(1, 15, 17, '20')]);
        const second = o.house.analysis(main)!;
        expect(second).not.toBe(first);
        expect(second.rig.pages[0].text).toContain('cells: 20');
    });
    it('is made again when the day changes', () => {
        const o = open(rig);
        const first = o.house.analysis(main);
        o.house.setSettings({ today: '2030-01-01', hints: true, faults: true });
        expect(o.house.analysis(main)).not.toBe(first);
    });
    it('follows a file that is used, and hears when it changes', () => {
        const o = open(`${rig}use "parts.rig"\nbubbler b like shelf\n`, { others: { 'parts.rig': 'library "Shelf"\nbubbler shelf { immersion: 90 mm }\n' } });
        expect(o.house.findingsIn(main).map(f => f.rule)).not.toContain('file-not-found');
        const before = o.house.analysis(main)!;
        expect(before.rig.patterns.has('shelf')).toBe(true);
        o.house.learn('file:///rigs/parts.rig', 'library "Shelf"\n');
        expect(o.house.analysis(main)!.rig.patterns.has('shelf')).toBe(false);
        expect(o.house.findingsIn(main).map(f => f.rule)).toContain('unknown-name');
    });
    it('tells a file that is not there, until it is', () => {
        const o = open(`${rig}use "parts.rig"\n`);
        expect(o.house.findingsIn(main).map(f => f.rule)).toContain('file-not-found');
        o.house.learn('file:///rigs/parts.rig', 'library "Shelf"\n');
        expect(o.house.findingsIn(main).map(f => f.rule)).not.toContain('file-not-found');
    });
    it('takes what is on screen before what is on disk', () => {
        const o = open(`${rig}use "parts.rig"\n`, { others: { 'parts.rig': 'library "Shelf"\nbag on-disk { }\n' } });
        o.house.open('file:///rigs/parts.rig', 'library "Shelf"\nbag on-screen { }\n', 1);
        expect([...o.house.analysis(main)!.rig.patterns.keys()]).toEqual(['on-screen']);
        expect(o.house.learn('file:///rigs/parts.rig', 'library "Other"\n')).toBe(false);
        o.house.close('file:///rigs/parts.rig');
        expect([...o.house.analysis(main)!.rig.patterns.keys()]).toEqual(['on-disk']);
    });
});

describe('a page opened alone', () => {
    const others = { 'whole.rig': `${rig}use "gas.rig"\n`, 'gas.rig': '' };
    it('is judged in the rig that uses it, found among the files beside it', () => {
        const o = open('bag { volume: 80 L }\npath hydrogen: stack -> bag\n', { others: { ...others, 'whole.rig': `${rig}use "a.rig"\n` } });
        expect(o.house.rootOf(main)).toBe('file:///rigs/whole.rig');
        expect(o.house.analysis(main)!.rig.parts.get('stack')?.implied).toBeUndefined();
        expect(o.house.findingsIn(main).map(f => f.rule)).not.toContain('unknown-name');
    });
    it('may be used by way of another page', () => {
        const o = open('bag { volume: 80 L }\n', { others: { 'whole.rig': `${rig}use "gas.rig"\n`, 'gas.rig': 'use "a.rig"\n' } });
        expect(o.house.rootOf(main)).toBe('file:///rigs/whole.rig');
        expect([...o.house.analysis(main)!.files].sort()).toEqual([main, 'file:///rigs/gas.rig', 'file:///rigs/whole.rig']);
    });
    it('stands for itself where no rig uses it', () => {
        const o = open('bag { volume: 80 L }\n', { others });
        expect(o.house.rootOf(main)).toBe(main);
    });
    it('of two rigs takes the one on screen', () => {
        const o = open('bag { volume: 80 L }\n', { others: { 'b.rig': `${rig}use "a.rig"\n`, 'c.rig': `${rig}use "a.rig"\n` } });
        expect(o.house.rootOf(main)).toBe('file:///rigs/b.rig');
        o.house.open('file:///rigs/c.rig', `${rig}use "a.rig"\n`, 1);
        expect(o.house.rootOf(main)).toBe('file:///rigs/c.rig');
    });
});

describe('a failure of analysis', () => {
    it('is told once, gives nothing stale, and is over with the next text', () => {
        const house = new House();
        const told: unknown[] = [];
        house.failed = e => told.push(e);
        house.open(main, rig, 1);
        const before = house.analysis(main);
        expect(before).toBeDefined();
        const analyse = Analyst.prototype.analyse;
        Analyst.prototype.analyse = () => {
            throw new Error('a slip of ours');
        };
        try {
            house.change(main, 2, [edit(1, 15, 17, '20')]);
            expect(house.analysis(main)).toBeUndefined();
            expect(house.analysis(main)).toBeUndefined();
            expect(house.findingsIn(main)).toEqual([]);
            expect(told).toHaveLength(1);
        } finally {
            Analyst.prototype.analyse = analyse;
        }
        house.change(main, 3, [edit(1, 15, 17, '12')]);
        expect(house.analysis(main)!.rig.pages[0].text).toContain('cells: 12');
    });
});

describe('what is not a rig at all', () => {
    const odd: Record<string, string> = {
        'nothing': '', 'a byte order mark': '\ufeff' + rig, 'zeros': '\0\0\0\u0001\u0002', 'brackets': '('.repeat(20_000), 'braces': 'a {\n'.repeat(5_000), 'one long line': 'x'.repeat(200_000),
        'commas': `stack { cells: ${'1,'.repeat(20_000)} }`, 'brackets in a value': `let a = ${'('.repeat(20_000)}`, 'a long sum': `let a = ${'1 + '.repeat(20_000)}1`, 'calls in calls': `let a = ${'min('.repeat(20_000)}`, 'minus signs': `let a = ${'-'.repeat(20_000)}1`, 'powers': `let a = ${'2^'.repeat(5_000)}2`, 'quotes': '"'.repeat(9_999), 'half of a pair': '\ud83d stack \ude00 { cells: 1 }', 'a page of the web': '<!doctype html><html><body>{ color: red }</body></html>',
    };
    for (const [what, text] of Object.entries(odd)) {
        it(`is read without harm: ${what}`, () => {
            const house = new House();
            const failures: unknown[] = [];
            house.failed = e => failures.push(e);
            house.open(main, text, 1);
            const analysis = house.analysis(main);
            expect(failures).toEqual([]);
            expect(analysis!.rig.pages[0].text).toBe(text);
        });
    }
});

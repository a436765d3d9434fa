/** The notation of these tests is itself held. */
import { describe, expect, it } from 'vitest';
import { apply, marked } from './marked.js';

describe('marked texts', () => {
    it('give cursors, stretches and what is expected of a line', () => {
        const m = marked('stack { ce<|>lls: <|10|> }\n#        ^^^^^ property\nbag');
        expect(m.text).toBe('stack { cells: 10 }\nbag');
        expect(m.cursors).toEqual([{ line: 0, character: 10 }, { line: 0, character: 15 }]);
        expect(m.ranges).toEqual([{ start: { line: 0, character: 15 }, end: { line: 0, character: 17 } }]);
        expect(m.marks.map(x => [x.label, x.range.start.line, x.range.start.character])).toEqual([['property', 0, 9]]);
    });
    it('are put together again by edits, which may not overlap', () => {
        const at = (from: number, to: number, newText: string) => ({ range: { start: { line: 0, character: from }, end: { line: 0, character: to } }, newText });
        expect(apply('abc', [at(2, 3, 'X'), at(0, 1, 'Y'), at(1, 1, '-')])).toBe('Y-bX');
        expect(() => apply('abc', [at(0, 2, ''), at(1, 3, '')])).toThrow('overlap');
    });
});

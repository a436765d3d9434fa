/** Words of the trade that are no names here lead to the name; numbers without a unit are not guessed. */
import { expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { explain } from '../../language/reference/explain.js';
import { kinds } from '../../language/vocabulary/index.js';

const told = (text: string) => analyseText(`rig "Words", idea\n\n${text}\n`).findings.map(f => `${f.rule}: ${f.message}`);

it('no other word is a kind, or means two', () => {
    const words = [...kinds.values()].flatMap(k => k.called);
    expect(words.filter(w => kinds.has(w))).toEqual([]);
    expect(new Set(words).size).toBe(words.length);
});
it('a word of the trade leads to the kind, and its page', () => {
    expect(told('tank { volume: 20 L }')).toContain('unknown-word: tank is called cylinder here.');
    expect(told('Electrolyte { solute: KOH }')).toContain('unknown-word: Electrolyte is called lye here.');
    expect(explain('hose')?.markdown).toContain('# tube');
});
it('a strength or share above one needs its unit', () => {
    expect(told('lye { strength: 25 }')).toContain('unit-missing: A unit is missing: wt%, %, ppm?');
    expect(told('supply { efficiency: 94 }').filter(t => t.startsWith('unit-missing'))).toHaveLength(1);
    expect(told('supply { efficiency: 0.94 }').filter(t => t.startsWith('unit-missing'))).toEqual([]);
    expect(told('lye { strength: 25 % }').filter(t => t.startsWith('unit-missing'))).toEqual([]);
});
it('the beginning of a name leads to the name', () => {
    expect(told('stack { cells: 2   wetted: 40 x 50 mm }\nexpect stack.hydrogen > 1 NL/h').join('\n')).toContain('did you mean hydrogen-rate?');
});

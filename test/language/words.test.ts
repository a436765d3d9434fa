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
it('other words of the trade for a value lead to the value', () => {
    expect(told('site { place: houseboat }')).toContain('unknown-word: houseboat is called flat here.');
    expect(told('supply { sort: dc-dc   voltage: 20 V }')).toContain('unknown-word: dc-dc is called converter here.');
    for (const kind of kinds.values()) {
        for (const p of Object.values(kind.properties)) {
            for (const atom of p.items.flat()) {
                if (typeof atom === 'string' || typeof atom.type !== 'object' || !('words' in atom.type)) continue;
                for (const [other, word] of Object.entries(atom.type.called ?? {})) {
                    expect(atom.type.words, `${kind.name}.${p.name}`).toContain(word);
                    expect(atom.type.words, `${kind.name}.${p.name}`).not.toContain(other);
                }
            }
        }
    }
});
it('a word that is a value has a page', () => {
    expect(explain('LFP')?.markdown).toContain('battery.sort');
    expect(explain('thermocouple')?.markdown).toContain('burner.flame-proof');
    expect(explain('EPDM')?.markdown).toContain('gasket');
});
it('a value of several pieces is shown as it is written where it is not understood', () => {
    expect(told('site { place: room   openings: 200 cm2 high }').join('\n')).toContain('at is expected here. For instance openings: 0.05 m2 at 2.4 m');
    expect(told('site { place: room   openings: 2 }').join('\n')).toContain('For instance openings: 0.05 m2 at 2.4 m');
});
it('a number without unit is offered the unit that is usual there', () => {
    const fixes = analyseText('rig "Words", idea\n\nsite { place: room   volume: 18   high-point: 2.4 m }\n').findings.flatMap(f => f.fixes.map(x => x.title));
    expect(fixes).toContain('Write it in m3');
});

import { describe, expect, it } from 'vitest';
import type { MarkupContent } from 'vscode-languageserver';
import { hoverAt } from '../../server/editor/features/hover.js';
import { everything, open } from './marked.js';

/** The words of the hover at the cursor, and the text that it belongs to. */
function hover(source: string, more?: Parameters<typeof open>[1]) {
    const o = open(source, more);
    const found = hoverAt(o.house, o.uri, o.at);
    return { text: (found?.contents as MarkupContent | undefined)?.value ?? '', kind: (found?.contents as MarkupContent | undefined)?.kind, over: found?.range && o.read(found.range) };
}
const rig = (line: string) => `rig "A", idea
supply { sort: bench   voltage: 24 V   current-limit: 10 A }
lye { solute: KOH   strength: 25 wt% }
bubbler h2-bubbler
path hydrogen: stack -> h2-bubbler -> outdoors
let spare = 3 bar + 20 kPa
${line}
`;
const stack = 'stack { cells: 10   wetted: 80 x 100 mm }';

describe('hover', () => {
    it('on a value tells how it was read, that it was stated, and what follows from it', () => {
        const { text, over } = hover(rig('stack { cells: 1<|>0   wetted: 80 x 100 mm }'));
        expect(over).toBe('10');
        expect(text).toMatch(/^\*\*stack\.cells\*\* = 10 {2}\nStated\./);
        expect(text).toMatch(/\*\*stack\.volts-per-cell ≈ [12]\.\d+ V ± [\d.]+\*\*/);
        expect(text).toContain('*How:* ');
        expect(text).toContain('*From:* stack.cells 10');
        expect(text).toContain('*Source:* ');
    });
    it('marks what was assumed for a number', () => {
        expect(hover(rig('stack { cells: 1<|>0   wetted: 80 x 100 mm }')).text).toContain('(assumed)');
    });
    it('on a part or a property near a limit tells how much is left', () => {
        const near = (line: string) => hover(`rig "A", drawn\ncylinder { volume: 20 L   rating: 16 bar }\n${line}\npath hydrogen: cylinder -> regulator -> burner\n`).text;
        expect(near('regulator { listed-for: hydrogen   inlet-rating: 1<|>7 bar }')).toContain('*Near a limit* (regulator-wrong-kind): 17 bar, at least 16 bar: 6.3 % left. Beyond it: ');
        expect(near('regu<|>lator { listed-for: hydrogen   inlet-rating: 17 bar }')).toContain('*Near a limit* (regulator.inlet-rating, regulator-wrong-kind): 17 bar, at least 16 bar: 6.3 % left.');
        expect(near('regulator { listed-for: hydro<|>gen   inlet-rating: 17 bar }')).not.toContain('Near a limit');
        expect(near('regulator { listed-for: hydrogen   inlet-rating: 3<|>0 bar }')).not.toContain('Near a limit');
    });
    it('is never longer than 25 lines', () => {
        for (const source of ['stack { cells: 1<|>0   wetted: 80 x 100 mm }', 'st<|>ack { cells: 10   wetted: 80 x 100 mm }', 'stack { cells: 100   wet<|>ted: 80 x 100 mm }']) expect(hover(rig(source)).text.split('\n').length).toBeLessThanOrEqual(25);
    });
    it('on a name tells its kind, its main numbers, its neighbours and what is assumed of it', () => {
        const { text, over } = hover(rig(stack).replace('-> h2-bubbler', '-> h2-bub<|>bler'));
        expect(over).toBe('h2-bubbler');
        expect(text).toMatch(/^\*\*h2-bubbler\*\*, a bubbler/);
        expect(text).toContain('hydrogen: stack -> h2-bubbler -> outdoors');
        expect(text).toMatch(/\*Assumed:\* .*immersion/);
    });
    it('on the name of a part with a note of its own shows the note', () => {
        expect(hover(rig(`## Built by the evening class.\nst<|>ack { cells: 10   wetted: 80 x 100 mm }`)).text).toContain('Built by the evening class.');
    });
    it('on a worked-out name shows its value and working', () => {
        const { text, over } = hover(rig(`${stack}\nexpect stack.hydrogen-<|>rate > 30 NL/h`));
        expect(over).toBe('stack.hydrogen-rate');
        expect(text).toMatch(/^\*\*stack\.hydrogen-rate ≈ [\d.]+ NL\/h/);
    });
    it('on a number that is not known says what is missing', () => {
        const { text } = hover(rig('stack { wetted: 80 x 100 mm }\nexpect stack.hydrogen-<|>rate > 30 NL/h'));
        expect(text).toMatch(/^\*\*stack\.hydrogen-rate\*\* is not known yet: .*stack\.cells.* (is|are) not given/m);
    });
    it('on a unit tells its name and the same in other units', () => {
        const { text, over } = hover(rig('separator { bubble-pressure: 150 k<|>Pa }'));
        expect(over).toBe('kPa');
        expect(text).toContain('pascal');
        expect(text).toContain('150 kPa = 1.5 bar');
        expect(text).toContain('Above the air outside');
    });
    it('on a temperature keeps the zero of the scale', () => {
        expect(hover(rig('site { coldest: 5 °<|>C }')).text).toMatch(/5 °C = 278\.\d+ K = 41 °F/);
    });
    it('on a litre where an amount of gas is meant says in which state it is taken', () => {
        expect(hover(rig('claim c { stack.hydrogen-rate: 40 L<|>/h }')).text).toContain('20 °C');
    });
    it('on a pressure without a mark says that it is read as gauge; with `abs`, what that is above the air', () => {
        expect(hover(rig('cylinder { rat<|>ing: 20 bar }')).text).toContain('Read as gauge');
        const absolute = hover(rig('cylinder { rat<|>ing: 20 bar abs }')).text;
        expect(absolute).not.toContain('Read as gauge');
        expect(absolute).toContain('it is 18.99 bar');
    });
    it('on a property that is like another part says from where', () => {
        expect(hover(rig('column a { level: 230 mm }\ncolumn b like a\nexpect b.lev<|>el < 1 m')).text).toContain('As a.');
    });
    it('on a named value tells what it comes to', () => {
        expect(hover(rig('expect sp<|>are > 3 bar')).text).toBe('**spare** = 3.2 bar');
    });
    it('on an expectation tells how it stands', () => {
        expect(hover(rig(`${stack}\nexpect stack.voltage <|>< 2 kV`)).text).toMatch(/^\*\*Holds\*\*: it is [\d.]+ k?V ± [\d.]+ k?V now\./);
        expect(hover(rig(`${stack}\nexpect stack.voltage <|>> 2 kV`)).text).toContain('**Does not hold**: it is ');
        expect(hover(rig(`stack { wetted: 80 x 100 mm }\nexpect stack.voltage <|>< 2 kV`)).text).toContain('**Not known**: stack.cells');
    });
    it('on the rule of a permission tells what it is about', () => {
        expect(hover(rig(`${stack}\nallow shunt-current-<|>high on stack until 2027-01-31 by Ada because "test"`)).text).toMatch(/\*\*shunt-current-high\*\* \(warning\): /);
    });
    it('on a finding tells why, with its source', () => {
        expect(hover(rig('stack { cells: 10   wetted: 80 x 100 furl<|>ongs }')).text).toMatch(/^\*\*Why\*\* \(unknown-word\): /);
    });
    it('keeps silent in comments and beside everything', () => {
        expect(hover(rig('# the st<|>ack')).text).toBe('');
        expect(hover('<|>').text).toBe('');
    });
    it('is plain words for clients that do not say that they show Markdown', () => {
        const plain = hover(rig('stack { cells: 1<|>0   wetted: 80 x 100 mm }'), { client: { ...everything, textDocument: { ...everything.textDocument, hover: {} } } });
        expect(plain.kind).toBe('plaintext');
        expect(plain.text).not.toMatch(/\*|`|^#/m);
        expect(plain.text).toMatch(/stack\.volts-per-cell ≈/);
    });
});

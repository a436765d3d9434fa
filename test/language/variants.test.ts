/** Variants laid over a rig: values replaced, parts taken away, neighbours joined; what cannot be applied is told. */
import { describe, expect, it } from 'vitest';
import { analyseText, inVariants } from '../../language/index.js';
import { variantsOf, withVariants } from '../../language/rig/variants.js';

const base = `rig "Shed", drawn
supply { sort: bench   voltage: 30 V   current-limit: 9 A   isolated: yes }
stack  { cells: 10   wetted: 90 x 110 mm }
site   { coldest: 2 °C }
bubbler wash
bubbler guard
bubbler o2-bubbler
path hydrogen: stack -> wash -> guard -> burner
path oxygen: stack -> o2-bubbler -> outdoors
`;
const rigOf = (more: string) => analyseText(base + more).rig;
const said = (more: string, names: readonly string[], part: string, key: string) => withVariants(rigOf(more), names).rig.parts.get(part)?.entries.get(key)?.value?.text;
const stops = (more: string, names: readonly string[]) => withVariants(rigOf(more), names).rig.paths.map(p => p.stops.map(s => s.name).join(' '));
const told = (more: string) => analyseText(base + more).findings.filter(f => f.severity === 'error').map(f => f.message);

describe('a variant', () => {
    it('replaces values and adds those that nobody gave; the rest stays, and so does the rig that it came from', () => {
        const more = 'variant winter { site.coldest: -12 °C   stack.gap: 4 mm }\n';
        const rig = rigOf(more);
        const varied = withVariants(rig, ['winter']);
        expect(varied.problems).toEqual([]);
        expect(varied.rig.parts.get('site')!.entries.get('coldest')!.value!.text).toBe('-12 °C');
        expect(varied.rig.parts.get('stack')!.entries.get('gap')!.value!.text).toBe('4 mm');
        expect(varied.rig.parts.get('stack')!.entries.get('cells')!.value!.text).toBe('10');
        expect(rig.parts.get('site')!.entries.get('coldest')!.value!.text).toBe('2 °C');
    });
    it('leaves its values pointing at its own line', () => {
        const text = `${base}variant winter { site.coldest: -12 °C }\n`;
        const { span } = withVariants(analyseText(text).rig, ['winter']).rig.parts.get('site')!.entries.get('coldest')!;
        expect(text.slice(span.start, span.end)).toBe('-12 °C');
        expect(span.start).toBeGreaterThan(text.indexOf('variant'));
    });
    it('takes a part away, and its neighbours join', () => {
        expect(stops('variant bare { guard: none }\n', ['bare'])).toEqual(['stack wash burner', 'stack o2-bubbler outdoors']);
        expect(stops('variant bare { guard: none   wash: none }\n', ['bare'])[0]).toBe('stack burner');
        expect(stops('variant bare { o2-bubbler: none }\nvariant barest { with: bare   outdoors: none }\n', ['bare'])[1]).toBe('stack outdoors');
    });
    it('leaves no joint where nothing is left to join, and none from a part to itself', () => {
        expect(stops('path feed: wash -> guard -> wash\nvariant bare { guard: none }\n', ['bare'])).toHaveLength(2);
    });
    it('adds to others: theirs first, its own later, and of several named the later wins', () => {
        const more = 'variant cold { site.coldest: -5 °C   stack.cells: 8 }\nvariant colder { with: cold   site.coldest: -20 °C }\nvariant mild { site.coldest: 8 °C }\n';
        expect(said(more, ['colder'], 'site', 'coldest')).toBe('-20 °C');
        expect(said(more, ['colder'], 'stack', 'cells')).toBe('8');
        expect(said(more, ['colder', 'mild'], 'site', 'coldest')).toBe('8 °C');
        expect(said(more, ['mild', 'colder'], 'site', 'coldest')).toBe('-20 °C');
    });
    it('ends where variants go round in a circle, and tells it', () => {
        const more = 'variant a { with: b   stack.cells: 8 }\nvariant b { with: a   stack.gap: 4 mm }\n';
        expect(said(more, ['a'], 'stack', 'gap')).toBe('4 mm');
        expect(said(more, ['a'], 'stack', 'cells')).toBe('8');
        expect(told(more)).toEqual(expect.arrayContaining([expect.stringContaining('a adds to itself, by way of b')]));
        expect(withVariants(rigOf('variant a { with: a }\n'), ['a']).problems[0].message).toBe('a adds to itself; that counts for nothing.');
    });
    it('keeps what belongs to some variants only to those', () => {
        const more = 'burner torch { only-in: party }\nvariant party { stack.cells: 8 }\nvariant calm { stack.cells: 7 }\nvariant feast { with: party }\n';
        for (const [names, there] of [[[], false], [['calm'], false], [['party'], true], [['feast'], true]] as const) expect(withVariants(rigOf(more), names).rig.parts.has('torch'), names.join()).toBe(there);
    });
    it('the rig as it stands is without what belongs to variants only, and nobody misses it', () => {
        const more = 'burner torch { only-in: party }\nbubbler extra { only-in: party }\nvariant party { extra.immersion: 40 mm }\nexpect with party: extra.immersion > 30 mm\n';
        const a = analyseText(`${base.replace('wash -> guard', 'wash -> extra -> guard')}${more}`);
        expect(a.rig.parts.has('torch')).toBe(false);
        expect(a.rig.paths.map(p => p.stops.map(s => s.name).join(' '))).toContain('stack wash guard burner');
        expect(a.findings.filter(f => /extra|torch/.test(f.message))).toEqual([]);
        expect(inVariants(a, ['party']).rig.paths.map(p => p.stops.map(s => s.name).join(' '))).toContain('stack wash extra guard burner');
    });
    it('goes through `like` to whoever is like the part', () => {
        const more = 'bubbler third like wash\nvariant deep { wash.immersion: 60 mm }\n';
        const a = inVariants(analyseText(base + more), ['deep']);
        expect(a.workings.viewOf('third')!.num('immersion')).toBeCloseTo(0.06, 9);
    });
    it('tells what it cannot replace, at the variant, while the text is written', () => {
        for (const [line, words] of [
            ['stack.wetness: 4 mm', /stack has no wetness/], ['stack.hydrogen-rate: 4 NL/h', /stack has no value hydrogen-rate that could be replaced/], ['stack.cells: 4 mm', /./],
            ['stack.port.bore: 6 mm', /write stack\.port: …/], ['guard: 40 mm', /take guard away, by guard: none/], ['nobody: none', /nobody is neither/],
        ] as const) {
            const text = `${base}variant odd { ${line} }\n`;
            const found = analyseText(text).findings.filter(f => f.severity === 'error' && f.span.start >= text.indexOf('variant'));
            expect(found, line).toHaveLength(1);
            expect(found[0].message, line).toMatch(words);
        }
    });
    it('is told where it does not exist', () => {
        expect(withVariants(rigOf('variant winter { }\n'), ['wintr']).problems[0].message).toBe('There is no variant wintr; did you mean winter?');
    });
    it('is worked out: twice the plates in a row, twice the volts', () => {
        const a = analyseText(`${base}variant five { stack.cells: 5   power.voltage: 15 V }\n`.replace('supply {', 'supply power {'));
        const [ten, five] = [inVariants(a, []), inVariants(a, ['five'])].map(x => x.workings.quantity(x.rig.parts.get('stack')!, 'voltage')!.value);
        // The same 9 A through half of the cells; a little less of it goes past the plates.
        expect(five / ten).toBeGreaterThan(0.49);
        expect(five / ten).toBeLessThan(0.52);
    });
    it('with none, a rig comes out as it is written', () => {
        const a = analyseText(base);
        const b = inVariants(a, []);
        expect(b.findings).toEqual(a.findings);
        expect(variantsOf(a.rig)).toEqual([]);
    });
    it('a part that is taken away and still sensed is missed, and variants themselves are not', () => {
        const a = analyseText(`${base}bag\nswitch full { senses: bag.volume   breaks: above 40 L   makes: below 30 L }\nvariant bare { bag: none }\nexpect with bare: stack.voltage < 40 V\n`);
        const messages = inVariants(a, ['bare']).findings.filter(f => f.severity === 'error').map(f => f.message);
        expect(messages).toContain('A part bag does not exist.');
        expect(messages.join()).not.toMatch(/variant/);
    });
});

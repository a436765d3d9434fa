import { describe, expect, it } from 'vitest';
import type { CompletionItem, MarkupContent } from 'vscode-languageserver';
import { completionsAt } from '../../server/editor/features/completion.js';
import { apply, everything, open } from './marked.js';

const head = `rig "A", idea
supply { sort: bench   voltage: 24 V   current-limit: 10 A }
bubbler h2-bubbler
bubbler o2-bubbler like h2-bubbler
switch full { senses: bag.volume   makes: above 60 L }
let spare = 3 bar
stack { cells: 10   wetted: 80 x 100 mm }
bag { volume: 80 L }
path hydrogen: stack -> h2-bubbler -> bag
variant winter { site.coldest: -10 °C }
`;
/** What is offered at the cursor, in the order in which it is shown. */
function offered(source: string, { trigger, ...more }: Parameters<typeof open>[1] & { trigger?: string } = {}) {
    const o = open(head + source, more);
    const items = completionsAt(o.house, o.uri, o.at, trigger).sort((a, b) => (a.sortText! < b.sortText! ? -1 : 1));
    const labels = items.map(i => i.label);
    const take = (label: string) => {
        const found = items.find(i => i.label === label);
        if (!found) throw new Error(`${label} is not offered: ${labels.slice(0, 12).join(', ')}`);
        return found;
    };
    /** The text of the line after taking an item, tab stops as they are. */
    const after = (label: string) => apply(o.text, [take(label).textEdit as never]).slice(head.length).trimEnd();
    return { items, labels, take, after, first: labels.slice(0, 3) };
}
const words = (i: CompletionItem) => (i.documentation as MarkupContent | undefined)?.value ?? '';

describe('where a line begins', () => {
    it('kinds come as whole blocks with tab stops, a name first where one is needed', () => {
        const { take, after } = offered('lin<|>');
        expect(take('link').insertTextFormat).toBe(2);
        expect(after('lye')).toMatch(/^lye \{\n {2}solute: +\$\{1/);
        expect(after('bubbler')).toMatch(/^bubbler \$\{1:bubbler-1\} \{\n {2}immersion: +\$\{2/);
    });
    it('what a life can hang on is never written as a claim by tabbing through', () => {
        const { after } = offered('<|>');
        expect(after('supply')).toMatch(/isolated: +\$\{\d+\|unknown,yes,no\|\}/);
        expect(after('trip')).toMatch(/if-wire-breaks: +\$\{\d+\|unknown,trips,nothing\|\}/);
        expect(after('test')).toMatch(/result: +\$\{\d+\|unknown,passed,failed\|\}/);
        expect(offered('trip t {\n  if-w<|>\n}').after('if-wire-breaks')).toContain('|unknown,trips,nothing|');
        expect(after('supply')).toMatch(/sort: +\$\{\d+\|bench,/);
    });
    it('a kind says what its template will ask for, in a sentence each', () => {
        const fan = words(offered('<|>').take('fan'));
        for (const key of ['sort', 'flow', 'place', 'in-stream-motor', 'fed-from']) expect(fan).toMatch(new RegExp(`^- ${key}: [A-Z].*[.?]$`, 'm'));
    });
    it('a template names the parts of this rig', () => {
        expect(offered('<|>').after('trip')).toContain(':bag.volume}');
        const o = open('rig "A", idea\nbag gas-bag { volume: 40 L }\n<|>');
        const trip = completionsAt(o.house, o.uri, o.at).find(i => i.label === 'trip')!;
        expect((trip.textEdit as { newText: string }).newText).toContain(':gas-bag.volume}');
    });
    it('line words come with what follows them; dates do not age', () => {
        const { after } = offered('<|>');
        expect(after('allow')).toContain('until ${3:2027-06-15}');
        expect(after('path')).toBe('path');
        expect(offered('path <|>').labels).toEqual(['hydrogen', 'oxygen', 'lye', 'water', 'current']);
        // Gas comes from the stack, current from what feeds it.
        expect(offered('path hydrogen: <|>').labels[0]).toBe('stack');
        expect(offered('path current: <|>').labels[0]).toBe('supply');
    });
    it('what the rig lacks comes before what it has', () => {
        const { labels } = offered('<|>');
        expect(labels.indexOf('lye')).toBeLessThan(labels.indexOf('stack'));
        expect(labels.indexOf('lye')).toBeLessThan(labels.indexOf('reading'));
    });
    it('an empty file begins with its title', () => {
        const o = open('<|>');
        const items = completionsAt(o.house, o.uri, o.at).sort((a, b) => (a.sortText! < b.sortText! ? -1 : 1));
        expect(items[0].label).toBe('rig');
        expect(items.slice(1, 7).map(i => i.label)).toContain('rig: sketch');
        expect(offered('<|>').labels).not.toContain('rig: sketch');
    });
    it('stages say what each of them means', () => {
        const o = open('rig "A", <|>');
        const stages = completionsAt(o.house, o.uri, o.at);
        expect(stages.map(i => i.label).slice(0, 3)).toEqual(['idea', 'drawn', 'built']);
        expect(words(stages[0])).toContain('Nothing exists yet');
        expect(words(stages[2])).not.toBe(words(stages[0]));
    });
    it('what no numbers come without stands first while it is missing', () => {
        const o = open('rig "A", idea\n\n<|>');
        const items = completionsAt(o.house, o.uri, o.at).sort((a, b) => (a.sortText! < b.sortText! ? -1 : 1));
        expect(items.slice(0, 3).map(i => i.label)).toEqual(['supply', 'lye', 'stack']);
        expect(offered('<|>').labels.slice(0, 4)).toEqual(['lye', 'separator', 'column', 'site']);
    });
    it('clients without templates get plain text', () => {
        const { take, after } = offered('<|>', { client: { ...everything, textDocument: { ...everything.textDocument, completion: { completionItem: {} } } } });
        expect(take('lye').insertTextFormat).toBeUndefined();
        expect(after('lye')).toMatch(/^lye \{\n {2}solute: +KOH\n/);
        expect(after('lye')).not.toContain('$');
        expect((take('lye').documentation as MarkupContent).kind).toBe('plaintext');
    });
    it('after a kind and a name comes like, and after that parts of the kind', () => {
        expect(offered('bubbler third <|>').labels).toEqual(['like']);
        expect(offered('bubbler third like <|>').labels).toEqual(expect.arrayContaining(['h2-bubbler', 'o2-bubbler']));
        expect(offered('bubbler third like <|>').labels).not.toContain('bag');
    });
});

describe('in a block', () => {
    it('properties that are not given yet, with what is assumed for them and why', () => {
        const { labels, take, after } = offered('lye {\n  solute: KOH\n  <|>\n}');
        expect(labels).not.toContain('solute');
        expect(labels[0]).toBe('strength');
        expect(take('strength').detail).toMatch(/^assumed \d+ wt%$/);
        expect(words(take('strength'))).toContain('If not said:');
        expect(after('strength')).toMatch(/\n {2}strength: +\$\{1:\d+ wt%\}\n/);
    });
    it('a new value stands where its neighbours stand', () => {
        expect(offered('column c {\n  bore: 80 mm\n  hei<|>\n}').after('height')).toContain('\n  height: ${');
        expect(offered('column c {\n  bore:      80 mm\n  hei<|>\n}').after('height')).toContain('\n  height:    ${');
        expect(offered('column c {\n  hei<|>\n}').after('height')).toContain('\n  height:           ${');
    });
    it('a key of which the value stands already is replaced alone', () => {
        expect(offered('column c {\n  lev<|>: 30 mm\n}').after('level')).toBe('column c {\n  level: 30 mm\n}');
    });
    it('in a block on one line the next key follows the value, at its distance', () => {
        expect(offered('lye { solute: KOH <|>}').after('strength')).toMatch(/^lye \{ solute: KOH {3}strength: \$\{1:/);
        expect(offered('lye { solute: KOH   str<|> }').after('strength')).toMatch(/^lye \{ solute: KOH {3}strength: /);
        expect(offered('trip t { senses: stack.temperature   trips: above 60 <|> }').labels).not.toContain('resets');
    });
    it('a block that nobody has closed is a block all the same', () => {
        expect(offered('lye {\n  <|>\npath oxygen: stack -> o2-bubbler').labels).toContain('strength');
    });
});

describe('after the colon', () => {
    it('words of the property', () => {
        expect(offered('lye {\n  solute: <|>\n}').first).toEqual(['KOH', 'NaOH', 'K2CO3']);
        expect(offered('site { sign: <|> }').first.slice(0, 2)).toEqual(['yes', 'no']);
    });
    it('an example of a number, none and unknown last', () => {
        const { labels } = offered('cylinder { volume: <|> }');
        expect(labels[0]).toMatch(/^\d+ L$/);
        expect(labels.slice(-2)).toEqual(['none', 'unknown']);
    });
    it('no whole example where a piece of the value stands behind the cursor already', () => {
        expect(offered('stack {\n  plate: nic<|>, 110 x 130 x 1 mm\n}').labels.filter(l => /\d mm/.test(l))).toEqual([]);
        expect(offered('stack {\n  plate: nic<|>\n}').labels[0]).toMatch(/^nickel, \d/);
    });
    it('a switch senses what is in a vessel before what is worked out, a detector the room', () => {
        expect(offered('switch s { senses: <|> }').labels.slice(0, 4)).toEqual(expect.arrayContaining(['bag', 'stack', 'h2-bubbler']));
        expect(offered('detector d { senses: <|> }').labels[0]).toBe('site');
        expect(offered('switch s { senses: bag.<|> }').labels.slice(0, 2)).toEqual(expect.arrayContaining(['pressure', 'volume']));
    });
    it('the numbers asked for most come first', () => {
        expect(offered('expect stack.<|>').labels.slice(0, 5)).toEqual(expect.arrayContaining(['hydrogen-rate', 'volts-per-cell', 'temperature']));
    });
    it('units of the right dimension right behind a number, with the blank that belongs there', () => {
        const { labels, after } = offered('lye { strength: 25<|> }');
        expect(labels[0]).toBe('wt%');
        expect(labels).not.toContain('V');
        expect(after('wt%')).toBe('lye { strength: 25 wt% }');
        expect(offered('cylinder { volume: 20 <|> }').after('L')).toBe('cylinder { volume: 20 L }');
        expect(offered('cylinder { volume: 20 m<|> }').after('m3')).toBe('cylinder { volume: 20 m3 }');
    });
    it('the piece that the form of the value asks for next', () => {
        expect(offered('stack { gap: 2 mm <|> }').labels[0]).toBe('each side');
        expect(offered('site { openings: 0.05 m2 <|> }').after('at')).toBe('site { openings: 0.05 m2 at  }');
        expect(offered('site { openings: 0.05 m2 at 2<|> }').labels).toEqual(expect.arrayContaining(['m', 'mm']));
        expect(offered('site { openings: 0.05 m2 at 2<|> }').labels).not.toContain('m2');
    });
    it('parts of the kinds that fit, without the part itself and those that stand already', () => {
        const { labels } = offered('contactor main { needs: <|> }');
        expect(labels).toContain('full');
        expect(labels).not.toContain('main');
        expect(labels).not.toContain('bag');
        expect(offered('test tight { covers: stack, <|> }').labels).not.toContain('stack');
    });
    it('a threshold in the unit of what is sensed', () => {
        expect(offered('trip t { senses: stack.temperature   trips: above 60<|> }').labels.slice(0, 3)).toEqual(['°C', 'K', '°F']);
        expect(offered('trip t { senses: bag.volume   trips: above 60<|> }').labels[0]).toBe('L');
        expect(offered('trip t { senses: bag.volume   trips: <|> }').first.slice(0, 2)).toEqual(['above', 'below']);
    });
    it('numbers and properties of a part behind its point, with what they are now', () => {
        const { take, labels } = offered('trip t { senses: stack.<|> }');
        expect(take('temperature').detail).toMatch(/^≈ [\d.]+ °C$/);
        expect(labels).toContain('cells');
        expect(offered('trip t { senses: stack.temp<|> }').after('temperature')).toBe('trip t { senses: stack.temperature }');
    });
    it('today for a date', () => {
        expect(offered('test tight { date: <|> }').labels[0]).toBe('2026-06-15');
    });
    it('units of the other part in a dotted key', () => {
        expect(offered('reading r { bag.volume: 40<|> }').labels[0]).toBe('L');
        expect(offered('reading r {\n  stack.<|>\n}').labels).toContain('volts-per-cell');
    });
});

describe('on a path', () => {
    it('media first', () => {
        expect(offered('path <|>').labels).toEqual(['hydrogen', 'oxygen', 'lye', 'water', 'current']);
    });
    it('parts that may stand on the medium, not used ones first; then ends', () => {
        const { labels } = offered('path hydrogen: stack -> <|>');
        expect(labels[0]).toBe('o2-bubbler');
        expect(labels).not.toContain('supply');
        expect(labels.indexOf('outdoors')).toBeGreaterThan(labels.indexOf('bag'));
        expect(offered('path current: <|>').labels).toContain('supply');
    });
    it('goes on on the next line, and an arrow behind a name', () => {
        expect(offered('path hydrogen: stack ->\n  <|>').labels).toContain('o2-bubbler');
        expect(offered('path hydrogen: stack <|>').labels).toEqual(['->']);
    });
});

describe('in statements', () => {
    it('rules and weights after weigh', () => {
        expect(offered('weigh <|>').labels).toContain('shunt-current-high');
        expect(offered('weigh shunt-current-high as <|>').labels).toEqual(expect.arrayContaining(['nothing', 'hint', 'warning', 'error']));
        expect(offered('weigh shunt-current-high <|>').labels).toEqual(expect.arrayContaining(['as', 'on', 'because']));
    });
    it('rules after allow, those that are told first', () => {
        const o = offered('allow <|>');
        expect(o.labels).toContain('shunt-current-high');
        expect(words(o.items[0])).not.toBe('');
        expect(offered('allow shunt-current-high on <|>').labels).toContain('stack');
        expect(offered('allow shunt-current-high on stack until <|>').after('2027-06-15')).toBe('allow shunt-current-high on stack until 2027-06-15');
    });
    it('numbers in an expectation, then comparisons, then units of what is compared', () => {
        expect(offered('expect <|>').labels).toEqual(expect.arrayContaining(['stack', 'spare', 'if', 'always']));
        expect(offered('expect stack.voltage <|>').labels).toEqual(['<', '>', 'between']);
        expect(offered('expect stack.voltage < 30<|>').labels[0]).toBe('V');
        expect(offered('expect stack.hydrogen-rate > 30<|>').labels[0]).toBe('NL/h');
    });
    it('what can befall a part, and variants', () => {
        expect(offered('expect if bag <|>').labels).toContain('leaks');
        expect(offered('expect with <|>').labels).toEqual(['winter']);
    });
    it('stages, files beside this one', () => {
        expect(offered('rig "B", <|>').labels).toEqual(['idea', 'drawn', 'built', 'running', 'retired']);
        expect(offered('use "<|>"', { others: { 'shelf.rig': '' } }).after('shelf.rig')).toBe('use "shelf.rig"');
        expect(offered('use <|>', { others: { 'shelf.rig': '' } }).after('shelf.rig')).toBe('use "shelf.rig"');
    });
});

describe('keeps silent', () => {
    it('in comments and between quotes', () => {
        expect(offered('# a st<|>').labels).toEqual([]);
        expect(offered('bag b { place: "under <|>" }').labels).toEqual([]);
    });
    it('when a blank was typed where nothing is expected', () => {
        expect(offered('lye {\n  <|>\n}', { trigger: ' ' }).labels).toEqual([]);
        expect(offered('lye {\n  solute: <|>\n}', { trigger: ' ' }).labels).not.toEqual([]);
        expect(offered('expect spare > <|>', { trigger: '>' }).labels).toEqual([]);
    });
    it('never offers the same twice, and every item fits where the cursor is', () => {
        for (const source of ['<|>', 'lye { <|> }', 'lye { solute: <|> }', 'path hydrogen: <|>', 'expect <|>', 'trip t { senses: stack.<|> }']) {
            const o = open(head + source);
            const items = completionsAt(o.house, o.uri, o.at);
            expect(new Set(items.map(i => i.label)).size).toBe(items.length);
            for (const i of items) expect((i.textEdit as { range: { end: object } }).range.end).toEqual(o.at);
        }
    });
});

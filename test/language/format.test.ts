/** Tidying a text: it looks as told, says what it said, and stays as it is when tidied again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { formatEdits, formatText } from '../../language/rig/format.js';
import { Lines } from '../../language/rig/lines.js';
import { templates } from '../../language/reference/templates.js';
import type { ParsedValue } from '../../language/values/parse-value.js';

/** Tidies a text given without the indentation of the test. */
const tidy = (text: string) => formatText(text);

describe('a block of several lines', () => {
    it('has its values in one column, whatever stood there', () => {
        expect(tidy('stack   {\ncells:10\n      wetted :  80 x 100 mm\n\tgap:\t2 mm each side\n  }\n')).toBe(
            'stack {\n  cells:            10\n  wetted:           80 x 100 mm\n  gap:              2 mm each side\n}\n');
    });
    it('gives a key that reaches the column one blank', () => {
        const key = 'attached-to-dwelling';
        expect(tidy(`site {\n${key}:no\n  ignition-sources:none\n}\n`)).toBe(`site {\n  ${key}: no\n  ignition-sources: none\n}\n`);
    });
    it('puts the lines of a list under each other', () => {
        expect(tidy('contactor main {\n stopped-by: emergency,\n   bag-high, # full\n hot-stack\n}\n')).toBe(
            'contactor main {\n  stopped-by:       emergency,\n                    bag-high,  # full\n                    hot-stack\n}\n');
    });
    it('keeps the figures of a table at the right', () => {
        const table = 'site {\n  sun:                0 W/m2 at 05:00,\n                    110 W/m2 at 07:00,\n                     60 W/m2 at 19:00\n}\n';
        expect(tidy(table)).toBe(table);
        expect(tidy(table.replace(/^ {20}/gm, '  '))).toBe(table.replace('  0 W', '0 W').replace(' 60 W', '60 W'));
    });
    it('keeps several properties on a line where they are', () => {
        expect(tidy('bag {\nvolume: 80 L rating: 2 kPa\n}\n')).toBe('bag {\n  volume: 80 L   rating: 2 kPa\n}\n');
    });
    it('has its braces on lines of their own', () => {
        expect(tidy('bag { volume: 80 L\n rating: 2 kPa }\n')).toBe('bag {\n  volume:           80 L\n  rating:           2 kPa\n}\n');
        expect(tidy('bag\n\n{\n volume: 80 L # all of it\n}\n')).toBe('bag {\n  volume:           80 L  # all of it\n}\n');
    });
    it('is tidied although its end is missing', () => {
        expect(tidy('bag {\nvolume:80 L\nseal {\ndepth:9 cm\n}\n')).toBe('bag {\n  volume:           80 L\nseal {\n  depth:            9 cm\n}\n');
    });
});

describe('a block on one line', () => {
    it('stays on one line, three blanks between properties', () => {
        expect(tidy('  bag   b1  like   b2{volume:80 L rating :2 kPa}\nbag b3 {}\n')).toBe('bag b1 like b2 { volume: 80 L   rating: 2 kPa }\nbag b3 { }\n');
    });
    it('stays lined up with its neighbours where it was', () => {
        const table = 'timer rest       { sort: minimum-off   follows: main   time: 6 min }\n## The first minutes go outdoors.\ntimer first-vent { sort: on-delay      follows: main   time: 8 min }\n';
        expect(tidy(table)).toBe(table);
        expect(tidy(table.replace(/ {2,}/g, ' '))).toBe(table.replace(/rest +/, 'rest ').replace(/delay +/, 'delay   '));
        // A longer value pushes the column out for all of them.
        expect(tidy(table.replace('6 min', '6 min ').replace('minimum-off   ', 'minimum-off-and-on '))).toBe(
            table.replace('minimum-off   ', 'minimum-off-and-on   ').replace('on-delay      ', 'on-delay             '));
    });
});

describe('other lines', () => {
    it('paths: one blank around the arrows, media lined up where they were', () => {
        expect(tidy('path  lye :a->b   ->c.hydrogen\n')).toBe('path lye: a -> b -> c.hydrogen\n');
        const aligned = 'path hydrogen: stack -> bag\n\npath oxygen:   stack -> o2-column ->\n               outdoors\n';
        expect(tidy(aligned)).toBe(aligned);
        expect(tidy(aligned.replace(/^ +/m, ' '))).toBe(aligned);
    });
    it('titles, named values, expectations, permissions, other files', () => {
        expect(tidy('rig   "A   b",idea\nuse   "x.rig"\nlet  spare=0.9*bag.rating\nexpect  stack.voltage<30V\nexpect with  winter :a.b>2 K\nexpect if control lost:always  fan running\nallow  x-y  on bag because "a  b"\n')).toBe(
            'rig "A   b", idea\nuse "x.rig"\nlet spare = 0.9*bag.rating\nexpect stack.voltage < 30 V\nexpect with winter: a.b > 2 K\nexpect if control lost: always fan running\nallow x-y on bag because "a  b"\n');
    });
    it('numbers: a blank before the unit, ± for +/-, nothing else', () => {
        const value = (v: string) => /^stack \{ \w+: (.*) \}\n$/.exec(tidy(`stack { gap: ${v} }\n`))?.[1];
        expect(value('12V +/-0.1V')).toBe('12 V ± 0.1 V');
        expect(value('2mm^2')).toBe('2 mm^2');
        expect(value('40° up')).toBe('40° up');
        expect(value('40°C')).toBe('40 °C');
        expect(value('6x1 mm')).toBe('6x1 mm');
        expect(value('2..16bar')).toBe('2..16 bar');
        expect(value('14,  0.9 L/min ,"a  , b",c')).toBe('14, 0.9 L/min, "a  , b", c');
        expect(value('M8')).toBe('M8');
    });
    it('never a decimal comma: such a line stays byte for byte', () => {
        const line = '    gap :  0,5   mm  ';
        expect(tidy(`stack {\n${line}\n  cells:10\n}\n`)).toBe(`stack {\n${line}\n  cells:            10\n}\n`);
    });
    it('words that only look like numbers keep their form', () => {
        expect(tidy('tube t { label: 12V  line }\ntest t { with: float moved,  gas let in }\n')).toBe('tube t { label: 12V line }\ntest t { with: float moved, gas let in }\n');
    });
});

describe('comments', () => {
    it('stay behind their value, two blanks off at least, lined up as they were', () => {
        expect(tidy('bag {\n volume: 80 L # one\n rating: 2 kPa          # two\n  # between\n}\n')).toBe(
            'bag {\n  volume:           80 L  # one\n  rating:           2 kPa  # two\n  # between\n}\n');
        const lined = 'bag {\n  volume:           80 L                     # as bought\n                                             # in March\n  rating:           2 kPa                    # printed on it\n}\n';
        expect(tidy(lined)).toBe(lined);
        const longer = lined.replace('80 L     ', '80 L ± 5 L');
        expect(tidy(lined.replace('2 kPa                  ', '2 kPa ± 0.1 kPa ± 0.1 kPa'))).not.toContain('kPa #');
        expect(tidy(longer)).toContain('# as bought');
    });
    it('on lines of their own are indented in a block and left alone outside', () => {
        expect(tidy('# a\n   # b\nbag {\n# c\n\t\t# d\n}\n')).toBe('# a\n   # b\nbag {\n  # c\n  # d\n}\n');
    });
    it('with a # inside quotes are none', () => {
        expect(tidy('bag {\nnote:"no # here"   # but here\n}\n')).toBe('bag {\n  note:             "no # here"  # but here\n}\n');
    });
});

describe('the whole text', () => {
    it('keeps its line ends and its byte order mark, and ends with one line break', () => {
        expect(tidy('\ufeffrig   "A"\r\nbag {\r\nvolume:1 L\r\n}')).toBe('\ufeffrig "A"\r\nbag {\r\n  volume:           1 L\r\n}\r\n');
        expect(tidy('tee  a\r\ntee  b\ntee c')).toBe('tee a\r\ntee b\ntee c\n');
        expect(tidy('tee a\n\n\n  \n')).toBe('tee a\n');
    });
    it('has two blank lines in a row at most, none at its beginning', () => {
        expect(tidy('\n\ntee a\n\n\n  \n\ntee b\n\ntee c\n')).toBe('tee a\n\n\ntee b\n\ntee c\n');
    });
    it('may be nothing at all, or not text', () => {
        expect(tidy('')).toBe('');
        expect(tidy(' \n\t\n')).toBe('');
        expect(tidy('\u0000\u0001}}}{{{"\n')).toBe('\u0000\u0001}}}{{{"\n');
    });
    it('leaves what it cannot read byte for byte', () => {
        for (const line of ['   volume  80 L  ', '  rating: 2 kpaa   ', '  place:  "open', ' }  x', '  a:  ', '  rating: (2 kPa ', '\tvolume:: 3 L', 'path x: a ->  ->  b']) {
            const out = tidy(`tee  a\nbag b {\nvolume:80 L\n}\n${line}\ntee   z\n`);
            expect(out).toContain(`\n${line}\n`);
            expect(out).toContain('tee a\nbag b {\n  volume:           80 L\n}\n');
        }
    });
});

describe('edits', () => {
    const text = 'tee  a\ntee b\nbag\n{\nvolume:1 L\n}\n\n\n\n\ntee   c';
    it('make the tidied text, from top to bottom, apart from each other', () => {
        const lines = new Lines(text);
        let out = '';
        let at = 0;
        for (const e of formatEdits(text)) {
            expect(lines.startOf(e.line)).toBeGreaterThanOrEqual(at);
            out += text.slice(at, lines.startOf(e.line)) + e.text;
            at = e.line + e.count < lines.count ? lines.startOf(e.line + e.count) : text.length;
        }
        expect(out + text.slice(at)).toBe(formatText(text));
    });
    it('are none where all is tidy, and only those of the lines asked for', () => {
        expect(formatEdits(formatText(text))).toEqual([]);
        expect(formatEdits(text, { from: 0, to: 1 })).toEqual([{ line: 0, count: 1, text: 'tee a\n' }]);
        expect(formatEdits(text, { from: 2, to: 2 })).toEqual([{ line: 2, count: 2, text: 'bag {\n' }]);
    });
});

// ---- properties -----------------------------------------------------------------------------------------------------

const own = [
    ...templates.map(t => t.text),
    `library "Shelf"\n\n# nothing here is in a rig\nbubbler quart { immersion: 75 mm   water: 0.9 L   body: PP, 0.2 L headspace }\ncylinder small {\n  volume:           12 L\n  rating:           18 bar                   # stamped\n  outlet:           "W 21.8 x 1/14 LH"\n}\n`,
    `rig "Kiln, winter", built\r\n\r\nuse "shelf.rig"\r\nlet least = 2.6 A\r\nstack {\r\n  cells:            9\r\n  wetted:           70 x 95 mm\r\n}\r\nsupply { voltage: 21 V ± 0.2 V   current-limit: 2 * least }\r\nreading warm {\r\n  date:             2026-02-03 14:20\r\n  stack.voltage:    19.1 V ± 0.1 V\r\n}\r\nexpect if control lost: within 2 s supply stopped, main not made\r\n`,
    `rig "Sun", drawn\npanels roof { open-circuit: 36 V   best: 30.1 V at 8.7 A   facing: south, 35° up }\nsite {\n  sun:                0 W/m2 at 06:00,\n                    240 W/m2 at 10:00,   # haze\n                     90 W/m2 at 17:30\n  coldest:          -4 °C\n}\nvariant grey {\n  site.coldest:     -11 °C\n}\nstop-button red { leaves-on: fan }\nfan {\n  flow:             80 m3/h\n}\ntrip warm { senses: stack.temperature   trips: above 58 °C ± 1 K for 5 s   resets: by hand }\n`,
];
/** A rig as far as it matters: what is in it, with which values, joined how, and what is told of it. */
function said(text: string): unknown {
    const { rig, workings, findings } = analyseText(text, { today: '2026-06-15' });
    const [page] = rig.pages;
    return {
        title: rig.title, stage: rig.stage, sort: page.sort,
        parts: page.parts.map(p => [p.kindWord, p.name, p.base?.name, p.note, [...p.entries].map(([key, e]) => [key, tree(e.value), e.broken])]),
        paths: page.paths.map(p => [p.medium, p.stops.map(s => [s.name, s.port]), p.broken]),
        lets: page.lets.map(l => [l.name, tree(l.value)]),
        expects: page.expects.map(e => [e.when?.word, tree(e.value), e.overTime, e.broken]),
        allows: page.allows.map(a => [a.rule, a.on?.name, a.until, a.by, a.because]),
        uses: page.uses.map(u => u.target),
        values: [...rig.parts.values()].map(p => Object.keys(p.kind?.properties ?? {}).map(key => [...workings.given(p, key).facts].map(([slot, f]) => [slot, f.number, f.word?.replace(/\s+/g, ' '), f.names]))),
        // Messages quote the text: its blanks may differ.
        told: findings.map(f => [f.rule, f.severity, f.message.replaceAll('+/-', '±').replace(/\s+/g, '')]).sort(),
    };
}
function tree(value: ParsedValue | undefined): string {
    const skip = new Set(['start', 'end', 'unitStart', 'text']);
    // What could not be read is compared by its words.
    return value ? JSON.stringify(value.list, (k, v: unknown) => (skip.has(k) ? undefined : v)) : '';
}

/** A text with some of its blanks, line ends and letters changed: as it looks while somebody types, pastes, or hurries. */
const roughened = fc.tuple(
    fc.constantFrom(...own),
    fc.array(fc.record({
        at: fc.nat(4000), cut: fc.integer({ min: 0, max: 3 }),
        put: fc.constantFrom('', ' ', '  ', '\t', '\n', '\n\n\n\n', '   # so ', '{', '}', '"', ',', ':', ' ->', '(', '-', '5', ',5', 'mm', '±', '+/-', ' x: 1 V ', '\nbag b2 { volume: 3 L }\n', '\u00a0', '## n\n', ' like ', '\r', '\r\n', 'é', '−', '×', '.', '#', '[', '\ufeff'),
    }), { maxLength: 5 }),
    fc.constantFrom('as it is', 'squeezed', 'spread', 'tabs', 'crlf', 'unended'),
).map(([text, changes, style]) => {
    let out = text;
    for (const c of changes) {
        const at = c.at % (out.length + 1);
        out = out.slice(0, at) + c.put + out.slice(at + c.cut);
    }
    if (style === 'squeezed') out = out.replace(/[ \t]{2,}/g, ' ');
    if (style === 'spread') out = out.replace(/ /g, '  ');
    if (style === 'tabs') out = out.replace(/ {2,}/g, '\t');
    if (style === 'crlf') out = out.replace(/\r?\n/g, '\r\n');
    if (style === 'unended') out = out.trimEnd();
    return out;
});
const runs = Number(process.env.RIGWRIGHT_RUNS ?? 150);
const seed = 20260615;

describe('any text', () => {
    it('is the same when tidied twice', () => {
        fc.assert(fc.property(roughened, text => {
            const once = formatText(text);
            expect(formatText(once)).toBe(once);
        }), { numRuns: runs, seed });
    }, 60_000);
    it('says the same: parts, values, paths, findings', () => {
        fc.assert(fc.property(roughened, text => {
            expect(said(formatText(text))).toEqual(said(text));
        }), { numRuns: runs, seed });
    }, 60_000);
    it('may be any characters', () => {
        fc.assert(fc.property(fc.oneof(fc.string({ maxLength: 200 }), fc.string({ unit: fc.constantFrom(...' \n\r\t{}:#",->ab1.=±x()'), maxLength: 120 })), text => {
            const once = formatText(text);
            expect(formatText(once)).toBe(once);
            expect(said(once)).toEqual(said(text));
        }), { numRuns: runs, seed });
    }, 60_000);
    it('loses no word, and no line that cannot be read', () => {
        const words = (text: string) => text.replaceAll('+/-', '±').match(/[\p{L}\p{N}_]+/gu) ?? [];
        const joined = (text: string) => words(text).join('').length;
        fc.assert(fc.property(roughened, text => {
            expect(joined(formatText(text))).toBe(joined(text));
        }), { numRuns: runs, seed });
    }, 60_000);
});

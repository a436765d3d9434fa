import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { Analyst, analyseText } from '../../language/index.js';
import { faultsIn } from '../../language/run/faults.js';
import { lyeDensity } from '../../language/physics/lye.js';
import { Bench } from '../../language/seeing/papers/bench.js';
import { csvOf } from '../../language/reference/csv.js';
import { dxfOf } from '../../language/seeing/papers/dxf.js';
import { allPapers, papersOf } from '../../language/seeing/papers/index.js';
import { holesOf, packOf, separatorSheet, spare, thinRims, windowPlace } from '../../language/seeing/papers/pack.js';
import { fillings, leftAfter, spacesOf } from '../../language/seeing/papers/spaces.js';
import { setPointsOf } from '../../language/seeing/papers/set-points.js';
import { templateOf, templateSheets, templateSvg } from '../../language/seeing/papers/template.js';
import { leakTest, reliefLimits } from '../../language/seeing/papers/of/checks.js';
import { predictions } from '../../language/seeing/papers/of/commissioning.js';
import { pieces, rowsOf } from '../../language/seeing/papers/of/cut.js';
import { controlLines, powerLines, tubeLines } from '../../language/seeing/papers/of/lines.js';
import { logColumns } from '../../language/seeing/papers/of/log.js';
import { weighed } from '../../language/seeing/papers/of/lye.js';
import { separatorCheck } from '../../language/seeing/papers/of/separator.js';
import { firstHalf } from '../../language/seeing/papers/of/stacking.js';
import { spares } from '../../language/seeing/papers/of/parts.js';
import papersCommand from '../../server/command/commands/papers.js';

const root = path.resolve(import.meta.dirname, '../..');
const example = (name: string) => {
    const file = path.join(root, 'examples', name);
    return new Analyst(f => {
        try {
            return readFileSync(f.startsWith('/') ? f : path.join(root, 'examples', f), 'utf8');
        } catch {
            return undefined;
        }
    }).analyse(file, { today: '2026-06-01' });
};
const rig = (text: string) => analyseText(`rig "T", built\n${text}`);
const bench = (text: string) => new Bench(rig(text));
const potters = example('potters-burner.rig');
const jeweller = example('jeweller-torch-store.rig');
/** Words of a page without its tags. */
const wordsOf = (html: string) => html.replace(/<style>[\s\S]*?<\/style>/, '').replace(/<[^>]+>/g, ' ').replace(/&#(\d+);/g, (_, n) => String.fromCharCode(Number(n))).replace(/[\s\u00a0]+/g, ' ');
const only = (analysis: typeof potters, ...names: string[]) => papersOf(analysis, { only: names });
const validate = new HtmlValidate({ extends: ['html-validate:recommended'], rules: { 'no-inline-style': 'error', 'long-title': 'off', 'no-trailing-whitespace': 'off', 'attribute-boolean-style': 'off' } });
/** s of processor time: a busy machine takes longer by the clock. */
const cpu = () => {
    const { user, system } = process.cpuUsage();
    return (user + system) / 1e6;
};
const problems = (html: string) => validate.validateStringSync(html).results.flatMap(r => r.messages.map(m => `${m.ruleId} ${m.line}: ${m.message}`));

/** Reads the groups of a drawing in the open exchange form back: layers and entities. */
function readDxf(text: string) {
    const lines = text.split('\r\n');
    expect(lines.pop()).toBe('');
    expect(lines.length % 2).toBe(0);
    const groups: [number, string][] = [];
    for (let i = 0; i < lines.length; i += 2) groups.push([Number(lines[i]), lines[i + 1].trimStart()]);
    expect(groups.every(([code]) => Number.isInteger(code))).toBe(true);
    expect(groups.at(-1)).toEqual([0, 'EOF']);
    const layers: string[] = [];
    const entities: { type: string; layer: string; [code: number]: number; text?: string }[] = [];
    let section = '';
    let of: (typeof entities)[number] | undefined;
    for (const [i, [code, value]] of groups.entries()) {
        if (code === 0) {
            of = undefined;
            if (value === 'ENDSEC') section = '';
            if (section === 'ENTITIES') entities.push((of = { type: value, layer: '' }));
            if (section === 'TABLES' && value === 'LAYER') layers.push(groups[i + 1][1]);
        } else if (code === 2 && groups[i - 1][1] === 'SECTION') section = value;
        else if (of && code === 8) of.layer = value;
        else if (of && code === 1) of.text = value;
        else if (of) of[code] = Number(value);
    }
    return { layers, entities, header: groups };
}

describe('the pack', () => {
    it('n cells take n + 1 plates, 2 n gaskets and n separators', () => {
        for (const cells of [1, 2, 10, 37]) {
            const p = packOf(bench(`separator { material: PPS }\nstack { cells: ${cells} }`))!;
            expect([p.plates, p.gaskets, p.separators]).toEqual([cells + 1, 2 * cells, cells]);
        }
    });
    it('groups with a plate in the middle share it', () => {
        expect(packOf(bench('separator { }\nstack { groups: 2   cells: 6 per group   feed: middle }'))!.plates).toBe(13);
        expect(packOf(bench('separator { }\nstack { groups: 2   cells: 6 per group }'))!.plates).toBe(14);
    });
    it('without separators the gaskets are not told', () => {
        expect(packOf(bench('stack { cells: 6   separator: none }'))!.gaskets).toBeNaN();
        expect(packOf(bench('stack { wetted: 80 x 100 mm }'))!.plates).toBeNaN();
    });
    it('gaskets have the outline of the plates unless they have their own, and leave room for frames where they are thinner than the gap', () => {
        const of = (more: string) => pieces(bench(`stack { cells: 3   plate: nickel, 130 x 150 x 1 mm   wetted: 90 x 110 mm   gap: 2 mm   ${more} }\nseparator { thickness: 0.5 mm }`));
        const find = (list: ReturnType<typeof pieces>, what: string) => list.find(p => p.what === what)!;
        const plain = of('gasket: EPDM, 2.6 mm to 2.05 mm   end-board: PP, 25 mm');
        expect(find(plain, 'gaskets').size).toBe('130 x 150 x 2.6 mm free');
        expect(find(plain, 'frames').count).toBe(0);
        expect(find(plain, 'end boards').size).toBe('____ x ____ x 25 mm');
        const own = of('gasket: EPDM, 134 x 154 mm, 1.3 mm to 1 mm   end-board: PP, 150 x 170 mm, 25 mm');
        expect(find(own, 'gaskets').size).toBe('134 x 154 x 1.3 mm free');
        expect(find(own, 'frames').count).toBeNaN();
        expect(find(own, 'end boards').size).toBe('150 x 170 x 25 mm');
    });
    it('holes of one height are a line, and so are heights with the same holes', () => {
        const hole = (what: string, bore: number, x: number, y: number) => ({ what, bore, at: [x, y] as const });
        expect(rowsOf([hole('rod', 9, 5, 5), hole('rod', 9, 95, 5), hole('lye', 9, 5, 5), hole('rod', 9, 95, 115), hole('rod', 9, 5, 115), hole('rod', 9, 5, 60)])).toEqual([
            { what: 'rod', bore: 9, left: [5, 95], below: [5, 115] },
            { what: 'lye', bore: 9, left: [5], below: [5] },
            { what: 'rod', bore: 9, left: [5], below: [60] },
        ]);
    });
    it('rods reach through pack, boards, washers and nuts', () => {
        const rods = (text: string) => pieces(bench(text)).find(p => p.what === 'tie rods')!;
        // 4 plates of 1 mm, 6 gaskets of 2 mm, 3 sheets of 0.5 mm, 2 boards of 20 mm; at each end 1.6 mm, 6.8 mm (ISO 4032, from memory) and 2.5 mm.
        expect(rods('stack { cells: 3   plate: nickel, 130 x 150 x 1 mm   gasket: EPDM, 2.6 mm to 2 mm   end-board: PP, 20 mm   tie-rods: 8 of M8 }\nseparator { thickness: 0.5 mm }').size).toBe('M8 x at least 80 mm');
        expect(rods('stack { cells: 3   plate: nickel, 130 x 150 x 1 mm   gasket: EPDM, 2.6 mm to 2 mm   tie-rods: 8 of M8 }\nseparator { thickness: 0.5 mm }').size).toBe('M8 x ____');
    });
    it('stands as high as plates, pressed gaskets and sheets together', () => {
        // 11 x 0.8 mm + 20 x 2.05 mm = 49.8 mm; ten sheets of 0.5 mm more.
        const { height } = packOf(new Bench(potters))!;
        expect(height.least).toBeCloseTo(0.0498, 6);
        expect(height.most).toBeCloseTo(0.0548, 6);
    });
    it('a sheet is its window and the clamped edge on both sides, unless its size is told', () => {
        const b = new Bench(potters);
        expect(separatorSheet(b, packOf(b)!.stack)!.size.map(m => Math.round(m * 1e4) / 10)).toEqual([113, 123]);
        const told = bench('separator { size: 100 x 120 mm   clamped: 8 mm }\nstack { cells: 2   wetted: 80 x 100 mm }');
        expect(separatorSheet(told, packOf(told)!.stack)).toEqual({ size: [0.1, 0.12], by: 'told' });
    });
    it('no assumed thickness or size is cut', () => {
        const b = bench('separator { }\nstack { cells: 4 }');
        expect(pieces(b).every(p => p.size === undefined && (p.material === undefined))).toBe(true);
    });
    it('of every ten one more, two at least', () => {
        expect([spare(4), spare(20), spare(21)]).toEqual([2, 2, 3]);
    });
});

describe('holes and template', () => {
    const plate = 'stack { cells: 2   plate: nickel, 120 x 140 x 1 mm   wetted: 90 x 100 mm';
    it('the window stands where it is told, or where its cover leaves one place', () => {
        const at = (rest: string) => {
            const b = bench(`separator { }\n${plate} ${rest} }`);
            return windowPlace(b, packOf(b)!.stack)?.map(m => Math.round(m * 1e4) / 10);
        };
        expect(at('')).toBeUndefined();
        expect(at('  edge-cover: 15 mm')).toBeUndefined();
        expect(at('  window-at: 15 x 18 mm')).toEqual([15, 18]);
        const even = bench('separator { }\nstack { cells: 2   plate: nickel, 120 x 130 x 1 mm   wetted: 90 x 100 mm   edge-cover: 15 mm }');
        expect(windowPlace(even, packOf(even)!.stack)!.map(m => Math.round(m * 1e4) / 10)).toEqual([15, 15]);
    });
    it('holes are where the text puts them, in the drawing and in its open form', () => {
        const b = bench(`separator { }\n${plate}   holes: rod of 9 mm at 10 x 12.5 mm, hydrogen of 14 mm at 30 x 126 mm }`);
        expect(holesOf(packOf(b)!.stack).map(h => [h.what, ...[h.bore, ...h.at].map(m => Math.round(m * 1e5) / 100)])).toEqual([['rod', 9, 10, 12.5], ['hydrogen', 14, 30, 126]]);
        const { entities, layers } = readDxf(dxfOf(templateOf(b)!));
        expect(entities.filter(e => e.type === 'CIRCLE').map(e => [e.layer, e[10], e[20], e[40]])).toEqual([['HOLES', 10, 12.5, 4.5], ['HOLES', 30, 126, 7]]);
        expect(layers).toEqual(['OUTLINE', 'WINDOW', 'HOLES', 'MIDDLE', 'CHECK', 'WORDS']);
        const outline = entities.filter(e => e.layer === 'OUTLINE');
        expect(outline).toHaveLength(4);
        expect(Math.max(...outline.flatMap(e => [e[10], e[11]])) - Math.min(...outline.flatMap(e => [e[10], e[11]]))).toBe(120);
        expect(Math.max(...outline.flatMap(e => [e[20], e[21]])) - Math.min(...outline.flatMap(e => [e[20], e[21]]))).toBe(140);
        // Nothing but the three sorts of things, each on a layer that is declared.
        expect(new Set(entities.map(e => e.type))).toEqual(new Set(['LINE', 'CIRCLE', 'TEXT']));
        expect(entities.every(e => layers.includes(e.layer))).toBe(true);
    });
    it('tells holes that leave less than 2 mm to edge, window or each other', () => {
        const rims = (holes: string) => {
            const b = bench(`separator { }\n${plate}   window-at: 15 x 20 mm   holes: ${holes} }`);
            return thinRims(b, packOf(b)!.stack);
        };
        // 4 mm radius at 7 mm from both edges leaves 3 mm; the window begins at 15 mm.
        expect(rims('rod of 8 mm at 7 x 7 mm')).toEqual([]);
        expect(rims('rod of 8 mm at 3 x 70 mm')).toEqual(['rod hole at 3, 70 mm: reaches over the edge of the plate by 1 mm']);
        expect(rims('rod of 8 mm at 10 x 70 mm')).toEqual(['rod hole at 10, 70 mm: 1 mm to the window']);
        expect(rims('rod of 8 mm at 60 x 10 mm, lye of 8 mm at 69 x 10 mm')).toEqual(['rod hole at 60, 10 mm: 1 mm to the lye hole at 69, 10 mm']);
        expect(thinRims(new Bench(potters), potters.workings.partsOf('stack')[0])).toEqual([]);
    });
    it('what has no place is not drawn, and that is said', () => {
        const f = templateOf(bench(`separator { }\n${plate} }`))!;
        expect(f.circles).toEqual([]);
        expect(f.lines.some(l => l.layer === 'WINDOW')).toBe(false);
        expect(f.words.at(-1)!.text).toBe('Not told: place of the window, places of holes.');
        expect(templateOf(bench('stack { cells: 2 }'))).toBeUndefined();
    });
    it('the check line is 100 mm long: one unit of the picture is one millimetre of paper', () => {
        const f = templateOf(new Bench(potters))!;
        const check = readDxf(dxfOf(f)).entities.filter(e => e.layer === 'CHECK' && e[20] === e[21]);
        expect(check.map(e => Math.abs(e[11] - e[10]))).toEqual([100]);
        const svg = templateSvg(f);
        const [, width, height, box] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(svg)!;
        expect(box.split(' ').map(Number)).toEqual([0, 0, Number(width), Number(height)]);
        const lines = [...svg.matchAll(/<line x1="([-\d.]+)" y1="([-\d.]+)" x2="([-\d.]+)" y2="([-\d.]+)" stroke="#2c5f9e"/g)].map(m => m.slice(1).map(Number));
        expect(lines.filter(l => l[1] === l[3]).map(l => l[2] - l[0])).toEqual([100]);
        // The same holes, turned upside down as pictures are.
        const circles = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/g)].map(m => m.slice(1).map(Number));
        expect(circles).toHaveLength(12);
        expect(circles[0]).toEqual([95 + 6, 145 - 135 + 6, 7]);
    });
    it('a plate larger than a sheet goes on several that share a strip, each at its true size', () => {
        const sheets = templateSheets(templateOf(bench('stack { cells: 2   plate: nickel, 300 x 400 x 1 mm }'))!);
        expect(sheets.map(s => /viewBox="([^"]+)"/.exec(s.picture.text)![1])).toEqual(['0 0 180 218', '170 0 142 218', '0 208 180 218', '170 208 142 218', '0 416 180 18', '170 416 142 18']);
        for (const s of sheets) {
            const [, w, h, x] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="\S+ \S+ (\S+ \S+)"/.exec(s.picture.text)!;
            expect(`${w} ${h}`).toBe(x);
        }
        expect(templateSheets(templateOf(bench('stack { cells: 2   plate: nickel, 2000 x 2000 x 1 mm }'))!)).toEqual([]);
    });
});

describe('lye', () => {
    it('weighs by density, strength and assay: one litre of 30 wt% KOH', () => {
        // Density at 20 °C 1.290 kg/L: CRC Handbook, concentrative properties of aqueous solutions, from memory. 0.387 kg of hydroxide, so 0.4398 kg at 88 %.
        const w = weighed('KOH', 1e-3, 0.30, 0.88);
        expect(Math.abs(w.lye / 1.290 - 1)).toBeLessThan(0.006);
        expect(Math.abs(w.solid / 0.4398 - 1)).toBeLessThan(0.006);
        expect(w.solid * 0.88 / (w.solid + w.water)).toBeCloseTo(0.30, 12);
    });
    it('one litre of 20 wt% NaOH', () => {
        // Density at 20 °C 1.219 kg/L: CRC Handbook, from memory; 0.2438 kg of hydroxide, 0.2513 kg at 97 %.
        const w = weighed('NaOH', 1e-3, 0.20, 0.97);
        expect(Math.abs(w.solid / 0.2513 - 1)).toBeLessThan(0.006);
    });
    it('the sheet takes the assay of the text; without one a line for each usual one, and one to fill', () => {
        const told = wordsOf(only(rig('lye { solute: KOH   strength: 30 wt%   fill: 2 L   assay: 85 % }'), 'lye').html);
        expect(told).toContain(`85 % ${(2 * lyeDensity('KOH', 0.3, 293.15) / 1000 * 0.3 / 0.85).toFixed(3)} kg`);
        expect(told).not.toContain('87.5 %');
        const silent = wordsOf(only(rig('lye { solute: KOH   strength: 30 wt%   fill: 2 L }'), 'lye').html);
        for (const a of ['85 %', '87.5 %', '90 %']) expect(silent).toContain(a);
    });
    it('water before solid, and the warning of heat with this rig\'s number', () => {
        const text = wordsOf(only(potters, 'lye').html);
        expect(text).toContain('Never water onto the solid');
        expect(text.indexOf('cold water into the vessel')).toBeLessThan(text.indexOf('Put in one portion'));
        expect(text).toContain(`would warm by ${Number(new Bench(potters).q(new Bench(potters).the('lye'), 'mixing-rise').toPrecision(2))} K`);
    });
    it('nothing is weighed of what the text does not tell, and of other solutes', () => {
        expect(wordsOf(only(rig('lye { solute: KOH }'), 'lye').html)).not.toMatch(/\d kg/);
        const salt = wordsOf(only(rig('lye { solute: NaCl   strength: 20 wt%   fill: 2 L }'), 'lye').html);
        expect(salt).toContain('chlorine');
        expect(salt).not.toMatch(/\d kg/);
    });
});

describe('test cards', () => {
    it('a tightness test hides no more than a hundredth of what is made', () => {
        // 2 L at 1.5 kPa, 60 L/h made: fall 0.15 kPa and 1 K (0.351 kPa) in 30 min: 2 x 0.501 / 101.325 / 0.5 = 0.0198 L/h.
        const t = leakTest('low', 1500, 2e-3, 60e-3 / 3600, 101325);
        expect(t.mayFall).toBeCloseTo(150, 9);
        expect(t.lasts).toBe(1800);
        expect(t.hides * 3.6e6).toBeCloseTo(0.0198, 4);
        expect(t.perKelvin).toBeCloseTo(350.8, 1);
        // 24 L at 10.5 bar, 110 L/h: half an hour would hide far more.
        const high = leakTest('high', 10.5e5, 24e-3, 110e-3 / 3600, 101325);
        expect(high.lasts).toBeGreaterThan(3 * 3600);
        expect(high.hides).toBeLessThanOrEqual(0.01 * 110e-3 / 3600 * (1 + 1e-9));
    });
    it('passes between the bounds of a set point: its own ±, else its tolerance, and none invented for temperatures', () => {
        const b = new Bench(jeweller);
        const of = (name: string, key: string) => setPointsOf(b, b.other(name)!).find(p => p.key === key)!;
        expect(of('cut-off', 'breaks').passes).toBe('10.3 bar to 10.7 bar');
        expect(of('hot-stack', 'trips').passes).toBe('60 °C to 64 °C');
        expect(of('bag-high', 'trips')).toMatchObject({ side: 'above', at: '112 L', passes: '106.4 L to 117.6 L' });
        expect(of('hot-discharge', 'trips').passes).toBe('');
    });
    it('every switch and every trip has its card, with a way to act that needs no hydrogen', () => {
        const text = wordsOf(only(jeweller, 'checks').html);
        const b = new Bench(jeweller);
        const devices = b.parts('switch', 'trip', 'analyser', 'detector');
        expect(devices.length).toBe(17);
        for (const v of devices) expect(text).toContain(`${v.name}: ${v.kind} on `);
        expect(text).not.toContain('Not told by what it senses');
    });
    it('a relief opens above the last trip and not above the weakest that it guards', () => {
        const b = new Bench(jeweller);
        const store = reliefLimits(b, b.other('store-relief')!);
        expect(store.above).toBeCloseTo(12e5, 0);
        expect([store.notAbove, store.weakest]).toEqual([20e5, 'cylinder']);
        expect(reliefLimits(b, b.other('use-relief')!).above).toBeCloseTo(0.8e5, 0);
    });
    it('air is driven out: three volumes leave a hundredth, and fillings of a vessel divide', () => {
        expect(leftAfter(3)).toBeCloseTo(0.0104, 4);
        // 0.209 / 3^n below 0.01 from n = 3 on (0.0077); at 2 bar of gauge each filling divides by three.
        expect(fillings(2 * 101325, 101325)).toBe(3);
        const spaces = spacesOf(new Bench(potters), 'hydrogen');
        expect(spaces.find(s => s.name === 'h2-column')!.volume * 1000).toBeCloseTo(Math.PI / 4 * 0.75 ** 2 * 1.7, 6);
        expect(spaces.find(s => s.name === 'gas-bag')!.volume).toBeCloseTo(2e-3, 9);
    });
    it('no test is asked for that a lid does not bear without that being said', () => {
        const text = wordsOf(only(rig('separator { bubble-pressure: 150 kPa }\nstack { cells: 4   wetted: 80 x 100 mm }\ncolumn a { lid: 0.1 kPa, fixed }\ncolumn b { lid: 0.1 kPa, fixed }\npath hydrogen: stack -> a -> outdoors\npath oxygen: stack -> b -> outdoors'), 'checks').html);
        expect(text).toContain('less than this test');
    });
});

describe('the separator check of a filled rig', () => {
    const text = (permeability: string) => `lye { solute: KOH   strength: 28 wt%   fill: 3 L }\nseparator { bubble-pressure: 150 kPa ${permeability} }\nstack { cells: 10   wetted: 90 x 100 mm }
        column a { bore: 80 mm   height: 400 mm   level: 250 mm   return-port: 60 mm }\ncolumn b like a\nbubbler p { immersion: 90 mm }\nbubbler q { immersion: 60 mm }
        seal s { depth: 150 mm }\nseal t { depth: 150 mm }
        path lye: a -> stack.hydrogen\npath lye: b -> stack.oxygen\npath hydrogen: stack -> a -> p -> outdoors\npath oxygen: stack -> b -> q -> outdoors\npath hydrogen: a -> s -> outdoors\npath oxygen: b -> t -> outdoors`;
    it('rate by the law, stop rule twice that, the level to 20 mm over the port', () => {
        const b = bench(text('  permeability: 1e-9 m3/(m2·s·Pa)'));
        const c = separatorCheck(b)!;
        const kind = b.the('separator')!;
        expect(b.num(kind, 'permeability')).toBeGreaterThan(0);
        const head = b.q(b.the('stack'), 'separator-head-worst');
        expect(head).toBeGreaterThan(2 * b.q(b.the('stack'), 'separator-head'));
        expect(c.head).toBeCloseTo(head, 9);
        expect(c.rate).toBeCloseTo(b.num(kind, 'permeability') * head * 10 * 0.09 * 0.1 / (Math.PI / 4 * 0.08 ** 2), 15);
        expect(c.mayFall).toBeCloseTo(0.04, 9);
        expect(c.asLevel).toBeCloseTo(head / (lyeDensity('KOH', 0.28, 293.15) * 9.80665), 9);
        expect(c.restsLower).toBeCloseTo(c.asLevel / 2, 9);
    });
    it('the rate of a quantity of a test is the same', () => {
        const b = bench(`${text('  permeability: 1e-9 m3/(m2·s·Pa)')}\ntest one { date: 2026-03-01   covers: separator, a   with: air, wet, hydrogen side alone   pressure: 1 kPa   lasted: 1 h   level-change: 1 mm   result: passed }`);
        const c = separatorCheck(b)!;
        expect(c.rate / c.head).toBeCloseTo(b.q(b.other('one'), 'seeping-rate') / 1000, 15);
    });
    it('without a permeability there is a blank and no number', () => {
        const b = bench(text(''));
        expect(separatorCheck(b)!.rate).toBeNaN();
        expect(wordsOf(only(b.analysis, 'separator').html)).toContain('the first check on sound sheets sets it');
    });
});

describe('lines, stacking, log, first start', () => {
    it('every way of a path has a line, a tube its own size, the seal its own pipe', () => {
        const lines = tubeLines(new Bench(jeweller));
        expect(lines.find(l => l.mark === 'high-line')).toMatchObject({ from: 'store-check', to: 'cylinder', size: '6 x 1 mm', length: '2.5 m', material: 'stainless-316L', ends: 'secured' });
        expect(lines.find(l => l.from === 'h2-seal')).toMatchObject({ size: '25 mm bore', length: '2 m' });
        expect(lines.find(l => l.from === 'h2-tee' && l.to === 'scrubber')).toMatchObject({ size: undefined, length: undefined });
        expect(new Set(lines.map(l => l.label)).size).toBe(lines.length);
        // What lye leaves a column by is not told by the bore for its gas.
        expect(lines.filter(l => l.medium === 'lye').every(l => l.ends === undefined)).toBe(true);
    });
    it('power and control wires with their ends', () => {
        const b = new Bench(potters);
        expect(powerLines(b).at(-1)).toMatchObject({ from: 'diode', to: 'stack', section: '6 mm2', length: '1.5 m each way', ends: 'lug' });
        expect(controlLines(b).find(l => l.from === 'bag-full')).toMatchObject({ to: 'stack-contactor', what: 'wire broken: breaks' });
    });
    it('halves from the left as told; a disagreement with the ends stops the stacking', () => {
        const b = new Bench(potters);
        expect(firstHalf(b, packOf(b)!)).toBe('oxygen');
        expect(wordsOf(only(potters, 'stacking').html)).not.toContain('do not go together');
        expect(wordsOf(only(rig('separator { }\nstack { cells: 3   plus-end: left   hydrogen-half: left }'), 'stacking').html)).toContain('do not go together');
        expect(wordsOf(only(rig('separator { }\nstack { cells: 3 }'), 'stacking').html)).toContain('half for ______');
    });
    it('a pack fed in its middle is mirrored, and plates of alternate poles get no halves', () => {
        const middle = bench('separator { thickness: 0.5 mm }\nstack { groups: 2   cells: 3 per group   feed: middle   plus-end: middle   plate: nickel, 100 x 120 x 1 mm   gasket: EPDM, 3 mm to 2 mm }');
        const pack = packOf(middle)!;
        // Plus in the middle: oxygen is made on both faces of that plate.
        expect([firstHalf(middle, pack, 0), firstHalf(middle, pack, 1)]).toEqual(['hydrogen', 'oxygen']);
        expect(pack.height.least).toBeCloseTo(7 * 0.001 + 12 * 0.002, 9);
        expect(wordsOf(only(middle.analysis, 'stacking').html)).toContain('mirrors the first');
        const told = bench('separator { }\nstack { cells: 3   layout: monopolar   hydrogen-half: left }');
        expect(firstHalf(told, packOf(told)!)).toBeUndefined();
        expect(wordsOf(only(told.analysis, 'stacking').html)).toContain('change sides from cell to cell');
    });
    it('the log has a column for whatever something acts on, with where it acts', () => {
        const columns = logColumns(new Bench(potters));
        expect(columns.find(c => c.what === 'stack.temperature')).toMatchObject({ limits: '< 62 °C' });
        expect(columns.find(c => c.what === 'gas-bag.volume')!.limits).toBe('< 101 L');
        expect(logColumns(new Bench(jeweller)).find(c => c.what === 'fan.flow')!.limits).toBe('> 60 m3/h');
        expect(columns.map(c => c.what)).toContain('site.hydrogen');
    });
    it('predictions are the numbers of the rig, with their ±', () => {
        const rows = predictions(new Bench(potters));
        const volts = rows.find(r => r[0] === 'stack' && r[1] === 'volts of a cell')!;
        const result = potters.workings.partsOf('stack')[0].result('volts-per-cell')!;
        expect(String(volts[3])).toContain(`${Number(result.value.toPrecision(3))} V`);
        expect(String(volts[3])).toContain('±');
    });
    it('spares: gaskets, sheets, seals, fuses, cells', () => {
        const list = spares(new Bench(potters)).map(s => s.what);
        for (const what of ['gaskets of the stack', 'separator sheets', 'seal of the lid of h2-column', 'fuse', 'fuse for control', 'cell of oxygen-watch']) expect(list).toContain(what);
    });
    it('what guards stands before all other parts', () => {
        const text = wordsOf(only(potters, 'parts').html);
        const csv = papersOf(potters, { only: ['parts'] }).files[0].text;
        expect(text.indexOf('What guards')).toBeLessThan(text.indexOf('All other parts'));
        expect(csv.indexOf('guards,arrestor')).toBeGreaterThan(0);
        expect(csv.indexOf('guards,arrestor')).toBeLessThan(csv.indexOf('others,stack'));
        expect(text).toContain('Prices told and other costs together: 481 EUR');
    });
    it('a level that is too high is not answered by filling up', () => {
        const text = wordsOf(only(jeweller, 'faults').html);
        const card = text.slice(text.indexOf('h2-level-high has acted'), text.indexOf('o2-level-high has acted'));
        expect(card).toContain('Look at the level of the other side');
        expect(card).not.toContain('Fill up');
        expect(text.slice(text.indexOf('suction-low has acted'), text.indexOf('high-high has acted'))).toContain('Compressor off');
        expect(text).toContain('fan-flow has acted');
    });
    it('faults that were followed stand on the card of the guard that caught them', () => {
        const small = rig(`supply power { sort: bench   voltage: 26 V   current-limit: 8 A   isolated: yes   needs: main }\nseparator { bubble-pressure: 150 kPa }\nlye { strength: 28 wt%   fill: 4 L }
            stack { cells: 12   wetted: 80 x 100 mm   top-height: 400 mm }\ncolumn a { bore: 80 mm   height: 400 mm   level: 240 mm   base-height: 500 mm   return-port: 60 mm }\ncolumn b like a
            bag { volume: 60 L   rating: 2 kPa   own-pressure: 0.1 kPa }\nbutton start\nstop-button halt\nswitch full { senses: bag.volume   breaks: above 45 L   makes: below 30 L   if-wire-breaks: breaks }
            trip high { senses: bag.volume   trips: above 52 L   resets: by hand   if-wire-breaks: trips }\ncontactor main { latched-by: start   needs: full   stopped-by: halt, high }
            path current: power -> stack\npath lye: a -> stack.hydrogen\npath lye: b -> stack.oxygen\npath hydrogen: stack -> a -> bag\npath oxygen: stack -> b -> outdoors`);
        const faults = faultsIn(small.workings, 6 * 3600);
        const text = wordsOf(papersOf(small, { only: ['faults'], faults }).html);
        const caught = faults.faults.filter(f => f.caughtBy?.name === 'high' && f.part !== 'high');
        expect(caught.length).toBeGreaterThan(0);
        const card = text.slice(text.indexOf('high has acted'), text.indexOf('Seen without a guard'));
        for (const f of caught.slice(0, 3)) expect(card).toContain(`${f.part} ${f.what}`);
        expect(wordsOf(papersOf(small, { only: ['faults'] }).html)).toContain('were not followed');
    });
});

describe('pages', () => {
    it('are valid, of the rigs of the examples', () => {
        for (const file of readdirSync(path.join(root, 'examples')).filter(f => f.endsWith('.rig') && f !== 'bench-shelf.rig')) {
            expect(problems(papersOf(example(file), { date: '2026-06-01' }).html), file).toEqual([]);
        }
    });
    it('need nothing from elsewhere and hold no script', () => {
        const { html } = papersOf(potters);
        expect(html).not.toMatch(/<script|<link|@import|url\(|\bon\w+=|style="/i);
        expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/);
        expect(html).toContain('size: A4');
        expect(papersOf(potters, { size: 'letter' }).html).toContain('size: letter');
    });
    it('each paper begins with its cautions and leaves the decision to codes and practice', () => {
        for (const p of allPapers) {
            const { html } = papersOf(potters, { only: [p.name] });
            expect(html.indexOf('class="cautions"'), p.name).toBeGreaterThan(0);
            expect(html.indexOf('class="cautions"'), p.name).toBeLessThan(html.search(/<(h3|table|ol|dl)[ >]/));
            expect(wordsOf(html), p.name).toContain('Local codes and licensed practice decide.');
            expect(wordsOf(html), p.name).not.toMatch(/\b(is safe|safe to|approved|certified safe)\b|\bNaN\b|\bundefined\b|\bInfinity\b|without limit|\[object/);
        }
        expect(new Set(allPapers.map(p => p.name)).size).toBe(allPapers.length);
        expect(new Set(allPapers.map(p => p.place)).size).toBe(allPapers.length);
    });
    it('a rig of few lines, an empty one and a broken one give papers with blanks', () => {
        for (const text of ['', 'stack { cells: 4 }', 'stack { cells: many   wetted: }\nbag {', 'switch s { }\ntrip t { senses: nothing.at-all }\nseal x { }\nrelief-valve r { }\ncylinder c { }\ncompressor k { }\npath hydrogen: c -> r -> k']) {
            const made = papersOf(rig(text));
            expect(problems(made.html), text).toEqual([]);
            const words = wordsOf(made.html);
            expect(words, text).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b|without limit/);
            expect(made.html).toContain('class="blank');
        }
    });
    it('a rig with errors says so first on every paper', () => {
        const broken = rig('stack { cells: 13   plates: 13 }');
        expect(broken.findings.some(f => f.severity === 'error')).toBe(true);
        expect(wordsOf(only(broken, 'lye').html)).toMatch(/First \d+ findings? of this rig say that something is wrong/);
    });
    it('hostile names and texts stay words', () => {
        const evil = analyseText(`rig "<script>alert(1)</script>=cmd|x", built\nbag gas-bag { place: "</style><img src=x onerror=alert(1)>"   material: "=HYPERLINK(1)"   price: 5 EUR }\nroutine { spent-lye: "<b>\u0000@x</b>"   steps: "<i>mix</i>" }\nsite { bonded: "<svg onload=x>" }\nstack { cells: 2   plate: nickel, 100 x 100 x 1 mm }`);
        const made = papersOf(evil);
        expect(made.html).not.toMatch(/<script>alert|<img|<b>|<i>mix|<svg onload/);
        expect(problems(made.html)).toEqual([]);
        expect(made.files.map(f => f.name).every(n => /^[a-z]+\.(csv|svg|dxf)$/.test(n))).toBe(true);
        expect(made.files.find(f => f.name === 'parts.csv')!.text).not.toMatch(/(^|,)"?[=+@]/m);
    });
    it('numbers that rest on what is assumed are marked, and what that is stands below', () => {
        const { html } = only(rig('supply { sort: bench   voltage: 26 V   current-limit: 8 A   isolated: yes }\nseparator { }\nstack { cells: 12   wetted: 80 x 100 mm }'), 'commissioning');
        expect(html).toContain('<sup>*</sup>');
        expect(wordsOf(html)).toMatch(/rests on what the text does not tell and the language assumes \([^)]*stack\.gap/);
    });
    it('a rig of many parts is written in reasonable time and length', () => {
        const many = rig(Array.from({ length: 400 }, (_, i) => `trip t${i} { senses: stack.temperature   trips: above ${40 + i / 10} °C }`).join('\n') + '\nstack { groups: 40   cells: 100 per group }');
        const began = cpu();
        const { html } = papersOf(many);
        expect(cpu() - began).toBeLessThan(5);
        expect(html.length).toBeLessThan(4e6);
    });
});

describe('tables for spreadsheets', () => {
    it('take no cell for a formula, keep numbers, and quote what must be', () => {
        expect(csvOf([['=1+1', '+A1', '-A1', '@x', '|x', '\t=1', ' =1', '-5.5', '5', 3, undefined, 'a,b', 'say "x"', 'two\nlines']]))
            .toBe('"\'=1+1","\'+A1","\'-A1","\'@x","\'|x","\'\t=1","\' =1",-5.5,5,3,,"a,b","say ""x""","two\nlines"\r\n');
    });
});

describe('papers, the command', () => {
    const run = async (args: string[], options: Record<string, string | boolean | undefined> = {}, cwd = root) => {
        const out: string[] = [];
        const code = await papersCommand.run({ args, options: { size: 'a4', ...options } }, { out: t => out.push(t), err: t => out.push(t), cwd, colour: false, readStdin: async () => '', today: '2026-06-01' });
        return { code, out: out.join('') };
    };
    it('lists names when no file is named', async () => {
        const { out } = await run([]);
        for (const p of allPapers) expect(out).toContain(`${p.name} `);
    });
    it('writes a folder, or one page, under a second', async () => {
        const folder = mkdtempSync(path.join(tmpdir(), 'papers-'));
        const began = cpu();
        await run(['examples/potters-burner.rig'], { output: path.join(folder, 'all') });
        expect(cpu() - began).toBeLessThan(1);
        expect(readdirSync(path.join(folder, 'all')).sort()).toEqual(['cut.csv', 'lines.csv', 'papers.html', 'parts.csv', 'template.dxf', 'template.svg']);
        await run(['examples/potters-burner.rig'], { output: path.join(folder, 'lye.html'), only: 'lye' });
        const page = readFileSync(path.join(folder, 'lye.html'), 'utf8');
        expect(page).toContain('Lye to weigh and mix');
        expect(page).not.toContain('Stacking order');
    });
    it('tells what it cannot do', async () => {
        await expect(run(['examples/potters-burner.rig'])).rejects.toThrow('papers takes -o FOLDER');
        await expect(run(['examples/potters-burner.rig'], { output: 'x', only: 'lie' })).rejects.toThrow(/There is no paper lie; do you mean lye|There is no paper lie/);
        const folder = mkdtempSync(path.join(tmpdir(), 'papers-'));
        writeFileSync(path.join(folder, 'file'), '');
        await expect(run(['examples/potters-burner.rig'], { output: path.join(folder, 'file') })).rejects.toThrow('is a file');
    });
});

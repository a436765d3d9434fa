/** The numbers behind each plot are those of the rig; pictures are sound markup and can be read. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { Analyst, analyseText, type Analysis } from '../../language/index.js';
import { HIGHER_HEATING_VALUE } from '../../language/physics/constants.js';
import { operatingPoint } from '../../language/quantities/operating-point.js';
import { run } from '../../language/run/run.js';
import { readScenario, usualDay } from '../../language/run/scenario.js';
import { dark, printed, sharp } from '../../language/seeing/palette.js';
import type { Wishes } from '../../language/seeing/plots/define.js';
import type { Bars, Curves, Figure, Ladder } from '../../language/seeing/plots/figure.js';
import { allPlots, tableCsv, figureOf, pictureOf, tableMarkup } from '../../language/seeing/plots/index.js';
import { fromSi, unitOf } from '../../language/units/unit.js';
import { wholeRig } from '../rules/whole-rigs.js';
import { fitToPrint, soundMarkup } from './look.js';

const folder = path.resolve(import.meta.dirname, '../../examples');
const read = (file: string): Analysis => new Analyst(f => {
    try {
        return readFileSync(f, 'utf8');
    } catch {
        return undefined;
    }
}).analyse(path.join(folder, file), { today: '2026-06-15' });
const examples = readdirSync(folder).filter(f => f.endsWith('.rig') && f !== 'bench-shelf.rig');
const analysed = new Map(examples.map(f => [f, read(f)]));
const named = (name: string) => allPlots.find(p => p.name === name)!;
function figure(name: string, analysis: Analysis, wishes?: Wishes): Figure {
    const found = figureOf(named(name), analysis, wishes);
    if (typeof found === 'string') throw new Error(`${name}: ${found}`);
    return found;
}
const q = (a: Analysis, part: string, quantity: string, unit: string) => fromSi(a.workings.quantity(a.rig.parts.get(part)!, quantity)!.value, unitOf(unit)!);
const column = (f: Figure, k: number) => f.table.rows.map(r => r[k] as number);
/** The row of a table whose cell is closest to a number. */
const rowAt = (f: Figure, k: number, value: number) => [...f.table.rows].filter(r => typeof r[k] === 'number').sort((a, b) => Math.abs((a[k] as number) - value) - Math.abs((b[k] as number) - value))[0];
/** Tables tell six figures. */
const close = (a: unknown, b: number, share = 2e-5) => expect(Math.abs((a as number) - b), `${String(a)} against ${b}`).toBeLessThanOrEqual(share * Math.abs(b) + 1e-9);

describe('the list', () => {
    it('has every plot once, each with its words', () => {
        expect(new Set(allPlots.map(p => p.name)).size).toBe(allPlots.length);
        expect(new Set(allPlots.map(p => p.order)).size).toBe(allPlots.length);
        for (const p of allPlots) for (const words of [p.title, p.meaning, p.needs]) expect(words.length).toBeGreaterThan(8);
    });
    it('tells why a plot is not there, in a sentence', () => {
        for (const text of ['rig "Nothing", idea', 'rig "Little", idea\nstack { cells: 3 }', 'rig "Weak", idea\nsupply { sort: bench voltage: 0.01 V }\nlye { solute: KOH strength: 25 wt% }\nstack { cells: 13 wetted: 80 x 120 mm }']) {
            const analysis = analyseText(text);
            for (const p of allPlots) {
                const found = figureOf(p, analysis);
                if (typeof found === 'string') expect(found, p.name).toMatch(/^\S.*[.…]$/);
                else soundMarkup(pictureOf(p, found, printed).text);
            }
        }
        const why = (name: string, text: string) => figureOf(named(name), analyseText(text));
        expect(why('polarisation', 'rig "N", idea')).toBe('No stack is described.');
        expect(why('cells', 'rig "W", idea\nsupply { sort: bench voltage: 0.01 V }\nlye { solute: KOH strength: 25 wt% }\nstack { cells: 13 wetted: 80 x 120 mm }')).toContain('too few volts');
        expect(why('volts', 'rig "W", idea\nsupply { sort: bench voltage: 30 V }\nlye { solute: KOH strength: 25 wt% }\nstack { cells: 13 }')).toContain('stack.wetted');
        expect(why('filling', 'rig "N", idea')).toBe('No compressor is described.');
    });
});

describe.each(examples)('%s: what it shows is the rig\'s', file => {
    const a = analysed.get(file)!;
    const stack = a.workings.partsOf('stack')[0];
    const p = a.workings.unnoted(() => stack.model(operatingPoint))!;
    it('polarisation: the operating point, on the curve and within the band', () => {
        const f = figure('polarisation', a);
        const [, current, volts, , , each] = f.table.rows.find(r => r[0] === 'operating point')!;
        close(current, q(a, 'stack', 'current', 'A'));
        close(volts, q(a, 'stack', 'voltage', 'V'));
        close(each, q(a, 'stack', 'volts-per-cell', 'V'));
        const [line] = (f.shape as Curves).panes[0].lines;
        const at = line.x.indexOf(p.current);
        expect(at).toBeGreaterThanOrEqual(0);
        close(line.y[at], p.voltage);
        // At a fixed warmth the band is about as wide as the ± of the rig's own number.
        const r = a.workings.quantity(stack.part, 'voltage')!;
        const [bandWide, ownWide] = [line.band![at].high - line.band![at].low, r.high - r.low];
        expect(line.band![at].low).toBeLessThan(p.voltage);
        expect(line.band![at].high).toBeGreaterThan(p.voltage);
        if (p.limitedBy === 'current limit') expect(bandWide / ownWide).toBeGreaterThan(0.6);
        for (let i = 1; i < line.y.length; i++) expect(line.y[i]).toBeGreaterThan(line.y[i - 1]);
        // Where volts decide, the line of what feeds it passes through the point.
        const supply = f.table.rows.find(row => row[0] === 'stack' && row[1] === Number(p.current.toPrecision(6)))![6];
        if (typeof supply === 'number') {
            if (p.limitedBy === 'volts') close(supply, p.voltage, 1e-3);
            else expect(supply).toBeGreaterThanOrEqual(p.voltage);
        }
    });
    it('volts add up', () => {
        const f = figure('volts', a);
        const steps = column(f, 1);
        close(steps.slice(0, -1).reduce((x, y) => x + y, 0), steps.at(-1)!);
        close(steps.at(-1), q(a, 'stack', 'volts-per-cell', 'V'));
        close(f.table.rows.find(r => r[0] === 'oxygen side')![1], q(a, 'stack', 'anode-overvoltage', 'V'));
        close(f.table.rows.find(r => r[0] === 'lye and separator')![1], q(a, 'stack', 'ohmic-voltage', 'V'));
    });
    it('watts add up', () => {
        const f = figure('watts', a);
        const of = (name: string) => f.table.rows.find(r => r[0] === name)![1] as number;
        close(of('from the plug'), q(a, 'stack', 'plug-power', 'W'));
        close(of('in the hydrogen'), a.workings.quantity(stack.part, 'hydrogen-rate')!.value * HIGHER_HEATING_VALUE);
        const middle = column(f, 1).slice(1, -1);
        close(of('from the plug') - middle.reduce((x, y) => x + y, 0), of('in the hydrogen'), 1e-4);
        for (const w of middle) expect(w).toBeGreaterThan(-0.02 * of('from the plug'));
        // At rest all heat goes to the room and the coolers.
        const away = of('warmth to the room') + (f.table.rows.some(r => r[0] === 'coolers') ? of('coolers') : 0);
        if (!f.table.rows.some(r => r[0] === 'warms the lye')) close(away, q(a, 'stack', 'heat', 'W'), 1e-4);
    });
    it('currents of the plates are those of the ladder', () => {
        const f = figure('cells', a);
        const plates = column(f, 1);
        const { cells } = { cells: plates.length - 1 };
        close(plates[0], p.groupCurrent);
        close(Math.min(...plates), q(a, 'stack', 'worst-cell-current', 'A'));
        // Each cell's current is that of one of its plates; both ends carry all of it and count once.
        const share = 1 - (plates.reduce((x, y) => x + y, 0) - plates[0]) / (cells * plates[0]);
        close(share, a.workings.quantity(stack.part, 'bypass-share')!.value, 1e-4);
        for (let i = 0; i < plates.length; i++) close(plates[i], plates[plates.length - 1 - i], 1e-4);
    });
    it('warming goes from the room to where it rests', () => {
        const f = figure('warming', a);
        for (const day of new Set(f.table.rows.map(r => r[0]))) {
            const rows = f.table.rows.filter(r => r[0] === day);
            expect(rows[0][1]).toBe(0);
            for (let i = 1; i < rows.length; i++) expect(rows[i][1] as number).toBeGreaterThan(rows[i - 1][1] as number);
        }
        const rows = f.table.rows.filter(r => String(r[0]).startsWith('room of'));
        const rise = q(a, 'stack', 'temperature', '°C') - (rows[0][2] as number);
        if (stack.says('temperature') !== 'stated') close((rows.at(-1)![2] as number) - (rows[0][2] as number), 0.98 * rise, 1e-3);
        // The rig's own time to within a tenth is that of a straight law; the curve bends, and a supply with little in hand warms otherwise.
        const nearly = rows.find(r => (r[2] as number) - (rows[0][2] as number) >= 0.9 * rise);
        if (nearly) expect((nearly[1] as number) / q(a, 'stack', 'warm-up-time', 'h')).toBeGreaterThan(0.2);
        if (nearly) expect((nearly[1] as number) / q(a, 'stack', 'warm-up-time', 'h')).toBeLessThan(2);
    });
    it('rooms: as warm as the rig says, in the usual room and on the hottest day', () => {
        const f = figure('rooms', a);
        if (stack.says('temperature') !== 'stated') close(rowAt(f, 0, fromSi(p.room, unitOf('°C')!))[1], q(a, 'stack', 'temperature', '°C'));
        const hottest = a.workings.partsOf('site')[0]?.maybe('hottest') ?? 313.15;
        close(rowAt(f, 0, fromSi(hottest, unitOf('°C')!))[1], q(a, 'stack', 'steady-temperature', '°C'));
    });
    it('purity: as the rig says, working and at the lowest current; less the more flows', () => {
        const f = figure('purity', a);
        close(rowAt(f, 0, p.current)[1], q(a, 'stack', 'hydrogen-in-oxygen', '%'), 1e-3);
        close(rowAt(f, 0, p.current)[4], q(a, 'stack', 'oxygen-in-hydrogen', '%'), 1e-3);
        const r = a.workings.quantity(stack.part, 'hydrogen-in-oxygen')!;
        close(rowAt(f, 0, p.current)[3], 100 * r.high, 0.2);
        for (let i = 1; i < f.table.rows.length; i++) expect(f.table.rows[i][1] as number).toBeLessThan(f.table.rows[i - 1][1] as number);
    });
    it('what matters most adds up to the bounds', () => {
        const f = figure('roots', a, { of: 'stack.volts-per-cell' });
        const r = a.workings.quantity(stack.part, 'volts-per-cell')!;
        const last = f.table.rows.at(-1)!;
        close(last[3], r.low);
        close(last[4], r.high);
        expect(column(f, 5).slice(0, -1).reduce((x, y) => x + y, 0)).toBeGreaterThan(95);
        expect(column(f, 5).slice(0, -1).reduce((x, y) => x + y, 0)).toBeLessThanOrEqual(100.01);
    });
    it('heads: all seals and the gases\' heads, in order', () => {
        const rungs = (figure('heads', a).shape as Ladder).rungs;
        for (let i = 1; i < rungs.length; i++) expect(rungs[i].at).toBeGreaterThanOrEqual(rungs[i - 1].at);
        for (const seal of a.workings.partsOf('seal').filter(v => !v.part.pattern)) close(rungs.find(r => r.part === seal.name && r.sort === 'relief')!.at, q(a, seal.name, 'opens-at', 'kPa'));
        close(rungs.find(r => r.says === 'hydrogen pushes against')!.at, q(a, 'stack', 'hydrogen-head', 'kPa'));
    });
});

describe('single plots', () => {
    const jeweller = analysed.get('jeweller-torch-store.rig')!;
    const potter = analysed.get('potters-burner.rig')!;
    it('filling: at the cut-off what the compressor says', () => {
        const f = figure('filling', jeweller);
        const row = rowAt(f, 0, q(jeweller, 'cylinder', 'cut-off', 'bar'));
        close(row[1], q(jeweller, 'compressor', 'free-delivery', 'NL/h'), 1e-4);
        close(row[2], q(jeweller, 'compressor', 'discharge-temperature', '°C'), 1e-4);
        expect((f.shape as Curves).uprights!.map(u => u.label)).toEqual([expect.stringContaining('ends at 10.5 bar'), expect.stringContaining('rated')]);
    });
    it('pressures: cut-off, trip, relief and rating of the store stand in this order', () => {
        const rungs = (figure('pressures', jeweller).shape as Ladder).rungs;
        const at = (part: string, says: string) => rungs.findIndex(r => r.part === part && r.says.startsWith(says));
        const order = [at('cut-off', 'makes below'), at('cut-off', 'breaks above'), at('high-high', 'trips above'), at('store-relief', 'starts to open'), at('cylinder', 'rating')];
        expect(order.every(i => i >= 0)).toBe(true);
        expect([...order].sort((a, b) => a - b)).toEqual(order);
    });
    it('run: the run that was made, with its series and what happened', () => {
        const made = run(potter.workings, readScenario(potter.workings, potter.workings.partsOf('scenario')[0]));
        const f = figure('run', potter, { run: made });
        const names = f.table.columns.map(c => c.name);
        const volume = names.indexOf('gas-bag.volume');
        const rows = f.table.rows.filter(r => r[volume] !== undefined);
        const own = made.series.find(s => s.name === 'gas-bag.volume')!.values;
        close(rows.at(-1)![volume], 1000 * own.at(-1)!);
        close(Math.max(...rows.map(r => r[volume] as number)), 1000 * Math.max(...own));
        expect(f.table.rows.filter(r => r.at(-1) !== undefined).map(r => String(r.at(-1)))).toContain('start-button pressed: main pulls in, stack-contactor pulls in, the stack makes gas');
        expect(f.says).toContain('cool-morning, from 07:30');
    });
    it('a long run keeps its peaks', () => {
        const made = run(jeweller.workings, usualDay(jeweller.workings, 3 * 86400));
        const f = figure('run', jeweller, { run: made });
        for (const s of made.series.filter(x => f.table.columns.some(c => c.name === x.name))) {
            const k = f.table.columns.findIndex(c => c.name === s.name);
            const unit = unitOf(s.unit);
            const most = Math.max(...s.values);
            close(Math.max(...f.table.rows.map(r => r[k]).filter((v): v is number => typeof v === 'number')), unit ? fromSi(most, unit) : most, 1e-4);
        }
        expect(f.table.rows.length).toBeLessThan(Math.max(2500, made.times.length + made.events.length + 1));
        fitToPrint(pictureOf(named('run'), f, printed).text);
    });
    it('roots: tells what cannot be asked', () => {
        expect(figureOf(named('roots'), potter, { of: 'stack.nix' })).toContain('stack has no number nix');
        expect(figureOf(named('roots'), potter, { of: 'stak.current' })).toContain('stack');
        expect(figureOf(named('roots'), potter, { of: '' })).toMatch(/\.$/);
    });
    it('readings and an own curve stand as points where they were read', () => {
        const text = readFileSync(path.join(folder, 'lesson-two-cells.rig'), 'utf8').replace(/^stack \{/m, 'stack {\n  curve: 3.9 V at 1 A and 25 °C, 4.3 V at 2.5 A');
        const f = figure('polarisation', new Analyst(x => (x.endsWith('lesson-two-cells.rig') ? text : readFileSync(x, 'utf8'))).analyse(path.join(folder, 'lesson-two-cells.rig')));
        const own = f.table.rows.filter(r => String(r[0]).startsWith('own curve'));
        expect(own.map(r => [r[1], r[2]])).toEqual([[1, 3.9], [2.5, 4.3]]);
    });
});

describe('pictures', () => {
    it('of all examples and palettes can be read: axes with units, nothing over another, nothing cut', () => {
        for (const [file, a] of analysed) {
            for (const p of allPlots) {
                const f = figureOf(p, a);
                if (typeof f === 'string') continue;
                for (const palette of [printed, dark, sharp]) {
                    const svg = pictureOf(p, f, palette).text;
                    try {
                        fitToPrint(svg);
                    } catch (e) {
                        throw new Error(`${file} ${p.name}: ${(e as Error).message}`);
                    }
                    expect(svg).toContain(palette.paper);
                }
                const svg = pictureOf(p, f, printed).text;
                const axes = f.shape.is === 'curves' ? [f.shape.x, ...f.shape.panes.map(x => x.y)] : [f.shape.is === 'bars' ? f.shape.x : f.shape.axis];
                for (const axis of axes) if (axis.unit) expect(svg, `${file} ${p.name}`).toContain(axis.unit);
                expect(f.table.rows.length).toBeGreaterThan(0);
                for (const row of f.table.rows) expect(row.length).toBe(f.table.columns.length);
            }
        }
    });
    it('of 50 drawn rigs can be read', () => {
        for (let seed = 1; seed <= 50; seed++) {
            const a = analyseText(wholeRig(seed).text);
            for (const p of allPlots) {
                const f = figureOf(p, a);
                if (typeof f === 'string') continue;
                try {
                    fitToPrint(pictureOf(p, f, printed).text);
                } catch (e) {
                    throw new Error(`seed ${seed} ${p.name}: ${(e as Error).message}`);
                }
            }
        }
    }, 60_000);
    it('of rigs with mistakes are drawn as far as they are known', () => {
        for (const file of readdirSync(path.join(folder, 'mistakes'))) {
            const a = read(`mistakes/${file}`);
            for (const p of allPlots) {
                const f = figureOf(p, a);
                if (typeof f === 'string') continue;
                try {
                    fitToPrint(pictureOf(p, f, printed).text);
                } catch (e) {
                    throw new Error(`${file} ${p.name}: ${(e as Error).message}`);
                }
            }
        }
    }, 60_000);
    it('of a stack with four hundred cells stay readable', () => {
        const a = analyseText('rig "Long", idea\nsupply { sort: bench voltage: 900 V current-limit: 12 A }\nlye { solute: KOH strength: 25 wt% }\nstack { cells: 400 wetted: 80 x 120 mm }');
        for (const p of allPlots) {
            const f = figureOf(p, a);
            if (typeof f !== 'string') fitToPrint(pictureOf(p, f, printed).text);
        }
        expect(column(figure('cells', a), 0).length).toBe(401);
    });
    const hostile = ['"><script>alert(1)</script>', '&amp;&lt;', '\u0000\u001b[31m', '=HYPERLINK("x")', 'א'.repeat(80), 'W'.repeat(300), '\u{1f525}'.repeat(60)];
    it('hold whatever a rig calls its parts', () => {
        for (const name of hostile) {
            const f = figure('polarisation', potterWith(name));
            const shape = f.shape as Curves;
            const foul: Figure = {
                ...f, says: `${f.says} ${name}`, notes: [name],
                shape: { ...shape, uprights: [{ label: name, x: 3 }], happenings: [{ x: 2, when: '08:00:00', text: name, grave: true }], panes: shape.panes.map(p => ({ ...p, lines: p.lines.map(l => ({ ...l, label: name })), levels: [{ label: name, y: 20 }], points: [{ ...p.points![0], label: name }] })) },
            };
            fitToPrint(pictureOf(named('polarisation'), foul, printed, 'p').text);
            const bars = figure('roots', potterWith(name));
            const barShape = bars.shape as Bars;
            fitToPrint(pictureOf(named('roots'), { ...bars, shape: { ...barShape, bars: barShape.bars.map(b => ({ ...b, name, note: name, told: name })) } }, printed, 'p').text);
            const ladder = figure('heads', potterWith(name));
            const rungs = (ladder.shape as Ladder).rungs.map(r => ({ ...r, part: name, says: name }));
            fitToPrint(pictureOf(named('heads'), { ...ladder, shape: { ...(ladder.shape as Ladder), rungs } }, printed, 'p').text);
        }
    });
    function potterWith(title: string): Analysis {
        return title === hostile[0] ? read('potters-burner.rig') : analysed.get('potters-burner.rig')!;
    }
    it('the table as HTML is the same rows, escaped', () => {
        const html = tableMarkup({ columns: [{ name: '<b>', unit: 'V' }], rows: [['a & b'], [1.23456], [undefined]] }, 'x').text;
        expect(html).toBe('<table><caption>x</caption><thead><tr><th scope="col">&#60;b&#62;, V</th></tr></thead><tbody><tr><td>a &#38; b</td></tr><tr><td class="number">1.235</td></tr><tr><td></td></tr></tbody></table>');
    });
    it('CSV: numbers bare, texts quoted where they must be, no formula', () => {
        const csv = tableCsv({ columns: [{ name: '=1+1', unit: '' }, { name: 'volts', unit: 'V' }], rows: [['@x', -2.5], ['a "b", c', undefined], ['\t=cmd', 1e-7], ['line\nbreak', 3]] });
        expect(csv).toBe('"\'=1+1",volts (V)\r\n"\'@x",-2.5\r\n"a ""b"", c",\r\n"\'\t=cmd",1e-7\r\n"line\nbreak",3\r\n');
    });
});

/** The stack in section: the right pieces in the right order, the right gas at the right pole, drawn to the scale that is stated. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { Analyst, analyseText } from '../../language/index.js';
import { dark, printed, sharp } from '../../language/seeing/palette.js';
import { sectionOf, type Section } from '../../language/seeing/section/layers.js';
import { sectionPicture, stepsTable } from '../../language/seeing/section/section.js';
import { wholeRig } from '../rules/whole-rigs.js';
import { fitToPrint, textsOf } from './look.js';

const folder = path.resolve(import.meta.dirname, '../../examples');
const read = (file: string) => new Analyst(f => {
    try {
        return readFileSync(f, 'utf8');
    } catch {
        return undefined;
    }
}).analyse(path.join(folder, file));
function section(stack: string, more = 'separator { material: composite   thickness: 0.5 mm }'): Section {
    const found = sectionOf(analyseText(`rig "S", idea\nlye { solute: KOH   strength: 25 wt% }\n${more}\nstack { ${stack} }`));
    if (typeof found === 'string') throw new Error(found);
    return found;
}
const usual = 'wetted: 80 x 100 mm   plate: nickel, 100 x 130 x 1 mm   gap: 2 mm each side   end-board: PP, 20 mm, span 90 mm   gasket: EPDM, 3 mm to 2.4 mm   frame-key: notch';
const row = (s: Section) => s.layers.map(l => (l.sort === 'gap' ? l.gas![0] : l.sort === 'plate' ? (l.pole === 'plus' ? '+' : l.pole === 'minus' ? '-' : '|') : l.sort === 'sheet' ? '/' : '#')).join('');
const count = (s: Section, what: string) => s.pieces.find(p => p.what === what)?.many;

describe('layers', () => {
    it('oxygen is made at plus, hydrogen at minus, whichever end is plus', () => {
        expect(row(section(`cells: 2   plus-end: left   ${usual}`))).toBe('#+o/h|o/h-#');
        expect(row(section(`cells: 2   plus-end: right   ${usual}`))).toBe('#-h/o|h/o+#');
        expect(row(section(`cells: 1   separator: none   ${usual}`, ''))).toBe('#+oh-#');
    });
    it('two groups share the plate in the middle where it is fed', () => {
        expect(row(section(`groups: 2   cells: 2 per group   feed: middle   plus-end: middle   ${usual}`))).toBe('#-h/o|h/o+o/h|o/h-#');
        expect(sectionOf(analyseText(`rig "S", idea\nstack { groups: 3   cells: 2 per group   feed: middle   ${usual} }`))).toContain('groups: 2');
    });
    it('are as thick as the text says', () => {
        const s = section(`cells: 3   ${usual}`);
        const thick = (sort: string) => s.layers.find(l => l.sort === sort)!.thickness;
        expect([thick('board'), thick('plate'), thick('gap'), thick('sheet')].map(t => Number((1000 * t).toFixed(6)))).toEqual([20, 1, 2, 0.5]);
        expect(s.plateHeight).toBeCloseTo(0.13, 9);
        expect(s.windowHeight).toBeCloseTo(0.1, 9);
    });
    it('tells a text that leads a gas into the channel of the other', () => {
        expect(section(`cells: 2   plus-end: left   hydrogen-half: left   ${usual}`).warnings[0]).toContain('each gas would go into the channel of the other');
        expect(section(`cells: 2   plus-end: left   hydrogen-half: right   ${usual}`).warnings).toEqual([]);
    });
    it('tells that gases mix without a separator', () => {
        const s = section(`cells: 2   separator: none   ${usual}`);
        expect(s.warnings[0]).toContain('can burn');
        fitToPrint(sectionPicture(s, printed).text);
        expect(sectionPicture(s, printed).text).toContain('no separator: the gases mix');
    });
    it('says what is drawn instead of what is not told', () => {
        expect(section('cells: 2   wetted: 80 x 100 mm').notes.join(' ')).toContain('size of a plate is not told');
        expect(section(`cells: 2   ${usual}`, '').notes.join(' ')).toContain('No separator is described');
        expect(section('cells: 2   wetted: 80 x 100 mm').notes.join(' ')).toContain('The gap is assumed: 2.5 mm');
    });
    it('says why there is none', () => {
        const why = (text: string) => sectionOf(analyseText(`rig "S", idea\n${text}`));
        expect(why('')).toBe('No stack is described.');
        expect(why('stack { cells: 3 }')).toContain('wetted');
        expect(why('stack { wetted: 80 x 100 mm }')).toContain('cells');
        expect(why('stack { cells: 3   wetted: 80 x 100 mm   layout: monopolar }')).toContain('monopolar');
    });
});

describe('stacking order', () => {
    it('counts the pieces', () => {
        const s = section(`cells: 12   ${usual}`);
        expect([count(s, 'plate'), count(s, 'gasket or frame'), count(s, 'separator'), count(s, 'end board')]).toEqual([13, 24, 12, 2]);
        const two = section(`groups: 2   cells: 8 per group   feed: middle   ${usual}`);
        expect([count(two, 'plate'), count(two, 'separator'), count(two, 'end board')]).toEqual([17, 16, 2]);
        const apart = section(`groups: 2   cells: 8 per group   ${usual}`);
        expect([count(apart, 'plate'), count(apart, 'end board')]).toEqual([18, 4]);
    });
    it('lays each cell from plus: oxygen side, separator, hydrogen side, plate', () => {
        const s = section(`cells: 3   plus-end: left   ${usual}`);
        expect(s.steps.map(t => t.what)).toEqual(['end board', 'end plate, plus', 'gasket or frame, oxygen side', 'separator', 'gasket or frame, hydrogen side', 'plate; last of all end plate, minus', 'end board', 'tie rods']);
        expect(s.steps[2].up).toBe('its port into the oxygen channel; its notch shows which way');
        expect(s.steps[5].up).toContain('below it makes hydrogen, above it oxygen');
        expect(stepsTable(s).rows[2]).toEqual([3, 'gasket or frame, oxygen side', '1 for each of 3 cells', s.steps[2].up]);
    });
    it('and from minus the other way round', () => {
        const s = section(`cells: 3   plus-end: right   ${usual}`);
        expect(s.steps[1].what).toBe('end plate, minus');
        expect(s.steps[2].what).toBe('gasket or frame, hydrogen side');
        expect(s.steps[5].up).toContain('below it makes oxygen, above it hydrogen');
    });
    it('warns where nothing keeps a frame from being turned', () => {
        expect(section('cells: 3   wetted: 80 x 100 mm   frame-key: none').steps[2].up).toContain('nothing keeps it from being turned');
        expect(section('cells: 3   wetted: 80 x 100 mm').steps[2].up).toContain('no key is told');
    });
});

describe('picture', () => {
    it('is at the scale that its bars state', () => {
        const s = section(`cells: 2   ${usual}`);
        const svg = sectionPicture(s, printed).text;
        const bars = [...svg.matchAll(/<path d="M([\d.]+) [\d.]+L[\d.]+ [\d.]+M?[^"]*?L?([\d.]+) [\d.]+"[^>]*\/>\s*<text [^>]*>([\d.]+) mm (along|of)/g)].map(m => ({ px: Number(m[2]) - Number(m[1]), mm: Number(m[3]) }));
        expect(bars.length).toBe(2);
        const perMm = bars.map(b => b.px / b.mm);
        // The plates of 1 mm and 130 mm are the dark boxes.
        const plates = [...svg.matchAll(/<rect x="[\d.]+" y="[\d.]+" width="([\d.]+)" height="([\d.]+)" fill="#1d2733"\/>/g)].map(m => [Number(m[1]), Number(m[2])]);
        expect(plates.length).toBe(3);
        for (const [wide, high] of plates) {
            expect(wide / perMm[0]).toBeCloseTo(1, 1);
            expect(high / perMm[1] / 130).toBeCloseTo(1, 1);
        }
    });
    it('folds many cells and says how many', () => {
        const svg = sectionPicture(section(`cells: 120   ${usual}`), printed).text;
        expect(textsOf(svg).map(t => t.text)).toContain('116');
        fitToPrint(svg);
    });
    it('says that a thin sheet is drawn thicker', () => {
        expect(sectionPicture(section(`cells: 60   ${usual}`, 'separator { material: composite   thickness: 0.02 mm }'), printed).text).toContain('separators');
        expect(sectionPicture(section(`cells: 60   ${usual}`, 'separator { material: composite   thickness: 0.02 mm }'), printed).text).toContain('Drawn thicker');
        expect(sectionPicture(section(`cells: 60   ${usual}`), printed).text).not.toContain('Drawn thicker');
    });
    it('of all examples, mistakes and fifty drawn rigs can be read', () => {
        let drawn = 0;
        const see = (name: string, s: Section | string) => {
            if (typeof s === 'string') {
                expect(s, name).toMatch(/\.$/);
                return;
            }
            drawn++;
            for (const palette of [printed, dark, sharp]) {
                try {
                    fitToPrint(sectionPicture(s, palette).text);
                } catch (e) {
                    throw new Error(`${name}: ${(e as Error).message}`);
                }
            }
        };
        for (const file of readdirSync(folder).filter(f => f.endsWith('.rig'))) see(file, sectionOf(read(file)));
        for (const file of readdirSync(path.join(folder, 'mistakes'))) see(file, sectionOf(read(`mistakes/${file}`)));
        for (let seed = 1; seed <= 50; seed++) see(`seed ${seed}`, sectionOf(analyseText(wholeRig(seed).text)));
        expect(drawn).toBeGreaterThan(60);
    }, 60_000);
    it('holds whatever a rig says of its materials', () => {
        const s = section(`cells: 3   ${usual}`);
        for (const name of ['"><script>', '&lt;', 'W'.repeat(200), '\u0007']) {
            fitToPrint(sectionPicture({ ...s, stack: name, pieces: s.pieces.map(p => ({ ...p, size: name })), steps: s.steps.map(t => ({ ...t, what: name, up: name })), warnings: [name, name], notes: [name] }, printed).text);
        }
    });
});

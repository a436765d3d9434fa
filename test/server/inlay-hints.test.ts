import { describe, expect, it } from 'vitest';
import type { MarkupContent } from 'vscode-languageserver';
import { hintsIn } from '../../server/editor/features/inlay-hints.js';
import { open } from './marked.js';

const rig = `rig "A", idea
supply { sort: bench   voltage: 24 V   current-limit: 10 A }
lye { solute: KOH   strength: 25 wt% }
stack {
  cells: 10   # as many as fit
  wetted: 80 x 100 mm
}
bubbler h2-bubbler
path hydrogen: stack -> h2-bubbler -> outdoors
let spare = 2 * supply.voltage
let plain = 3 bar
`;
describe('inlay hints', () => {
    const o = open(rig);
    const hints = hintsIn(o.house, o.uri);
    const at = (line: number) => hints.filter(h => h.position.line === line);

    it('stand at the line end, behind a comment, one a line', () => {
        expect(at(4)).toHaveLength(1);
        expect(at(4)[0].position.character).toBe('  cells: 10   # as many as fit'.length);
        expect(new Set(hints.map(h => h.position.line)).size).toBe(hints.length);
    });
    it('bear a mark of our own and join several numbers', () => {
        expect(at(4)[0].label).toMatch(/^≈ [12]\.\d+ V ± [\d.]+ · stack [\d.]+ V/);
        expect(at(5)[0].label).toMatch(/^≈ [\d.]+ A · [\d.]+ mA\/cm2$/);
    });
    it('of a block on one line let each property speak in turn, then the gas', () => {
        const one = open(rig.replace(/stack \{[^}]*\}/, 'stack { cells: 10   wetted: 80 x 100 mm }'));
        expect(hintsIn(one.house, one.uri)[2].label).toMatch(/^≈ [12](?:\.\d+)? V ± [\d.]+ · [\d.]+ A · hydrogen [\d.]+ NL\/h(?: ± [\d.]+)? · /);
    });
    it('of a whole stack are its gas, its heat and what stands across the separators; the head is not shown where a path leads to nobody', () => {
        const whole = (to: string) => {
            const one = open(`${rig.replace('-> outdoors', '-> vent')}vent\nbubbler o2-bubbler\npath oxygen: stack -> ${to}\n`.replace('\nvent\n', '\nvent roof\n').replace('-> vent', '-> roof'));
            return String(hintsIn(one.house, one.uri).find(h => h.position.line === 3)!.label);
        };
        expect(whole('o2-bubbler -> outdoors')).toMatch(/^≈ hydrogen .* · oxygen .* · [\d.]+ °C.* · across separators /);
        expect(whole('o2-bubbler -> nobody')).not.toContain('across separators');
    });
    it('behind a long line say less, never nothing', () => {
        const behind = (blanks: number) => {
            const one = open(rig.replace(/stack \{[^}]*\}/, `stack { cells: 10${' '.repeat(blanks)}wetted: 80 x 100 mm }`));
            return String(hintsIn(one.house, one.uri)[2].label).split(' · ').length;
        };
        expect([3, 60, 90].map(behind)).toEqual([4, 2, 1]);
    });
    it('show their working when pointed at', () => {
        expect((at(4)[0].tooltip as MarkupContent).value).toContain('*How:*');
        const lazy = hintsIn(o.house, o.uri, 0, Infinity, true);
        expect(lazy.map(h => h.tooltip)).toEqual(lazy.map(() => undefined));
        expect(lazy.find(h => h.position.line === 4)!.data).toEqual({ uri: o.uri, names: ['stack.volts-per-cell', 'stack.voltage'] });
    });
    it('tell what a named value comes to, where it is worked out', () => {
        expect(at(9)[0].label).toBe('≈ 48 V');
        expect(at(10)).toEqual([]);
    });
    it('are those of the lines that are asked for', () => {
        expect(hintsIn(o.house, o.uri, 4, 4)).toHaveLength(1);
    });
    it('do not list what is assumed, and say nothing where nothing is known', () => {
        expect(hints.map(h => h.label).join()).not.toContain('assumed');
        const bare = open('rig "A", idea\nstack { wetted: 80 x 100 mm }\n');
        expect(hintsIn(bare.house, bare.uri).filter(h => /unknown|NaN| [AV]\b/.test(String(h.label)))).toEqual([]);
    });
    it('are not shown in a library', () => {
        const shelf = open('library "S"\nstack { cells: 10   wetted: 80 x 100 mm }\nsupply { voltage: 24 V }\n');
        expect(hintsIn(shelf.house, shelf.uri)).toEqual([]);
    });
});

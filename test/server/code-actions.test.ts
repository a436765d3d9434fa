import { describe, expect, it } from 'vitest';
import { actionsAt } from '../../server/editor/features/code-actions.js';
import type { Finding } from '../../language/index.js';
import { applyTo, main, open } from './marked.js';

function actions(source: string, { only, ...more }: Parameters<typeof open>[1] & { only?: string[] } = {}) {
    const o = open(source, more);
    const range = o.ranges[0] ?? { start: o.at, end: o.at };
    const list = actionsAt(o.house, o.uri, range, only);
    const take = (title: string | RegExp) => {
        const found = list.find(a => (typeof title === 'string' ? a.title === title : title.test(a.title)));
        if (!found) throw new Error(`${title} is not among: ${list.map(a => a.title).join(' | ')}`);
        return found;
    };
    return { ...o, list, titles: list.map(a => a.title), take, after: (title: string | RegExp) => applyTo(o.text, take(title).edit) };
}
const rig = 'rig "A", idea\nsupply { sort: bench   voltage: 24 V   current-limit: 10 A }\nstack { cells: 10   wetted: 80 x 100 mm }\n';

describe('quick fixes', () => {
    it('mend a finding, say what they do, and name the finding that they are for', () => {
        const a = actions(`${rig}lye { solute: KOH   stre<|>nght: 25 wt% }`);
        const fix = a.take('Write strength');
        expect(a.after('Write strength')).toContain('strength: 25 wt%');
        expect(fix.diagnostics?.[0].code).toBe('unknown-word');
        expect(fix.kind).toBe('quickfix');
        expect(fix.isPreferred).toBe(true);
    });
    it('lead to the page of the rule, in our own extension only', () => {
        expect(actions(`${rig}lye { stre<|>nght: 25 wt% }`).take('Explain unknown-word').command).toMatchObject({ command: 'rigwright.explain', arguments: ['unknown-word'] });
        expect(actions(`${rig}lye { stre<|>nght: 25 wt% }`, { own: false }).titles).not.toContain('Explain unknown-word');
    });
    it('say what else they would raise, and are not offered where that is an error', () => {
        const o = open(`${rig}bag { volume: 80 L }\n`);
        const analysis = o.house.analysis(main)!;
        const span = { file: main, start: o.text.indexOf('bag'), end: o.text.indexOf('bag') + 3 };
        const replace = (what: string, by: string) => ({ title: `Put ${by}`, edits: [{ span: { file: main, start: o.text.indexOf(what), end: o.text.indexOf(what) + what.length }, text: by }] });
        const finding = (fixes: Finding['fixes']): Finding => ({ rule: 'name-taken', severity: 'warning', message: 'for the test', why: '', source: '', span, related: [], fixes, rests: [], guardsLife: false });
        (analysis.findings as Finding[]).push(finding([replace('80 L', '80 furlongs'), replace('80 x 100 mm', '40 x 50 mm'), replace('80 L', '90 L')]));
        const titles = actionsAt(o.house, main, o.house.linesOf(main).range(span)).map(a => a.title);
        expect(titles).not.toContain('Put 80 furlongs');
        expect(titles).toContain('Put 90 L');
        // 10 A through 20 cm2: far more than plates with a gap bear.
        expect(titles.find(t => t.startsWith('Put 40 x 50 mm'))).toMatch(/\(then it tells .*current-density-too-high.*\)$/);
    });
    it('offer an assumed value that a finding rests on, to be corrected', () => {
        const o = open(`${rig}bubbler b { }\n`);
        const analysis = o.house.analysis(main)!;
        (analysis.findings as Finding[]).push({ rule: 'name-taken', severity: 'warning', message: 'for the test', why: '', source: '', span: { file: main, start: 0, end: 3 }, related: [], fixes: [], rests: ['stack.gap'], guardsLife: false });
        const found = actionsAt(o.house, main, { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }).find(a => a.title.startsWith('Write the assumed stack.gap: '));
        expect(applyTo(o.text, found?.edit)).toMatch(/stack \{ cells: 10 {3}wetted: 80 x 100 mm {3}gap: [\d.]+ mm \}/);
    });
});

describe('fix all', () => {
    it('applies only what keeps the meaning, none overlapping', () => {
        const a = actions(`${rig}<|>`, { only: ['source.fixAll'] });
        expect(a.titles).toEqual([]);
        const o = open(`${rig}`);
        const analysis = o.house.analysis(main)!;
        const edit = (what: string, by: string, keepsMeaning: boolean): Finding => {
            const start = o.text.indexOf(what);
            const span = { file: main, start, end: start + what.length };
            return { rule: 'decimal-comma', severity: 'warning', message: `${what} ${by}`, why: '', source: '', span, related: [], fixes: [{ title: by, edits: [{ span, text: by }], keepsMeaning }], rests: [], guardsLife: false };
        };
        (analysis.findings as Finding[]).push(edit('24 V', '24.0 V', true), edit('voltage: 24 V', 'voltage: 1 V', true), edit('10 A', '12 A', false), edit('100 mm', '10 cm', true));
        const [all] = actionsAt(o.house, main, { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, ['source.fixAll.rigwright']);
        expect(applyTo(o.text, all.edit)).toBe(rig.replace('24 V', '24.0 V').replace('100 mm', '10 cm'));
    });
    it('is not offered among the ordinary actions', () => {
        expect(actions(`${rig}lye { stre<|>nght: 25 wt% }`).list.map(a => a.kind)).not.toContain('source.fixAll.rigwright');
    });
});

describe('another unit', () => {
    const written = (line: string) => actions(`${rig}${line}`, { only: ['refactor'] }).titles.filter(t => t.startsWith('Write it as ')).map(t => t.slice('Write it as '.length));
    it('in place, with the same value', () => {
        expect(written('separator { bubble-pressure: 150 k<|>Pa }')).toEqual(expect.arrayContaining(['1.5 bar', '1500 mbar']));
        expect(written('site { coldest: <|>5 °C }')).toEqual(['278.15 K', '41 °F']);
        expect(written('lye { strength: 25 w<|>t% }')).toEqual(['25 %', '250000 ppm']);
    });
    it('a size and a range as a whole, since its bare numbers take the unit behind them', () => {
        expect(written('stack { plate: nickel, 130 x 1<|>50 x 1 mm }')).toContain('13 x 15 x 0.1 cm');
        expect(written('gauge g { range: 2..1<|>6 bar }')).toContain('200..1600 kPa');
    });
    it('a tolerance as a difference', () => {
        expect(written('trip t { senses: stack.temperature   trips: above 60 °C ± 2 °<|>C }')).toEqual(['2 K', '3.6 °F']);
        expect(written('trip t { senses: stack.temperature   trips: above 60 °<|>C ± 2 }')).toEqual([]);
    });
    it('is not offered where the basis or the currency would be lost', () => {
        expect(written('cylinder { rating: 20 b<|>ar abs }')).toEqual([]);
        expect(written('budget { tariff: 0.3 EUR/k<|>Wh }')).toEqual([]);
        expect(written('leads { section: AWG <|>10 }')).toEqual([]);
    });
    it('changes no number of the rig', () => {
        const source = `${rig}lye { strength: 25 wt% }\nsite { coldest: <|>5 °C }`;
        const a = actions(source, { only: ['refactor'] });
        const before = a.house.analysis(main)!;
        const number = () => a.house.analysis(main)!.workings.number(a.house.analysis(main)!.rig.parts.get('site')!, 'coldest', false);
        const was = number();
        a.house.change(main, 2, [{ text: a.after('Write it as 41 °F') }]);
        expect(a.house.analysis(main)).not.toBe(before);
        expect(number()).toBeCloseTo(was, 6);
    });
});

describe('a name for a value', () => {
    it('is put below the title, and named after where it was found', () => {
        expect(actions(`${rig}bag { volume: 80<|> L }`).after('Give this value a name: bag-volume')).toBe(rig.replace('idea\n', 'idea\n\nlet bag-volume = 80 L\n\n') + 'bag { volume: bag-volume }');
    });
    it('joins other named values, and keeps a note with its part', () => {
        const source = 'rig "A", idea\n\nlet spare = 1 bar\n\n## The store.\nbag { volume: 8<|>0 L }\n';
        expect(actions(source).after('Give this value a name: bag-volume')).toBe('rig "A", idea\n\nlet spare = 1 bar\nlet bag-volume = 80 L\n\n## The store.\nbag { volume: bag-volume }\n');
    });
    it('leaves every number as it was', () => {
        const a = actions(`${rig.replace('24 V', '2<|>4 V')}`);
        const voltage = () => a.house.analysis(main)!.workings.quantity(a.house.analysis(main)!.rig.parts.get('stack')!, 'volts-per-cell')!.value;
        const was = voltage();
        expect(was).toBeGreaterThan(1.4);
        a.house.change(main, 2, [{ text: a.after(/^Give this value a name/) }]);
        expect(voltage()).toBeCloseTo(was, 9);
    });
});

describe('what is assumed', () => {
    it('of a part goes into its block, with the reason where there is room', () => {
        const one = actions(`${rig}ly<|>e { solute: KOH }`).after('Write what is assumed of lye into the text');
        expect(one).toMatch(/lye \{ solute: KOH {3}strength: \d+ wt% {3}/);
        const many = actions(`${rig}ly<|>e {\n  solute: KOH   # ours\n}`).after('Write what is assumed of lye into the text');
        expect(many).toMatch(/\n {2}solute: KOH {3}# ours\n {2}strength: +\d+ wt% {3}# assumed: .+\n/);
        expect(many.endsWith('\n}')).toBe(true);
        const bare = actions(`${rig}bubb<|>ler b`).after('Write what is assumed of b into the text');
        expect(bare).toMatch(/\nbubbler b \{ \w.*: .* \}$/);
    });
    it('written into the text changes no number and raises nothing', () => {
        const a = actions(`${rig}ly<|>e {\n  solute: KOH }\n`);
        const state = () => {
            const { workings, findings, rig: r } = a.house.analysis(main)!;
            return [findings.filter(f => f.severity !== 'hint').map(f => f.message), workings.quantity(r.parts.get('stack')!, 'volts-per-cell')!.value.toPrecision(8)];
        };
        const was = state();
        a.house.change(main, 2, [{ text: a.after('Write what is assumed of lye into the text') }]);
        expect(state()).toEqual(was);
    });
});

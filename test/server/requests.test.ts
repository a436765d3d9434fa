/** What our own extension asks beyond the protocol, without a connection. */
import { describe, expect, it } from 'vitest';
import { writeAll } from '../../server/editor/assumptions.js';
import { toDiagnostic, toWorkspaceEdit } from '../../server/editor/convert.js';
import { checkFolder } from '../../server/editor/features/check-folder-request.js';
import { explainAt } from '../../server/editor/features/explain-request.js';
import { assumptionRows } from '../../language/reference/quantities.js';
import { applyTo, everything, main, open } from './marked.js';

const rig = 'rig "A", idea\nsupply { sort: bench   voltage: 24 V   current-limit: 10 A }\nstack { cells: 10   wetted: 80 x 100 mm }\nbubbler b\npath hydrogen: stack -> b -> outdoors\n';

describe('explain', () => {
    const explained = (source: string) => {
        const o = open(source);
        return explainAt(o.house, o.uri, o.at)?.title;
    };
    it('a finding, a property, a kind by the name of a part, a quantity, a unit, a line word', () => {
        expect(explained(`${rig}lye { stre<|>nght: 25 wt% }`)).toBe('unknown-word');
        expect(explained(rig.replace('current-limit', 'current-<|>limit'))).toBe('supply.current-limit');
        expect(explained(rig.replace('-> b ->', '-> <|>b ->'))).toBe('bubbler');
        expect(explained(`${rig}expect stack.hydrogen-<|>rate > 1 NL/h`)).toBe('stack.hydrogen-rate');
        expect(explained(rig.replace('100 mm', '100 m<|>m'))).toBe('mm');
        expect(explained(rig.replace('path', 'pa<|>th'))).toBe('path');
    });
    it('nothing in a comment', () => {
        expect(explained('# sta<|>ck')).toBeUndefined();
    });
});

describe('assumptions', () => {
    it('written into the text, nothing that can be said is assumed, and no number has moved', () => {
        const o = open(rig);
        const analysis = o.house.analysis(main)!;
        const own = (a: typeof analysis) => assumptionRows(a.workings).filter(r => !a.rig.parts.get(r.name.split('.')[0])!.implied);
        const number = (a: typeof analysis) => a.workings.quantity(a.rig.parts.get('stack')!, 'volts-per-cell')!.value.toPrecision(8);
        expect(own(analysis).length).toBeGreaterThan(3);
        const text = applyTo(rig, toWorkspaceEdit(writeAll(analysis)!, o.house));
        o.house.change(main, 2, [{ text }]);
        const after = o.house.analysis(main)!;
        expect(own(after)).toEqual([]);
        expect(number(after)).toBe(number(analysis));
        expect(after.findings.filter(f => f.severity === 'error').map(f => f.message)).toEqual(analysis.findings.filter(f => f.severity === 'error').map(f => f.message));
        expect(writeAll(after)).toBeUndefined();
    });
});

describe('check a folder', () => {
    it('counts each finding once, and judges pages and libraries where they are used', () => {
        const o = open('rig "open", idea\n');
        const files = [
            { uri: 'file:///f/a.rig', text: `${rig}use "shelf.rig"\nuse "page.rig"\nlye { stenght: 1 wt% }\n` }, { uri: 'file:///f/b.rig', text: 'rig "B", idea\nuse "shelf.rig"\n' },
            { uri: 'file:///f/page.rig', text: 'bag { voluem: 80 L }\n' }, { uri: 'file:///f/shelf.rig', text: 'library "S"\nbag shelf-bag { volum: 80 L }\n' }, { uri: 'file:///f/lonely.rig', text: 'library "L"\nbag x { colour: red }\n' },
        ];
        const summary = checkFolder(o.house, files, '2026-01-01');
        expect(summary.files).toBe(5);
        expect([...o.house.watched].sort()).toEqual(['file:///f/a.rig', 'file:///f/b.rig', 'file:///f/lonely.rig']);
        const errors = new Set([...o.house.watched].flatMap(r => o.house.analysis(r)!.findings.filter(f => f.severity === 'error').map(f => `${f.span.file} ${f.span.start} ${f.rule} ${f.message}`)));
        expect(summary.errors).toBe(errors.size);
        expect([...errors].filter(e => e.includes('unknown-word')).length).toBe(4);
        expect(o.house.today).toBe('2026-01-01');
    });
});

describe('findings for the client', () => {
    const o = open(`${rig}bag { volume: 80 L   volume: 90 L }\n`);
    const finding = o.house.findingsIn(main).find(f => f.rule === 'given-twice')!;
    it('carry rule, page, severity and the other place', () => {
        expect(toDiagnostic(finding, o.house)).toMatchObject({ code: 'given-twice', source: 'rigwright', codeDescription: { href: 'rigwright-page:/rule/given-twice' }, relatedInformation: [{ message: 'first given here' }] });
    });
    it('keep to what the client announced', () => {
        const plain = open(`${rig}bag { volume: 80 L   volume: 90 L }\n`, { own: false, client: { ...everything, textDocument: { publishDiagnostics: {} } } });
        const d = toDiagnostic(plain.house.findingsIn(main).find(f => f.rule === 'given-twice')!, plain.house);
        expect(d.relatedInformation).toBeUndefined();
        expect(d.codeDescription).toBeUndefined();
        expect(d.message).toContain('given twice');
    });
});

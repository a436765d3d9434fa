// The walkthrough shows numbers and messages; they are those of the real thing.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { writeAll } from '../../server/editor/assumptions.js';
import { toWorkspaceEdit } from '../../server/editor/convert.js';
import { hintsIn } from '../../server/editor/features/inlay-hints.js';
import { applyTo, open } from '../server/marked.js';

const page = (name: string) => readFileSync(new URL(`../../extension/media/walkthrough/${name}.md`, import.meta.url), 'utf8');
const rig = /```rig\n([\s\S]*?)```/.exec(page('1-start'))![1];

/** Each number shown in a page's block stands at the end of the same line of the rig. */
function shownAsWorkedOut(markdown: string, text: string): void {
    const { house, uri } = open(text);
    const hints = hintsIn(house, uri);
    const lines = text.split('\n');
    const shown = [...markdown.matchAll(/^(.*\S)\s+≈ (.+)$/gm)];
    expect(shown.length).toBeGreaterThan(1);
    for (const [, code, numbers] of shown) {
        const at = lines.findIndex(line => line.replace(/:\s+/, ': ') === code);
        expect(at, code).toBeGreaterThanOrEqual(0);
        const hint = String(hints.find(one => one.position.line === at)?.label).replace(/^≈ /, '').split(' · ');
        for (const number of numbers.split(' · ')) expect(hint).toContain(number);
    }
}

describe('the walkthrough', () => {
    it('starts from a rig without a mistake', () => {
        const { house, uri } = open(rig);
        expect(house.analysis(uri)!.findings.filter(finding => finding.severity !== 'hint')).toEqual([]);
    });

    it('shows the numbers of that rig, in the block and in the sentences', () => {
        const markdown = page('2-numbers');
        shownAsWorkedOut(markdown, rig);
        const words = markdown.slice(markdown.lastIndexOf('```'));
        for (const [, number] of markdown.matchAll(/≈ (?:hydrogen |works at )?([\d.]+ (?:V|A|NL\/h))(?: ±.*)?$/gm)) expect(words).toContain(number.replace(' NL/h', ' litres'));
    });

    it('shows what nine cells are told, and the remedy', () => {
        const markdown = page('3-findings');
        const nine = rig.replace(/(cells:\s+)7/, '$19');
        shownAsWorkedOut(markdown, nine);
        const { house, uri } = open(nine);
        const finding = house.analysis(uri)!.findings.find(one => markdown.includes(`\`${one.rule}\``));
        expect(/^> (.*)$/m.exec(markdown)![1]).toBe(finding!.message);
        expect(finding!.fixes!.map(fix => fix.title)).toContain(/bulb offers a remedy: \*\*(.*?)\*\*/.exec(markdown)![1]);
    });

    it('shows assumptions as they are written into the text', () => {
        const { house, uri, text } = open(rig);
        const written = applyTo(text, toWorkspaceEdit(writeAll(house.analysis(uri)!)!, house), uri).split('\n').map(line => line.replace(/\s+/g, ' '));
        const shown = [...page('4-assumptions').matchAll(/^ {2}\w.*# assumed: .*$/gm)];
        expect(shown.length).toBeGreaterThan(1);
        for (const [line] of shown) expect(written).toContain(line.replace(/\s+/g, ' '));
    });
});

// The colours that hold before the server is up.
import { describe, expect, it } from 'vitest';
import { lineWords } from '../../language/grammar/scanner.js';
import { unitSpellings } from '../../language/units/unit.js';
import { joiningWords } from '../../language/values/parse-value.js';
import { tokenise } from './tokenise.js';

/** The scope of each of these words on the line, without the language's name at the end. */
function scopes(line: string, ...words: string[]): string[] {
    const found = tokenise(line);
    return words.map(word => found.find(({ text }) => text === word)?.scope.replace(/\.rig$/, '') ?? 'none');
}

describe('the TextMate grammar', () => {
    it('tells notes, comments and headings from text', () => {
        expect(scopes('## Not counted until it has settled.', '## Not counted until it has settled.')).toEqual(['comment.line.documentation']);
        expect(scopes('# ---- control ----', '# ---- control ----')).toEqual(['comment.line.number-sign']);
        expect(scopes('  level: 230 mm  # above the foot', 'level', '230', 'mm', '# above the foot'))
            .toEqual(['variable.other.property', 'constant.numeric', 'keyword.other.unit', 'comment.line.number-sign']);
    });

    it('leaves a # between quotes alone', () => {
        expect(scopes('  label: "H2 #1"', '"H2 #1"')).toEqual(['string.quoted.double']);
    });

    it('lets a quote that is not closed end with its line', () => {
        expect(scopes('rig "Two cells', 'rig', '"Two cells')).toEqual(['keyword.control.title', 'string.quoted.double']);
    });

    it.each(['use "parts.rig"', 'expect stack.voltage < 30 V', 'let spare = 3 L', 'path oxygen: stack -> vent', 'allow too-hot on pump', 'library "Shelf"'])(
        'knows the line word of: %s', line => {
            const word = line.split(' ')[0];
            expect(scopes(line, word)[0]).toMatch(/^keyword\.control/);
        });

    it('reads a line word before a colon as a key', () => {
        expect(scopes('  path: 3 m', 'path')).toEqual(['variable.other.property']);
        expect(scopes('  expect:  yes', 'expect', 'yes')).toEqual(['variable.other.property', 'constant.language']);
    });

    it('reads a line word inside a line as a plain name', () => {
        expect(scopes('  steps: mix, use, drain', 'use')).toEqual(['variable.other']);
    });

    it('colours the header of a block: kind, name, like, base', () => {
        expect(scopes('column o2-column like h2-column {', 'column', 'o2-column', 'like', 'h2-column', '{')).toEqual([
            'entity.name.type.kind', 'variable.other.part', 'keyword.control.like', 'variable.other.part', 'punctuation.section.block.begin']);
        expect(scopes('stack { cells: 13 }', 'stack', 'cells', '13')).toEqual(['entity.name.type.kind', 'variable.other.property', 'constant.numeric']);
        expect(scopes('separator like fine-composite { clamped: 8 mm }', 'separator', 'like', 'fine-composite'))
            .toEqual(['entity.name.type.kind', 'keyword.control.like', 'variable.other.part']);
    });

    it('colours a part without a block, but not the last entry of a list', () => {
        expect(scopes('tee h2-tee', 'tee', 'h2-tee')).toEqual(['entity.name.type.kind', 'variable.other.part']);
        expect(scopes('bubbler o2-bubbler like h2-bubbler  # the twin', 'bubbler', 'o2-bubbler', 'h2-bubbler'))
            .toEqual(['entity.name.type.kind', 'variable.other.part', 'variable.other.part']);
        expect(scopes('                    stack-contactor', 'stack-contactor')).toEqual(['variable.other']);
    });

    it('colours a path with its medium and arrows', () => {
        const found = tokenise('path hydrogen: stack -> h2-bubbler -> burner');
        expect(found.filter(({ text }) => text === '->').map(({ scope }) => scope)).toEqual(Array(2).fill('keyword.operator.arrow.rig'));
        expect(scopes('path hydrogen: stack -> h2-bubbler -> burner', 'path', 'hydrogen', 'h2-bubbler'))
            .toEqual(['keyword.control.path', 'variable.other.enummember.medium', 'variable.other']);
    });

    it('takes a dotted key as one', () => {
        expect(scopes('  stack.voltage:    27.2 V ± 0.1 V', 'stack.voltage', '27.2', 'V', '±'))
            .toEqual(['variable.other.property', 'constant.numeric', 'keyword.other.unit', 'keyword.operator']);
    });

    it.each([
        ['25 wt%', '25', 'wt%'], ['-5 °C', '-5', '°C'], ['0.3 ohm·cm2', '0.3', 'ohm·cm2'], ['75 NL/h', '75', 'NL/h'], ['5 %', '5', '%'],
        ['1.2 W/(m2 K)', '1.2', 'W/(m2 K)'], ['1/4 in', '1/4', 'in'], ['16 bar(g)', '16', 'bar(g)'], ['70 µm', '70', 'µm'], ['0.31 EUR/kWh', '0.31', 'EUR/kWh'],
    ])('splits %s into number and unit', (text, number, unit) => {
        expect(scopes(`  size: ${text}`, number, unit)).toEqual(['constant.numeric', 'keyword.other.unit']);
    });

    it('does not take a joining word for a unit', () => {
        expect(scopes('  nozzle: 2 of 6 mm', '2', 'of', '6', 'mm')).toEqual(['constant.numeric', 'keyword.control.word', 'constant.numeric', 'keyword.other.unit']);
        expect(scopes('  plate: nickel, 65 x 95 x 0.5 mm', '65', 'x', '95', '0.5', 'mm'))
            .toEqual(['constant.numeric', 'keyword.operator.size', 'constant.numeric', 'constant.numeric', 'keyword.other.unit']);
        expect(scopes('  size: 6x1 mm', '6', 'x', '1', 'mm')).toEqual(['constant.numeric', 'keyword.operator.size', 'constant.numeric', 'keyword.other.unit']);
    });

    it('knows both ends of a range', () => {
        expect(scopes('  humidity: 40 %..85 %', '40', '..', '85')).toEqual(['constant.numeric', 'keyword.operator', 'constant.numeric']);
        expect(scopes('  reach: 2..16 bar', '2', '..', '16', 'bar')).toEqual(['constant.numeric', 'keyword.operator', 'constant.numeric', 'keyword.other.unit']);
    });

    it('knows dates, clock times and sizes of the trade', () => {
        expect(scopes('  date: 2026-03-05 10:20', '2026-03-05 10:20')).toEqual(['constant.other.date']);
        expect(scopes('  sun: 110 W/m2 at 07:00,', '110', 'W/m2', 'at', '07:00')).toEqual(['constant.numeric', 'keyword.other.unit', 'keyword.control.word', 'constant.other.date']);
        expect(scopes('  tie-rods: 8 of M6, 5 Nm', 'M6', 'Nm')).toEqual(['constant.numeric.size', 'keyword.other.unit']);
        expect(scopes('leads { section: AWG 10 }', 'AWG 10')).toEqual(['constant.numeric.size']);
    });

    it.each(['none', 'unknown', 'yes', 'no'])('knows the fixed word %s, but not inside a name', word => {
        expect(scopes(`  rcd: ${word}`, word)).toEqual(['constant.language']);
        expect(scopes(`  needs: ${word}-flow, run-${word}`, `${word}-flow`, `run-${word}`)).toEqual(['variable.other', 'variable.other']);
    });

    it('splits a reference into part and quantity', () => {
        expect(scopes('expect stack.hydrogen-rate > 75 NL/h', 'stack', 'hydrogen-rate', '>')).toEqual(['variable.other.part', 'variable.other.quantity', 'keyword.operator']);
    });

    it('does not see a number inside a name', () => {
        expect(tokenise('  needs: h2-level-low, k1')).not.toContainEqual(expect.objectContaining({ scope: 'constant.numeric.rig' }));
    });

    it('keeps step with the words and units of the language', () => {
        for (const word of lineWords) expect(scopes(`${word} "a"`, word), word).toEqual([expect.stringMatching(/^keyword\.control/)]);
        for (const word of joiningWords) expect(scopes(`  a: b ${word} c`, word), word).toEqual([expect.stringMatching(/^keyword\.(control|operator)/)]);
        // Spellings of two words, and those that stand before their number, are coloured in part only.
        const whole = unitSpellings().filter(unit => !/\s/.test(unit) && !joiningWords.has(unit));
        const missed = whole.filter(unit => scopes(`  a: 12 ${unit}`, unit)[0] !== 'keyword.other.unit');
        expect(whole.length).toBeGreaterThan(50);
        expect(missed).toEqual([]);
    });
});

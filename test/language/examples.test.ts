/** The rigs under examples/: whole ones are sound, those under mistakes/ each show the rule that they are named after. */
import { readFileSync, readdirSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Analyst } from '../../language/index.js';
import { formatText } from '../../language/rig/format.js';
import { ruleNamed } from '../../language/rules/index.js';

const folder = new URL('../../examples/', import.meta.url);
const read = (name: string) => readFileSync(new URL(name, folder), 'utf8');
const rigs = readdirSync(folder).filter(f => f.endsWith('.rig'));
const mistakes = readdirSync(new URL('mistakes/', folder)).filter(f => f.endsWith('.rig'));
const today = '2026-06-15';
const analyse = (name: string) => new Analyst(file => (rigs.includes(file) || mistakes.some(m => `mistakes/${m}` === file) ? read(file) : undefined)).analyse(name, { today });

describe('whole rigs', () => {
    it.each(rigs)('%s has no error and few hints', name => {
        const { findings } = analyse(name);
        const told = findings.map(f => `${f.severity} ${f.rule}: ${f.message}`);
        expect(told.filter(t => t.startsWith('error'))).toEqual([]);
        expect(findings.filter(f => f.severity === 'warning' && f.rule !== 'error-muted').map(f => f.message)).toEqual([]);
        expect(told.length, told.join('\n')).toBeLessThanOrEqual(6);
    });
    it.each(rigs)('%s is formatted already', name => {
        expect(formatText(read(name))).toBe(read(name));
    });
});
describe('mistakes', () => {
    it('has at least twenty', () => expect(mistakes.length).toBeGreaterThanOrEqual(20));
    it.each(mistakes)('%s is told', name => {
        const rule = basename(name, '.rig');
        expect(ruleNamed(rule), 'a mistake is named after a rule').toBeDefined();
        const { findings } = analyse(`mistakes/${name}`);
        expect(findings.map(f => f.rule)).toContain(rule);
        if (ruleNamed(rule)!.family !== 'reading the text') {
            expect(findings.filter(f => ruleNamed(f.rule)?.family === 'reading the text').map(f => f.message)).toEqual([]);
        }
    });
});

/**
 * Every rule's page is its test. A page holds rig texts in fenced blocks:
 *
 *     ## Flagged              the rule speaks exactly where the mark lines (`#   ^^^^ error: how the message begins`) point
 *     ## Fixed by "title"     the text that the fix of that title makes of the block under Flagged
 *     ## Not flagged          the rule is silent
 *     ## Cannot be checked    what the rule lacks is told where the mark lines point, by cannot-check-a-hazard
 *     ## Not asked            the rule lacks nothing, though something is not said
 *
 * A mark line stands under the line that it marks; it is a comment, so the text with its marks is the text that is read.
 * Several blocks may stand under one heading. A block may begin with `# today 2026-06-15`, or with `# today unknown`.
 */
import { describe, expect, it } from 'vitest';
import { analyseText, applyFix, type Finding } from '../../language/index.js';
import { allRules, rulePage } from '../../language/rules/index.js';
import type { Rule } from '../../language/rules/define.js';
import { faultFindings } from '../../language/reference/fault-findings.js';
import { faultsIn } from '../../language/run/faults.js';
import { askedBy } from './asked.js';

interface Block { heading: string; text: string; today: string | undefined }
function blocksOf(page: string): Block[] {
    const blocks: Block[] = [];
    let heading = '';
    for (const m of page.matchAll(/^## (.+)$|^```rig\n([\s\S]*?)^```$/gm)) {
        if (m[1]) heading = m[1].trim();
        else {
            const today = /^# today (\S+)/.exec(m[2])?.[1] ?? '2026-06-15';
            blocks.push({ heading, text: m[2], today: today === 'unknown' ? undefined : today });
        }
    }
    return blocks;
}
interface Mark { start: number; end: number; severity: string; message: string }
function marksOf(text: string): Mark[] {
    const marks: Mark[] = [];
    let offset = 0;
    let above = { at: 0, text: '' };
    for (const line of text.split('\n')) {
        const m = /^#( *)(\^+) (error|warning|hint): (.*)$/.exec(line);
        if (m) marks.push({ start: above.at + 1 + m[1].length, end: above.at + 1 + m[1].length + m[2].length, severity: m[3], message: m[4] });
        else above = { at: offset, text: line };
        offset += line.length + 1;
    }
    return marks;
}
/** Of a reading; of a rule that is told of runs, of those. */
function findingsOf(text: string, today: string | undefined, rule: Rule): readonly Finding[] {
    const { findings, workings } = analyseText(text, { today });
    return rule.fromRuns ? faultFindings(workings, faultsIn(workings)) : findings;
}
const withoutMarks = (text: string) => text.replace(/^# *\^+ (error|warning|hint): .*\n/gm, '');
const errorsOf = (findings: readonly Finding[]) => findings.filter(f => f.severity === 'error').map(f => f.rule);
const headings = ['Why it matters', 'Limit', 'How to mend', 'When not to worry'];

describe.each(allRules.map(r => [r.name, r] as const))('%s', (name, rule) => {
    const page = rulePage(name);
    it('has a page with its headings', () => {
        expect(page, `language/rules/of/**/${name}.md`).toBeDefined();
        expect(page!.startsWith(`# ${name}\n`)).toBe(true);
        for (const h of headings) expect(page, `heading "${h}"`).toContain(`## ${h}\n`);
        expect(rule.source.length, 'a source, or that there is none').toBeGreaterThan(3);
    });
    const blocks = blocksOf(page ?? '');
    const flagged = blocks.filter(b => b.heading === 'Flagged');
    it('speaks where its page says', () => {
        expect(flagged.length).toBeGreaterThan(0);
        for (const block of flagged) {
            const marks = marksOf(block.text);
            expect(marks.length, `marks in\n${block.text}`).toBeGreaterThan(0);
            const findings = findingsOf(block.text, block.today, rule);
            const own = findings.filter(f => f.rule === name).map(f => ({ start: f.span.start, end: f.span.end, severity: f.severity, text: block.text.slice(f.span.start, f.span.end), message: f.message }));
            expect(own.map(({ start, end, severity, text }) => ({ start, end, severity, text }))).toEqual(
                marks.map(m => ({ start: m.start, end: m.end, severity: m.severity, text: block.text.slice(m.start, m.end) })));
            marks.forEach((m, i) => expect(own[i].message.startsWith(m.message.replace(/…$/, '')), `"${own[i].message}" begins with "${m.message}"`).toBe(true));
            if (rule.family !== 'reading the text') {
                expect(findings.filter(f => allRules.find(r => r.name === f.rule)?.family === 'reading the text' && f.severity === 'error').map(f => f.message), 'the example itself is readable').toEqual([]);
            }
        }
    });
    /** What the rule offers for a text, with the errors that were there before. */
    const offersOf = (text: string, today: string | undefined) => {
        const { findings } = analyseText(text, { today });
        return { fixes: findings.filter(f => f.rule === name).flatMap(f => f.fixes), errors: errorsOf(findings) };
    };
    for (const fixed of blocks.filter(b => b.heading.startsWith('Fixed by'))) {
        it(fixed.heading, () => {
            const title = /^Fixed by "(.+)"$/.exec(fixed.heading)![1];
            // The first block under Flagged for which the rule offers it.
            const before = flagged.map(b => withoutMarks(b.text)).find(t => offersOf(t, fixed.today).fixes.some(f => f.title === title));
            expect(before, `a fix titled "${title}" among ${flagged.flatMap(b => offersOf(withoutMarks(b.text), b.today).fixes.map(f => f.title)).join(' | ')}`).toBeDefined();
            const after = applyFix(before!, 'rig.rig', offersOf(before!, fixed.today).fixes.find(f => f.title === title)!);
            expect(after.trim()).toBe(fixed.text.trim());
            expect(analyseText(after, { today: fixed.today }).findings.filter(f => f.rule === name).map(f => f.message)).toEqual([]);
        });
    }
    it('offers nothing that raises an error', () => {
        for (const block of flagged) {
            const before = withoutMarks(block.text);
            const { fixes, errors } = offersOf(before, block.today);
            for (const fix of fixes) {
                const after = applyFix(before, 'rig.rig', fix);
                expect(after, fix.title).not.toBe(before);
                expect(errorsOf(analyseText(after, { today: block.today }).findings).filter(e => !errors.includes(e)), `${fix.title}\n${after}`).toEqual([]);
            }
        }
    });
    it('is silent where its page says', () => {
        const quiet = blocks.filter(b => b.heading === 'Not flagged');
        expect(quiet.length, 'a block under Not flagged').toBeGreaterThan(0);
        for (const block of quiet) {
            expect(findingsOf(block.text, block.today, rule).filter(f => f.rule === name).map(f => f.message)).toEqual([]);
        }
    });
    for (const block of blocks.filter(b => b.heading === 'Cannot be checked' || b.heading === 'Not asked')) {
        it(`${block.heading}: ${/"(.*)"/.exec(block.text)?.[1]}`, () => {
            const marks = marksOf(block.text);
            const asked = askedBy(rule, block.text, block.today);
            if (block.heading === 'Not asked') {
                expect(marks).toEqual([]);
                expect(asked).toEqual([]);
                return;
            }
            const told = analyseText(block.text, { today: block.today }).findings.filter(f => f.rule === 'cannot-check-a-hazard');
            for (const m of marks) {
                const there = told.filter(f => f.span.start === m.start && f.span.end === m.end && f.severity === m.severity).map(f => f.message);
                expect(there.map(t => t.slice(0, m.message.replace(/…$/, '').length)), there.join('\n')).toContain(m.message.replace(/…$/, ''));
            }
            // Every mark is the rule's own, and all that the rule asks is marked.
            expect([...new Set(marks.flatMap(m => asked.filter(a => told.some(f => f.span.start === m.start && f.message.includes(a)))))].sort()).toEqual(asked);
            expect(asked.length).toBeGreaterThanOrEqual(marks.length);
            expect(marks.length).toBeGreaterThan(0);
        });
    }
});

/** Findings as JUnit XML, one suite for each file: errors and warnings are failures, hints are told as output. */
import type { Finding } from '../../../language/index.js';
import type { Report } from '../report.js';

export function junit(report: Report): string {
    const files = [...new Set([...report.checked, ...report.findings.map(f => report.show(f.span.file))])].sort();
    const failures = (list: readonly Finding[]) => list.filter(f => f.severity !== 'hint').length;
    const suites = files.map(file => {
        const own = report.findings.filter(f => report.show(f.span.file) === file);
        const cases = own.length ? own.map(f => testCase(report, file, f)) : [`    <testcase classname="${escaped(file)}" name="nothing found"/>`];
        return `  <testsuite name="${escaped(file)}" tests="${cases.length}" failures="${failures(own)}" errors="0" skipped="0">\n${cases.join('\n')}\n  </testsuite>`;
    });
    const tests = files.reduce((n, file) => n + Math.max(1, report.findings.filter(f => report.show(f.span.file) === file).length), 0);
    return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="rigwright" tests="${tests}" failures="${failures(report.findings)}" errors="0">\n${suites.join('\n')}\n</testsuites>\n`;
}
function testCase(report: Report, file: string, f: Finding): string {
    const { start } = report.range(f.span);
    const name = `${f.rule} at ${start.line + 1}:${start.character + 1}`;
    const body = escaped([`${file}:${start.line + 1}:${start.character + 1}`, f.message, f.why].filter(Boolean).join('\n'));
    const inner = f.severity === 'hint' ? `      <system-out>${body}</system-out>` : `      <failure type="${f.severity}" message="${escaped(f.message)}">${body}</failure>`;
    return `    <testcase classname="${escaped(file)}" name="${escaped(name)}">\n${inner}\n    </testcase>`;
}
/** For text and attributes. What XML 1.0 cannot hold at all, even escaped, is dropped. */
function escaped(text: string): string {
    return text.replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
        .replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;').replace(/'/g, '&apos;');
}

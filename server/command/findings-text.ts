/** Findings in the forms of the command line: for people, as JSON, SARIF, JUnit, and as notes of a hosted check. */
import { linesOf, Lines } from '../../language/rig/lines.js';
import { allRules } from '../../language/rules/index.js';
import type { Finding } from '../../language/index.js';
import { shown, type Checked } from './files.js';
import { styles } from './style.js';
import { version } from './run.js';

export interface Report {
    readonly findings: readonly Finding[];
    readonly files: number;
    readonly linesOf: (file: string) => Lines;
    readonly cwd: string;
}
export function reportOf(checked: Checked, cwd: string): Report {
    const seen = new Set<string>();
    const lines = new Map<string, Lines>();
    for (const a of checked.analyses) for (const p of a.rig.pages) lines.set(p.file, linesOf(p));
    const findings = checked.analyses.flatMap(a => a.findings).filter(f => {
        const key = `${f.rule} ${f.span.file} ${f.span.start} ${f.message}`;
        return !seen.has(key) && !!seen.add(key);
    });
    return { findings, files: checked.analyses.length, cwd, linesOf: file => lines.get(file) ?? new Lines(checked.textOf(file) ?? '') };
}
export const counts = (findings: readonly Finding[]) => ({
    errors: findings.filter(f => f.severity === 'error').length, warnings: findings.filter(f => f.severity === 'warning').length, hints: findings.filter(f => f.severity === 'hint').length,
});
const say = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`;

export const formats: Readonly<Record<string, (r: Report, colour: boolean) => string>> = {
    text(r, colour) {
        const s = styles(colour);
        const out: string[] = [];
        for (const f of r.findings) {
            const lines = r.linesOf(f.span.file);
            const { start, end } = lines.range(f.span);
            const text = lines.lineText(start.line);
            const width = Math.max(1, Math.min(end.line === start.line ? end.character : text.length, text.length) - start.character);
            const margin = String(start.line + 1).padStart(5);
            out.push(`${shown(f.span.file, r.cwd)}:${start.line + 1}:${start.character + 1}  ${s[f.severity](f.severity)}  ${s.strong(f.rule)}`, `  ${f.message}`,
                s.quiet(`  ${margin} | `) + text, s.quiet(`  ${' '.repeat(5)} | `) + ' '.repeat(start.character) + s[f.severity]('~'.repeat(width)));
            if (f.why) out.push(s.quiet(`  why: ${f.why}`));
            for (const rel of f.related) {
                const at = r.linesOf(rel.span.file).at(rel.span.start);
                out.push(s.quiet(`  see: ${shown(rel.span.file, r.cwd)}:${at.line + 1}  ${rel.message}`));
            }
            for (const fix of f.fixes) out.push(s.quiet(`  could: ${fix.title}`));
            if (f.rests.length && f.severity !== 'hint') out.push(s.quiet(`  rests on what is assumed: ${f.rests.slice(0, 4).join(', ')}${f.rests.length > 4 ? ' …' : ''}`));
            out.push('');
        }
        const c = counts(r.findings);
        out.push(`${say(r.files, 'file')}: ${say(c.errors, 'error')}, ${say(c.warnings, 'warning')}, ${say(c.hints, 'hint')}.`, s.quiet('This is arithmetic on your description; silence is no statement that a rig is free of danger. Local codes and licensed practice decide.'), '');
        return out.join('\n');
    },
    json: r => `${JSON.stringify({
        version, findings: r.findings.map(f => ({
            file: shown(f.span.file, r.cwd), rule: f.rule, severity: f.severity, message: f.message, why: f.why, source: f.source, range: r.linesOf(f.span.file).range(f.span),
            related: f.related.map(x => ({ file: shown(x.span.file, r.cwd), range: r.linesOf(x.span.file).range(x.span), message: x.message })),
            fixes: f.fixes.map(x => ({ title: x.title, edits: x.edits.map(e => ({ file: shown(e.span.file, r.cwd), range: r.linesOf(e.span.file).range(e.span), text: e.text })) })),
        })),
    }, null, 2)}\n`,
    sarif(r) {
        const level = { error: 'error', warning: 'warning', hint: 'note' } as const;
        const region = (file: string, span: { start: number; end: number }) => {
            const { start, end } = r.linesOf(file).range(span);
            return { startLine: start.line + 1, startColumn: start.character + 1, endLine: end.line + 1, endColumn: end.character + 1 };
        };
        const place = (file: string, span: { start: number; end: number }) => ({ physicalLocation: { artifactLocation: { uri: encodeURI(shown(file, r.cwd)), uriBaseId: 'ROOT' }, region: region(file, span) } });
        return `${JSON.stringify({
            version: '2.1.0', $schema: 'https://json.schemastore.org/sarif-2.1.0.json', runs: [{
                tool: { driver: { name: 'rigwright', version, rules: allRules.filter(x => r.findings.some(f => f.rule === x.name)).map(x => ({ id: x.name, shortDescription: { text: x.summary }, fullDescription: { text: x.why }, defaultConfiguration: { level: level[x.severity] }, properties: { source: x.source, family: x.family } })) } },
                columnKind: 'utf16CodeUnits',
                results: r.findings.map(f => ({ ruleId: f.rule, level: level[f.severity], message: { text: f.why ? `${f.message} ${f.why}` : f.message }, locations: [place(f.span.file, f.span)], relatedLocations: f.related.map((x, id) => ({ id, ...place(x.span.file, x.span), message: { text: x.message } })) })),
            }],
        }, null, 2)}\n`;
    },
    github(r) {
        const data = (s: string) => s.replace(/%/g, '%25').replace(/\r/g, '%0D').replace(/\n/g, '%0A');
        const property = (s: string) => data(s).replace(/:/g, '%3A').replace(/,/g, '%2C');
        const word = { error: 'error', warning: 'warning', hint: 'notice' } as const;
        return r.findings.map(f => {
            const { start, end } = r.linesOf(f.span.file).range(f.span);
            return `::${word[f.severity]} file=${property(shown(f.span.file, r.cwd))},line=${start.line + 1},col=${start.character + 1},endLine=${end.line + 1},endColumn=${end.character + 1},title=${property(f.rule)}::${data(f.message)}\n`;
        }).join('');
    },
    junit(r) {
        const x = (s: string) => s.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '').replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
        const bad = r.findings.filter(f => f.severity !== 'hint');
        const cases = r.findings.map(f => {
            const at = r.linesOf(f.span.file).at(f.span.start);
            const where = `${shown(f.span.file, r.cwd)}:${at.line + 1}:${at.character + 1}`;
            const head = `    <testcase classname="${x(shown(f.span.file, r.cwd))}" name="${x(`${f.rule} at line ${at.line + 1}`)}"`;
            return f.severity === 'hint' ? `${head}/>` : `${head}>\n      <failure type="${f.severity}" message="${x(f.message)}">${x(`${where}\n${f.message}\n${f.why}`)}</failure>\n    </testcase>`;
        });
        if (!cases.length) cases.push('    <testcase classname="rigwright" name="no finding"/>');
        return `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites>\n  <testsuite name="rigwright" tests="${cases.length}" failures="${bad.length}">\n${cases.join('\n')}\n  </testsuite>\n</testsuites>\n`;
    },
};

/** Findings as SARIF 2.1.0 (OASIS), for viewers and hosted checks. Lines and columns count from 1, in UTF-16 units. */
import { pathToFileURL } from 'node:url';
import type { Span } from '../../../language/rig/rig.js';
import { allRules } from '../../../language/rules/index.js';
import type { Report } from '../report.js';
import { version } from '../version.js';

const levels = { error: 'error', warning: 'warning', hint: 'note' } as const;
const ROOT = 'SRCROOT';

export function sarif(report: Report): string {
    const named = new Set(report.findings.map(f => f.rule));
    const rules = allRules.filter(r => named.has(r.name));
    const indexOf = new Map(rules.map((r, i) => [r.name, i]));
    const region = (span: Span) => {
        const { start, end } = report.range(span);
        return { startLine: start.line + 1, startColumn: start.character + 1, endLine: end.line + 1, endColumn: end.character + 1 };
    };
    const artifact = (file: string) => {
        const shown = report.show(file);
        if (/^([a-z][a-z0-9+.-]+:)/i.test(shown)) return { uri: shown };
        if (/^(\/|[a-z]:\/)/i.test(shown)) return { uri: pathToFileURL(file).href };
        return { uri: shown.split('/').map(encodeURIComponent).join('/'), uriBaseId: ROOT };
    };
    const place = (span: Span) => ({ physicalLocation: { artifactLocation: artifact(span.file), region: region(span) } });
    const log = {
        $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
        version: '2.1.0',
        runs: [{
            tool: {
                driver: {
                    name: 'rigwright', version, semanticVersion: version,
                    rules: rules.map(r => ({
                        id: r.name, shortDescription: { text: r.summary }, fullDescription: { text: r.why }, defaultConfiguration: { level: levels[r.severity] },
                        properties: { family: r.family, source: r.source },
                    })),
                },
            },
            columnKind: 'utf16CodeUnits',
            originalUriBaseIds: { [ROOT]: { uri: `${pathToFileURL(report.cwd).href.replace(/\/$/, '')}/` } },
            results: report.findings.map(f => ({
                ruleId: f.rule, ...(indexOf.has(f.rule) ? { ruleIndex: indexOf.get(f.rule) } : {}), level: levels[f.severity],
                message: { text: [f.message, f.why].filter(Boolean).join(' ') }, locations: [place(f.span)],
                ...(f.related.length ? { relatedLocations: f.related.map((r, id) => ({ id, ...place(r.span), message: { text: r.message } })) } : {}),
                ...(f.fixes.length ? {
                    fixes: f.fixes.map(x => ({
                        description: { text: x.title },
                        artifactChanges: [...new Set(x.edits.map(e => e.span.file))].map(file => ({
                            artifactLocation: artifact(file),
                            replacements: x.edits.filter(e => e.span.file === file).map(e => ({ deletedRegion: region(e.span), insertedContent: { text: e.text } })),
                        })),
                    })),
                } : {}),
            })),
        }],
    };
    return `${JSON.stringify(log, null, 2)}\n`;
}

/** Faults that reach a hazard, as findings at the parts that fail. */
import { outcomeText } from './run-text.js';
import type { Finding } from '../rules/define.js';
import { ruleNamed } from '../rules/index.js';
import type { Workings } from '../quantities/workings.js';
import type { Faults } from '../run/faults.js';

const RULE = 'single-fault-reaches-hazard';

/** One finding for each part; its other ways to fail stand beside the soonest. */
export function faultFindings(workings: Workings, found: Faults): Finding[] {
    const rule = ruleNamed(RULE)!;
    const findings = new Map<string, Finding>();
    for (const f of found.faults) {
        const view = workings.viewOf(f.part);
        if (f.outcome !== 'hazard' || !view) continue;
        const text = `${f.part} ${f.what}: ${outcomeText(f)}.`;
        const before = findings.get(f.part);
        const span = view.at();
        if (before) findings.set(f.part, { ...before, related: [...before.related, { span, message: text }] });
        else findings.set(f.part, { rule: RULE, severity: rule.severity, message: `${text}${f.help ? ` What would help: ${f.help}.` : ''}`, why: rule.why, source: rule.source, span, related: [], fixes: [], rests: [], guardsLife: false });
    }
    return [...findings.values()].sort((a, b) => (a.span.file < b.span.file ? -1 : a.span.file > b.span.file ? 1 : a.span.start - b.span.start));
}

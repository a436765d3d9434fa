/** What runs with something broken tell, as findings at the parts that fail. */
import { hiddenText, outcomeText, trialText } from './run-text.js';
import type { Finding } from '../rules/define.js';
import { ruleNamed } from '../rules/index.js';
import { heeded } from '../rules/judge.js';
import { lastPassed } from '../rules/records.js';
import { reaches } from '../rig/rig.js';
import type { View } from '../quantities/view.js';
import type { Workings } from '../quantities/workings.js';
import type { Faults } from '../run/faults.js';

/** Rules of their own tell that these were never tested. */
const toldElsewhere = new Set(['trip', 'analyser', 'detector', 'check-valve']);

/** One finding for each part; its other ways to fail stand beside the soonest. */
export function faultFindings(workings: Workings, found: Faults, today?: string): Finding[] {
    const findings = new Map<string, Finding>();
    const tell = (name: string, view: View, text: string, advice: string) => {
        const rule = ruleNamed(name)!;
        const key = `${name} ${view.name}`;
        const span = view.at();
        const before = findings.get(key);
        if (before) findings.set(key, { ...before, related: [...before.related, { span, message: text }] });
        else findings.set(key, { rule: name, severity: rule.severity, message: `${text}${advice}`, why: rule.why, source: rule.source, span, related: [], fixes: [], rests: [], guardsLife: false });
    };
    for (const f of found.faults) {
        const view = workings.viewOf(f.part);
        if (f.outcome === 'hazard' && view) tell('single-fault-reaches-hazard', view, `${f.part} ${f.what}: ${outcomeText(f)}.`, f.help ? ` What would help: ${f.help}.` : '');
    }
    if (reaches(workings.rig.stage, ruleNamed('hidden-failure-untested')!.from)) {
        for (const h of found.hidden) {
            const view = workings.viewOf(h.part);
            if (view && !toldElsewhere.has(view.kind) && lastPassed(view) === undefined) tell('hidden-failure-untested', view, `${hiddenText(h)}.`, ` ${trialText(h, view.kind)}`);
        }
    }
    return heeded(workings.rig, [...findings.values()].sort((a, b) => (a.span.file < b.span.file ? -1 : a.span.file > b.span.file ? 1 : a.span.start - b.span.start)), today);
}

/** What the rules tell, gravest first, and what is near a limit. */
import type { Finding } from '../../../rules/define.js';
import { nearPlace, nearText } from '../../../rules/near.js';
import { cut, defineSection, heading, table, words, type Asked } from '../define.js';
import type { Row } from '../page.js';

const MOST = 80;
const groups = [['error', 'Errors: cannot work, or can hurt'], ['warning', 'Warnings: can go wrong'], ['hint', 'Hints: worth a look']] as const;

export default defineSection({
    name: 'findings', title: 'Findings', order: 80, lead: 'What the rules see in the description that cannot work, can hurt or lacks, with the reason and what mends it.',
    make: a => {
        const { findings, near } = a.analysis;
        // What can hurt is told of parts too that this copy leaves out.
        const told = findings.filter(f => f.severity !== 'hint' || !a.hidden.has(a.partOf(f) ?? ''));
        const { shown, rest } = cut(groups.flatMap(([severity]) => told.filter(f => f.severity === severity)), MOST, left => `And ${left} more: rigwright check lists them.`);
        const rows = groups.flatMap(([severity, title]): Row[] => {
            const of = shown.filter(f => f.severity === severity);
            return of.length ? [{ group: title }, ...of.map(f => rowOf(a, f))] : [];
        });
        const close = near.filter(n => !a.hidden.has(n.part));
        return [
            ...(rows.length ? [...table(['where, and the rule', 'what, why, and what mends it'], rows), ...rest] : [words('No error, no warning and no hint. That is no promise: the rules know the description and nothing else.')]),
            ...(close.length ? [heading('Near a limit, and not over it'), ...table(['where, and the rule', 'number and limit'], close.map(n => [[nearPlace(n), n.rule], nearText(n)]))] : []),
        ];
    },
});
function rowOf(a: Asked, f: Finding): Row {
    const mends = [...new Set(f.fixes.map(x => x.title))];
    return [[a.partOf(f) ?? 'the rig', f.rule], [f.message, f.why, mends.length ? `What mends it: ${mends.join('; or: ')}.` : '', f.rests.length ? `Rests on what is assumed: ${f.rests.slice(0, 4).join(', ')}${f.rests.length > 4 ? ` and ${f.rests.length - 4} more` : ''}.` : '']];
}

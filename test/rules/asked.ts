/** What a rule leaves open in a text: 'bell.bell-mass' for each input that its check lacks. Other rules are not listened to. */
import { analyseText } from '../../language/index.js';
import type { Rule, Tell, Telling } from '../../language/rules/define.js';

export function askedBy(rule: Rule, text: string, today: string | undefined): string[] {
    const asked = new Set<string>();
    const changed = rule as { check: Rule['check'] };
    const { check } = rule;
    changed.check = (v, tell) => check!(v, Object.assign((t: Telling) => tell(t), {
        ...tell,
        cannotCheck: (part: typeof v, key: string, what: string) => {
            asked.add(`${part.name}.${key}`);
            tell.cannotCheck(part, key, what);
        },
    }) as Tell);
    try {
        analyseText(text, { today });
    } finally {
        changed.check = check;
    }
    return [...asked].sort();
}

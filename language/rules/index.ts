/** The table of rules. The list itself is generated from the files in `of/`. */
import type { Rule } from './define.js';
import { rulePages } from './pages.generated.js';
import { allRules } from './rules.generated.js';

const byName = new Map(allRules.map(r => [r.name, r]));

export function ruleNamed(name: string): Rule | undefined {
    return byName.get(name);
}
/** The page of a rule as Markdown, or undefined. */
export function rulePage(name: string): string | undefined {
    return rulePages[name];
}
export { allRules };

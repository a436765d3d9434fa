import { defineRule } from '../../define.js';

export default defineRule({
    name: 'separator-dries-out',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'The lye is drained, and no step wets the separators again.',
    why: 'Drained cells dry within days. Pores that have dried are open to gas at the next start, and salt may have torn them.',
    source: 'common practice, no source',
    on: 'routine',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack || stack.says('separator') === 'none' || !v.said('steps')) return;
        const steps = v.rows('steps').map(row => row.get('')?.text ?? '');
        if (!steps.some(s => /\bdrain(ed|s)?\b/i.test(s) && !/\b(drain )?(trap|tray|dryer|bubbler|water|condensate)\b/i.test(s))) return;
        if (steps.some(s => /\b(wet|wetting|soak|soaking|separator|flood|keep wet)\b/i.test(s))) return;
        tell({ at: v.at('steps'), message: 'The lye is drained, and no step wets the separators again: once dry, their pores let gas through at the next start. Wet them, and press one side alone, before current flows.' });
    },
});

import { defineRule } from '../../define.js';

const guards = ['relief-valve', 'arrestor', 'analyser', 'detector'] as const;

export default defineRule({
    name: 'safety-parts-without-price',
    family: 'money',
    severity: 'hint',
    summary: 'A total is stated, and parts that protect are not in it.',
    why: 'What has no line in the budget is what is left out when the money is gone.',
    source: 'common practice, no source',
    on: 'budget',
    check(v, tell) {
        if (!v.said('total')) return;
        const bare = guards.flatMap(kind => v.all(kind).filter(p => !p.said('price')).map(p => p.name));
        if (!bare.length) return;
        tell({ at: v.at('total'), message: `The total leaves out ${bare.slice(0, 4).join(', ')}${bare.length > 4 ? ` and ${bare.length - 4} more` : ''}: ${bare.length > 1 ? 'they protect' : 'it protects'} and ${bare.length > 1 ? 'have' : 'has'} no price.` });
    },
});

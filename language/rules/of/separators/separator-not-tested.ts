import { defineRule } from '../../define.js';

export default defineRule({
    name: 'separator-not-tested',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'Nothing on record shows that the separators of the assembled stack are whole.',
    why: 'One pinhole or a turned frame joins the gases, and nothing else shows it.',
    source: 'common practice, no source',
    from: 'built',
    on: 'stack',
    check(v, tell) {
        if (v.says('separator') === 'none' || !v.the('separator')) return;
        const separator = v.the('separator')!;
        const done = v.all('test').some(t => t.names('covers').includes(separator.name) && t.word('result') === 'passed');
        if (done) return;
        tell({ at: separator.part.implied ? v.at() : separator.at(), message: 'Nothing shows that the separators are whole: the air test on one side, wet, at twice the working head, is not on record.' });
    },
});

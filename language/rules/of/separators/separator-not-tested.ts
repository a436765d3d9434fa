import { defineRule } from '../../define.js';
import { newest } from '../../records.js';

/** ms */
const YEAR = 366 * 86400000;

export default defineRule({
    name: 'separator-not-tested',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'Nothing on record shows that the separators of the assembled stack are whole.',
    why: 'One pinhole or a turned frame joins the gases, and nothing else shows it.',
    source: 'common practice, no source',
    from: 'built',
    under: ['separator-test-failed'],
    on: 'stack',
    check(v, tell) {
        if (v.says('separator') === 'none' || !v.the('separator')) return;
        const separator = v.the('separator')!;
        const last = newest(v.all('test').filter(t => t.names('covers').includes(separator.name) && t.word('result') === 'passed'));
        if (last) {
            // Cloth ages under lye and warmth: on a rig that runs, a year is long.
            const date = last.word('date');
            if (!tell.today || !date || !tell.reached('running') || !(Date.parse(tell.today) - Date.parse(date.slice(0, 10).padEnd(10, '-01')) > YEAR)) return;
            tell({ at: last.at('date'), severity: 'hint', message: `The separators were last shown to be whole on ${date}, more than a year ago: the same test again, with the level watched, shows how they age.` });
            return;
        }
        tell({ at: separator.part.implied ? v.at() : separator.at(), message: 'Nothing shows that the separators are whole: the air test on one side, wet, at twice the working head, is not on record.' });
    },
});

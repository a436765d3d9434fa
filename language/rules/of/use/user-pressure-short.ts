import { defineRule } from '../../define.js';
import { headOfPart } from '../../../quantities/heads.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'user-pressure-short',
    family: 'use',
    severity: 'warning',
    summary: 'The bag or bell before a user gives less pressure than the user needs.',
    why: 'A slack bag presses hardly at all: the flame stays small or goes out, and air can come in where gas should go out.',
    source: 'heads along the path',
    under: ['gasometer-head'],
    on: ['burner', 'engine', 'fuel-cell'],
    check(v, tell) {
        const own = v.maybe('pressure');
        const purpose = v.the('purpose');
        const need = own === own ? own : purpose?.maybe('use-pressure') ?? NaN;
        for (const name of v.paths.before(v.name, 'hydrogen')) {
            const vessel = v.other(name);
            // What presses, or holds pressure, decides by itself.
            if (!vessel || ['cylinder', 'regulator', 'compressor', 'stack'].includes(vessel.kind)) return;
            if (vessel.kind !== 'bag' && vessel.kind !== 'gasometer') continue;
            const given = headOfPart(vessel, 'hydrogen');
            const lost = v.paths.between(name, v.name, 'hydrogen').reduce((sum, n) => sum + (v.other(n) ? headOfPart(v.other(n)!, 'hydrogen') : 0), 0);
            if (!(given - lost < 0.95 * need)) return;
            tell({
                at: own === own ? v.at('pressure') : purpose!.at('use-pressure'),
                // A bag of which nobody has said how it presses may be a pressed one.
                severity: vessel.kind === 'bag' && !vessel.said('own-pressure') ? 'hint' : 'warning',
                message: `${name} gives ${show(given, 'kPa')}${lost > 1 ? `, of which the way takes ${show(lost, 'kPa')}` : ''}; ${v.name} needs ${show(need, 'kPa')}.`,
                related: [{ span: vessel.at(), message: 'what presses' }],
            });
            return;
        }
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'arrestor-drop-too-high',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'The arrestor takes more pressure than the gas before it has.',
    why: 'Nothing flows, and then people take the arrestor out.',
    source: 'makers\' curves; typical drops of 1 kPa to 10 kPa, from memory',
    under: ['gasometer-head'],
    on: 'arrestor',
    check(v, tell) {
        const drop = v.maybe('drop.drop');
        const at = v.maybe('drop.at');
        const user = v.paths.after(v.name, 'hydrogen').map(n => v.other(n)).find(p => p && ['burner', 'fuel-cell', 'engine'].includes(p.kind));
        const flow = user?.maybe('flow') ?? NaN;
        const real = flow > 0 && at > 0 ? drop * flow / at : drop;
        const source = v.paths.before(v.name, 'hydrogen').map(n => v.other(n)).find(p => p && ['regulator', 'bag', 'gasometer'].includes(p.kind));
        if (!source) return;
        const has = source.kind === 'regulator' ? source.maybe('set') : source.kind === 'bag' ? source.maybe('own-pressure') : source.maybeQ('head');
        if (!tell.exceeds(real, has, 'kPa', v, 'drop')) return;
        tell({
            at: v.at('drop'), message: `${v.name} takes ${show(real, 'kPa', 2)} and ${source.name} gives ${show(has, 'kPa', 2)}: nothing flows. Do not take it out: one of low drop that is listed for hydrogen, or more pressure before it.`,
            related: [{ span: source.at(), message: 'gives the pressure' }],
        });
    },
});

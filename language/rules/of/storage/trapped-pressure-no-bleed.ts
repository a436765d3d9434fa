import { append } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { freeName } from '../../path-fixes.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';

/** By these the gas of a stretch goes on: into a store, a user, the suction. */
const lets: ReadonlySet<string> = new Set(['cylinder', 'bag', 'gasometer', 'burner', 'fuel-cell', 'engine', 'balloon', 'unloader', 'regulator', 'vent', 'seal', 'bleed', 'purge-point', 'compressor', 'stack']);

export default defineRule({
    name: 'trapped-pressure-no-bleed',
    family: 'storage',
    severity: 'warning',
    summary: 'Between two valves gas under pressure stays, and nothing lets it out.',
    why: 'Whoever opens a joint there next finds it with the spanner.',
    source: 'common practice, no source',
    on: ['check-valve', 'valve'],
    check(v, tell) {
        const kind = (name: string) => v.other(name)?.kind ?? '';
        const shuts = (name: string) => kind(name) === 'check-valve' || kind(name) === 'valve' && v.other(name)!.word('if-unpowered') !== 'opens';
        if (!shuts(v.name)) return;
        const store = ['cylinder', 'compressor'].flatMap(k => [...v.all(k)]).find(s => v.paths.before(v.name, 'hydrogen').includes(s.name) && !v.paths.between(s.name, v.name, 'hydrogen').some(n => kind(n) === 'regulator'));
        if (!store) return;
        for (const link of v.paths.from(v.name, 'hydrogen')) {
            if (shuts(link.to.name)) continue;
            const space = [...v.paths.space(link.to.name, 'hydrogen', n => n === v.name || shuts(n) || kind(n) === 'relief-valve').keys()];
            const inside = space.filter(n => !shuts(n) && kind(n) !== 'relief-valve');
            const end = space.find(n => n !== v.name && shuts(n));
            // Where the gas can go on by itself nothing is trapped; an end in the open is no end of a shut stretch either.
            if (!end || !inside.length || inside.some(n => lets.has(kind(n)) || v.paths.from(n, 'hydrogen').some(l => !v.other(l.to.name)))) continue;
            if ([...v.all('bleed'), ...v.all('purge-point')].some(b => space.includes(b.names('on')[0] ?? b.word('on') ?? ''))) continue;
            const full = v.all('cylinder').map(c => c.maybeQ('cut-off', c.maybe('rating'))).find(p => p === p);
            const name = freeName(v, 'line-bleed');
            tell({
                at: link.span, severity: missing(tell, 'warning'), message: `Between ${v.name} and ${end} gas ${full ? `at up to ${show(full, 'bar')} ` : ''}stays when both are shut, and no bleed lets it out.`,
                related: [{ span: v.other(end)!.at(), message: 'the other end' }], fixes: [append(v, `bleed ${name} { on: ${inside[0]}   outlet: outdoors }`, `Plan a bleed on ${inside[0]}`)],
            });
        }
    },
});

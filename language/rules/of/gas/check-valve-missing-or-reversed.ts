import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { insertBefore } from '../../path-fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'check-valve-missing-or-reversed',
    family: 'gas conditioning',
    severity: 'error',
    summary: 'A check valve lets gas pass the wrong way, or none stands before the cylinder.',
    why: 'Without it the store flows back through the standing compressor into the bag, and bursts it.',
    source: 'order of the path; common practice, no source',
    guardsLife: true,
    on: ['check-valve', 'cylinder'],
    check(v, tell) {
        if (v.kind === 'check-valve') {
            const way = v.given('direction').facts.get('')?.names;
            if (!way || way.length < 2) return;
            for (const gas of ['hydrogen', 'oxygen', 'lye', 'water'] as const) {
                const before = v.paths.before(v.name, gas);
                const after = v.paths.after(v.name, gas);
                const back = before.includes(way[1]) && after.includes(way[0]);
                if (!back || (before.includes(way[0]) && after.includes(way[1]))) continue;
                tell({ at: v.at('direction'), message: `${v.name} lets ${gas} pass from ${way[0]} to ${way[1]}; its path goes the other way.`, related: [{ span: v.paths.place(v.name, gas) ?? v.at(), message: 'its path' }], fixes: defined(setValue(v, 'direction', `${way[1]} to ${way[0]}`, 'Turn it round')) });
            }
            return;
        }
        if (v.all('unloader').some(u => v.paths.mediaOf(u.name).has('hydrogen'))) return;
        for (const compressor of v.all('compressor')) {
            const way = v.paths.route(compressor.name, v.name, 'hydrogen');
            if (!way || way.some(n => v.other(n)?.kind === 'check-valve')) continue;
            const link = v.paths.link(way.at(-2)!, v.name, 'hydrogen')!;
            tell({
                at: link.to.span, severity: missing(tell, 'error'), message: `No check valve stands between ${compressor.name} and ${v.name}: standing still, ${compressor.name} lets the store back into what it draws from.`,
                related: [{ span: compressor.at(), message: 'the compressor' }], fixes: v.all('check-valve').some(c => c.name === 'check-valve') ? [] : [insertBefore(link, 'check-valve', `Put a check valve before ${v.name}`)],
            });
        }
    },
});

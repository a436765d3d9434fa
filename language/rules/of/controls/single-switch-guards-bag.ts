import { append, defined } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { freeName } from '../../path-fixes.js';
import { sealThatGuards } from '../../relief.js';

export default defineRule({
    name: 'single-switch-guards-bag',
    family: 'controls',
    severity: 'error',
    summary: 'One single device stands between a bag and bursting, or between the compressor and drawing air.',
    why: 'Small switches stick, slip and weld. When the only one fails, the bag bursts, or the compressor draws air into the hydrogen.',
    source: 'common practice, no source; single-fault tolerance as in ISO 13849-1, from memory',
    guardsLife: true,
    on: ['bag', 'gasometer'],
    check(v, tell) {
        if (!v.the('stack') || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const watched = (side: 'above' | 'below', driven: ReadonlySet<string>, at: readonly string[]) =>
            at.flatMap(name => [`${name}.volume`, `${name}.pressure`]).flatMap(q => v.controls.limits(driven, q, side));
        const full = watched('above', v.controls.stackStoppers(), [v.name]);
        const relieved = v.word('overflow') === 'outdoors' || [...v.paths.space(v.name, 'hydrogen', n => ['compressor', 'valve', 'seal', 'relief-valve', 'vent', 'stack'].includes(v.other(n)?.kind ?? '')).keys()]
            .some(n => ['seal', 'relief-valve'].includes(v.other(n)?.kind ?? ''));
        if (full.length === 1 && !relieved) {
            const depth = sealThatGuards(v);
            const name = freeName(v, 'bag-seal');
            tell({
                at: full[0].at(), message: `${full[0].name} is all that stops the filling of ${v.name}; if it sticks, ${v.name} bursts.`,
                related: [{ span: v.at(), message: 'what it guards' }],
                fixes: defined(depth ? append(v, `seal ${name} { depth: ${depth} mm }\npath hydrogen: ${v.name} -> ${name} -> outdoors`, `Plan a seal of ${depth} mm to outdoors`) : undefined),
            });
        }
        for (const compressor of v.all('compressor')) {
            const way = v.paths.route(v.name, compressor.name, 'hydrogen');
            if (!way) continue;
            const empty = watched('below', v.controls.involved(compressor.name), way);
            if (empty.length !== 1) continue;
            tell({
                at: empty[0].at(), message: `${empty[0].name} is all that keeps ${compressor.name} from emptying ${v.name} and drawing air; if it sticks, nothing else stops it.`,
                related: [{ span: compressor.at(), message: 'draws from it' }],
            });
        }
    },
});

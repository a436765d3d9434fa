import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { insertBefore } from '../../path-fixes.js';
import { missing } from '../../stage.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'no-scrubber-before-sensitive',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'Lye mist reaches a part that it ruins.',
    why: 'Lye eats aluminium, varnish of windings, catalysts and the membrane of a fuel cell.',
    source: 'common practice, no source; alkali in fuel-cell gas: ISO 14687, from memory',
    on: ['compressor', 'fuel-cell', 'recombiner'],
    check(v, tell) {
        if (v.kind === 'fuel-cell' && v.word('sort') === 'alkaline') return;
        const stack = v.the('stack');
        const way = stack && v.paths.route(stack.name, v.name, 'hydrogen')?.slice(1, -1);
        if (!way) return;
        const parts = way.map(n => v.other(n)).filter((p): p is View => !!p);
        const washed = parts.some(p => ['scrubber', 'bubbler'].includes(p.kind));
        const caught = parts.some(p => ['filter', 'dryer'].includes(p.kind) || (p.kind === 'scrubber' && ['fibre', 'pad'].includes(p.word('demister') ?? '')) || (p.kind === 'trap' && p.word('sort') === 'drain'));
        const link = v.paths.link(way.at(-1) ?? stack.name, v.name, 'hydrogen')!;
        const scrubber = parts.find(p => p.kind === 'scrubber');
        if (!washed) tell({ at: link.to.span, severity: missing(tell, 'warning'), message: `Nothing washes the gas before ${v.name}: mist of lye reaches it.`, fixes: v.all('scrubber').length ? [] : [insertBefore(link, 'scrubber', `Put a wash bottle before ${v.name}`)] });
        else if (!caught && !scrubber?.part.implied) tell({ at: link.to.span, severity: 'hint', message: `Nothing catches the droplets that the wash bottle itself sends to ${v.name}.`, fixes: defined(scrubber && setValue(scrubber, 'demister', 'fibre', `Give ${scrubber.name} a fibre demister`)) });
    },
});

import { defineRule } from '../../define.js';

export default defineRule({
    name: 'part-joins-both-gases',
    family: 'the description',
    severity: 'error',
    summary: 'One part stands on the hydrogen path and on the oxygen path: it joins the two gases.',
    why: 'Together they explode. A wrong name on a path is enough to draw it, and a wrong hose to build it.',
    source: 'reading of the paths',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        if (v.the('stack')?.says('separator') === 'none') return;
        for (const name of v.paths.on('oxygen')) {
            const part = v.other(name);
            if (!part || !v.paths.mediaOf(name).has('hydrogen') || ['stack', 'fuel-cell', 'column'].includes(part.kind)) continue; // columns: both-gases-one-column
            if (part.kind === 'burner' && /^torch/.test(part.word('sort') ?? 'torch')) continue;
            const h = v.paths.place(name, 'hydrogen')!;
            const o = v.paths.place(name, 'oxygen')!;
            const fits = v.all(part.kind).find(p => p.name !== name && !v.paths.mediaOf(p.name).size);
            tell({
                at: o, message: `${name} is on the hydrogen path and on the oxygen path: it joins the two gases.`, related: [{ span: h, message: 'on the hydrogen path here' }],
                fixes: fits ? [{ title: `Use ${fits.name} on the oxygen path`, edits: v.paths.links.filter(l => l.medium === 'oxygen').flatMap(l => [l.from, l.to]).filter((s, i, all) => s.name === name && all.findIndex(t => t.span.start === s.span.start) === i).map(s => ({ span: s.span, text: fits.name })), preferred: true }] : [],
            });
        }
    },
});

import { defineRule } from '../../define.js';
import { insertBefore } from '../../path-fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'no-shut-off-at-store',
    family: 'storage',
    severity: 'error',
    summary: 'Nothing shuts the cylinder off by hand before the regulator or the hose.',
    why: 'Burning hydrogen is ended by shutting it off, not by putting it out.',
    source: 'store isolated on shut-down: hydrogen best-practice pages (h2tools.org); common practice, no source',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        if (v.yes('hand-valve')) return;
        for (const link of v.paths.from(v.name, 'hydrogen')) {
            const users = [link.to.name, ...v.paths.after(link.to.name, 'hydrogen')].filter(n => ['burner', 'fuel-cell', 'engine', 'balloon', 'regulator'].includes(v.other(n)?.kind ?? '') || n === 'user');
            if (!users.length) continue;
            const way = [link.to.name, ...v.paths.between(link.to.name, users[0], 'hydrogen')];
            const before = way.slice(0, way.findIndex(n => ['regulator', 'arrestor', 'check-valve', 'filter'].includes(v.other(n)?.kind ?? '')) >>> 0);
            if (before.some(n => v.other(n)?.kind === 'valve' && v.other(n)!.word('sort') === 'hand') || v.other(link.to.name)?.kind === 'valve') continue;
            tell({
                at: link.to.span, severity: missing(tell, 'error'), message: `Nothing shuts ${v.name} off by hand before ${link.to.name}: a burning leak cannot be ended.`,
                fixes: v.written.parts.has('valve') ? [] : [insertBefore(link, 'valve', `Put a hand valve before ${link.to.name}`)],
            });
        }
    },
});

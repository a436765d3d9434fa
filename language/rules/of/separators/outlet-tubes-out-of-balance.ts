import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'outlet-tubes-out-of-balance',
    family: 'separators and purity',
    severity: 'hint',
    summary: 'The outlet tube of one gas loses much more pressure than that of the other.',
    why: 'The difference stands across every separator. Hydrogen flows twice as much but is less than half as viscous: in equal tubes oxygen loses a little more.',
    source: 'laminar flow in tubes (Hagen-Poiseuille); 0.2 kPa: common practice, no source',
    under: ['heads-unequal', 'bubble-point-below-head'],
    on: 'stack',
    check(v, tell) {
        const tubes = v.all('tube');
        if (!tubes.length || !(v.maybeQ('separator-head') > DIFFERENCE)) return;
        const lost = (medium: 'hydrogen' | 'oxygen') => {
            const after = new Set(v.paths.after(v.name, medium));
            return tubes.filter(t => after.has(t.name)).map(t => ({ t, drop: t.maybeQ('drop', 0) }));
        };
        const [h, o] = [lost('hydrogen'), lost('oxygen')];
        const sum = (list: typeof h) => list.reduce((s, x) => s + x.drop, 0);
        const difference = sum(h) - sum(o);
        if (!tell.exceeds(Math.abs(difference), DIFFERENCE, 'kPa', v)) return;
        const worst = (difference > 0 ? h : o).sort((a, b) => b.drop - a.drop)[0].t;
        tell({
            at: worst.at('bore'),
            message: `The tubes of the hydrogen lose ${show(sum(h), 'kPa', 2)}, those of the oxygen ${show(sum(o), 'kPa', 2)}: ${show(Math.abs(difference), 'kPa', 2)} more stands on one side of every separator; 0.2 kPa is the usual limit. A wider or shorter ${worst.name} evens it.`,
        });
    },
});

/** Pa. Common practice, no source. */
const DIFFERENCE = 200;

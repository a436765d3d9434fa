import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'balloon-exceeds-store',
    family: 'use',
    severity: 'warning',
    summary: 'The store before a balloon does not hold one filling.',
    why: 'The balloon hangs slack until more gas is made, and whoever draws the store down to nothing lets air in.',
    source: 'mass balance; contents of the cylinder as real gas: Lemmon, Huber & Leachman 2008',
    on: 'balloon',
    check(v, tell) {
        const fills = v.maybeQ('fills');
        if (!(fills < 0.99)) return;
        const volume = v.q('gas-volume');
        const store = v.paths.before(v.name, 'hydrogen').map(n => v.other(n)).find(p => p && (p.kind === 'cylinder' || p.kind === 'bag' || p.kind === 'gasometer'));
        tell({
            at: v.said('volume') ? v.at('volume') : v.at('diameter'),
            message: `${v.name} takes ${show(volume, 'L')}; ${store?.name ?? 'the store'} gives ${show(fills * volume, 'L')} before it counts as empty, ${digits(100 * fills, 2)} % of one filling.`,
            related: store ? [{ span: store.at('volume'), message: 'what it fills from' }] : [],
        });
    },
});

import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import type { Facts } from '../../../values/match.js';
import type { View } from '../../../quantities/view.js';

/** Kinds that hold lye or much water, and kinds that a spill shorts or makes live. */
const wet = new Set(['stack', 'column', 'cooler', 'circulation-pump', 'bubbler', 'scrubber', 'seal']);
const electric = new Set(['supply', 'transformer', 'rectifier', 'capacitor', 'battery', 'charger', 'compressor', 'contactor', 'relay', 'solid-state-relay', 'controller', 'feed', 'fuse', 'fan']);

export default defineRule({
    name: 'wet-parts-above-electrics',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'What holds lye or water stands higher than something electrical, and no tray is between them.',
    why: 'One loose hose then pours lye onto live metal: shock, fire, and hydrogen from every aluminium part it wets.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'site',
    check(v, tell) {
        const rows = v.rows('heights');
        if (!rows.length || v.all('tray').length) return;
        const height = new Map<string, number>();
        for (const row of rows) height.set(nameOf(row), row.get('at')?.number ?? NaN);
        const low = rows.filter(row => electric.has(v.other(nameOf(row))?.kind ?? ''));
        const high: { part: View; foot: number }[] = [...wet].flatMap(kind => v.all(kind)).map(part => ({ part, foot: footOf(part, height) })).filter(h => h.foot === h.foot);
        for (const row of low) {
            const name = nameOf(row);
            const at = height.get(name)!;
            const above = high.filter(h => h.foot > at).sort((a, b) => b.foot - a.foot);
            if (!above.length) continue;
            const fact = row.get('at')!;
            const span = v.at('heights');
            tell({
                at: { ...span, start: span.start + fact.start, end: span.start + fact.end },
                related: above.slice(0, 3).map(h => ({ span: h.part.at(), message: `at ${show(h.foot, 'm')}` })),
                message: `${above.slice(0, 2).map(h => h.part.name).join(' and ')} stand${above.length > 1 ? '' : 's'} higher than ${name} at ${show(at, 'm')}, and no tray is named: a loose hose pours lye or water onto it.`,
            });
            return;
        }
    },
});

const nameOf = (row: Facts) => row.get('')?.names?.[0] ?? '';
/** m above the floor where a wet part begins: told in the list of the site, or by the part itself. */
function footOf(part: View, listed: ReadonlyMap<string, number>): number {
    const told = listed.get(part.name);
    if (told !== undefined) return told;
    return part.kind === 'column' ? part.maybe('base-height') : part.kind === 'stack' ? part.maybe('top-height') : NaN;
}

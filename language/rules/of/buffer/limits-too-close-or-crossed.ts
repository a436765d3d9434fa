import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'limits-too-close-or-crossed',
    family: 'buffer',
    severity: 'error',
    summary: 'Two points that must lie apart are crossed, meet, or come in the wrong order.',
    why: 'A crossed pair never works; a close one chatters; a trip before its switch stops the rig for nothing, until somebody takes it out.',
    source: 'logic of the two points; tolerances as stated; 2 % of the point at least: common practice, no source',
    on: ['switch', 'trip'],
    check(v, tell) {
        const sensed = v.controls.sensed(v) ?? '';
        const unit = v.given(v.kind === 'trip' ? 'trips' : 'breaks').facts.get('value')?.amount?.unit?.text ?? '';
        const on = v.maybe('makes.value');
        const off = v.maybe('breaks.value');
        const side = v.word('breaks.side');
        if (v.kind === 'switch' && on === on && off === off) {
            if (side === v.word('makes.side')) {
                tell({ at: v.at('makes'), message: `${v.name} makes and breaks ${side} a point: one of the two should be ${side === 'above' ? 'below' : 'above'}.`, related: [{ span: v.at('breaks'), message: 'breaks here' }] });
                return;
            }
            const gap = side === 'above' ? off - on : on - off;
            const a = v.bounds('breaks.value');
            const b = v.bounds('makes.value');
            const overlap = side === 'above' ? b.high - a.low : a.high - b.low;
            if (gap <= 0) tell({ at: v.at('makes'), message: `${v.name} breaks ${side} ${show(off, unit)} and makes ${side === 'above' ? 'below' : 'above'} ${show(on, unit)}: the two points are crossed.`, related: [{ span: v.at('breaks'), message: 'breaks here' }] });
            else if (overlap > 1e-9 * Math.abs(off)) tell({ at: v.at('makes'), severity: 'warning', message: `With their tolerances the two points of ${v.name} overlap: it may chatter or stick.`, related: [{ span: v.at('breaks'), message: 'breaks here' }] });
            else if (!/temperature/.test(sensed) && gap < 0.02 * Math.abs(off)) tell({ at: v.at('makes'), severity: 'warning', message: `The two points of ${v.name} lie only ${show(gap, unit, 2)} apart: it will chatter.`, related: [{ span: v.at('breaks'), message: 'breaks here' }] });
        }
        if (v.kind === 'switch' && side !== 'below') return; // speed only
        const others = v.controls.sensing(sensed).filter(o => o.name !== v.name);
        if (!others.length) return; // speed only
        // A switch that starts a draw says with `makes` where full is; one that ends it says with `breaks` where empty is.
        const starts = (d: View) => v.controls.listeners(d.name).some(n => v.other(n)!.names('latched-by').includes(d.name));
        if (v.kind === 'switch' && /\.volume$/.test(sensed) && side === 'below' && !starts(v)) {
            for (const o of others) {
                const key = o.word('breaks.side') === 'above' ? 'breaks' : o.kind === 'switch' && starts(o) && o.word('makes.side') === 'above' ? 'makes' : o.word('trips.side') === 'above' ? 'trips' : undefined;
                const full = key ? o.maybe(`${key}.value`) : NaN;
                if (key && full <= off) tell({ at: v.at('breaks'), message: `${v.name} counts as empty at ${show(off, unit)} and ${o.name} as full at ${show(full, unit)}: the two are crossed.`, related: [{ span: o.at(key), message: 'full here' }] });
            }
        }
        if (v.kind === 'trip') {
            const trips = v.maybe('trips.value');
            const away = v.word('trips.side');
            for (const o of others) {
                const key = o.word('breaks.side') === away ? 'breaks' : starts(o) && o.word('makes.side') === away ? 'makes' : undefined;
                const works = key ? o.maybe(`${key}.value`) : NaN;
                if (key && (away === 'above' ? trips <= works : trips >= works)) tell({ at: v.at('trips'), severity: 'warning', message: `${v.name} trips at ${show(trips, unit)}, before ${o.name} acts at ${show(works, unit)}: it stops the rig in ordinary running.`, related: [{ span: o.at(key), message: 'the switch' }] });
            }
        }
    },
});

import { defineRule } from '../../define.js';
import { isIndoors, stores } from '../../place.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'ignition-or-intake-near',
    family: 'siting',
    severity: 'warning',
    summary: 'A flame, a spark or an air intake is near.',
    why: 'A leak that drifts to a pilot flame burns all the way back.',
    source: '25 ft (7.6 m) to ignition and 50 ft (15 m) to intakes: table of 29 CFR 1910.103 for delivered systems, a guide only; 3 m: common practice, no source',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        if (!v.the('stack')) return;
        const kept = stores(v).length + v.all('compressor').length > 0;
        const indoors = isIndoors(v) === true;
        for (const row of v.rows('ignition-sources')) {
            const fact = row.get('distance');
            const distance = fact?.number ?? NaN;
            const entry = v.part.entries.get('ignition-sources');
            if (!(distance < 7.6) || !entry) continue;
            const what = row.get('what')?.text ?? row.get('what')?.word ?? 'something that can light it';
            tell({
                at: { ...entry.span, start: entry.span.start + (row.get('what')?.start ?? 0), end: entry.span.start + (fact?.end ?? 1) },
                severity: distance < 3 && indoors && kept ? 'error' : kept || distance < 3 ? 'warning' : 'hint',
                message: `${what} stands ${show(distance, 'm')} away${distance < 3 && indoors ? ' in the same room' : ''}; 7.6 m is a usual guide for what can light hydrogen.`,
            });
        }
        for (const vent of v.all('vent').filter(o => v.paths.mediaOf(o.name).has('hydrogen'))) {
            if (vent.maybe('from-ignition') < 3) tell({ at: vent.at('from-ignition'), message: `${vent.name} ends ${show(vent.num('from-ignition'), 'm')} from something that can light it; 3 m is the least, 7.6 m a usual guide.` });
            if (vent.maybe('from-openings') < 3) tell({ at: vent.at('from-openings'), message: `${vent.name} ends ${show(vent.num('from-openings'), 'm')} from a window, door or intake; 3 m is the least.` });
        }
        if (v.maybe('air-intakes') < 3) tell({ at: v.at('air-intakes'), severity: kept ? 'warning' : 'hint', message: `An air intake or window lies ${show(v.num('air-intakes'), 'm')} away: a leak would be drawn in. 15 m is a guide for larger stores.` });
    },
});

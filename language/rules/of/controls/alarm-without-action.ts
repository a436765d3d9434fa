import { defineRule } from '../../define.js';

export default defineRule({
    name: 'alarm-without-action',
    family: 'controls',
    severity: 'warning',
    summary: 'It warns, and nothing acts.',
    why: 'Nobody hears a warning at night, and a minute is too long.',
    source: 'common practice, no source',
    guardsLife: true,
    from: 'drawn',
    on: ['analyser', 'detector', 'trip'],
    check(v, tell) {
        const stops = v.controls.stops(v.name);
        const told = v.controls.listeners(v.name);
        if (v.said('trips') && stops.length) return;
        if (v.said('trips') && !told.length) return;
        if (!v.said('trips') && !v.said('alarm')) return;
        if (stops.length) return;
        tell({ at: v.at(v.said('alarm') ? 'alarm' : 'trips'), message: `${v.name} warns, but stops nothing.` });
    },
});

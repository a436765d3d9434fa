import { defineRule } from '../../define.js';

export default defineRule({
    name: 'no-over-temperature-trip',
    family: 'heat',
    severity: 'warning',
    summary: 'Nothing stops the stack when it gets too hot.',
    why: 'Warm lye takes more current, which warms it further; a cooler without water is no cooler.',
    source: 'common practice, no source',
    from: 'drawn',
    on: 'stack',
    check(v, tell) {
        const stops = v.controls.stackStoppers();
        if (v.controls.sensing(`${v.name}.temperature`).some(s => stops.has(s.name))) return;
        const hot = v.maybeQ('steady-temperature');
        if (!v.all('cooler').length && !(hot > v.num('max-temperature') - 10)) return;
        if (!v.controls.sources().length) return;
        tell({ at: v.at(), message: v.all('cooler').length ? `When the cooling fails nothing stops ${v.name}: no switch or trip senses its temperature.` : `${v.name} comes near its limit, and no switch or trip senses its temperature.` });
    },
});

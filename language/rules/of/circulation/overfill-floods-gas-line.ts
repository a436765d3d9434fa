import { defineRule } from '../../define.js';
import { insertAfter, defined } from '../../fixes.js';
import { freeName, listEdit, together } from '../../path-fixes.js';

export default defineRule({
    name: 'overfill-floods-gas-line',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'Water comes in by itself, and nothing ends it when the level is too high.',
    why: 'A valve that sticks open fills the column to the lid. Thin lye then goes out by the gas line, shuts it, and the pressure looks for the way through the separators.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'valve',
    check(v, tell) {
        const sort = v.word('sort');
        if (sort !== 'solenoid' && sort !== 'motor') return;
        for (const name of v.paths.after(v.name, 'water')) {
            const column = v.other(name);
            if (column?.kind !== 'column') continue;
            const acts = v.controls.stoppers(v.name);
            const stops = v.controls.stackStoppers();
            const quantity = `${column.name}.level`;
            // The switch that meters the water is the one that sticks with it: a guard of its own is asked for.
            const guards = v.controls.sensing(quantity, ['trip', 'switch']).filter(g => g.word('trips.side') === 'above' || (g.kind === 'switch' && g.word('breaks.side') === 'above' && !v.names('opened-by').includes(g.name) && !v.names('open-while').includes(g.name)));
            if (guards.some(g => acts.has(g.name) || stops.has(g.name))) continue;
            const trip = freeName(v, `${column.name}-high`);
            const level = column.maybe('level');
            const limit = level > 0 && column.said('level') ? `above ${Math.round(level * 1e3) + 40} mm` : undefined;
            const declared = limit && insertAfter(v, `trip ${trip} {\n${Object.entries({ senses: quantity, trips: limit, resets: 'by hand', 'if-wire-breaks': 'trips' }).map(([k, t]) => `  ${`${k}:`.padEnd(18)}${t}`).join('\n')}\n}`, '');
            const link = v.paths.from(v.name, 'water')[0];
            tell({
                at: link?.span ?? v.at(), related: [{ span: column.at(), message: 'is filled' }],
                message: `${v.name} fills ${column.name} by itself, and no level trip of its own ends that: if it sticks open, the column runs over into the gas line.`,
                fixes: defined(!declared ? undefined : together(`Shut ${v.name} when ${column.name} is too full`, listEdit(v, 'shut-by', trip), declared)),
            });
            return;
        }
    },
});

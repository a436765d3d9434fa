import { defineRule } from '../../define.js';
import { duration } from '../../../units/format.js';

export default defineRule({
    name: 'no-low-level-cut-out',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'Nothing stops the stack when the lye runs low.',
    why: 'Dry plates get hot and bring the two gases together.',
    source: 'common practice, no source',
    guardsLife: true,
    from: 'drawn',
    on: 'column',
    check(v, tell) {
        if (v.the('routine')?.word('attended') === 'yes' && v.the('stack') && v.the('stack')!.maybe('cells', 0) <= 3) return;
        const stops = v.controls.stackStoppers();
        if (v.controls.sensing(`${v.name}.level`).some(s => stops.has(s.name))) return;
        const t = v.maybeQ('time-to-port');
        tell({ at: v.at(), message: `Nothing that senses the level of ${v.name} stops the stack${t === t ? `; by water use alone the port is bare after ${duration(t)}` : ''}.` });
    },
});

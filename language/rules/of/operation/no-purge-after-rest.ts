import { stores } from '../../place.js';
import { defineRule } from '../../define.js';
import { duration } from '../../../units/format.js';

/** 1/s: one start a day, less what rounding takes. */
const DAILY = 0.95 / 86400;

export default defineRule({
    name: 'no-purge-after-rest',
    family: 'operation',
    severity: 'warning',
    summary: 'It rests for days, and nothing drives the air out before it fills its store again.',
    why: 'While it rests the gas cools and shrinks, seals dry, and air creeps in through film and hoses; the next gas carries it into the store.',
    source: 'common practice, no source',
    guardsLife: true,
    from: 'built',
    on: 'routine',
    check(v, tell) {
        const starts = v.maybe('starts');
        if (!v.said('starts') || !(starts < DAILY) || !v.the('stack')) return;
        const line = v.paths.on('hydrogen');
        const kept = stores(v).find(s => line.includes(s.name));
        if (!kept) return;
        if (v.rows('steps').some(r => /purg|vent|flush|roll|collapse/i.test(r.get('')?.text ?? ''))) return;
        // What looks at the gas, or leads the first of it outdoors, does it by itself.
        if (v.all('analyser').some(a => /\.oxygen$/.test(v.controls.sensed(a) ?? ''))) return;
        if (v.all('valve').some(o => o.said('shut-while') && v.paths.after(o.name, 'hydrogen').some(n => v.other(n)?.kind === 'vent' || n === 'outdoors'))) return;
        tell({
            at: v.at('starts'),
            message: `It rests ${duration(1 / starts)} between starts, and no step drives out the air before ${kept.name} is filled: the first gas of a start belongs outdoors, five times the volume of the lines.`,
        });
    },
});

import { append, defined } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { digits, duration, show } from '../../../units/format.js';
import { freeName, listEdit, together } from '../../path-fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'suction-pulls-below-ambient',
    family: 'compressor',
    severity: 'error',
    summary: 'Nothing stops the compressor when the bag is empty, or what stops it acts too late.',
    why: 'It draws air in at every joint and lye over from the columns, and what it presses then explodes.',
    source: '-0.2 kPa: common practice, no source; arcs of windings in thin gas: compressor makers\' guides, Paschen\'s law (least breakdown of hydrogen about 270 V), from memory',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        const before = v.paths.before(v.name, 'hydrogen');
        if (!before.length || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const own = v.controls.involved(v.name);
        const places = [...before, v.name];
        const guards = places.flatMap(n => [`${n}.volume`, `${n}.pressure`, `${n}.suction-pressure`]).flatMap(q => v.controls.limits(own, q, 'below'));
        const bag = [...v.all('bag'), ...v.all('gasometer')].find(b => before.includes(b.name));
        const rests = bag ? (bag.kind === 'bag' ? bag.maybe('own-pressure') : bag.maybeQ('head')) : NaN;
        if (!guards.length) {
            const time = bag?.maybeQ('drain-time') ?? NaN;
            const name = freeName(v, 'suction-low');
            const point = rests > 0 ? `${digits(rests / 2000, 2)} kPa` : undefined;
            const contactor = v.controls.interrupters(v.name)[0] ?? v;
            tell({
                at: v.at(), severity: missing(tell, 'error'), message: `Nothing stops ${v.name} when ${bag?.name ?? before[0]} is empty${time > 0 ? `, ${duration(time)} after the stack has stopped` : ''}: it then draws air in at every joint${(v.word('sort') ?? '').startsWith('hermetic') ? ', and its winding can arc in the thin gas' : ''}.`,
                related: bag ? [{ span: bag.at(), message: 'what it empties' }] : [],
                fixes: defined(bag && point ? together('Plan a cut-out by low suction', append(v, `trip ${name} {\n  senses:           ${bag.name}.pressure\n  trips:            below ${point}\n  resets:           by hand\n  if-wire-breaks:   trips\n}`, ''), listEdit(contactor, 'stopped-by', name)) : undefined),
            });
            return;
        }
        for (const g of guards.filter(x => /pressure$/.test(v.controls.sensed(x) ?? ''))) {
            const key = v.controls.actsAt(g);
            const point = g.maybe(`${key}.value`);
            if (point < -200) tell({ at: g.at(key), message: `${g.name} acts at ${show(point, 'kPa')}: by then air has come in. It must act above the air outside.` });
            else if (point >= rests) tell({ at: g.at(key), severity: 'warning', message: `${g.name} acts at ${show(point, 'kPa')} and ${bag!.name} gives ${show(rests, 'kPa')}: it never lets ${v.name} run.`, related: [{ span: bag!.at('own-pressure'), message: 'the pressure of the bag' }] });
        }
    },
});

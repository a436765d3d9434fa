import { addToList, freeName, listEdit, together } from '../../path-fixes.js';
import { append, defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'oxygen-in-hydrogen-before-compressor',
    family: 'separators and purity',
    severity: 'error',
    summary: 'Nothing looks at the gas before it is compressed, or what looks does not stop the compressor.',
    why: 'A torn separator fills the cylinder with a charge that explodes. In 2019 oxygen above 3 % was known and ignored before a tank burst and killed.',
    source: 'explosive from about 5 % oxygen (rich limit 75 % hydrogen in air, handbooks); stop at 1 %: common practice, no source; accident of Gangneung, 2019',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        if (!v.paths.mediaOf(v.name).has('hydrogen') || !v.the('stack')) return;
        const watchers = v.all('analyser').filter(a => /\.oxygen$/.test(v.controls.sensed(a) ?? ''));
        if (!watchers.length) {
            const before = v.paths.before(v.name, 'hydrogen');
            const where = ['scrubber', 'bubbler', 'bag', 'gasometer', 'column'].map(k => before.find(n => v.other(n)?.kind === k)).find(n => n) ?? before[0] ?? v.the('stack')!.name;
            const name = freeName(v, 'oxygen-watch');
            const target = v.all('contactor').find(c => c.names('latched-by').length) ?? v.controls.interrupters(v.name)[0] ?? v;
            tell({
                at: v.at(), severity: missing(tell, 'error'), message: 'Nothing measures oxygen in the hydrogen before it is compressed; a torn separator would fill the cylinder with an explosive charge.',
                fixes: defined(together('Plan an oxygen analyser that stops it', append(v, `analyser ${name} {\n  senses:           ${where}.oxygen\n  alarm:            above 0.5 %\n  trips:            above 1 %\n  resets:           by hand\n  if-wire-breaks:   trips\n  if-unpowered:     trips\n}`, ''), listEdit(target, 'stopped-by', name))),
            });
            return;
        }
        const stack = v.controls.stackStoppers();
        for (const a of watchers) {
            const trip = a.maybe('trips.value');
            if (!a.said('trips')) tell({ at: a.at(), message: `${a.name} only tells; it has no trip. Oxygen above 1 % must stop ${v.name}.` });
            else if (trip > 0.0201) tell({ at: a.at('trips'), message: `${a.name} trips at ${show(trip, '%')} oxygen; 1 % is usual, and about 5 % explodes.`, fixes: defined(setValue(a, 'trips', 'above 1 %', 'Let it trip at 1 %')) });
        }
        if (!watchers.some(a => v.controls.stoppers(v.name).has(a.name) || stack.has(a.name)) && watchers.some(a => v.controls.listeners(a.name).length)) {
            const target = v.controls.interrupters(v.name)[0] ?? v;
            tell({ at: v.at(v.said('needs') ? 'needs' : undefined), message: `${watchers[0].name} watches for oxygen and does not stop ${v.name}.`, related: [{ span: watchers[0].at(), message: 'watches' }], fixes: defined(addToList(target, 'stopped-by', watchers[0].name, `Let it stop ${v.name}`)) });
        }
    },
});

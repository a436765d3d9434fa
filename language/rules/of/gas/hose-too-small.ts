import { gasOf } from '../../../quantities/heads.js';
import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

/** Pa and m/s that a clean dry hose of the low side may take. Common practice, no source. */
const MOST_DROP = 200;
const MOST_SPEED = 5;
/** m, bores that hoses are sold in. */
const BORES = [0.004, 0.005, 0.006, 0.008, 0.01, 0.012, 0.016, 0.02];

export default defineRule({
    name: 'hose-too-small',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'A hose of the low side is so narrow that it holds the gas back.',
    why: 'What it takes stands across every separator, and with a slug of water in it several times as much.',
    source: 'Hagen-Poiseuille, Blasius; 0.2 kPa and 5 m/s: common practice, no source',
    on: 'tube',
    check(v, tell) {
        if (!v.said('bore') && !v.said('size')) return;
        const stack = v.the('stack');
        const gas = gasOf(v);
        const way = stack && gas && v.paths.route(stack.name, v.name, gas);
        // Behind a store the flow is what the user draws.
        if (!way || way.some(n => ['bag', 'gasometer', 'compressor', 'cylinder', 'regulator'].includes(v.other(n)?.kind ?? ''))) return;
        // A length that is only assumed tells no pressure, but the speed.
        const drop = v.said('length') ? v.maybeQ('drop') : NaN;
        const speed = v.maybeQ('speed');
        const bore = v.maybe('bore');
        const said = v.said('bore') ? 'bore' : 'size';
        const [tight, fast] = [tell.exceeds(drop, MOST_DROP, 'kPa', v, said), tell.exceeds(speed, MOST_SPEED, 'm/s', v, said)];
        if (!tight && !fast) return;
        // Laminar friction falls with the fourth power of the bore, speed with the second.
        const needed = bore * Math.max((drop / MOST_DROP || 0) ** 0.25, (speed / MOST_SPEED) ** 0.5);
        const wider = BORES.find(b => b >= needed * 1.02);
        tell({
            at: v.at(said), severity: tight ? 'warning' : 'hint',
            message: tight
                ? `${show(v.maybe('length'), 'm')} of it take ${show(drop, 'kPa', 2)} from the ${gas}, clean and dry; ${show(MOST_DROP, 'kPa')} is the most that a hose should add to its side.`
                : `The ${gas} flows at ${show(speed, 'm/s', 2)} in ${v.name}; above ${show(MOST_SPEED, 'm/s')} it pushes water and mist along.`,
            fixes: defined(wider && v.said('bore') ? setValue(v, 'bore', show(wider, 'mm'), `Take ${show(wider, 'mm')} of bore`) : undefined),
        });
    },
});

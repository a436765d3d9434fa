import { digits, show } from '../../../units/format.js';
import { addStackTrip, stackGuards } from '../../guards.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

/** m: closer to the port than this a trip acts when it is over. Own choice, no source. */
const MARGIN = 1e-3;

export default defineRule({
    name: 'no-low-level-cut-out',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'Nothing stops the stack before the level of a column reaches its return port, though it runs for hours or alone.',
    why: 'A dry cell mixes the two gases and arcs. A blocked link empties one side only, so one switch does not serve for two.',
    source: 'common practice, no source',
    guardsLife: true,
    from: 'drawn',
    on: 'column',
    check(v, tell) {
        const routine = v.the('routine');
        const attended = routine?.word('attended');
        const hours = (routine?.maybe('hours') ?? NaN) * 24;
        const alone = attended === 'no' || attended === 'first';
        if (!v.the('stack') || !v.controls.sources().length) return;
        const [level, port] = [v.maybe('level'), v.maybe('return-port')];
        const guards = stackGuards(v, `${v.name}.level`, 'below');
        const bare = level - port;
        if (guards.length) {
            if (!guards.every(g => g.at < bare + MARGIN)) return;
            const best = guards.reduce((a, b) => (b.at > a.at ? b : a));
            const key = best.view.word('trips.side') ? 'trips' : 'breaks';
            const wanted = Math.round((level - 0.6 * port) * 1000);
            tell({
                at: best.view.at(key), message: `${best.view.name} acts below ${show(best.at, 'mm')}; the return port of ${v.name} is bare below ${show(bare, 'mm')}.`,
                related: [{ span: v.at('return-port'), message: 'the port' }], fixes: defined(setValue(best.view, key, `below ${wanted} mm`, `Let it act at ${wanted} mm`)),
            });
            return;
        }
        if (!alone && !(hours > 2)) return;
        const at = Math.round((level - 0.6 * port) * 1000);
        const name = `${v.name}-low`;
        const lines = { senses: `${v.name}.level`, trips: `below ${at} mm`, resets: 'by hand', 'if-wire-breaks': 'trips', 'if-detached': 'trips' };
        const fix = addStackTrip(v, name, lines, `Stop the stack when ${v.name} is low`);
        tell({
            at: v.at(), fixes: defined(fix),
            message: `Nothing stops the stack when the level of ${v.name} runs ` +
                `low${alone ? ', and it runs alone' : `, and it runs ${digits(hours, 2)} h a day`}.`,
        });
    },
});

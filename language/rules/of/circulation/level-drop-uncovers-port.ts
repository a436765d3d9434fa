import { duration, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { stackGuards } from '../../guards.js';

export default defineRule({
    name: 'level-drop-uncovers-port',
    family: 'circulation and levels',
    severity: 'error',
    summary: 'The water used up between two fillings lowers the level to the return port.',
    why: 'Then gas goes down the return into the stack and over to the other side, and the cells run dry at the top.',
    source: 'stoichiometry; vapour over lye, Balej 1985',
    guardsLife: true,
    on: 'column',
    check(v, tell) {
        const port = v.maybe('return-port');
        const time = v.maybeQ('time-to-port');
        const routine = v.the('routine');
        const down = v.maybeQ('level-down', 0);
        if (port - Math.max(0, down) < 0.001) {
            tell({
                at: v.at('return-port'),
                message: `The heads push the level of ${v.name} down by ${show(down, 'mm')}; its return port lies ${show(port, 'mm')} ` +
                    'deep and is bare from the start.',
            });
            return;
        }
        // Water that comes by itself is another matter: what stops it is looked at elsewhere.
        if (!(time > 0) || v.paths.to(v.name, 'water').length) return;
        const every = routine?.maybe('water-fill.every') ?? NaN;
        const hours = routine?.maybe('hours') ?? NaN;
        const run = every === every ? every : hours / (routine?.maybe('starts', 1 / 86400) ?? NaN);
        if (run !== run) {
            if (time < 8 * 3600 && routine) tell.cannotCheck(routine, 'hours', `whether ${v.name} keeps its port covered, ${duration(time)} of running`);
            return;
        }
        if (!(time < run)) return;
        const level = v.maybe('level');
        const stops = stackGuards(v, `${v.name}.level`, 'below').filter(g => g.at >= level - port - 1e-6);
        const speed = v.maybeQ('level-fall');
        const deeper = Math.ceil((speed * run * 1.2 + Math.max(0, down)) * 100) / 100;
        const depth = `${Math.round(deeper * 1000)} mm`;
        // Where one column is like the other, it is told once.
        const from = v.given('return-port').from;
        if (from && v.other(from.name) && v.says('bore') === 'like') return;
        const drops = `The level falls ${show(speed, 'mm/h', 2)}: the port of ${v.name} is bare after ${duration(time)}, ` +
            `and water comes only after ${duration(run)}.`;
        if (stops.length) {
            tell({ at: v.at('return-port'), severity: 'hint', message: `${drops} ${stops[0].view.name} stops the stack before that.` });
            return;
        }
        tell({
            at: v.at('return-port'), message: drops, severity: v.said('return-port') && v.said('bore') ? 'error' : 'warning',
            related: [every === every ? { span: routine!.at('water-fill'), message: 'when water is added' } : { span: routine!.at('hours'), message: 'how long it runs' }],
            fixes: defined(deeper < level - 0.02 ? setValue(v, 'return-port', depth, `Put the port ${depth} under the level`) : undefined),
        });
    },
});

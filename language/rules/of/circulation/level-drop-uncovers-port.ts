import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'level-drop-uncovers-port',
    family: 'circulation and levels',
    severity: 'error',
    summary: 'The heads push the level of a column below its return port.',
    why: 'Gas then goes down the return into the stack and over to the other side.',
    source: 'hydrostatics',
    guardsLife: true,
    on: 'column',
    check(v, tell) {
        const port = v.num('return-port');
        const level = v.num('level');
        const down = v.maybeQ('level-down', 0);
        if (!(level - down < port + 0.005)) return;
        tell({ at: v.at(v.says('level') === 'stated' ? 'level' : 'return-port'), message: down > 0.001 ? `The heads push the level down by ${show(down, 'mm')} to ${show(level - down, 'mm')}; the return port opens at ${show(port, 'mm')}.` : `The level of ${show(level, 'mm')} does not cover the return port at ${show(port, 'mm')}.` });
    },
});

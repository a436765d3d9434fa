import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { oxygenDuty } from '../../oxygen.js';

export default defineRule({
    name: 'oxygen-valve-opens-fast',
    family: 'storage',
    severity: 'warning',
    summary: 'A valve throws oxygen under pressure into the next part at once.',
    why: 'Gas that is rammed against a dead end gets hot enough to light the seat, the seal and a trace of oil: that is how oxygen regulators burn out.',
    source: 'slow opening of oxygen valves: EIGA Doc 33 and gas industry leaflets, from memory',
    guardsLife: true,
    on: 'valve',
    check(v, tell) {
        if (oxygenDuty(v) !== 'pressed') return;
        if (notGiven(v, 'sort')) tell.cannotCheck(v, 'sort', `whether ${v.name} opens at once onto oxygen`);
        if ((v.word('sort') ?? 'hand') === 'hand') return;
        tell({ at: v.at('sort'), message: `${v.name} opens at once onto oxygen under pressure: what it rams against gets hot enough to burn. A hand valve with a screw, opened slowly, belongs there.` });
    },
});

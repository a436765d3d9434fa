import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'mixed-lye-return',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'The lye of both sides meets and carries dissolved gas across.',
    why: 'Lye comes out of the cells full of gas. Where both returns meet, half of it changes sides at every turn, and no separator helps; on common loops most of the foreign gas comes this way.',
    source: 'Trinke et al. 2018 (most of the crossing by mixed loops); 1 % as half of the customary trip, from memory',
    on: 'link',
    check(v, tell) {
        const shared = v.word('shared');
        if (shared !== 'returns' && shared !== 'pumped-loop') return;
        const stack = v.the('stack');
        const foul = stack?.maybeQ('hydrogen-in-oxygen') ?? NaN;
        if (!tell.exceeds(foul, 0.01, '%', v, 'shared')) return;
        const flow = stack!.maybeQ('lye-flow-oxygen');
        tell({
            at: v.at('shared'),
            message: `${flow > 0 ? `${show(flow, 'L/min', 2)} of shared lye` : 'The shared lye'} carries dissolved hydrogen to the oxygen: about ${show(foul, '%', 2)} of hydrogen is in it at the working current (within a factor of three); the usual trip is 2 %. ` +
                'Two circuits with only a narrow link between them keep the gases apart.',
            fixes: defined(setValue(v, 'shared', 'none', 'Give each side a circuit of its own')),
        });
    },
});

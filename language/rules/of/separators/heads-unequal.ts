import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'heads-unequal',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'One gas works against more pressure than the other, all the time.',
    why: 'The difference stands across every separator and drives lye and dissolved gas to the other side.',
    source: '0.5 kPa: common practice, no source; crossover grows with the difference (Trinke 2018)',
    under: ['bubble-point-below-head', 'bubbler-connected-backwards'],
    on: 'stack',
    check(v, tell) {
        const h = v.q('hydrogen-head');
        const o = v.q('oxygen-head');
        const difference = v.q('separator-head');
        if (!tell.exceeds(difference, 500, 'kPa', v)) return;
        const low = h < o ? 'hydrogen' : 'oxygen';
        const bubbler = v.all('bubbler').find(b => v.paths.mediaOf(b.name).has(low));
        // Deeper by what the difference is in the liquid of this very bubbler.
        const depth = bubbler ? Math.round(bubbler.num('immersion') * (1 + difference / bubbler.q('head')) * 1000) : NaN;
        tell({
            at: bubbler ? bubbler.at('immersion') : v.at(),
            message: `The hydrogen side works against ${show(h, 'kPa')}, the oxygen side against ${show(o, 'kPa')}: ${show(difference, 'kPa')} stands across every separator; 0.5 kPa is the usual limit.`,
            fixes: defined(bubbler && depth > 0 ? setValue(bubbler, 'immersion', `${depth} mm`, `Set ${bubbler.name} to ${depth} mm`) : undefined),
        });
    },
});

import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { insertBefore } from '../../path-fixes.js';
import { defined } from '../../fixes.js';

export default defineRule({
    name: 'bubbler-floods-back',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'When the stack cools, the liquid of the bubbler is drawn back into it.',
    why: 'Warm wet gas shrinks by a quarter and more. It draws the liquid up the dip tube into the column, and what follows is air: the mixture is then inside, and the bubbler stops no flame.',
    source: 'ideal gas; Dalton; vapour over lye, Balej 1985',
    guardsLife: true,
    on: ['bubbler', 'scrubber'],
    check(v, tell) {
        const holds = v.maybe('water');
        const back = v.maybeQ('sucked-back');
        if (!(back > 0)) return;
        const gas = v.paths.mediaOf(v.name).has('hydrogen') ? 'hydrogen' : 'oxygen';
        const stack = v.the('stack')!;
        const way = v.paths.route(stack.name, v.name, gas)!;
        const column = way.map(n => v.other(n)).find(p => p?.kind === 'column');
        // What is only assumed of the column tells no volume.
        if (!column || !['bore', 'level', 'height'].every(k => column.said(k))) return;
        const trap = way.map(n => v.other(n)).find(p => p?.kind === 'trap' && p.word('sort') === 'reverse');
        if (trap) {
            // It catches all the liquid if it can hold as much.
            const takes = trap.maybe('volume');
            if (notGiven(trap, 'volume')) tell.cannotCheck(trap, 'volume', `whether ${trap.name} catches what is drawn back when the stack cools`);
            if (tell.fallsShort(takes, Math.min(back, holds), 'L', trap, 'volume')) {
                tell({ at: trap.at('volume'), message: `${trap.name} takes ${show(takes, 'L')}; when the stack cools, up to ${show(Math.min(back, holds), 'L', 2)} of the liquid of ${v.name} come back.`, related: [{ span: v.at('water'), message: 'comes back' }] });
            }
            return;
        }
        if (notGiven(v, 'water')) tell.cannotCheck(v, 'water', `whether all that is in ${v.name} is drawn back when the stack cools`);
        if (!tell.exceeds(back, holds, 'L', v, 'water')) return;
        const link = v.paths.link(way.at(-2)!, v.name, gas);
        tell({
            at: v.at('water'), related: [{ span: column.at(), message: 'its gas shrinks' }],
            message: `When the stack cools, the gas in ${column.name} shrinks by ${show(back, 'L', 2)}; ${v.name} holds ${show(holds, 'L')}, so all of it is drawn back, and ${gas === 'oxygen' || !v.paths.after(v.name, gas).some(n => ['bag', 'gasometer'].includes(v.other(n)?.kind ?? '')) ? 'air' : 'gas of the bag'} after it.`,
            fixes: defined(link && !v.all('trap').length ? insertBefore(link, 'trap', `Put a reverse trap before ${v.name}`) : undefined),
        });
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'sun-heats-cylinder',
    family: 'storage',
    severity: 'warning',
    summary: 'On the hottest day the full cylinder passes its rating or its relief valve.',
    why: 'Gas that is warmed in a shut vessel presses more, with nobody running anything.',
    source: 'ideal gas law',
    on: 'cylinder',
    check(v, tell) {
        const hot = v.maybeQ('pressure-hot');
        const off = v.maybeQ('cut-off');
        if (off !== off) return;
        const rating = v.maybe('rating');
        const relief = Math.min(Infinity, ...v.all('relief-valve').filter(r => v.paths.route(v.name, r.name, 'hydrogen') && !v.paths.between(v.name, r.name, 'hydrogen').some(n => v.other(n)?.kind === 'regulator')).map(r => r.maybe('set', Infinity)));
        if (hot > rating) tell({ at: v.at('rating'), severity: 'error', message: `Filled to ${show(off, 'bar')} and warmed to ${show(v.the('site')!.num('hottest'), '°C')} it stands at ${show(hot, 'bar')}, above its rating.` });
        else if (hot > relief) tell({ at: v.at(), message: `Filled to ${show(off, 'bar')} and warmed to ${show(v.the('site')!.num('hottest'), '°C')} it stands at ${show(hot, 'bar')}; its relief valve opens at ${show(relief, 'bar')}.` });
    },
});

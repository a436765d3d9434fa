import { cutOffOf } from '../../relief.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'deadband-ignored',
    family: 'storage',
    severity: 'warning',
    summary: 'The filling begins again only below the pressure that the user needs, or the switch has a wide gap.',
    why: 'The gap is built into the switch. In it the store falls below what the flame wants, and nobody understands why.',
    source: 'plate of the switch; 0.3: common practice, no source',
    under: ['cut-off-above-rating'],
    on: 'cylinder',
    check(v, tell) {
        const cut = cutOffOf(v);
        const on = cut ? v.maybeQ('restart') : NaN;
        const off = v.maybeQ('cut-off');
        const regulator = v.paths.after(v.name, 'hydrogen').map(n => v.other(n)).find(p => p?.kind === 'regulator');
        const use = regulator?.maybe('set') ?? v.the('purpose')?.maybe('use-pressure') ?? NaN;
        if (on < use) tell({ at: cut!.device.at('makes'), message: `Filling begins again below ${show(on, 'bar')}; ${regulator ? regulator.name : 'the use'} wants ${show(use, 'bar')}.`, related: regulator ? [{ span: regulator.at('set'), message: 'wants this' }] : [] });
        else if ((off - on) / off > 0.3001) tell({ at: cut!.device.at('makes'), message: `The switch waits from ${show(off, 'bar')} down to ${show(on, 'bar')}, ${digits(100 * (off - on) / off, 2)} % of the cut-off; 30 % is much.`, fixes: defined(setValue(cut!.device, 'makes', `below ${show(Math.ceil(0.8 * off / 10000) * 10000, 'bar')}`, `Let it begin again below ${show(Math.ceil(0.8 * off / 10000) * 10000, 'bar')}`)) });
    },
});

import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'regulator-set-above-user',
    family: 'use',
    severity: 'error',
    summary: 'The regulator gives more pressure than what stands behind it bears.',
    why: 'The weakest part bursts, and that is the one next to the hand.',
    source: 'plate of the device',
    on: ['burner', 'fuel-cell'],
    check(v, tell) {
        const key = v.kind === 'burner' ? 'rating' : 'inlet-rating';
        const rating = v.maybe(key);
        for (const name of v.paths.before(v.name, 'hydrogen')) {
            const regulator = v.other(name);
            if (regulator?.kind !== 'regulator') continue;
            const set = regulator.maybe('set');
            const most = regulator.maybe('max-outlet');
            const between = new Set(v.paths.after(name, 'hydrogen'));
            const relief = Math.min(...v.all('relief-valve').filter(r => between.has(r.name)).map(r => r.maybe('set', Infinity)), regulator.maybe('has-relief', Infinity));
            if (tell.exceeds(set, rating, 'bar', regulator, 'set')) tell({ at: regulator.at('set'), message: `${name} is set to ${show(set, 'bar')}; ${v.name} bears ${show(rating, 'bar')}.`, related: [{ span: v.at(key), message: 'what it bears' }], fixes: defined(setValue(regulator, 'set', show(Math.floor(0.8 * rating / 1000) * 1000, 'bar'), `Set it to ${show(Math.floor(0.8 * rating / 1000) * 1000, 'bar')}`)) });
            else if (most > rating && relief > rating) tell({ at: regulator.at('max-outlet'), severity: 'warning', message: `${name} can be turned up to ${show(most, 'bar')}; ${v.name} bears ${show(rating, 'bar')}, and no relief valve stands between.`, related: [{ span: v.at(key), message: 'what it bears' }] });
            return;
        }
    },
});

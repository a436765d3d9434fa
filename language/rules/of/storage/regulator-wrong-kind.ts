import { defineRule } from '../../define.js';
import { onStorePressure, reliefsOf } from '../../relief.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'regulator-wrong-kind',
    family: 'storage',
    severity: 'error',
    summary: 'The regulator is for another gas, or its inlet bears less than what can stand there.',
    why: 'Wrong rubber, a bonnet that vents into the room, a seat for a tenth of the pressure.',
    source: 'gas marking of regulators: EN ISO 2503, from memory; oil and seats that burn in oxygen: EIGA Doc 33, from memory',
    guardsLife: true,
    on: 'regulator',
    check(v, tell) {
        const media = v.paths.mediaOf(v.name);
        const carried = media.has('hydrogen') ? 'hydrogen' : media.has('oxygen') ? 'oxygen' : undefined;
        if (!carried) return;
        const gas = v.word('listed-for');
        if (!gas) tell.cannotCheck(v, 'listed-for', `whether ${v.name} is made for ${carried}`);
        else if (gas !== carried) tell({ at: v.at('listed-for'), severity: gas === 'inert' && carried === 'hydrogen' ? 'warning' : 'error', message: `${v.name} is ${gas === 'home-made' ? 'home-made' : `made for ${gas === 'inert' ? 'inert gas' : gas}`}, not for ${carried}.` });
        const store = v.all('cylinder').find(c => onStorePressure(c, v.name));
        if (!store) return;
        const sets = reliefsOf(store).open.map(r => r.maybe('set')).filter(p => p === p);
        const most = sets.length ? Math.min(...sets) : store.maybe('rating');
        const bears = v.maybe('inlet-rating');
        if (tell.fallsShort(bears, most, 'bar', v, 'inlet-rating')) tell({ at: v.at('inlet-rating'), message: `The inlet of ${v.name} bears ${show(bears, 'bar')}; up to ${show(most, 'bar')} can stand there.`, related: [{ span: store.at('rating'), message: 'the store' }] });
        else if (bears !== bears) tell.cannotCheck(v, 'inlet-rating', `whether ${v.name} bears the pressure of ${store.name}`);
    },
});

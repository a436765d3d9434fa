import { defineRule } from '../../define.js';
import { reliefsOf } from '../../relief.js';
import { show } from '../../../units/format.js';

/** Pa: below it a shell on the suction side is not worth asking for. Common practice, no source. */
const SOFT = 0.5e5;

export default defineRule({
    name: 'shell-pressure-too-high',
    family: 'compressor',
    severity: 'error',
    summary: 'The shell of the compressor can see more pressure than it was tested for.',
    why: 'A rotary shell stands at discharge pressure around a motor; when it bursts it is a bomb with a spark inside.',
    source: 'IEC 60335-2-34 (low-side and high-side tests), from memory',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        const sort = v.word('sort');
        if ((sort !== 'hermetic-rotary' && sort !== 'hermetic-reciprocating') || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const rating = v.maybe('shell-rating');
        if (sort === 'hermetic-reciprocating') {
            const drawn = v.maybeQ('draws-at');
            if (!(drawn > SOFT)) return;
            if (rating !== rating) tell.cannotCheck(v, 'shell-rating', `whether the shell of ${v.name} bears the ${show(drawn, 'bar')} at which it draws`);
            else if (tell.fallsShort(rating, drawn, 'bar', v, 'shell-rating')) tell({ at: v.at('shell-rating'), message: `The shell of ${v.name} stands at the pressure at which it draws and bears ${show(rating, 'bar')}; ${show(drawn, 'bar')} stand there at the cut-off.` });
            return;
        }
        const store = v.all('cylinder').find(c => v.paths.route(v.name, c.name, 'hydrogen'));
        if (!store) return;
        const reliefs = reliefsOf(store).open.map(r => r.maybe('set')).filter(p => p === p);
        const most = reliefs.length ? Math.min(...reliefs) : store.maybeQ('cut-off');
        if (rating !== rating) tell.cannotCheck(v, 'shell-rating', `whether the shell of ${v.name} bears its discharge`);
        else if (tell.fallsShort(rating, most, 'bar', v, 'shell-rating')) tell({ at: v.at('shell-rating'), message: `The shell of ${v.name} stands at discharge pressure and bears ${show(rating, 'bar')}; up to ${show(most, 'bar')} can stand there.`, related: [{ span: store.at(), message: 'the store' }] });
    },
});

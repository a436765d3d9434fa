import { append } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { freeName } from '../../path-fixes.js';
import { missing } from '../../stage.js';
import { reliefsOf } from '../../relief.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'relief-missing',
    family: 'storage',
    severity: 'error',
    summary: 'Something can press more into the cylinder than it bears, and no relief valve guards it.',
    why: 'A switch controls; only a relief valve protects. Contacts weld, and the sun shines.',
    source: 'relief device set at or below the rating: ASME BPVC VIII-1 UG-125 and UG-134, as cited',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const filled = v.paths.to(v.name, 'hydrogen').length > 0;
        if (!filled) return;
        const { open, shut } = reliefsOf(v);
        const rating = v.maybe('rating');
        const own = v.maybe('built-in-relief');
        if (open.length || shut.length || own <= rating) return;
        const compressor = v.all('compressor').find(c => v.paths.route(c.name, v.name, 'hydrogen'));
        const most = Math.max(compressor?.maybe('max-pressure') ?? NaN, NaN);
        const name = freeName(v, 'store-relief');
        tell({
            at: v.at(), severity: missing(tell, 'error'),
            message: own === own ? `Its own relief opens at ${show(own, 'bar')}, above the ${show(rating, 'bar')} that ${v.name} bears; another relief valve is missing.`
                : `No relief valve guards ${v.name}${compressor ? `: a switch is all that stands between it and ${most > 0 ? `the ${show(most, 'bar')} of ${compressor.name}` : compressor.name}` : ''}.`,
            related: compressor ? [{ span: compressor.at(), message: 'presses into it' }] : [],
            fixes: [append(v, `relief-valve ${name} { set: unknown }\npath hydrogen: ${v.name} -> ${name} -> outdoors`, 'Plan a relief valve to outdoors')],
        });
    },
});

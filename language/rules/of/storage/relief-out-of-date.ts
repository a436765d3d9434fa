import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';
import { lastPassed, monthsBetween } from '../../records.js';

export default defineRule({
    name: 'relief-out-of-date',
    family: 'storage',
    severity: 'warning',
    summary: 'Nothing shows that the relief valve was tested lately, or its setting is open to every hand.',
    why: 'A valve that has stuck shows nothing until it is needed.',
    source: '12 months, 60 for sealed and dry ones: common practice, no source',
    guardsLife: true,
    from: 'built',
    on: 'relief-valve',
    check(v, tell) {
        if (!v.paths.mediaOf(v.name).has('hydrogen')) return;
        const own = v.word('tested');
        const last = [own ?? '', lastPassed(v) ?? ''].sort().at(-1);
        const sealed = v.yes('sealed');
        if (!last) {
            tell({ at: v.at(), message: `Nothing shows that ${v.name} was ever tested.` });
            return;
        }
        const months = monthsBetween(last, tell.today);
        const limit = sealed ? 60 : 12;
        if (months > limit) tell({ at: v.at(own ? 'tested' : undefined), message: `${v.name} was last tested ${last}, ${digits(months, 2)} months ago; ${limit} is usual${sealed ? ' for a sealed one' : ''}. Test it on nitrogen, or replace it.` });
    },
});

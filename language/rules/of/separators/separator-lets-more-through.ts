import { defineRule } from '../../define.js';
import { oldest } from '../../records.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'separator-lets-more-through',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'In the check of the separators the level moved faster than it should.',
    why: 'With one side pressed, lye seeps through sound pores slowly and always alike. A level that moves faster than at the first check, or than the pores allow, goes through a hole.',
    source: 'Darcy; twice the first check: common practice, no source',
    guardsLife: true,
    on: 'test',
    check(v, tell) {
        const separator = v.the('separator');
        if (!separator || !v.said('level-change') || !v.names('covers').includes(separator.name)) return;
        const rate = v.maybeQ('level-rate');
        const pressure = v.maybe('pressure');
        const seeps = separator.said('permeability') ? v.maybeQ('seeping-rate') : NaN;
        const base = oldest(v.all('test').filter(t => t.name !== v.name && t.names('covers').includes(separator.name) && t.said('level-change') && t.maybe('pressure') > 0));
        const before = base && (base.word('date') ?? '') < (v.word('date') ?? '') ? base.maybeQ('level-rate') * pressure / base.maybe('pressure') : NaN;
        const should = seeps > 0 ? seeps : before;
        if (!tell.exceeds(rate, 2 * should, 'mm/h', v, 'level-change')) return;
        tell({
            at: v.at('level-change'), severity: rate > 4 * should ? 'error' : 'warning',
            message: `The level moved at ${show(rate, 'mm/h', 2)}; ${seeps > 0 ? `sound pores let ${show(should, 'mm/h', 2)} through at this pressure` : `at the first check (${base!.name}) it was ${show(should, 'mm/h', 2)} at such a pressure`}. ` +
                'Take the pressure off, make no gas, and look for the hole.',
            related: !(seeps > 0) && base ? [{ span: base.at('level-change'), message: 'the first check' }] : [],
        });
    },
});

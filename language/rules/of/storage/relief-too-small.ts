import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'relief-too-small',
    family: 'storage',
    severity: 'error',
    summary: 'The relief valve passes less than can come in.',
    why: 'The pressure goes on rising with the valve wide open.',
    source: '10 % accumulation: ASME BPVC VIII-1 UG-125, as cited; form of the choked flow: ISO 4126-1',
    guardsLife: true,
    on: 'relief-valve',
    check(v, tell) {
        const inflow = v.maybeQ('worst-inflow');
        if (inflow !== inflow || v.paths.before(v.name, 'hydrogen').some(n => v.other(n)?.kind === 'regulator')) return;
        const capacity = v.maybeQ('capacity-hydrogen');
        const compressor = v.the('compressor')!;
        if (capacity !== capacity) tell.cannotCheck(v, 'capacity', `whether ${v.name} passes what ${compressor.name} brings`);
        else if (tell.fallsShort(capacity, inflow, 'Nm3/h', v, v.said('capacity') ? 'capacity' : 'orifice')) tell({ at: v.at(v.said('capacity') ? 'capacity' : 'orifice'), message: `${v.name} passes ${show(capacity, 'Nm3/h')} of hydrogen; ${compressor.name} can bring ${show(inflow, 'Nm3/h')}.`, related: [{ span: compressor.at('displacement'), message: 'what comes in' }] });
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'relief-too-small',
    family: 'storage',
    severity: 'error',
    summary: 'The relief valve passes less than the compressor can bring.',
    why: 'Pressure goes on rising with the relief valve wide open.',
    source: 'ISO 4126-1 form of the choked flow; capacity must pass the worst inflow',
    guardsLife: true,
    on: 'relief-valve',
    check(v, tell) {
        const inflow = v.maybeQ('worst-inflow');
        if (inflow !== inflow) return;
        const capacity = v.maybeQ('capacity-hydrogen');
        if (capacity !== capacity) tell.cannotCheck(v, 'capacity', `whether ${v.name} passes what ${v.the('compressor')!.name} brings`);
        else if (capacity < inflow) tell({ at: v.at(v.says('capacity') === 'stated' ? 'capacity' : 'orifice'), message: `${v.name} passes ${show(capacity, 'Nm3/h')} of hydrogen; ${v.the('compressor')!.name} can bring ${show(inflow, 'Nm3/h')}.` });
    },
});

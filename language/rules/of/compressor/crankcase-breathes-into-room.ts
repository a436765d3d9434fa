import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { isIndoors } from '../../place.js';

export default defineRule({
    name: 'crankcase-breathes-into-room',
    family: 'compressor',
    severity: 'error',
    summary: 'Gas that passes the piston leaves by an open crankcase.',
    why: 'A few per cent of the delivery go into the room beside a motor, and air comes in on the way back, over oil.',
    source: '1 % to 5 % of the displacement, from memory',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        if (v.paths.mediaOf(v.name).has('oxygen')) return;
        const says = v.word('crankcase');
        if (says === 'open') {
            tell({ at: v.at('crankcase'), severity: isIndoors(v) === false ? 'warning' : 'error', message: `What passes the piston of ${v.name} goes into the ${isIndoors(v) === false ? 'air' : 'room'} beside its motor.`, fixes: defined(setValue(v, 'crankcase', 'to-suction', 'Lead its breather to the suction')) });
        } else if (!says && v.word('sort') === 'open-piston') tell.cannotCheck(v, 'crankcase', `where the gas goes that passes the piston of ${v.name}`);
    },
});

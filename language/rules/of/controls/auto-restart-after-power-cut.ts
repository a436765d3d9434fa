import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { missing } from '../../stage.js';
import { stores } from '../../place.js';

export default defineRule({
    name: 'auto-restart-after-power-cut',
    family: 'controls',
    severity: 'error',
    summary: 'After a power cut the rig starts again by itself.',
    why: 'Nobody knows its state then: the bag may have breathed air, a valve may stand wrong, and nobody is there.',
    source: 'IEC 60204-1, 7.5 (no restart by itself where it can endanger), as summarised',
    guardsLife: true,
    on: ['stack', 'compressor'],
    check(v, tell) {
        const driven = v.kind === 'stack' ? v.controls.sources() : [v];
        if (!driven.length || !v.the('stack')) return;
        const kept = stores(v).length > 0 || v.all('compressor').length > 0;
        if (driven.some(d => v.controls.startsByHand(d.name) || d.yes('restarts-by-itself') === false)) return;
        const source = driven.at(-1)!;
        const plain = source.kind === 'supply' && !source.names('needs').length;
        if (plain && source.yes('restarts-by-itself') === undefined) {
            if (kept) tell.cannotCheck(source, 'restarts-by-itself', 'what happens after a power cut');
            return;
        }
        const button = v.all('button')[0];
        const contactor = v.controls.interrupters(source.name)[0];
        tell({
            at: source.at(source.said('needs') ? 'needs' : 'restarts-by-itself'), severity: missing(tell, kept ? 'error' : 'warning'),
            message: `When power comes back, ${source.name} starts by itself: nothing in its chain waits for a hand.`,
            fixes: defined(button && contactor && !contactor.said('latched-by') ? setValue(contactor, 'latched-by', button.name, `Let ${contactor.name} wait for ${button.name}`) : undefined),
        });
    },
});

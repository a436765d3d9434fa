import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'contact-overloaded',
    family: 'controls',
    severity: 'warning',
    summary: 'A contact switches more than is printed on it.',
    why: 'It welds, and then it is made for ever: the one fault that no switch and no trip can undo.',
    source: 'plate of the device; a motor draws its locked-rotor current at each start',
    on: 'compressor',
    check(v, tell) {
        const start = v.maybe('locked-rotor', v.maybe('current'));
        // With a contactor between, what stops the compressor breaks the coil of that one.
        const named = [...v.names('needs'), ...(v.controls.interrupters(v.name).length ? [] : v.names('stopped-by'))].map(n => v.other(n)).filter((d): d is View => !!d);
        for (const device of named) {
            const coil = ['contactor', 'relay', 'solid-state-relay'].includes(device.kind);
            const key = coil ? 'rating' : 'contact';
            const bears = device.maybe(key);
            // A contactor is made to start motors: its rating is for what they draw while they run.
            const load = device.kind === 'contactor' ? v.maybe('current') : start;
            if (!tell.fallsShort(bears, load, 'A', device, key)) continue;
            tell({
                at: device.at(key), message: `${device.name} carries the current of ${v.name}, ${show(load, 'A')}${load === v.maybe('locked-rotor') ? ' at each start' : ''}; ${show(bears, 'A')} is printed on its contact.`,
                related: [{ span: v.at(load === v.maybe('locked-rotor') ? 'locked-rotor' : 'current'), message: 'what it draws' }],
            });
        }
    },
});

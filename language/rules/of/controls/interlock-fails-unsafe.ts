import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { notGiven } from '../../stage.js';

const lost = [['if-wire-breaks', 'Its wire broken'], ['if-detached', 'Its float or lever off'], ['if-unpowered', 'Without power']] as const;

export default defineRule({
    name: 'interlock-fails-unsafe',
    family: 'controls',
    severity: 'error',
    summary: 'A broken wire, a fallen float or lost power leaves running what it should stop.',
    why: 'Wires break, floats fall off, fuses blow. A guard must stop the rig by being absent, not by acting.',
    source: 'IEC 60204-1 for wire-break-safe stop circuits, from memory',
    guardsLife: true,
    on: ['switch', 'trip', 'analyser', 'detector', 'stop-button', 'contactor', 'relay', 'solid-state-relay'],
    check(v, tell) {
        const driven = [...v.controls.sources(), ...v.all('compressor')].filter(d => v.controls.stoppers(d.name).has(v.name));
        if (!driven.length) return;
        for (const [key, what] of lost) {
            const does = v.word(key);
            if (!does || !['makes', 'nothing', 'stays'].includes(does)) continue;
            const runs = driven.map(d => d.name).join(' and ');
            const good = v.kind === 'stop-button' ? 'stops' : ['trip', 'analyser', 'detector'].includes(v.kind) ? 'trips' : 'breaks';
            tell({
                at: v.at(key),
                message: `${what}, ${v.name} ${does === 'nothing' ? 'does nothing' : does === 'stays' ? 'stays as it was' : 'counts as made'}: ${runs} would run on.`,
                fixes: defined(setValue(v, key, good, key === 'if-wire-breaks' ? 'Wire it so that a broken wire stops the rig' : `Choose one that then ${good}`)),
            });
        }
        if (['switch', 'trip', 'analyser', 'detector'].includes(v.kind) && notGiven(v, 'if-wire-breaks') && notGiven(v, 'if-unpowered')) {
            tell.cannotCheck(v, 'if-wire-breaks', `what a broken wire to ${v.name} does`);
        }
    },
});

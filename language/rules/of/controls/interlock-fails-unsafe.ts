import { defineRule } from '../../define.js';

export default defineRule({
    name: 'interlock-fails-unsafe',
    family: 'controls',
    severity: 'error',
    summary: 'A broken wire silences a guard, and the rig runs on.',
    why: 'Wires break, plugs come off; a guard that fails that way is found out only when it is needed.',
    source: 'IEC 60204-1, 9.4 and ISO 13849-1 (well-tried: opening on fault), from memory',
    guardsLife: true,
    on: ['trip', 'analyser', 'detector', 'switch'],
    check(v, tell) {
        const stops = v.controls.stops(v.name);
        if (!stops.length) return;
        const isSwitch = v.kind === 'switch';
        const key = (k: string) => v.word(k);
        for (const k of ['if-wire-breaks', 'if-detached', 'if-unpowered']) {
            const word = key(k);
            if (word === 'nothing' || word === 'makes' || (isSwitch && word === 'stays')) tell({ at: v.at(k), severity: isSwitch && k === 'if-detached' ? 'warning' : 'error', message: `${k === 'if-wire-breaks' ? 'When its wire breaks' : k === 'if-detached' ? 'When its float or lever comes off' : 'Without its supply'} ${v.name} does not stop ${stops.slice(0, 3).join(', ')}.` });
        }
        if (v.word('if-cell-dies') === 'low' && v.kind !== 'switch' && v.says('calibrated') === 'silent') tell({ at: v.at('if-cell-dies'), severity: 'warning', message: `Its cell reads low when it dies, and no calibration is on record: ${v.name} may never trip again.` });
        if (v.says('if-wire-breaks') === 'silent') tell.cannotCheck(v, 'if-wire-breaks', `whether ${v.name} still guards with its wire broken`);
    },
});

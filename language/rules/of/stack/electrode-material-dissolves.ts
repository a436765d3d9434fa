import { defineRule } from '../../define.js';

export default defineRule({
    name: 'electrode-material-dissolves',
    family: 'stack',
    severity: 'error',
    summary: 'The plates that make oxygen are of a metal that dissolves there.',
    why: 'At the oxygen side most metals go into the lye and foul separators and cathodes.',
    source: 'corrosion handbooks, from memory',
    on: 'stack',
    check(v, tell) {
        const anode = v.word('anode-material') ?? v.word('plate.material') ?? '';
        const dissolves = ['copper', 'brass', 'aluminium', 'zinc', 'galvanised', 'tin', 'lead', 'titanium', 'graphite'];
        const at = v.part.entries.has('anode-material') ? v.at('anode-material') : v.atSlot('plate.material');
        if (dissolves.includes(anode)) tell({ at, message: `${anode} does not last as the oxygen side of a plate in lye: it dissolves or goes blind. Nickel or nickel-plated steel does.` });
        else if (anode === 'mild-steel') tell({ at, severity: 'warning', message: 'Mild steel rusts as the oxygen side of a plate; it serves as the hydrogen side. Nickel-plated is better.' });
    },
});

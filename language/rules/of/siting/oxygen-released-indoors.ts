import { defineRule } from '../../define.js';

export default defineRule({
    name: 'oxygen-released-indoors',
    family: 'siting',
    severity: 'error',
    summary: 'A gas is let out into the room.',
    why: 'Oxygen soaks into clothes, which then burn like a fuse; hydrogen gathers under the ceiling.',
    source: 'EIGA Doc 04 for oxygen enrichment, ISO/TR 15916; from memory',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        for (const medium of ['oxygen', 'hydrogen'] as const) {
            for (const link of v.paths.links.filter(l => l.medium === medium && (l.to.name === 'room' || (v.other(l.to.name)?.kind === 'vent' && v.other(l.to.name)?.word('place') === 'room')))) {
                if (v.other(link.from.name)?.kind === 'relief-valve') continue;
                tell({ at: link.to.span, message: medium === 'oxygen' ? 'The oxygen is let out into the room: above 23.5 % clothes and oil burn fiercely.' : 'Hydrogen is let out into the room.' });
            }
        }
    },
});

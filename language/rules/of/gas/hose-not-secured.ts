import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'hose-not-secured',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'A gas hose is only pushed on.',
    why: 'Warmth and pressure work it off; then the gas goes into the room, and with oxygen nobody notices.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'tube',
    check(v, tell) {
        const media = v.paths.mediaOf(v.name);
        const gas = media.has('hydrogen') ? 'hydrogen' : media.has('oxygen') ? 'oxygen' : undefined;
        if (!gas || v.yes('secured') !== false) return;
        tell({ at: v.at('secured'), message: `${v.name} carries ${gas} and is only pushed on: warmth works it off.`, fixes: defined(setValue(v, 'secured', 'yes', 'Clip it at both ends')) });
    },
});

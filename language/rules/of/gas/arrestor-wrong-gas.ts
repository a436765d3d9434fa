import { defineRule } from '../../define.js';

export default defineRule({
    name: 'arrestor-wrong-gas',
    family: 'gas conditioning',
    severity: 'error',
    summary: 'The arrestor is not listed for the gas that goes through it.',
    why: 'A hydrogen flame passes gaps of 0.3 mm; an element for another gas lets it through.',
    source: 'safe gap 0.29 mm for hydrogen, 0.92 mm for propane: IEC 60079-20-1',
    guardsLife: true,
    on: 'arrestor',
    check(v, tell) {
        const gas = v.word('listed-for');
        const media = v.paths.mediaOf(v.name);
        if (!gas) {
            if (media.size) tell.cannotCheck(v, 'listed-for', `whether ${v.name} stops a flame of this gas`);
            return;
        }
        const wanted = media.has('oxygen') && !media.has('hydrogen') ? 'oxygen' : 'hydrogen';
        if (gas !== wanted) {
            tell({ at: v.at('listed-for'), message: gas === 'home-made' ? `A home-made arrestor counts as none: a hydrogen flame passes gaps of 0.3 mm.` : wanted === 'oxygen' ? `${v.name} is listed for ${gas}, not for oxygen.` : `${v.name} is listed for ${gas}; a hydrogen flame passes gaps of 0.3 mm, and through it.` });
        } else if (v.the('stack')?.says('separator') === 'none') tell({ at: v.at('listed-for'), severity: 'warning', message: `${v.name} is listed for hydrogen in air; for hydrogen and oxygen mixed, as these cells make it, no such element holds.` });
    },
});

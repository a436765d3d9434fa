import { defineRule } from '../../define.js';

export default defineRule({
    name: 'arrestor-wrong-gas',
    family: 'gas conditioning',
    severity: 'error',
    summary: 'The arrestor was made for another gas.',
    why: 'Hydrogen burns through gaps that stop propane; such an arrestor is only a resistance.',
    source: 'maximum experimental safe gap: hydrogen 0.29 mm, propane 0.92 mm, IEC 60079-20-1',
    guardsLife: true,
    on: 'arrestor',
    check(v, tell) {
        const gas = v.word('listed-for');
        const media = v.paths.mediaOf(v.name);
        if (!gas) { if (media.size) tell.cannotCheck(v, 'listed-for', `whether ${v.name} stops a hydrogen flame`); return; }
        if (media.has(gas as never) || (!media.size && gas === 'hydrogen')) return;
        tell({ at: v.at('listed-for'), message: gas === 'home-made' ? `A home-made arrestor stops what its maker hopes; a hydrogen flame passes gaps of 0.3 mm.` : `It is listed for ${gas}; a hydrogen flame passes gaps of 0.3 mm and goes through it.` });
    },
});

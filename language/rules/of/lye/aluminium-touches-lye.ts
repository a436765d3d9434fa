import { defineRule } from '../../define.js';

export default defineRule({
    name: 'aluminium-touches-lye',
    family: 'lye and materials',
    severity: 'error',
    summary: 'Aluminium or zinc touches lye.',
    why: 'Lye dissolves it in minutes, with much heat and much hydrogen where none should be.',
    source: 'amphoteric metals, any chemistry handbook',
    guardsLife: true,
    on: ['stack', 'column', 'cooler', 'tube', 'scrubber', 'bubbler', 'tray', 'link'],
    check(v, tell) {
        for (const key of ['material', 'plate.material', 'body.material', 'end-board.material', 'manifold.material']) {
            const m = v.word(key);
            if (!m || !/^(aluminium|zinc|galvanised)/.test(m)) continue;
            if (v.kind === 'tube' && !v.paths.mediaOf(v.name).has('lye')) continue;
            tell({ at: v.atSlot(key), message: `Lye dissolves ${m} and makes hydrogen and heat of it.` });
        }
    },
});

import { facts, slot, words } from './define.js';
import { materialsFor } from './materials.js';

/** Properties that bubblers, scrubbers and liquid seals share. */
export const liquidVessel = {
    fluid: facts([[slot('', { words: ['water', 'glycol', 'weak-lye'] }), slot('share', 'mass-fraction', true)]],
        'The liquid in it. Water freezes; glycol and weak lye freeze later and weigh a little more, which raises the head.', {
            assume: ['water', 'nothing said'], example: '${1|water,glycol 25 %,weak-lye|}',
        }),
    body: facts([
        [slot('material', { words: materialsFor('vessel'), open: true })],
        [slot('headspace', 'volume', true), 'headspace?', slot('top', { words: ['open', 'closed'] }, true), 'top?'],
        [slot('rating', 'pressure')],
    ], 'What the vessel is made of, how much gas stands over its liquid, and what pressure it bears. A flash in that gas must not make splinters.', {
        example: '${1:PP}, ${2:0.3 L headspace}',
    }),
    'level-shown': words(['sight', 'switch'], 'How its liquid level can be seen. A vessel that has run dry unseen neither seals nor stops a flame.', {
        assume: ['none', 'nothing said'], example: '${1|sight,switch,none|}',
    }),
};

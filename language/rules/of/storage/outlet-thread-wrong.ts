import { defineRule } from '../../define.js';

export default defineRule({
    name: 'outlet-thread-wrong',
    family: 'storage',
    severity: 'error',
    summary: 'The outlet of the hydrogen cylinder has a right-hand thread, or one for another gas.',
    why: 'Threads differ so that an oxygen line cannot be joined to it.',
    source: 'DIN 477-1 No. 1 (left-hand), CGA V-1 No. 350, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const thread = v.word('outlet') ?? v.given('outlet').facts.get('')?.text;
        if (!thread || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        if (/\bLH\b|left/i.test(thread) || /CGA\s*350|477.*\b1\b/i.test(thread)) return;
        const right = /\bRH\b|right/i.test(thread) || /CGA\s*(540|580|590|346)/i.test(thread);
        tell({ at: v.at('outlet'), severity: right ? 'error' : 'warning', message: right ? `${thread} is not a thread for flammable gas: an oxygen or air line can be joined to it.` : `${thread} does not say that it is left-hand, as outlets for flammable gas are.` });
    },
});

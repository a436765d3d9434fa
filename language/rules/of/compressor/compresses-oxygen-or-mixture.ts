import { defineRule } from '../../define.js';

export default defineRule({
    name: 'compresses-oxygen-or-mixture',
    family: 'compressor',
    severity: 'error',
    summary: 'What the compressor draws can hold oxygen, and nothing watches it.',
    why: 'A compressor that draws a burnable mixture is a diesel engine: one stroke lights it, back to the stack.',
    source: 'upper limit of hydrogen in oxygen 94 to 95 %: ISO/TR 15916; analyser before compression: common practice, no source',
    guardsLife: true,
    from: 'drawn',
    on: 'compressor',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack || !v.paths.before(v.name, 'hydrogen').includes(stack.name)) return;
        const before = v.paths.before(v.name, 'hydrogen');
        const all = v.all('analyser').filter(a => /\.oxygen$/.test(v.controls.sensed(a) ?? ''));
        const watching = all.filter(a => v.controls.stoppers(v.name).has(a.name));
        if (watching.length) return;
        tell({ at: v.at(), message: all.length ? `${all[0].name} watches for oxygen, but does not stop ${v.name}.` : `No analyser for oxygen stops ${v.name}; it draws from ${before[0]} whatever comes.` });
    },
});

import { defineRule } from '../../define.js';

export default defineRule({
    name: 'non-refillable-reused',
    family: 'storage',
    severity: 'error',
    summary: 'A disposable cylinder is filled again.',
    why: 'It is thin, made for one use, and its disc bursts once and for all.',
    source: '49 CFR 178.65(i)(2)(viii) and the authority\'s advisory of 2014: refilling is forbidden',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        if (v.word('sort') !== 'disposable') return;
        tell({ at: v.at('sort'), message: `${v.name} was made for one filling: it must not be filled again, with any gas.` });
    },
});

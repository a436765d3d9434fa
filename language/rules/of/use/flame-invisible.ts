import { defineRule } from '../../define.js';

export default defineRule({
    name: 'flame-invisible',
    family: 'use',
    severity: 'warning',
    summary: 'Nothing sees whether the flame burns.',
    why: 'A hydrogen flame cannot be seen by day; one that has gone out fills the room.',
    source: 'ISO/TR 15916',
    guardsLife: true,
    from: 'drawn',
    on: 'burner',
    check(v, tell) {
        const proof = v.says('flame-proof');
        if (proof === 'none' || v.word('flame-proof') === 'none') tell({ at: v.at('flame-proof'), message: `Nothing shuts ${v.name} off when its flame goes out, and by day nobody can see that.` });
        else if (proof === 'silent') tell.cannotCheck(v, 'flame-proof', `what happens when ${v.name} goes out`);
    },
});

import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'supply-current-short',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'The current wanted of the stack is more than the supply gives for hours.',
    why: 'It is the commonest reason why a new stack makes too little gas.',
    source: 'nameplate',
    on: 'stack',
    check(v, tell) {
        const wanted = v.maybe('current');
        const supply = v.the('supply');
        const gives = Math.min(supply?.maybe('rated-current', Infinity) ?? Infinity, supply?.maybe('current-limit', Infinity) ?? Infinity);
        if (!(wanted > gives * 1.001)) return;
        tell({ at: v.at('current'), message: `You ask ${show(wanted, 'A')} of the stack; the supply gives ${show(gives, 'A')}.`, related: [{ span: supply!.at('current-limit'), message: 'the supply' }], fixes: defined(setValue(v, 'current', show(gives, 'A'), `Ask ${show(gives, 'A')}`)) });
    },
});

import { defineRule } from '../../define.js';

export default defineRule({
    name: 'tested-with-hydrogen',
    family: 'operation',
    severity: 'error',
    summary: 'A tightness test was done with hydrogen.',
    why: 'A joint that fails the test is then a fire.',
    source: 'inert gas or helium first: hydrogen best-practice pages (h2tools.org)',
    guardsLife: true,
    on: 'test',
    check(v, tell) {
        const gas = v.rows('with')[0]?.get('')?.text ?? '';
        if (!/^(pure )?(hydrogen|h2)( (and|from)\b.*)?$/i.test(gas.trim()) || !(v.maybe('pressure') > 0)) return;
        tell({ at: v.at('with'), message: `${v.name} was done with hydrogen: a joint that fails is then a fire. Nitrogen first, hydrogen only in lines that passed.` });
    },
});

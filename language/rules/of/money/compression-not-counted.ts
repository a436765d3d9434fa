import { defineRule } from '../../define.js';

export default defineRule({
    name: 'compression-not-counted',
    family: 'money',
    severity: 'hint',
    summary: 'The cost of stored gas leaves the compressor out.',
    why: 'Its power is usually a small share, but a compressor that runs on between fillings can take as much as a quarter of the stack\'s.',
    source: 'balance of energy',
    on: 'compressor',
    check(v, tell) {
        const budget = v.the('budget');
        if (!budget?.said('tariff') || v.maybeQ('energy-per-volume') > 0 || v.said('power') || !v.paths.on('hydrogen').includes(v.name)) return;
        tell({ at: v.at(), message: `The cost of the gas leaves ${v.name} out, since its power is not given: watts on its plate, or as measured.`, related: [{ span: budget.at('tariff'), message: 'the tariff' }] });
    },
});

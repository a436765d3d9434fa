import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'level-probe-makes-gas',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'A level probe with direct current makes gas where it must not be.',
    why: 'It is a small electrolyser: hydrogen in the oxygen column, oxygen in the other.',
    source: 'reversible voltage, LeRoy et al. 1980',
    guardsLife: true,
    on: ['switch', 'trip'],
    check(v, tell) {
        const volts = v.maybe('probe-voltage');
        if (v.word('probe') !== 'DC' || volts < 1.2) return;
        tell({
            at: v.at('probe'),
            message: `${v.name} sends direct current through the lye${volts === volts ? ` at ${show(volts, 'V')}` : ''}: it makes gas at ` +
                'the probe, above 1.2 V.',
            fixes: defined(setValue(v, 'probe', 'none', 'Use a float instead')),
        });
    },
});

import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'separator-resistance-high',
    family: 'stack',
    severity: 'hint',
    summary: 'The separator takes more than 150 mV of every cell.',
    why: 'That much of the power only warms the lye.',
    source: 'about 0.3 ohm·cm2 for half a millimetre of composite in 30 wt% KOH, from memory; 150 mV: common practice, no source',
    on: 'stack',
    check(v, tell) {
        const separator = v.the('separator');
        const resistance = separator?.maybe('area-resistance') ?? NaN;
        const volts = v.maybeQ('current-density') * resistance;
        if (!separator || !tell.exceeds(volts, 0.15, 'mV', separator, 'area-resistance')) return;
        tell({
            at: separator.at('area-resistance'),
            message: `The separator takes ${show(volts, 'mV', 2)} of every cell at ${show(v.maybeQ('current-density'), 'mA/cm2')}, ` +
                `${digits(100 * volts / v.maybeQ('volts-per-cell'), 2)} % of the power. Never trade its fine pores for it.`,
        });
    },
});

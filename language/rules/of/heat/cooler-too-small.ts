import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'cooler-too-small',
    family: 'heat',
    severity: 'warning',
    summary: 'The coolers cannot lead away the heat of the hottest day.',
    why: 'The stack then settles above its limit in spite of them.',
    source: 'counterflow exchanger, Kays & London; coefficient as stated or assumed, ± 40 %',
    under: ['supply-far-above-stack'],
    on: 'cooler',
    check(v, tell) {
        const all = v.all('cooler');
        const stack = v.the('stack');
        const limit = stack?.maybe('max-temperature') ?? NaN;
        const hot = stack?.maybeQ('steady-temperature') ?? NaN;
        const needed = v.maybeQ('needed');
        const duty = stack?.maybeQ('cooler-duty') ?? NaN;
        const lost = stack?.maybeQ('temperature-cooling-lost') ?? NaN;
        // What stands beside the warmer lye is compared with what is needed at the limit: the same duty there would be less.
        const atLimit = duty * (limit - v.maybe('water.temperature', 288.15)) / (hot - v.maybe('water.temperature', 288.15));
        if (all[0]?.name !== v.name || !(hot > limit) || !(atLimit < needed) || !(lost > limit)) return;
        const length = Math.ceil(2 * v.maybe('length') * needed / atLimit * 1.1) / 2;
        tell({
            at: v.said('length') ? v.at('length') : v.at(),
            message: `${show(needed, 'W', 2)} must be led away on the hottest day to stay at ${show(limit, '°C', 2)}; ` +
                `${all.length > 1 ? 'the coolers take' : `${v.name} takes`} about ${show(atLimit, 'W', 2)} there.`,
            fixes: defined(length > 0 && length <= 12 && v.says('length') === 'stated' ? setValue(v, 'length', `${length} m`, `Make it ${length} m long`) : undefined),
        });
    },
});

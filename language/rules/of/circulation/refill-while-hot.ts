import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'refill-while-hot',
    family: 'circulation and levels',
    severity: 'warning',
    summary: 'Water is added while the lye is hot.',
    why: 'Hot lye spits from the opening, and cold water strains warm glass and plastic.',
    source: '60 °C: common practice, no source',
    on: 'routine',
    check(v, tell) {
        const below = v.maybe('water-fill.below');
        const hot = v.word('water-fill.state') === 'hot';
        if (!hot && !(below > 333.15)) return;
        tell({
            at: v.at('water-fill'),
            message: hot
                ? 'Water is added to hot lye: it spits. Let it come below 40 °C first.'
                : `Water is added below ${show(below, '°C')}; above 60 °C hot lye spits from the opening.`,
        });
    },
});

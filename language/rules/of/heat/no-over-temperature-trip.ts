import { show } from '../../../units/format.js';
import { addStackTrip, stackGuards } from '../../guards.js';
import { defineRule } from '../../define.js';
import { defined } from '../../fixes.js';

export default defineRule({
    name: 'no-over-temperature-trip',
    family: 'heat',
    severity: 'warning',
    summary: 'Without its cooling the stack would pass its limit on the hottest day, and nothing stops it.',
    why: 'Warm lye takes more current, which warms it further; a cooler whose water has stopped is no cooler.',
    source: 'heat balance without coolers, ± 30 % of the rise; 3 K: common practice, no source',
    from: 'drawn',
    under: ['stack-overheats'],
    on: 'stack',
    check(v, tell) {
        const lost = v.maybeQ('temperature-cooling-lost');
        const limit = v.num('max-temperature');
        const senses = [v.name, ...v.all('column').map(c => c.name), ...v.all('cooler').map(c => c.name)];
        const guards = senses.flatMap(n => stackGuards(v, `${n}.temperature`, 'above'));
        if (guards.some(g => g.at <= limit + 3 || g.at !== g.at) || !tell.exceeds(lost, limit, '°C', v, 'max-temperature')) return;
        const late = guards[0];
        const coolers = v.all('cooler').length;
        const at = Math.round(limit - 273.15);
        const lines = { senses: `${v.name}.temperature`, trips: `above ${at} °C`, resets: 'by hand', 'if-wire-breaks': 'trips' };
        const fix = addStackTrip(v, 'stack-hot', lines, `Stop the stack at ${at} °C`);
        tell({
            at: late ? late.view.at('trips') : v.at(), fixes: defined(late ? undefined : fix),
            message: `${coolers ? 'With its cooling lost on' : 'On'} the hottest day it gets to about ${show(lost, '°C', 2)}, above ` +
                `${show(limit, '°C', 2)}; ` +
                `${late ? `${late.view.name} acts only at ${show(late.at, '°C', 2)}` : 'nothing that senses its temperature stops it'}.`,
        });
    },
});

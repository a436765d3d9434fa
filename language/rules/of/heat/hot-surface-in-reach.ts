import { show } from '../../../units/format.js';
import { materials } from '../../../vocabulary/materials.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

/** K, 60 °C: bare metal that burns a hand which jerks back. ISO 13732-1, from memory, rounded down. */
const METAL = 333.15;

export default defineRule({
    name: 'hot-surface-in-reach',
    family: 'heat',
    severity: 'hint',
    summary: 'A surface that anybody can touch gets hot enough to burn.',
    why: 'A hand that jerks back from a hot wall takes a hose or a lead with it.',
    source: 'ISO 13732-1, bare metal, from memory, rounded down',
    under: ['stack-overheats'],
    on: 'stack',
    check(v, tell) {
        const open = v.says('cover') === 'none' || v.word('cover') === 'none';
        const metal = v.all('column').find(c => c.said('material') && materials.get(c.word('material') ?? '')?.conducts);
        if (!open && !metal) return;
        const hot = v.maybeQ('steady-temperature');
        if (!tell.exceeds(hot, METAL, '°C', metal ?? v, metal ? 'material' : 'cover')) return;
        // The plates show their edges between the frames: metal, whatever the boards are made of.
        tell({
            at: metal ? metal.at('material') : v.at('cover'),
            message: `On the hottest day ${metal ? `the metal wall of ${metal.name}` : 'the open stack'} gets to about ${show(hot, '°C', 2)}; bare metal burns a hand from ${show(METAL, '°C', 2)} on.`,
            fixes: defined(metal ? undefined : setValue(v, 'cover', 'fixed', 'Cover it')),
        });
    },
});

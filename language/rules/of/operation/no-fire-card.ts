import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { stores } from '../../place.js';

export default defineRule({
    name: 'no-fire-card',
    family: 'operation',
    severity: 'hint',
    summary: 'Hydrogen is kept, and no card tells helpers what it is and where to shut it off.',
    why: 'Who comes to help sees no flame and knows nothing. A hydrogen flame that cannot be shut off is left to burn: blown out, it leaves a cloud that explodes.',
    source: 'common practice, no source; shut off the gas rather than put out the flame: hydrogen best-practice pages (h2tools.org)',
    from: 'built',
    on: 'rig',
    check(v, tell) {
        if (!v.the('stack') || v.yes('fire-card')) return;
        const kept = stores(v).find(s => v.paths.mediaOf(s.name).has('hydrogen'));
        if (!kept) return;
        tell({
            at: v.part.entries.has('fire-card') ? v.at('fire-card') : kept.at(), severity: v.yes('fire-card') === false && kept.kind === 'cylinder' ? 'warning' : 'hint',
            message: `No card tells a helper that ${kept.name} keeps hydrogen, where to shut it off, whom to call, and not to blow the flame out.`,
            fixes: defined(v.part.entries.has('fire-card') ? setValue(v, 'fire-card', 'yes', 'Plan a fire card') : undefined),
        });
    },
});

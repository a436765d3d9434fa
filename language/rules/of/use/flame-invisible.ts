import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { onceBuilt } from '../../stage.js';

export default defineRule({
    name: 'flame-invisible',
    family: 'use',
    severity: 'warning',
    summary: 'Nothing sees whether the flame burns.',
    why: 'A hydrogen flame can hardly be seen. It burns the hand that reaches through it, and when it goes out the gas goes on.',
    source: 'common practice, no source; invisible flame: hydrogen best-practice pages (h2tools.org)',
    guardsLife: true,
    on: 'burner',
    check(v, tell) {
        if (!v.paths.mediaOf(v.name).has('hydrogen') || ['torch-two-gas', 'torch-common-duct'].includes(v.word('sort') ?? '')) return;
        const says = v.says('flame-proof');
        if (says === 'none') tell({ at: v.at('flame-proof'), message: `Nothing shuts the gas when the flame of ${v.name} goes out, and nobody can see it.`, fixes: defined(setValue(v, 'flame-proof', 'thermocouple', 'Plan a thermocouple that shuts the gas')) });
        else if (says === 'silent' || says === 'unknown') tell({ at: v.at(), severity: onceBuilt(tell, 'warning', 'hint'), message: `What sees that ${v.name} burns, and shuts the gas if not? A hydrogen flame can hardly be seen.`, fixes: defined(setValue(v, 'flame-proof', 'thermocouple', 'Plan a thermocouple that shuts the gas')) });
    },
});

import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'gasometer-guide-sticks',
    family: 'buffer',
    severity: 'hint',
    summary: 'The bell floats without guides.',
    why: 'It leans, sticks on its way and lets gas out under its rim; when it comes free the pressure jumps, and the separators feel it.',
    source: 'common practice, no source',
    on: 'gasometer',
    check(v, tell) {
        if (v.yes('guides') !== false || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const said = v.said('guides');
        tell({ at: v.at('guides'), severity: said ? 'warning' : 'hint', message: said ? `${v.name} runs without guides: it can lean and let gas out under its rim.` : `Nothing is said of guides for ${v.name}: without them a bell leans and lets gas out under its rim.`, fixes: defined(setValue(v, 'guides', 'yes', 'Plan guides')) });
    },
});

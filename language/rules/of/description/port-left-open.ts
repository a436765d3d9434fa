import { append } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { extendPath } from '../../path-fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'port-left-open',
    family: 'the description',
    severity: 'error',
    summary: 'Gas comes into a part and leads nowhere from it, or a guard stands on no path.',
    why: 'An open end lets gas into the room, a shut one stops it: both are dangerous, and nothing says which it is. A guard on no path protects nothing.',
    source: 'reading of the paths',
    on: 'rig',
    check(v, tell) {
        const ends = new Set(['vent', 'burner', 'balloon', 'fuel-cell', 'engine', 'bag', 'gasometer', 'cylinder', 'gauge', 'purge-point', 'bleed', 'meter', 'stack']);
        const broken = v.paths.broken;
        if (broken || !v.the('stack')) return;
        const stack = v.the('stack')!;
        const said = new Set<string>();
        for (const gas of ['hydrogen', 'oxygen'] as const) {
            for (const link of v.paths.links) {
                const part = v.other(link.to.name);
                if (link.medium !== gas || !part || !part.part.kind || said.has(`${gas} ${part.name}`)) continue;
                if (ends.has(part.kind) || v.paths.from(part.name, gas).length) continue;
                if (part.kind === 'column' && v.paths.to(part.name, gas).length > 1) continue;
                said.add(`${gas} ${part.name}`);
                const relief = part.kind === 'seal' || part.kind === 'relief-valve' || gas === 'oxygen';
                tell({
                    at: link.to.span, severity: missing(tell, 'error'), message: `${gas === 'hydrogen' ? 'Hydrogen' : 'Oxygen'} goes into ${part.name} and nowhere from there: is it open to the room, or shut?`,
                    fixes: relief ? [extendPath(link.to.span, 'outdoors', 'Lead it outdoors')] : [],
                });
            }
        }
        const flows = (gas: 'hydrogen' | 'oxygen') => v.paths.from(stack.name, gas).length > 0;
        if (flows('hydrogen') && !flows('oxygen') && stack.says('separator') !== 'none') {
            tell({ at: stack.at(), severity: missing(tell, 'error'), message: 'Where the oxygen goes is not said: open to the room, or shut, it is dangerous.', fixes: [append(v, `path oxygen: ${stack.name} -> outdoors`, 'Lead it outdoors')] });
        }
        if (v.paths.links.some(l => l.medium === 'hydrogen')) {
            for (const kind of ['seal', 'relief-valve', 'arrestor', 'check-valve', 'bubbler']) {
                for (const p of v.all(kind)) {
                    if (!p.part.pattern && !v.paths.mediaOf(p.name).size) tell({ at: p.at(), severity: missing(tell, 'warning'), message: `${p.name} stands on no path: it ${kind === 'bubbler' ? 'does' : 'guards'} nothing.` });
                }
            }
        }
    },
});

import { defineRule } from '../../define.js';
import { defined } from '../../fixes.js';
import type { Fix, Path } from '../../../rig/rig.js';

export default defineRule({
    name: 'current-path-backwards',
    family: 'wiring',
    severity: 'error',
    summary: 'A path of current begins at the stack instead of at its source, or leads into modules.',
    why: 'What stands before what decides which cable a fuse protects and what a switch cuts; written backwards, it is all read wrongly.',
    source: 'reading of the text',
    on: 'stack',
    check(v, tell) {
        const sources = ['battery', 'supply', 'transformer', 'panels', 'charger'].flatMap(kind => [...v.all(kind)]).map(s => s.name);
        for (const { name } of v.all('panels')) {
            const after = v.paths.after(name, 'current');
            const into = v.paths.before(name, 'current').find(n => sources.includes(n) && !after.includes(n));
            if (into === undefined) continue;
            tell({ at: v.paths.to(name, 'current')[0].to.span, message: `This path leads the current of ${into} into ${name}: modules give current, and taking it they only get warm.` });
            return;
        }
        const before = v.paths.before(v.name, 'current');
        const source = v.paths.after(v.name, 'current').find(n => sources.includes(n) && !before.includes(n));
        if (!source) return;
        const from = v.paths.from(v.name, 'current')[0];
        tell({
            at: from.from.span,
            message: `This path runs from ${v.name} to ${source}; a path of current runs from its source to the stack.`,
            fixes: defined(turned(from.path, v.name)),
        });
    },
});
/** The same path the other way round, if it begins at the stack. */
function turned(path: Path, stack: string): Fix | undefined {
    const { stops } = path;
    if (stops[0].name !== stack) return undefined;
    return { title: 'Turn the path round', preferred: true, edits: stops.map((s, n) => ({ span: s.span, text: stops[stops.length - 1 - n].name })) };
}

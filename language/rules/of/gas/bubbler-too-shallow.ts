import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'bubbler-too-shallow',
    family: 'gas conditioning',
    severity: 'warning',
    summary: 'The bubbler holds too little liquid over its mouth, or too much gas goes through one mouth.',
    why: 'Bubbles that follow each other closely make one open channel, and a flame runs through it.',
    source: '50 mm to 150 mm, and 1 L/min through a mouth of 6 mm: common practice, no source',
    on: 'bubbler',
    check(v, tell) {
        const media = v.paths.mediaOf(v.name);
        const gas = media.has('oxygen') && !media.has('hydrogen') ? 'oxygen' : 'hydrogen';
        const flame = v.paths.after(v.name, gas).some(n => ['burner', 'engine', 'balloon'].includes(v.other(n)?.kind ?? ''));
        const severity = flame || !media.size ? 'warning' : 'hint';
        const depth = v.num('immersion');
        const least = Math.max(0.05, v.said('minimum') ? v.maybe('minimum', 0) : 0);
        if (depth < least - 1e-6) {
            tell({ at: v.at('immersion'), severity, message: `${show(depth, 'mm')} over the mouth of ${v.name} ${least > 0.05 ? `is less than its own least depth of ${show(least, 'mm')}` : 'may let a flame through; 50 mm is the least, 100 mm usual'}.`, fixes: defined(setValue(v, 'immersion', '100 mm')) });
            return;
        }
        const stack = v.the('stack');
        if (!flame || !stack || !v.paths.before(v.name, gas).includes(stack.name) || !v.said('nozzle')) return;
        const rate = stack.maybeQ('hydrogen-rate-room') * (gas === 'oxygen' ? 0.5 : 1);
        const count = v.num('nozzle.count');
        const bore = v.num('nozzle.bore');
        const bears = 0.001 / 60 * (bore / 0.006) ** 2;
        if (!tell.exceeds(rate / count, 1.001 * bears, 'L/min', v, 'nozzle')) return;
        const more = Math.ceil(rate / bears);
        tell({
            at: v.at('nozzle'), message: `${show(rate / count, 'L/min', 2)} of gas through one mouth of ${show(bore, 'mm')} makes an open channel; ${show(bears, 'L/min', 2)} is usual.`,
            fixes: defined(more <= 8 ? setValue(v, 'nozzle', `${more} of ${show(bore, 'mm')}`, `Use ${more} mouths`) : undefined),
        });
    },
});

import { defineRule } from '../../define.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'control-and-trip-share-sensor',
    family: 'controls',
    severity: 'error',
    summary: 'One and the same device both regulates and protects.',
    why: 'When it fails, what it regulated runs away, and what should have stopped it has failed as well.',
    source: 'independence of control and protection, IEC 61511-1, from memory',
    guardsLife: true,
    on: 'switch',
    check(v, tell) {
        const heard = v.controls.listeners(v.name).map(n => v.other(n)).filter((o): o is View => !!o);
        const latched = heard.filter(o => o.names('latched-by').some(b => v.other(b)?.kind === 'button') && o.names('stopped-by').includes(v.name));
        const regulated = heard.filter(o => !latched.includes(o) && o.kind !== 'horn');
        if (!latched.length || !regulated.length) return;
        const sensed = v.controls.sensed(v) ?? '';
        if (v.controls.sensing(sensed).length > 1) return;
        const what = v.other(sensed.split('.')[0]);
        if (what && ['bag', 'gasometer', 'cylinder'].includes(what.kind)) {
            const near = v.paths.space(what.name, 'hydrogen', n => ['compressor', 'valve', 'regulator', 'seal', 'relief-valve', 'vent', 'stack'].includes(v.other(n)?.kind ?? ''));
            if ([...near.keys()].some(n => ['seal', 'relief-valve'].includes(v.other(n)?.kind ?? ''))) return;
        }
        tell({
            at: v.at(), message: `${v.name} runs ${regulated[0].name} in ordinary running and is also the guard that drops ${latched[0].name}: one fault takes both.`,
            related: [{ span: regulated[0].at(), message: 'what it regulates' }, { span: latched[0].at(), message: 'what it should stop' }],
        });
    },
});

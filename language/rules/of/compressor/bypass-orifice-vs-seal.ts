import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';
import { softReliefs } from '../../relief.js';

export default defineRule({
    name: 'bypass-orifice-vs-seal',
    family: 'compressor',
    severity: 'warning',
    summary: 'If the check valve lets through, more comes back through the unloader than the seal of the bag carries off.',
    why: 'The unloader stands open at every rest. A check valve with a grain of dust in it then empties the store into the bag, and the bag bursts although its seal is open.',
    source: 'flow through a hole at the speed of sound, textbook; friction in the pipe of the seal',
    under: ['unloader-without-check-valve', 'bag-overpressure'],
    on: 'unloader',
    check(v, tell) {
        const back = v.maybeQ('open-flow');
        const bag = v.all('bag').find(b => v.paths.before(v.name, 'hydrogen').includes(b.name));
        const seals = bag ? softReliefs(bag).map(r => r.view) : [];
        if (!bag || !seals.length) return;
        const out = seals.reduce((sum, s) => sum + s.maybeQ(s.kind === 'seal' ? 'relieves' : 'capacity-hydrogen'), 0);
        if (!tell.exceeds(back, out, 'Nm3/h', v, 'orifice')) return;
        const narrow = Math.floor(1e4 * v.num('orifice') * Math.sqrt(out / back)) / 10;
        tell({
            at: v.at('orifice'),
            message: `With the store full and the check valve leaking, ${show(back, 'Nm3/h')} come back through ${show(v.num('orifice'), 'mm')}; ${seals.map(s => s.name).join(' and ')} ${seals.length > 1 ? 'carry' : 'carries'} off ${show(out, 'Nm3/h')} at what ${bag.name} bears.`,
            related: seals.map(s => ({ span: s.at(s.kind === 'seal' ? 'pipe' : 'capacity'), message: 'the way out' })),
            fixes: defined(narrow >= 0.2 ? setValue(v, 'orifice', `${narrow} mm`, `Narrow it to ${narrow} mm`) : undefined),
        });
    },
});

import { cutOffOf } from '../../relief.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

/** Pa gauge, about what small diaphragm pumps reach. Common practice, no source. */
const DIAPHRAGM_REACHES = 3e5;

export default defineRule({
    name: 'cut-off-never-reached',
    family: 'compressor',
    severity: 'error',
    summary: 'The cut-off lies above what the compressor reaches, or above what it is made for.',
    why: 'The switch never opens: it runs for ever, hot, and the bag fills.',
    source: 'plate; clearance formula, leaks bring it down; 3 bar for a diaphragm pump without a plate: common practice, no source',
    under: ['cut-off-above-rating'],
    on: 'compressor',
    check(v, tell) {
        const store = v.all('cylinder').find(c => v.paths.route(v.name, c.name, 'hydrogen'));
        const cut = store && cutOffOf(store);
        const off = store?.maybeQ('cut-off') ?? NaN;
        if (!cut || off !== off) return;
        const most = v.maybe('max-pressure');
        // One that presses into another sees the pressure between them, and what all reach together is told of the last.
        const between = v.paths.between(v.name, store.name, 'hydrogen').some(n => v.other(n)?.kind === 'compressor');
        if (between) {
            const there = v.maybeQ('presses-to');
            if (tell.exceeds(there, most, 'bar', v, 'max-pressure')) tell({ at: v.at('max-pressure'), message: `${show(there, 'bar')} settle behind ${v.name} at the cut-off; it is made for ${show(most, 'bar')}.`, related: [{ span: cut.device.at(cut.key), message: 'the cut-off' }] });
            return;
        }
        const small = v.word('sort') === 'diaphragm' && most !== most;
        const stall = small ? DIAPHRAGM_REACHES : v.maybeQ('stall-pressure');
        const limit = Math.min(most === most ? most : Infinity, stall === stall ? stall : Infinity);
        if (!tell.exceeds(off, limit, 'bar', cut.device, cut.key)) return;
        const plate = most <= limit;
        const lower = Math.floor(0.9 * limit / 50000) * 50000;
        tell({
            at: cut.device.at(cut.key), severity: plate || v.said('clearance') && !small ? 'error' : 'warning',
            message: plate ? `The cut-off stands at ${show(off, 'bar')}; ${v.name} is made for ${show(most, 'bar')}.` : small ? `The cut-off stands at ${show(off, 'bar')}; a small diaphragm pump such as ${v.name} hardly passes ${show(stall, 'bar')}, and no plate says more.`
                : `The cut-off stands at ${show(off, 'bar')}; ${v.name} delivers nothing above about ${show(stall, 'bar')}: the switch never opens.`,
            related: [{ span: v.at(plate ? 'max-pressure' : small ? 'sort' : v.said('clearance') ? 'clearance' : undefined), message: 'the compressor' }],
            fixes: defined(lower > 0 ? setValue(cut.device, cut.key, `above ${show(lower, 'bar')}`, `Set it to ${show(lower, 'bar')}`) : undefined),
        });
    },
});

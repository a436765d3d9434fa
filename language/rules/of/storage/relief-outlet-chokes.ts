import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { show } from '../../../units/format.js';
import type { View } from '../../../quantities/view.js';

/** The same pipe, wide enough for the drop to come down by a factor: friction goes with the bore to the power of -4.75 (Blasius). */
function widened(v: View, key: 'outlet' | 'inlet', factor: number) {
    const length = v.maybe(`${key}.length`);
    const bore = Math.ceil(1000 * v.num(key) * factor ** (1 / 4.75)) + 1;
    return length === length ? setValue(v, key, `${bore} mm bore, ${show(length, 'm')} long`, `Make it ${bore} mm wide`) : undefined;
}

export default defineRule({
    name: 'relief-outlet-chokes',
    family: 'storage',
    severity: 'warning',
    summary: 'The pipe before or behind a relief valve is too narrow for what the valve passes.',
    why: 'Pressure that builds up behind a spring valve helps the spring: it chatters, or does not open fully, and the pressure goes on rising. A narrow inlet makes it chatter as well.',
    source: '10 % behind and 3 % before the valve: API 520, as quoted; friction: Blasius, smooth tube',
    guardsLife: true,
    under: ['relief-too-small'],
    on: 'relief-valve',
    check(v, tell) {
        if (!v.paths.mediaOf(v.name).has('hydrogen')) return;
        const set = v.maybe('set');
        const flow = v.maybeQ('capacity-hydrogen');
        // Straight into the open no pipe holds anything back.
        if (flow > 0 && notGiven(v, 'outlet') && v.paths.from(v.name, 'hydrogen').some(l => v.other(l.to.name))) tell.cannotCheck(v, 'outlet', `whether the pipe behind ${v.name} holds back what it lets go`);
        for (const [key, quantity, share, where] of [['outlet', 'back-pressure', 0.1, 'behind'], ['inlet', 'inlet-loss', 0.03, 'before']] as const) {
            const drop = v.maybeQ(quantity);
            if (!tell.exceeds(drop, share * set, 'bar', v, key)) continue;
            tell({
                at: v.at(key), message: `Wide open ${v.name} passes ${show(flow, 'Nm3/h')}; ${where} it ${show(v.num(key), 'mm')} of bore then take ${show(drop, 'bar', 2)}, and ${show(share * set, 'bar', 2)} is the limit.`,
                related: [{ span: v.at('set'), message: 'opens here' }], fixes: defined(widened(v, key, drop / (share * set))),
            });
        }
    },
});

import { show } from '../../../units/format.js';
import type { View } from '../../../quantities/view.js';
import { defineRule } from '../../define.js';

/** What crosses the separators is known within this factor, and so is the current below which the gas is foul. */
const DOUBT = 3;

export default defineRule({
    name: 'cold-start-short-of-volts',
    family: 'heat',
    severity: 'hint',
    summary: 'On a cold morning only part of the usual current flows at first.',
    why: 'Cold lye conducts less and the electrodes are slower. Little current makes impure gas: it belongs outdoors until ' +
        'the current is up.',
    source: 'operating point at the coldest of the site; seven tenths: common practice, no source',
    under: ['supply-below-reversible', 'supply-below-useful-voltage', 'supply-far-above-stack'],
    on: 'stack',
    check(v, tell) {
        const cold = v.maybeQ('current-cold');
        const usual = v.maybeQ('current');
        const site = v.the('site');
        if (!site || !(cold < 0.7 * usual)) return;
        const clean = v.the('separator')?.said('material') ? v.maybeQ('lowest-clean-current') : NaN;
        if (cold > DOUBT * clean || ventsAtFirst(v)) return;
        tell({
            at: v.the('supply')?.said('voltage') ? v.the('supply')!.at('voltage') : v.at('cells'),
            related: site.said('coldest') ? [{ span: site.at('coldest'), message: 'the coldest' }] : [],
            message: `At ${show(site.maybe('coldest'), '°C')} about ${show(cold, 'A', 2)} flows at first instead of ` +
                `${show(usual, 'A', 2)}: let that gas go outdoors until the current is up.`,
        });
    },
});

/** Its first gas goes outdoors: nothing else is on its way, or a valve leads it out until a timer shuts it. */
function ventsAtFirst(v: View): boolean {
    const after = v.paths.after(v.name, 'hydrogen');
    const parts = after.map(n => v.other(n)).filter((p): p is View => !!p);
    if (after.includes('outdoors') && !parts.some(p => TAKES.has(p.kind))) return true;
    return parts.some(p => p.kind === 'valve' && p.word('if-unpowered') === 'opens' && p.names('shut-while').some(n => v.other(n)?.kind === 'timer') && v.paths.after(p.name, 'hydrogen').includes('outdoors'));
}
const TAKES: ReadonlySet<string> = new Set(['bag', 'gasometer', 'compressor', 'cylinder', 'burner', 'engine', 'fuel-cell', 'balloon', 'recombiner']);

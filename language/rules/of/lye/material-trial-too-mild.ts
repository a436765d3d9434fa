import { duration, show } from '../../../units/format.js';
import { stackGuards } from '../../guards.js';
import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { wettedOf } from '../../material-trials.js';

/** s, seven days: the middle one of the usual lengths. ISO 175 and ISO 1817, from memory. */
const WEEK = 7 * 86400;
/** K and points of strength by which a trial may be milder than the rig. Common practice, no source. */
const COOLER = 5;
const WEAKER = 0.02;

export default defineRule({
    name: 'material-trial-too-mild',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'A sample hung in lye cooler, weaker or shorter than the rig will be.',
    why: 'Attack doubles with each ten kelvin or so: what came out whole after two cool days tells nothing of months in warm lye.',
    source: 'lengths of immersion: ISO 175 (plastics), ISO 1817 (rubber), from memory; 5 K and 2 points: common practice, no source',
    on: 'test',
    check(v, tell) {
        const material = v.word('sample');
        if (!material || v.word('result') === 'failed') return;
        const stack = v.the('stack');
        const lye = v.the('lye');
        const guards = stack ? stackGuards(v, `${stack.name}.temperature`, 'above').map(g => g.at).filter(t => t === t) : [];
        const hot = Math.min(stack?.maybeQ('steady-temperature') ?? NaN, ...guards);
        const warm = v.bounds('temperature').high;
        const lacks: string[] = [];
        if (warm < hot - COOLER) lacks.push(`at ${show(warm, '°C', 2)}, while the lye gets to ${show(hot, '°C', 2)}`);
        else if (notGiven(v, 'temperature')) lacks.push('at a temperature that is not told');
        const strength = lye?.maybeQ('mass-fraction') ?? NaN;
        if (v.maybe('strength') < strength - WEAKER) lacks.push(`in ${show(v.maybe('strength'), 'wt%')}, while the lye has ${show(strength, 'wt%')}`);
        else if (notGiven(v, 'strength')) lacks.push('in lye of a strength that is not told');
        const lasted = v.maybe('lasted');
        if (lasted < WEEK * 0.999) lacks.push(`for ${duration(lasted)}, while 7 days are the least that tells`);
        else if (notGiven(v, 'lasted')) lacks.push('for a time that is not told');
        if (!lacks.length) return;
        const used = wettedOf(v, material);
        tell({
            at: v.at('sample'), severity: used.length ? 'warning' : 'hint', related: used.slice(0, 3).map(u => ({ span: u.at, message: u.told })),
            message: `This sample of ${material} hung ${lacks.join('; ')}.`,
        });
    },
});

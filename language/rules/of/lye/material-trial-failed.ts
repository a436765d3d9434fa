import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { wettedOf } from '../../material-trials.js';

/** Share of its mass that a sample may lose or take up. Common practice, no source. */
const LOST = -0.01;
const TAKEN = 0.05;

export default defineRule({
    name: 'material-trial-failed',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'A material that lye attacked in a trial holds lye in the rig.',
    why: 'What happened to the sample in weeks happens to the part in months, under load and with lye behind it.',
    source: '1 % lost or 5 % taken up: common practice, no source',
    on: 'test',
    check(v, tell) {
        const material = v.word('sample');
        if (!material) return;
        const failed = v.word('result') === 'failed';
        const change = v.maybe('mass-change');
        if (!failed && !(change < LOST) && !(change > TAKEN)) return;
        const used = wettedOf(v, material);
        const told = failed ? 'failed' : change < LOST ? `lost ${show(-change, '%', 2)} of its mass; 1 % is the most` : `took up ${show(change, '%', 2)} of its mass; 5 % is the most`;
        if (used.length) {
            tell({
                at: used[0].at, severity: failed ? 'error' : 'warning',
                related: [{ span: v.at(failed ? 'result' : 'mass-change'), message: 'the trial' }, ...used.slice(1, 3).map(u => ({ span: u.at, message: `also ${u.told}` }))],
                message: `A sample of ${material} ${told}, and ${used[0].told} is of it.`,
            });
        } else if (!failed && v.word('result') === 'passed') {
            tell({ at: v.at('mass-change'), severity: 'hint', message: `This sample of ${material} ${told}, and yet it counts as passed.` });
        }
    },
});

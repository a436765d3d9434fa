import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

/** 14 CFR 101.1(a)(1) and (4), from memory: moored over 6 ft or 115 ft³; free by package and cord. SI. */
const MOORED_WIDTH = 1.8288;
const MOORED_VOLUME = 115 * 0.0283168;
const PACKAGE = 6 * 0.45359237;
const DENSE_PACKAGE = 4 * 0.45359237;
/** kg/m²: 3 oz for each square inch of the smallest face. */
const DENSE = 3 * 0.0283495 / 0.00064516;
/** N, 50 lbf. */
const CORD = 222.4;

export default defineRule({
    name: 'balloon-over-aviation-size',
    family: 'use',
    severity: 'warning',
    summary: 'A balloon is of a size or load that air law sets rules for.',
    why: 'It stands or flies where aircraft do. Beyond certain sizes lights, notice or leave are asked for.',
    source: '14 CFR 101.1, from memory; other countries differ',
    on: 'balloon',
    check(v, tell) {
        const american = v.the('site')?.word('law') === 'US';
        const severity = american ? 'warning' : 'hint';
        const law = american ? '' : ' by US rules; ask what holds where you are';
        if (v.yes('moored') !== false) {
            const volume = v.maybeQ('gas-volume');
            const width = v.maybe('diameter');
            if (width > MOORED_WIDTH) tell({ at: v.at('diameter'), severity, message: `${v.name} is ${show(width, 'm')} wide; on its cord more than ${show(MOORED_WIDTH, 'm')} falls under air law${law}.`, fixes: defined(v.said('volume') ? undefined : setValue(v, 'diameter', '1.8 m', 'Plan it 1.8 m wide')) });
            else if (volume > MOORED_VOLUME) tell({ at: v.at('volume'), severity, message: `${v.name} holds ${show(volume, 'm3')}; on its cord more than ${show(MOORED_VOLUME, 'm3')} falls under air law${law}.` });
            return;
        }
        const mass = v.maybe('package');
        const face = v.maybe('package.face');
        if (mass > PACKAGE || (mass > DENSE_PACKAGE && mass / face > DENSE)) tell({ at: v.at('package'), severity, message: `${v.name} carries ${show(mass, 'kg')}; let go, more than ${show(PACKAGE, 'kg')}, or ${show(DENSE_PACKAGE, 'kg')} in a small hard package, falls under air law${law}.` });
        if (v.maybe('cord') > CORD) tell({ at: v.at('cord'), severity, message: `The cord of ${v.name} bears ${show(v.num('cord'), 'N')}; let go, a package on a cord of more than ${show(CORD, 'N')} falls under air law${law}.`, fixes: defined(setValue(v, 'cord', '220 N', 'Plan a cord that breaks at 220 N')) });
    },
});

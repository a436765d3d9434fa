import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { digits, show } from '../../../units/format.js';

export default defineRule({
    name: 'detector-in-wrong-place',
    family: 'controls',
    severity: 'warning',
    summary: 'The hydrogen detector sits below where hydrogen gathers.',
    why: 'Hydrogen rises and stays under the highest point; a detector below it tells when the room above is full.',
    source: 'where gas can gather and above likely leaks: hydrogen best-practice pages (h2tools.org); 0.3 m: common practice, no source',
    guardsLife: true,
    on: 'detector',
    check(v, tell) {
        const high = v.the('site')?.maybe('high-point') ?? NaN;
        if (!/\.hydrogen$/.test(v.controls.sensed(v) ?? '') || v.word('place') === 'duct') return;
        if (v.word('place') === 'floor') tell({ at: v.at('place'), message: `${v.name} sits at the floor; hydrogen gathers under the ceiling.`, fixes: defined(setValue(v, 'place', 'ridge', 'Put it under the ridge')) });
        else if (v.maybe('height') < high - 0.3) {
            const best = `${digits(Math.floor(high * 10 - 1) / 10)} m`;
            tell({ at: v.at('height'), message: `${v.name} sits at ${show(v.num('height'), 'm')}; hydrogen gathers at ${show(high, 'm')}, the highest point.`, related: [{ span: v.the('site')!.at('high-point'), message: 'the highest point' }], fixes: defined(setValue(v, 'height', best, `Put it at ${best}`)) });
        }
    },
});

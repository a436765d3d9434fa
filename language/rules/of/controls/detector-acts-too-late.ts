import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'detector-acts-too-late',
    family: 'controls',
    severity: 'warning',
    summary: 'A gas detector acts only when the air is already near what burns.',
    why: 'By the time the head of a detector shows 4 %, the gas under the ceiling has burnt or could have. It must act while there is time to air the room.',
    source: 'a quarter of the lower flammable limit: hydrogen best-practice pages (h2tools.org); lower limit 4 %: ISO/TR 15916; 23.5 % oxygen: enriched atmosphere in gas industry codes, as listed',
    guardsLife: true,
    on: 'detector',
    check(v, tell) {
        const sensed = (v.controls.sensed(v) ?? '').split('.')[1];
        const limits = { hydrogen: { most: 0.01, burns: 0.04 }, oxygen: { most: 0.235, burns: Infinity } } as const;
        if (sensed !== 'hydrogen' && sensed !== 'oxygen') return;
        const { most, burns } = limits[sensed];
        const acts = v.maybe('trips.value', v.maybe('alarm.value'));
        if (notGiven(v, 'trips') && notGiven(v, 'alarm')) tell.cannotCheck(v, 'trips', `whether ${v.name} acts in time`);
        const key = v.maybe('trips.value') === acts ? 'trips' : 'alarm';
        if (!(acts > most * 1.0001) || v.word(`${key}.side`) !== 'above') return;
        tell({
            at: v.at(key), severity: acts >= burns ? 'error' : 'warning',
            message: `${v.name} acts at ${show(acts, '%')} ${sensed} in the air; ${acts >= burns ? 'hydrogen burns from 4 % on, and ' : ''}${show(most, '%')} is the limit${sensed === 'oxygen' ? ': from there on cloth and oil burn fiercely' : ', a quarter of what burns'}.`,
            fixes: defined(setValue(v, key, `above ${show(most, '%')}`, `Let it act at ${show(most, '%')}`)),
        });
    },
});

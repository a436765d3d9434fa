import { defineRule } from '../../define.js';
import { digits } from '../../../units/format.js';

export default defineRule({
    name: 'vessel-not-for-hydrogen',
    family: 'storage',
    severity: 'warning',
    summary: 'The vessel was made for another use.',
    why: 'Its approval, steel, valve and history are for that use; rust inside and many cycles are not seen from outside.',
    source: 'simple pressure vessels are for air and nitrogen only: Directive 2014/29/EU; change of gas service: ISO 11621, from memory; 25 bar L: Directive 2014/68/EU, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const said: Record<string, string> = {
            'air-receiver': 'An air receiver is approved for air and nitrogen and rusts from inside.', scuba: 'A diving cylinder is tested for air, and its valve is not for fuel gas.',
            extinguisher: 'An extinguisher is not built to be filled and emptied under steady pressure.', 'home-made': 'What a vessel made at home bears nobody knows; building one is licensed work.',
        };
        const sort = v.word('sort') ?? '';
        const energy = v.maybeQ('pressure-volume');
        if (said[sort]) {
            tell({ at: v.at('sort'), severity: sort === 'home-made' && energy > 2500 ? 'error' : 'warning', message: `${said[sort]}${sort === 'home-made' && energy > 2500 ? ` ${digits(energy / 100, 2)} bar L is regulated pressure equipment.` : ' Replace it with one stamped for hydrogen.'}` });
            return;
        }
        const gas = v.word('permitted-gas');
        if (gas && sort !== 'LPG' && sort !== 'disposable' && !/hydrogen|\bH2\b/i.test(gas)) tell({ at: v.at('permitted-gas'), message: `${v.name} is stamped for ${gas}, not for hydrogen.` });
    },
});

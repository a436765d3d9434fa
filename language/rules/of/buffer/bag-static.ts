import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'bag-static',
    family: 'buffer',
    severity: 'warning',
    summary: 'The film of the bag can charge itself.',
    why: 'Moving film reaches thousands of volts, and hydrogen lights from a spark that nobody feels.',
    source: 'least ignition energy 0.017 to 0.02 mJ, handbooks; 40 % humidity: common practice, no source; IEC TS 60079-32-1, scope only',
    on: 'bag',
    check(v, tell) {
        const humidity = v.the('site')?.bounds('humidity').low ?? NaN;
        const how = v.word('bonded');
        if (how === 'no') tell({ at: v.at('bonded'), message: `${v.name} is not joined to earth: a foil that moves charges itself.`, fixes: defined(setValue(v, 'bonded', 'yes', 'Join it to earth')) });
        else if (how === 'insulating-film' && humidity < 0.4) tell({ at: v.at('bonded'), message: `An insulating film in air of down to ${show(humidity, '%', 2)} charges itself when it moves: keep people off, wear cotton, keep the air moist.`, related: [{ span: v.the('site')!.at('humidity'), message: 'the air' }] });
    },
});

import { duration, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'capacitor-no-bleed',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'Nothing empties the smoothing capacitor when the mains is off.',
    why: 'With the stack unplugged it keeps its charge for hours: enough for burns, for a welded tool, and for a spark ' +
        'where hydrogen is about.',
    source: 'below 60 V within 5 s: IEC 60204-1, 6.2.4, as explained elsewhere; 1 J within 2 min: common practice, no source',
    on: 'capacitor',
    check(v, tell) {
        const energy = v.q('energy');
        const crest = v.the('transformer')?.q('crest-voltage') ?? NaN;
        const capacitance = v.num('capacitance');
        if (!(energy > 1)) return;
        const needed = 100 / (capacitance * Math.log(crest / Math.sqrt(2 / capacitance)));
        const buy = [10, 22, 47, 100, 220, 330, 470, 680, 1000, 2200, 4700].filter(r => r <= needed).at(-1);
        const bought = buy && `${buy} ohm`;
        const watts = buy ? crest ** 2 / buy : NaN;
        const hint = bought
            ? ` ${bought} would bring it below 1 J in time and warms with ${show(watts, 'W', 2)}: take one for three times that.`
            : '';
        const fixes = defined(bought ? setValue(v, 'bleed', bought, `Bleed it with ${bought}`) : undefined);
        const bleed = v.maybe('bleed');
        if (bleed === bleed) {
            const left = crest * Math.exp(-5 / (bleed * capacitance));
            const time = v.q('discharge-time');
            if (time > 120) {
                tell({
                    at: v.at('bleed'),
                    message: `${show(bleed, 'ohm')} needs ${duration(time)} to bring ${show(energy, 'J')} below 1 J; 2 min is the ` +
                        `limit.${hint}`,
                    fixes,
                });
            } else if (crest > 60 && left > 60) {
                tell({
                    at: v.at('bleed'),
                    message: `5 s after switch-off ${show(left, 'V')} still stand on it; 60 V is the limit.`,
                });
            }
            return;
        }
        tell({
            at: v.part.entries.has('bleed') ? v.at('bleed') : v.at('capacitance'),
            message: `${show(capacitance, 'mF')} at ${show(crest, 'V')} hold ${show(energy, 'J')} with the stack unplugged, and ` +
                `${v.says('bleed') === 'unknown' ? 'whether anything empties it is not known' : 'nothing empties it'}.${hint}`,
            fixes,
        });
    },
});

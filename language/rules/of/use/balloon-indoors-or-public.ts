import { defineRule } from '../../define.js';
import { isIndoors } from '../../place.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'balloon-indoors-or-public',
    family: 'use',
    severity: 'error',
    summary: 'Hydrogen balloons are filled indoors, or go to children or the public.',
    why: 'They burn in a flash, in people\'s faces; it has happened many times.',
    source: 'fire codes that forbid inflating with hydrogen, as reported by a fire-protection practice; local law decides',
    guardsLife: true,
    on: 'balloon',
    check(v, tell) {
        const purpose = v.the('purpose');
        const audience = purpose?.word('audience') ?? 'alone';
        if (['children', 'public', 'sale'].includes(audience)) {
            tell({ at: purpose!.at('audience'), severity: missing(tell, 'error'), message: `Hydrogen balloons for ${audience === 'sale' ? 'sale' : audience === 'public' ? 'the public' : 'children'} burn in a flash in people's faces; fire codes forbid them. Helium or air is for that.`, related: [{ span: v.at(), message: 'the balloon' }] });
        } else if (isIndoors(v)) {
            tell({ at: v.at(), severity: missing(tell, 'error'), message: `${v.name} is filled under a closed roof: a burst fills the ceiling with what burns. Fill it in the open.`, related: [{ span: v.the('site')!.at('place'), message: 'the place' }] });
        } else if (audience === 'others') tell({ at: v.at(), severity: 'hint', message: `Others are near ${v.name}: no flames, no cigarettes, no bunches, and arm's length for every face.` });
    },
});

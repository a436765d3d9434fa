import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'vent-freezes-or-blocks',
    family: 'storage',
    severity: 'warning',
    summary: 'A vent for moist gas can fill with ice, or a nest can close it.',
    why: 'A vent that is shut sends its pressure back to the separators, and one behind a relief valve leaves it shut as well. It happens while the rig stands still, and the next start finds it.',
    source: 'outlets of relief devices that cannot hold freezing water: 29 CFR 1910.103, as mirrored in 8 CCR 5467; 10 mm for a bore without mesh: common practice, no source',
    guardsLife: true,
    on: 'vent',
    check(v, tell) {
        const gas = (['hydrogen', 'oxygen'] as const).find(g => v.paths.to(v.name, g).length);
        if (!gas || v.word('place') === 'room') return;
        const site = v.the('site');
        const cold = site?.said('coldest') ? site.maybe('coldest') : NaN;
        const before = v.paths.before(v.name, gas).map(n => v.other(n)).filter((p): p is View => !!p);
        const moist = before.some(p => p.kind === 'stack') && !before.some(p => p.kind === 'dryer');
        if (site && cold !== cold && moist && !(v.maybe('slope') > 0)) tell.cannotCheck(site, 'coldest', `whether ${v.name} freezes shut`);
        if (cold < 273.15 && moist && !(v.maybe('slope') > 0)) {
            tell({
                at: v.at('slope'), severity: missing(tell, 'warning'), message: `Moist ${gas} leaves by ${v.name}, whose pipe ${v.said('slope') ? 'does not fall back to a drain' : 'is not said to fall back to a drain'}; at ${show(cold, '°C')} the water in it freezes and shuts it.`,
                related: [{ span: site!.at('coldest'), message: 'the coldest' }], fixes: defined(setValue(v, 'slope', '4 %', 'Let it fall back by 4 %')),
            });
        }
        if (v.said('bore') && v.maybe('bore') < 0.01 && !v.yes('mesh')) tell({ at: v.at('bore'), severity: 'hint', message: `The mouth of ${v.name} is ${show(v.num('bore'), 'mm')} wide and has no mesh: insects nest in such holes.`, fixes: defined(setValue(v, 'mesh', 'yes', 'Put a mesh over it')) });
    },
});

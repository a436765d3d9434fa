import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { setValue } from '../../fixes.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'lye-freezes',
    family: 'lye and materials',
    severity: 'warning',
    summary: 'Lye, or the water of a seal or bubbler, freezes at the coldest of the site.',
    why: 'A frozen bubbler blocks the outlet, a frozen seal no longer relieves, and the pressure finds its way through the ' +
        'separators.',
    source: 'producers\' handbooks and tables of glycol, from memory, ± 3 K',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        const site = v.the('site');
        const cold = site?.maybe('coldest') ?? NaN;
        if (!site || site.says('coldest') === 'assumed') return;
        const related = [{ span: site.at('coldest'), message: 'the coldest' }];
        for (const lye of v.all('lye')) {
            const freezes = lye.maybeQ('freezing-point');
            if (tell.fallsShort(cold, freezes, '°C', lye, 'strength')) {
                tell({
                    at: lye.at('strength'),
                    related,
                    message: `This lye begins to freeze at about ${show(freezes, '°C', 2)}; the site gets down to ${show(cold, '°C')}.`,
                });
            }
        }
        const frozen = ['seal', 'bubbler', 'scrubber'].flatMap(k => v.all(k)).filter(p => !p.part.pattern && p.paths.mediaOf(p.name).size && cold < freezingPoint(p));
        if (!frozen.length) return;
        const first = frozen[0];
        const seal = frozen.some(p => p.kind === 'seal');
        // Glycol and oxygen do not belong together.
        const hydrogen = frozen.filter(p => (p.word('fluid') ?? 'water') === 'water' && !p.paths.mediaOf(p.name).has('oxygen'));
        const share = [25, 35, 45].find(p => cold > glycolFreezes(p / 100));
        const edits = share ? hydrogen.flatMap(p => setValue(p, 'fluid', `glycol ${share} %`)?.edits ?? []) : [];
        const names = frozen.map(p => p.name);
        const list = `${names.slice(0, 4).join(', ')}${names.length > 4 ? ` and ${names.length - 4} more` : ''}`;
        tell({
            at: first.said('fluid') ? first.at('fluid') : first.at(),
            related: [...related, ...frozen.slice(1).map(p => ({ span: p.at(), message: 'and here' }))],
            message: `At ${show(cold, '°C')}, the coldest of the site, what stands in ${list} is frozen: ` +
                `${seal ? 'a frozen seal no longer relieves, ' : ''}a frozen bubbler blocks the gas.`,
            fixes: edits.length
                ? [{ title: `Fill ${edits.length > 1 ? 'those of the hydrogen side' : 'it'} with ${share} % glycol`, edits }]
                : [],
        });
    },
});

/** K; table of ethylene glycol in water, roughly. */
const glycolFreezes = (share: number) => 273.15 - 12 * (share / 0.25) ** 1.4;
function freezingPoint(p: View): number {
    const fluid = p.word('fluid') ?? 'water';
    return fluid === 'glycol' ? glycolFreezes(p.maybe('fluid.share', 0.25)) : fluid === 'weak-lye' ? 269.15 : 273.15;
}

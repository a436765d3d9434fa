import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';
import { SEAL_MARGIN } from '../../relief.js';

export default defineRule({
    name: 'seal-depth-vs-head',
    family: 'buffer',
    severity: 'error',
    summary: 'The seal opens in ordinary running, or so close to it that it will.',
    why: 'A seal that blows all the time empties itself, and then air and gas meet where it stood.',
    source: 'hydrostatics; 50 mm: common practice, no source',
    guardsLife: true,
    on: 'seal',
    check(v, tell) {
        const opens = v.maybeQ('opens-at');
        const media = v.paths.mediaOf(v.name);
        if (!media.size || !v.the('stack')) return;
        if (v.says('depth') === 'silent' || v.says('depth') === 'unknown') {
            tell.cannotCheck(v, 'depth', `when ${v.name} opens`);
            return;
        }
        const working = v.maybeQ('working-pressure');
        const density = opens / v.num('depth');
        const depth = Math.ceil((working + SEAL_MARGIN) / density * 100) * 10;
        const place = v.paths.to(v.name, media.has('hydrogen') ? 'hydrogen' : 'oxygen')[0]?.from.name;
        if (opens <= working + 1) {
            tell({ at: v.at('depth'), message: `${v.name} opens at ${show(opens, 'kPa')} and ${show(working, 'kPa')} stand at ${place} while it runs: it lets gas out all the time.`, fixes: defined(depth > 0 ? setValue(v, 'depth', `${depth} mm`) : undefined) });
        } else if (tell.fallsShort(opens, working + SEAL_MARGIN - 100, 'kPa', v, 'depth')) {
            // A centimetre of the margin is let pass: nobody fills a seal to the millimetre.
            tell({ at: v.at('depth'), severity: 'warning', message: `${v.name} opens at ${show(opens, 'kPa')}, only ${show((opens - working) / density, 'mm', 2)} of water above the ${show(working, 'kPa')} at ${place} in ordinary running; 50 mm are usual.`, fixes: defined(depth > 0 ? setValue(v, 'depth', `${depth} mm`) : undefined) });
        }
        const column = place === undefined ? undefined : v.all('column').find(c => c.name === place || v.paths.before(place, media.has('hydrogen') ? 'hydrogen' : 'oxygen').includes(c.name));
        const lid = column?.maybe('lid.rating') ?? NaN;
        if (tell.exceeds(opens, lid, 'kPa', v, 'depth')) tell({ at: v.at('depth'), severity: 'warning', message: `${v.name} opens at ${show(opens, 'kPa')}; the lid of ${column!.name} holds ${show(lid, 'kPa')}.`, related: [{ span: column!.at('lid'), message: 'the lid' }] });
    },
});

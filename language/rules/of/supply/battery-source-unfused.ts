import { defineRule } from '../../define.js';
import { defined, insertAfter } from '../../fixes.js';
import { show } from '../../../units/format.js';

/** A, blade and strip fuses that shops hold. */
const FUSES = [5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 150, 200, 250, 300];
/** A fuse bears four fifths of its rating for hours. Common practice, no source. */
const FOR_HOURS = 0.8;

export default defineRule({
    name: 'battery-source-unfused',
    family: 'electrical supply',
    severity: 'error',
    summary: 'A battery without a fuse near its terminal, or with a fuse only behind a converter or the stack.',
    why: 'Into a short a battery gives hundreds of amperes; cables glow within seconds.',
    source: 'fuse within 200 mm of the terminal: marine practice (ISO 13297), from memory',
    guardsLife: true,
    on: 'battery',
    check(v, tell) {
        if (!v.the('stack')) return;
        const fuses = v.all('fuse');
        if (!fuses.length) {
            const current = v.maybeQ('working-current');
            const rating = FUSES.find(a => a * FOR_HOURS >= current);
            tell({
                at: v.at(), message: `${v.name} has no fuse: into a short it gives hundreds of amperes.`,
                fixes: defined(insertAfter(v, `fuse { rating: ${rating ? `${rating} A` : 'unknown'}   dc-rating: 80 V   distance: 100 mm }`, 'Add a fuse at the battery')),
            });
            return;
        }
        // Only a fuse before everything but cable and switches guards the cable of the battery.
        const behind = v.paths.after(v.name, 'current');
        const drawn = fuses.filter(f => behind.includes(f.name));
        const late = (name: string) => v.paths.between(v.name, name, 'current').map(n => v.other(n)).find(o => o && ['supply', 'stack', 'capacitor'].includes(o.kind));
        if (drawn.length && drawn.length === fuses.length && drawn.every(f => late(f.name))) {
            tell({ at: v.at(), message: `${drawn[0].name} stands behind ${late(drawn[0].name)!.name}: the cable from ${v.name} to there has no fuse.`, related: [{ span: drawn[0].at(), message: 'too late on the path' }] });
            return;
        }
        for (const f of fuses) {
            const distance = f.maybe('distance');
            if (distance > 0.2 && (f.word('distance.from') ?? v.name) === v.name) tell({ at: f.at('distance'), message: `The fuse sits ${show(distance, 'mm')} from ${v.name}; the cable before it is not protected. 200 mm is the usual limit.` });
        }
    },
});

import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { isIndoors } from '../../place.js';
import { missing } from '../../stage.js';
import { show } from '../../../units/format.js';
import type { Severity } from '../../define.js'
import type { Span } from '../../../rig/rig.js';

export default defineRule({
    name: 'relief-vents-indoors',
    family: 'storage',
    severity: 'error',
    summary: 'Hydrogen that is let out by a relief valve, a seal or a purge ends indoors.',
    why: 'It turns a near miss into an explosion.',
    source: 'upward and unobstructed to open air: 29 CFR 1910.103 as mirrored in 8 CCR 5467; vented outdoors: hydrogen best-practice pages (h2tools.org)',
    guardsLife: true,
    on: ['relief-valve', 'seal', 'bleed', 'gasometer', 'fuel-cell', 'vent'],
    check(v, tell) {
        if (v.the('site')?.word('place') === 'outdoors' || isIndoors(v) === false) return;
        const say = (at: Span, what: string, severity: Severity = 'error') => tell({ at, severity: missing(tell, severity), message: what });
        if (v.kind === 'bleed') {
            if (v.word('outlet') === 'room') say(v.at('outlet'), `${v.name} lets hydrogen into the room.`, 'warning');
        } else if (v.kind === 'gasometer') {
            if (v.word('overflow') === 'room') say(v.at('overflow'), `${v.name} lets hydrogen into the room when it is full.`);
        } else if (v.kind === 'fuel-cell') {
            if (v.word('purge-outlet') === 'room') say(v.at('purge-outlet'), `${v.name} lets hydrogen into the room each time it purges itself.`);
        } else if (v.paths.mediaOf(v.name).has('hydrogen')) {
            const after = v.paths.after(v.name, 'hydrogen');
            if (v.kind === 'vent') {
                if (v.word('place') === 'room') tell({ at: v.at('place'), severity: missing(tell, 'error'), message: `${v.name} ends in the room: hydrogen that comes out of it stays under the ceiling.`, fixes: defined(setValue(v, 'place', 'outdoors-up', 'Lead it outdoors, up')) });
            } else if (after.includes('room')) {
                const link = v.paths.links.find(l => l.medium === 'hydrogen' && l.to.name === 'room')!;
                const store = v.all('cylinder').find(c => v.paths.route(c.name, v.name, 'hydrogen'));
                const gas = v.kind === 'relief-valve' ? store?.maybeQ('stored-gas') ?? NaN : NaN;
                tell({ at: link.to.span, severity: missing(tell, 'error'), message: `${v.name} lets ${gas > 0 ? `up to ${show(gas, 'NL')} of ` : ''}hydrogen into the room.`, related: [{ span: v.at(), message: 'lets it out' }], fixes: [{ title: 'Lead it outdoors', edits: [{ span: link.to.span, text: 'outdoors' }], preferred: true }] });
            }
        }
    },
});

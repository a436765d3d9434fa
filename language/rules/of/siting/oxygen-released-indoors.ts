import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { duration, show } from '../../../units/format.js';
import { isIndoors } from '../../place.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'oxygen-released-indoors',
    family: 'siting',
    severity: 'error',
    summary: 'The oxygen goes into the room.',
    why: 'From 23.5 % oxygen on, cloth, hair and oil burn fiercely, and nobody notices it.',
    source: '23.5 %: oxygen-enriched atmosphere in ISO 10156 and gas industry codes, as listed',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        if (isIndoors(v) !== true) return;
        const after = v.paths.after(v.name, 'oxygen');
        const end = after.find(n => n === 'room' || v.other(n)?.kind === 'vent' && v.other(n)!.word('place') === 'room');
        const site = v.the('site');
        if (!end || !site) return;
        const rate = v.maybeQ('hydrogen-rate-room') / 2;
        if (site.maybeQ('ventilation') >= 30 * rate) return;
        const clock = site.maybeQ('oxygen-clock');
        const vent = v.other(end);
        const link = v.paths.links.find(l => l.medium === 'oxygen' && l.to.name === end);
        tell({
            at: vent?.at('place') ?? link?.to.span ?? v.at(), severity: missing(tell, 'error'), message: `${show(rate, 'L/h')} of oxygen go into the room${clock === clock ? `; shut, it is at 23.5 % after ${duration(clock)}` : ''}.`,
            fixes: defined(vent ? setValue(vent, 'place', 'outdoors-wall', 'Lead it through the wall') : link && { title: 'Lead it outdoors', edits: [{ span: link.to.span, text: 'outdoors' }], preferred: true }),
        });
    },
});

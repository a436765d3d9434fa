import { append, defined } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { digits, show } from '../../../units/format.js';
import { freeName, listEdit, together } from '../../path-fixes.js';
import { isIndoors, runsAlone, standsOutside, stores } from '../../place.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'no-hydrogen-detector',
    family: 'controls',
    severity: 'warning',
    summary: 'Hydrogen is kept or compressed under a roof, and nothing would notice a leak.',
    why: 'It has no colour and no smell, and it gathers where nobody looks.',
    source: 'detector at 1 % that shuts off the source, with a reset by hand: hydrogen best-practice pages (h2tools.org)',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        const stack = v.the('stack');
        const kept = [...stores(v), ...v.all('compressor')].filter(p => !standsOutside(p) && v.paths.mediaOf(p.name).has('hydrogen'));
        const indoors = isIndoors(v);
        if (!stack || !kept.length || indoors === undefined || v.word('place') === 'outdoors') return;
        if (v.all('detector').some(d => /\.hydrogen$/.test(v.controls.sensed(d) ?? ''))) return;
        const share = Math.max(0, ...kept.map(p => p.maybeQ('inventory-share', 0)));
        const loud = runsAlone(v) || share > 0.01;
        const main = v.all('contactor').find(c => c.names('latched-by').length);
        const stopped = main ?? v.controls.sources().at(-1);
        const name = freeName(v, 'gas-watch');
        const high = v.maybe('high-point');
        const block = `detector ${name} {\n  senses:           ${v.name}.hydrogen\n${high > 0.5 ? `  height:           ${show(Math.floor(high * 10 - 1) / 10, 'm')}\n` : ''}  place:            ridge\n  alarm:            above 0.4 %\n  trips:            above 1 %\n  resets:           by hand\n  if-wire-breaks:   trips\n  if-unpowered:     trips\n}`;
        tell({
            at: kept[0].at(), severity: missing(tell, indoors ? (loud ? 'error' : 'warning') : 'hint'),
            message: `${kept.map(p => p.name).slice(0, 3).join(', ')} ${kept.length > 1 ? 'stand' : 'stands'} ${indoors ? 'indoors' : 'under a roof'} and no detector watches the air${indoors && loud ? (share > 0.01 ? `; ${digits(100 * share, 2)} % of the room is kept` : '; nobody stands by all the time') : ''}.`,
            fixes: defined(stopped && together('Plan a detector that stops the rig', append(v, block, ''), listEdit(stopped, 'stopped-by', name))),
        });
    },
});

import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

/** m. Common practice, no source. */
const APART = 3;

export default defineRule({
    name: 'combustibles-near-oxygen',
    family: 'siting',
    severity: 'warning',
    summary: 'Things that burn well lie near where oxygen comes out.',
    why: 'In enriched air cloth, sawdust and grease catch fire from a spark that would do nothing otherwise, and burn like a torch.',
    source: 'fire hazards of oxygen: EIGA Doc 04, from memory; 3 m: common practice, no source',
    on: 'rig',
    check(v, tell) {
        if (!v.said('combustibles') || !v.the('stack') || !v.paths.on('oxygen').length) return;
        const entry = v.part.entries.get('combustibles');
        for (const row of v.rows('combustibles')) {
            const what = row.get('what');
            const far = row.get('distance');
            const distance = far?.number ?? NaN;
            if (!entry || !what || distance >= APART) continue;
            tell({
                at: { ...entry.span, start: entry.span.start + what.start, end: entry.span.start + (far?.end ?? what.end) }, severity: far ? 'warning' : 'hint',
                message: far ? `${what.text ?? what.word} ${show(distance, 'm')} from a rig that gives off oxygen: ${show(APART, 'm')} is a usual distance.` : `How far is ${what.text ?? what.word} from where oxygen comes out? ${show(APART, 'm')} is a usual distance.`,
            });
        }
    },
});

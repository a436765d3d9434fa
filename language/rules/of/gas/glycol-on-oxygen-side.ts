import { defineRule } from '../../define.js';
import { setValue } from '../../fixes.js';

/** Share of glycol from which the mixture itself can be lit. From memory. */
const BURNS = 0.8;
/** K at which lye of 5 wt% begins to freeze. From memory. */
const WEAK_LYE_FREEZES = 269.15;

export default defineRule({
    name: 'glycol-on-oxygen-side',
    family: 'gas conditioning',
    severity: 'hint',
    summary: 'Oxygen bubbles through glycol.',
    why: 'Glycol is fuel. As mist and film it goes along with the oxygen, and where the oxygen is kept or pressed a spark lights it; sucked back into the lye it foams.',
    source: 'nothing that burns in oxygen lines: EIGA Doc 33, from memory',
    on: 'rig',
    check(v, tell) {
        const filled = ['bubbler', 'scrubber', 'seal'].flatMap(kind => v.all(kind)).filter(p => p.word('fluid') === 'glycol' && p.paths.mediaOf(p.name).has('oxygen'));
        if (!filled.length) return;
        const first = filled[0];
        const kept = filled.some(p => p.paths.after(p.name, 'oxygen').some(n => ['bag', 'gasometer', 'compressor', 'cylinder'].includes(v.other(n)?.kind ?? '')));
        const names = filled.map(p => p.name);
        // Weak lye stands a few kelvin of frost only.
        const mild = (v.the('site')?.maybe('coldest') ?? NaN) >= WEAK_LYE_FREEZES;
        const edits = mild ? filled.flatMap(p => setValue(p, 'fluid', 'weak-lye')?.edits ?? []) : [];
        tell({
            at: first.said('fluid') ? first.at('fluid') : first.at(), severity: kept || filled.some(p => p.maybe('fluid.share') >= BURNS) ? 'warning' : 'hint',
            related: filled.slice(1).map(p => ({ span: p.at(), message: 'and here' })),
            message: `Oxygen bubbles through the glycol of ${names.slice(0, 3).join(', ')}${names.length > 3 ? ` and ${names.length - 3} more` : ''}: ` +
                `${kept ? 'it is fuel, and its mist goes where the oxygen is kept' : 'it is fuel, and foams where it is sucked back into the lye'}. Weak lye does neither, down to -4 °C.`,
            fixes: edits.length === filled.length ? [{ title: `Fill ${filled.length > 1 ? 'them' : 'it'} with weak lye`, edits }] : [],
        });
    },
});

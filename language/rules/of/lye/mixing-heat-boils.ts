import { show } from '../../../units/format.js';
import { addition } from '../../fixes.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'mixing-heat-boils',
    family: 'lye and materials',
    severity: 'error',
    summary: 'Mixed at once, the lye heats itself until it boils and spits.',
    why: 'Dissolving gives off as much heat as a kettle. Boiling lye flies into faces, and a blinded eye does not come back.',
    source: 'heats of solution, NBS tables, from memory, ± 10 %; 90 °C: common practice, no source',
    guardsLife: true,
    on: 'lye',
    check(v, tell) {
        const rise = v.maybeQ('mixing-rise');
        if (!v.said('solute-mass') || !v.said('water-mass') || !(rise > 70)) return;
        const routine = v.the('routine');
        const steps = routine?.names('steps').join(' ') ?? '';
        if (/portion|slow|small|little|step by step|spoon|ice|cool/i.test(`${steps} ${v.part.note ?? ''} ${v.word('note') ?? ''}`)) return;
        const entry = routine?.part.entries.get('steps');
        const place = entry?.value
            ? [{ span: { ...entry.span, end: entry.span.start }, text: 'mix in small portions into cold water, ' }]
            : [];
        const added = !entry && routine ? addition(routine, 'steps', 'mix in small portions into cold water') : undefined;
        const edits = added ? [added] : place;
        tell({
            at: v.at('solute-mass'), related: [{ span: v.at('water-mass'), message: 'the water' }],
            message: `${show(v.maybe('solute-mass'), 'kg')} of ${v.word('solute')} in ${show(v.maybe('water-mass'), 'kg')} of cold water ` +
                `warm it by ${show(rise, 'K', 2)}, to about ${show(293.15 + rise, '°C', 2)}: put in at once it boils and spits. The ` +
                'solid goes into the water in small portions, with goggles on; never the water onto the solid.',
            fixes: edits.length ? [{ title: 'Write down that it is mixed in small portions', edits }] : [],
        });
    },
});

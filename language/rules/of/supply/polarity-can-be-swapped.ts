import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'polarity-can-be-swapped',
    family: 'electrical supply',
    severity: 'warning',
    summary: 'Plus and minus of the stack leads can change places.',
    why: 'Swapped, the stack makes hydrogen where oxygen belongs from the first second, and both lines hold mixtures until they have been flushed several times. It happens at the first service.',
    source: 'common practice, no source',
    under: ['polarity-disagrees-with-sides'],
    on: 'leads',
    check(v, tell) {
        const ends = v.word('ends');
        const keyed = v.says('keyed') === 'assumed' ? undefined : v.yes('keyed');
        const stack = v.the('stack');
        if (!stack || keyed || ends === 'bolted' || ends === 'soldered' || !(v.said('ends') || keyed === false)) return;
        // A diode fixed to the stack blocks leads swapped before it; one before the leads does not see a swap at the stack.
        if (v.paths.after(v.name, 'current').some(n => v.other(n)?.kind === 'diode')) return;
        const watched = v.all('analyser').some(a => v.controls.stops(a.name).length);
        tell({
            at: keyed === false ? v.at('keyed') : v.at('ends'), severity: keyed === false && !watched ? 'warning' : 'hint',
            message: `Both leads end alike${ends && v.said('ends') ? `, in a ${ends}` : ''}, and ${keyed === false ? 'they are not keyed' : 'nothing is said of a key'}: swapped, hydrogen goes into the oxygen line from the first second. ` +
                'Two sizes of stud, or a plug that fits one way only, prevents it; colours alone do not.',
            fixes: defined(setValue(v, 'keyed', 'yes', 'Key the leads')),
        });
    },
});

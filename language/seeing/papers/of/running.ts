/** The card beside the rig: how it is started, watched and stopped, with the names and marks of this rig. */
import type { View } from '../../../quantities/view.js';
import { duration } from '../../../units/format.js';
import type { Bench } from '../bench.js';
import { blank, heading, list, pairs, steps, words } from '../page.js';
import { definePaper } from '../paper.js';
import type { Child } from '../../svg.js';

/** One line for all parts of a sort: 'Levels, cold: a 250 mm, b 250 mm'. */
const each = (what: string, parts: readonly View[], tell: (v: View) => readonly Child[]) => (parts.length ? [`${what}: `, ...parts.flatMap((v, i) => [`${i ? ', ' : ''}${v.name} `, ...tell(v)])] : undefined);
const named = (b: Bench, ...kinds: readonly string[]) => b.parts(...kinds).map(v => v.name).join(', ');

export default definePaper({
    name: 'running', place: 80, title: 'Start and stop',
    purpose: 'Hangs beside the rig: what is looked at before, in which order things go on and off, what to do when something is wrong.',
    needs: 'routine, column, seal, button, stop-button, contactor, timer, store',
    cautions: b => [
        `Anything strange: press ${named(b, 'stop-button') || 'the stop'} first, think afterwards.`,
        'Hydrogen burns without a visible flame. No spark, no smoking, no phone at the gas. Lye: goggles on whenever you touch anything wet.',
    ],
    make: b => {
        const routine = b.the('routine');
        const told = routine?.rows('steps').map(r => r.get('')?.text ?? r.get('')?.word ?? '').filter(Boolean) ?? [];
        const starts = b.parts('contactor', 'relay').flatMap(v => v.names('latched-by')).filter(n => b.other(n.split('.')[0])?.kind === 'button');
        const hand = named(b, 'valve') && b.parts('valve').filter(v => b.told(v, 'sort') === 'hand').map(v => v.name).join(', ');
        const alone = routine && b.written(routine, 'attended');
        const timers = b.parts('timer').filter(v => b.told(v, 'time'));
        // What counts from what the button brings in is waited for; the others act by themselves while it runs.
        const waits = timers.filter(v => v.word('sort') === 'on-delay' && (b.other(v.word('follows') ?? '')?.names('latched-by').length ?? 0) > 0);
        const time = (v: View) => `${v.name}: ${b.told(v, 'sort') ?? 'timer'} ${b.told(v, 'time')}${b.told(v, 'follows') ? ` on ${b.told(v, 'follows')}` : ''}`;
        const flame = b.parts('burner');
        return [
            heading('Emergency'),
            list([
                ['Fire brigade: ', blank(), '  Poison help: ', blank(), '  Neighbour: ', blank()],
                'Gas smells of nothing. Detector or hiss: stop, out, open from outside, no switch inside touched.',
                'A hydrogen flame is put out by shutting the gas, not by water. Cool what stands beside it from afar.',
                'Lye in the eye: running water at once, a quarter of an hour or more, then a doctor.',
            ]),
            told.length > 0 && words('Steps as the text names them: ', told.join(', '), '.'),
            heading('Before'),
            steps([
                b.parts('detector', 'fan', 'analyser').length > 0 ? `On and showing: ${named(b, 'detector', 'analyser', 'fan')}.` : 'Air moves freely; nothing above catches gas.',
                each('Levels, cold', b.parts('column'), v => [b.told(v, 'level') ?? blank()]),
                each('Seals filled', b.parts('seal'), v => [b.told(v, 'depth') ?? blank(), b.told(v, 'fluid') ? ` of ${b.written(v, 'fluid')}` : '']),
                each('Tubes under', b.parts('bubbler', 'scrubber'), v => [b.told(v, 'immersion') ?? blank()]),
                'Lye colder than 40 °C, no drip, hoses on, vents free of ice and insects.',
                ['After more than ', blank(), ' days of rest: nitrogen first, gas out of doors.'],
            ]),
            heading('Start'),
            steps([
                hand ? `Valves by hand, each as its tag says: ${hand}.` : undefined,
                starts.length ? `Press ${[...new Set(starts)].join(', ')}.` : ['Switch on: ', blank('long')],
                ...waits.map(v => `Wait for ${time(v)}.`),
                ['Current ', b.predicted(b.the('stack'), 'current-cold'), ' cold, rising or falling to ', b.predicted(b.the('stack'), 'current'), '; volts ', b.predicted(b.the('stack'), 'voltage'), ' warm. Both gases bubble.'],
                ['Gas is kept only when the oxygen in it reads ', b.parts('analyser').length ? 'steady and below the alarm' : blank(), '.'],
            ]),
            heading('While it runs'),
            pairs([
                ['somebody stands by', alone ?? blank()],
                ['lowest current', b.ask(routine, 'lowest-current')],
                ['water', [(routine && b.written(routine, 'water-fill')) ?? blank(), '; pure water only, never lye']],
                ...timers.filter(v => !waits.includes(v)).map(v => ['timer', time(v)] as const),
                ['warm after', b.q(b.the('stack'), 'warm-up-time') > 0 ? duration(b.q(b.the('stack'), 'warm-up-time')) : blank()],
            ]),
            flame.length > 0 && heading('Flame'),
            flame.length > 0 && list([
                `Bag or store holds pressure; ${named(b, 'arrestor') || 'arrestor'} in its place; then valve, then light from the side: ${named(b, 'burner')}.`,
                'Off: valve first, the flame goes out by itself. A flame that goes into the tube whistles: valve shut, leave it shut.',
            ]),
            heading('Stop'),
            steps([
                `Current off${b.parts('stop-button').length ? ` by its own switch or ${named(b, 'stop-button')}` : ''}. The stack still holds volts for a while: do not touch.`,
                b.parts('compressor').length > 0 ? `${named(b, 'compressor')} at rest and unloaded.` : undefined,
                b.parts('cylinder').length > 0 ? `${named(b, 'cylinder')} shut by hand.` : undefined,
                'Fan and detector go on for as long as gas can come out. Levels settle equal: read them.',
                ['Write the log. Lock: ', b.told(b.the('site'), 'lock') === 'yes' ? 'yes' : blank(), '.'],
            ]),
        ];
    },
});

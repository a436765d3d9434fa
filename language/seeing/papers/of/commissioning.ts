/** The first days: in which order the rig comes to life, where nobody goes on without a signature, and what the meters should show. */
import { duration, show } from '../../../units/format.js';
import type { View } from '../../../quantities/view.js';
import { blank, type Cell, heading, hold, quiet, signed, steps, table, words } from '../page.js';
import { definePaper } from '../paper.js';
import type { Bench } from '../bench.js';

/** What is read and compared, by kind: quantity, words, when. */
const readings: readonly (readonly [kind: string, quantity: string, what: string, when: string])[] = [
    ['seal', 'opens-at', 'opens at', 'filled, cold'],
    ['seal', 'working-pressure', 'stands at', 'running'],
    ['bubbler', 'head', 'takes', 'running'], ['scrubber', 'head', 'takes', 'running'],
    ['stack', 'current-cold', 'current, cold', 'first minute'],
    ['stack', 'volts-per-cell-cold', 'volts of a cell, cold', 'first minute'],
    ['stack', 'current', 'current', 'warm'],
    ['stack', 'voltage', 'volts of the stack', 'warm'],
    ['stack', 'volts-per-cell', 'volts of a cell', 'warm'],
    ['stack', 'temperature', 'temperature', 'warm'],
    ['stack', 'warm-up-time', 'time to warm up', ''],
    ['leads', 'drop', 'volts lost', 'warm'],
    ['stack', 'hydrogen-rate-room', 'hydrogen, dry at 20 °C', 'warm'],
    ['stack', 'oxygen-rate', 'oxygen', 'warm'],
    ['stack', 'hydrogen-head', 'head of the hydrogen side', 'running'],
    ['stack', 'oxygen-head', 'head of the oxygen side', 'running'],
    ['stack', 'separator-head', 'across the separators', 'running'],
    ['link', 'level-difference', 'levels apart', 'running'],
    ['column', 'level-fall', 'level falls', 'running'],
    ['stack', 'water-use', 'water split', 'running'],
    ['stack', 'oxygen-in-hydrogen', 'oxygen in the hydrogen', 'warm'],
    ['stack', 'hydrogen-in-oxygen', 'hydrogen in the oxygen', 'warm'],
    ['bag', 'fill-time', 'fills in', ''], ['gasometer', 'fill-time', 'fills in', ''], ['bag', 'pressure', 'pressure', 'half full'],
    ['compressor', 'free-delivery', 'delivers', 'at the cut-off'],
    ['compressor', 'discharge-temperature', 'discharge', 'at the cut-off'],
    ['cylinder', 'fill-time', 'fills in', ''], ['cylinder', 'cut-off', 'cut off at', ''],
];
export function predictions(b: Bench): Cell[][] {
    return readings.flatMap(([kind, quantity, what, when]) => b.parts(kind).filter(v => known(v, quantity)).map(v => [v.name, what, when, b.predicted(v, quantity), blank(), blank()]));
}
const known = (v: View, quantity: string) => {
    const value = v.result(quantity)?.value ?? NaN;
    return value === value;
};

export default definePaper({
    name: 'commissioning', place: 70, title: 'First start',
    purpose: 'From the finished rig to the first kept gas, with points where nobody goes on without a signature.',
    needs: 'the whole rig; the more it tells, the more there is to compare',
    cautions: b => [
        'Two people, in daylight, the way out free. Nobody who is tired, alone or in a hurry goes on.',
        'The first gas goes out of doors. Nothing is kept and nothing is lit before it has been measured.',
        b.written(b.the('site'), 'permission') === undefined ? 'No permission is told: ask landlord, insurer and the local authority before hydrogen is made.' : undefined,
    ],
    make: b => {
        const seals = b.parts('seal', 'bubbler', 'scrubber');
        const stack = b.the('stack');
        const low = b.told(b.the('routine'), 'lowest-current');
        const rows = predictions(b);
        const stores = b.parts('bag', 'gasometer', 'cylinder').map(v => v.name);
        const watching = b.parts('detector', 'analyser', 'fan', 'horn');
        const warm = b.q(stack, 'warm-up-time');
        return [
            heading('1  Dry, without current'),
            steps([
                ['Papers at hand: stacking order signed, lines ticked, test cards passed: ', blank('long')],
                'All joints looked at once more along the paths; labels at both ends; hoses clipped; supply plugged out.',
                ['Polarity at the stack by meter, before the leads are joined: plus end ', b.told(stack, 'plus-end') ?? blank(), '. Swapped, the two gases change sides from the first second.'],
                ['Control circuit alone, without stack and source: every trip made to act, every stop pressed, mains off and on again: does anything start by itself? ', blank()],
            ]),
            hold('cards for tightness, reliefs, switches and trips are passed, and no bridge is left in any wire.'),
            heading('2  Water'),
            steps([
                'Plain water to the working levels. Look for drips for an hour. Levels equal on both sides.',
                ...seals.map(v => [`${v.name}: filled to `, b.told(v, v.kind === 'seal' ? 'depth' : 'immersion') ?? blank(), v.said('fluid') ? ` with ${b.written(v, 'fluid')}` : '', '. Read: ', blank()]),
                'Separators wet for an hour, then their card. Water out again.',
            ]),
            hold('no drip, separators passed.'),
            heading('3  Lye, air driven out'),
            steps([
                'Lye in, cold, by its own card. Levels read and written down.',
                `Nitrogen through all gas spaces by the table of the test cards${stores.length ? `; ${stores.join(', ')} included` : ''}.`,
                ['Oxygen at the far end: ', blank(), ' %, wanted 1 % or less.'],
            ]),
            hold('oxygen measured at the far end is 1 % or less.'),
            heading('4  First current, gas out of doors'),
            steps([
                [...(watching.length ? [`${watching.map(v => v.name).join(', ')}: on and seen to work. `] : ['Nothing is told that would smell the gas: a detector at the highest point first, name: ', blank(), '. ']), 'Stop under a hand.'],
                ['Current up in steps to ', low ?? blank(), low ? ' (lowest that is allowed), then to the full one; two minutes each; every reading below. Off at once at: a smell, a noise, a level that runs, volts that do not fit.' : ' (the lowest that is allowed), then to the full one.'],
                ['All gas of the first ', blank(), ' minutes out of doors. Oxygen in the hydrogen then: ', blank(), ' %; hydrogen in the oxygen: ', blank(), ' %.'],
                [`Run until it is warm${warm > 0 ? `, about ${duration(warm)}` : ''}. Off. Cold: nuts again, levels again, leaks again.`],
            ]),
            hold('purity measured, nothing leaks warm, temperature came to rest.'),
            stores.length > 0 && heading('5  First gas that is kept'),
            stores.length > 0 && steps([
                `First into ${stores[0]}, a tenth of it; soap at every joint; then half, then to its switch. Does the switch act? Does the trip above it act, once the switch is held?`,
                ...b.parts('compressor').map(c => `${c.name}: first run of a minute with somebody at its stop, then pressure by steps; temperature, oil and sound at each.`),
                ...b.parts('cylinder').map(c => [`${c.name}: to a tenth of ${b.q(c, 'cut-off') > 0 ? show(b.q(c, 'cut-off'), 'bar') : 'its cut-off'}, soap; half, soap; full. Cut off at `, blank(), '.']),
            ]),
            heading('What the meters should show'),
            quiet('Worked out from the text, with the bounds within which about 95 of 100 such rigs lie. A reading outside is a question, not a fault of the meter: find out before you go on.'),
            rows.length ? table(['part', 'what', 'when', 'expected', 'read', 'ok'], rows) : words('The text tells too little for predictions. Read and note: ', blank('long')),
            hold('readings lie within their bounds or the reason is written beside them.'),
            signed(),
        ];
    },
});

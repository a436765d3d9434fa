/** What was altered, what was looked after, and where the old lye went. */
import { blank, heading, quiet, table, words } from '../page.js';
import { definePaper } from '../paper.js';

const LINES = 7;
const empty = (columns: number, lines = LINES) => Array.from({ length: lines }, () => Array.from({ length: columns }, () => ''));

export default definePaper({
    name: 'changes', place: 110, title: 'Changes, upkeep and waste',
    purpose: 'A rig that was altered is another rig: what changed, what was tried again afterwards, what was thrown away where.',
    needs: 'routine: plan, spent-lye',
    cautions: b => [
        'After every change the test cards that it touches are done again before hydrogen. The text of the rig is changed first and checked.',
        b.told(b.the('stack'), 'plate.material')?.startsWith('stainless') || b.told(b.the('stack'), 'anode-material')?.startsWith('stainless') ? 'Lye from stainless anodes can hold chromate, which is poisonous and can cause cancer: gloves, no skin, no drain; it goes to a collecting point, labelled.' : 'Old lye is never poured away unasked: it goes where the local rules say, in a labelled can of PE.',
        'Rags with lye are rinsed, not binned. Rags with oil stay far from oxygen.',
    ],
    make: b => {
        const routine = b.the('routine');
        const plan = routine?.rows('plan').map(r => [r.get('')?.text ?? r.get('')?.word ?? '', r.get('period')?.word ?? b.told(routine, 'plan.each') ?? '']).filter(([what]) => what) ?? [];
        return [
            heading('Changes'), table(['day', 'part and line', 'from', 'to', 'why', 'cards done again', 'by'], empty(7), 'write'),
            heading('Upkeep'), words('As the text tells it: ', (routine && b.written(routine, 'plan')) ?? blank('long'), '.'),
            table(['day', 'what', 'found', 'done', 'due again', 'by'], [...plan.map(([what]) => ['', what, '', '', '', '']), ...empty(6, 3)], 'write'),
            heading('Waste'), words('Spent lye goes: ', (routine && b.written(routine, 'spent-lye')) ?? blank('long'), '.'),
            table(['day', 'what', 'how much', 'strength', 'can, label', 'given to', 'by'], empty(7, 5), 'write'),
            quiet('Lye, desiccant, filters, separators, plates, cells of analysers, oil of the compressor: each is waste of its own kind.'),
        ];
    },
});

import { defineRule } from '../../define.js';
import type { Span } from '../../../rig/rig.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'flame-test-only-purity',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'The only word on the purity of the gas is that a sample burnt quietly.',
    why: 'Hydrogen burns quietly from 75 % on: such a gas may still hold five per cent of oxygen, five times the usual trip. And the test brings a flame to the gas.',
    source: 'upper limit 75 % of hydrogen in air, Coward & Jones 1952',
    on: 'rig',
    check(v, tell) {
        if (v.all('analyser').length || v.all('test').some(t => t.maybe('oxygen') >= 0) || v.all('purge').some(p => p.maybe('oxygen-left') >= 0)) return;
        const found = records(v).find(r => POP.test(r.text));
        if (!found) return;
        tell({
            at: found.at,
            message: 'A sample that burns quietly only shows more than 75 % of hydrogen: nearly 5 % of oxygen may be in it, five times the usual trip. An oxygen meter shows it; no flame near gas that is kept.',
        });
    },
});

const POP = /\b(pop|pops|popped|squeak|flame test|burns? quiet(ly)?|burnt quietly|lit a (bubble|sample)|match)\b/i;

/** What tests, purges and the steps of the routine say, with their places. */
function records(v: View): { text: string; at: Span }[] {
    const of = [...v.all('test'), ...v.all('purge')].flatMap(t => (['with', 'what', 'result'] as const).map(key => ({
        text: t.says(key) === 'stated' ? t.rows(key).flatMap(row => [...row.values()].map(f => f.text ?? '')).join(' ') : '', at: t.at(key),
    })));
    const routine = v.the('routine');
    return routine ? [...of, { text: routine.rows('steps').map(row => row.get('')?.text ?? '').join(', '), at: routine.at('steps') }] : of;
}

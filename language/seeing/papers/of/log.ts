/** A sheet to write on while it runs: what this rig can read, between which limits, and empty lines. */
import { show } from '../../../units/format.js';
import type { View } from '../../../quantities/view.js';
import { unitOfResult } from '../../../reference/values.js';
import type { Bench } from '../bench.js';
import { blank, heading, quiet, table, words } from '../page.js';
import { definePaper } from '../paper.js';
import { setPointsOf } from '../set-points.js';

/** Columns that fit beside the clock. */
const WIDTH = 9;
const LINES = 15;

export interface LogColumn {
    readonly what: string;
    /** What is expected, from the rig; empty if it cannot be known. */
    readonly expected: string;
    /** Where something acts on it. */
    readonly limits: string;
}
/** What is always read, if the rig has it. */
const usual: readonly (readonly [string, string])[] = [['stack', 'current'], ['stack', 'voltage'], ['stack', 'temperature'], ['column', 'level'], ['bag', 'volume'], ['gasometer', 'volume'], ['cylinder', 'pressure']];

export function logColumns(b: Bench): LogColumn[] {
    const columns = new Map<string, string[]>();
    for (const [kind, quantity] of usual) for (const v of b.parts(kind)) columns.set(`${v.name}.${quantity}`, []);
    for (const device of [...b.parts('trip', 'analyser', 'detector'), ...b.parts('switch')]) {
        const sensed = b.controls.sensed(device);
        // Where a guard stands, the switch below it is no limit: it does its work all day.
        if (!sensed || device.kind === 'switch' && columns.get(sensed)?.length) continue;
        const acts = setPointsOf(b, device).filter(p => p.key !== 'makes').map(p => `${p.side === 'above' ? '<' : '>'} ${p.at}`);
        columns.set(sensed, [...(columns.get(sensed) ?? []), ...acts]);
    }
    return [...columns].map(([what, limits]) => ({ what, expected: expected(b, what), limits: [...new Set(limits)].join(', ') }));
}
function expected(b: Bench, name: string): string {
    const [part, quantity] = name.split('.');
    const v: View | undefined = b.other(part);
    const result = v?.result(quantity);
    if (result && result.value === result.value) return show(result.value, unitOfResult(result));
    return (v && v.part.kind?.properties[quantity] && quantity === 'level' ? b.told(v, quantity) : undefined) ?? '';
}

export default definePaper({
    name: 'log', place: 100, title: 'Log sheet',
    purpose: 'What is read while it runs, every half hour or as often as the routine tells, with the limits of this rig over each column.',
    needs: 'stack, columns, stores, and what the switches and trips sense',
    cautions: () => ['A reading that creeps towards its limit is the warning. Off before the guard has to do it.'],
    make: b => {
        const columns = logColumns(b);
        const blocks: LogColumn[][] = [];
        const wide = Math.ceil(columns.length / Math.max(1, Math.ceil(columns.length / WIDTH)));
        for (let i = 0; i < Math.max(columns.length, 1); i += Math.max(wide, 1)) blocks.push(columns.slice(i, i + Math.max(wide, 1)));
        const lines = Math.max(6, Math.floor(LINES / Math.min(blocks.length, 3)));
        return [
            words('Day: ', blank(), ' Started: ', blank(), ' Stopped: ', blank(), ' By: ', blank()),
            ...blocks.flatMap((block, i) => [
                blocks.length > 1 && heading(`${i + 1} of ${blocks.length}`),
                table(['clock', ...block.map(c => c.what.replace('.', ' ')), 'seen, by'], [
                    ['limits', ...block.map(c => c.limits), ''], ['usual', ...block.map(c => c.expected), ''],
                    ...Array.from({ length: lines }, () => []),
                ], 'write'),
            ]),
            quiet('Limits: < acts above that, > acts below it. Usual: warm and running, worked out from the text.'),
        ];
    },
});

import { clockOf, happenedText, worthTelling } from '../../../reference/run-text.js';
import { CannotRun, run, type RunResult, type Series } from '../../../run/run.js';
import { usualDay } from '../../../run/scenario.js';
import { duration, show } from '../../../units/format.js';
import { inUnit, six } from '../ask.js';
import { definePlot } from '../define.js';
import type { Cell, Line, Pane } from '../figure.js';
import { sensedPoints, type SetPoint } from '../set-points.js';

/** Moments that are drawn: of a long run the least and the most of each stretch. */
const MOMENTS = 320;
/** Happenings told in words. The gravest come first, then the earliest. */
const MOST_TOLD = 14;
/** Less than this share of its size is no change that is worth a pane. */
const STILL = 1e-3;

export default definePlot({
    name: 'run', order: 9, title: 'A run by the clock',
    meaning: 'What moves over a day or a scenario, one pane under the other, with what happens at its moment.',
    needs: 'a rig of which enough is known that it can be followed over time',
    show(asked) {
        const { workings } = asked;
        let r: RunResult;
        try {
            r = asked.run ?? run(workings, usualDay(workings));
        } catch (e) {
            if (e instanceof CannotRun) return e.message;
            throw e;
        }
        const { starts, name } = r.scenario;
        const points = sensedPoints(workings);
        const moving = r.series.filter(moves);
        if (!moving.length) return 'Nothing moves in this run.';
        const kept = momentsOf(r, moving);
        const hours = kept.map(i => (starts + r.times[i]) / 3600);
        const all = r.events.filter(worthTelling);
        const told = [...all].sort((a, b) => weight(b.sort) - weight(a.sort) || a.t - b.t).slice(0, MOST_TOLD).sort((a, b) => a.t - b.t);
        const at = (t: number) => (starts + t) / 3600;
        return {
            shape: {
                is: 'curves', x: { name: 'time of day', unit: '', scale: 'clock', starts, holds: [at(0), at(r.ended.t)] }, panes: panesOf(moving, kept, hours, points),
                happenings: told.map(e => ({ x: at(e.t), when: clockOf(starts, e.t), text: happenedText(e), grave: e.sort === 'hazard' })),
                untold: all.filter(e => !told.includes(e)).map(e => at(e.t)),
            },
            says: `${name ?? 'A usual day'}, from ${clockOf(starts, 0).slice(0, 5)} for ${duration(r.ended.t)}${r.ended.early ? `; it ended early: ${r.ended.early}` : ''}. ${all.length ? `${all.length} things happen${all.length > told.length ? `; ${told.length} of them are told, the others are short marks` : ''}` : 'Nothing happens that a run would tell'}.`,
            notes: [
                ...r.series.filter(s => !moves(s)).map(s => `${s.name} stays at ${show(s.values[0], s.unit)}.`).slice(0, 6), ...r.notes.slice(0, 4),
            ],
            table: {
                columns: [{ name: 'clock', unit: '' }, { name: 'time', unit: 's' }, ...moving.map(s => ({ name: s.name, unit: s.unit })), { name: 'happens', unit: '' }],
                rows: rowsOf(r, moving, kept, all),
            },
        };
    },
});

const weight = (sort: string) => (sort === 'hazard' ? 3 : sort === 'trip' || sort === 'relief' ? 2 : sort === 'act' ? 1 : 0);
function moves({ values }: Series): boolean {
    const known = values.filter(v => v === v);
    const [least, most] = [Math.min(...known), Math.max(...known)];
    return known.length > 1 && most - least > STILL * Math.max(Math.abs(most), Math.abs(least));
}
/** Numbers of the moments that are drawn, in order. */
function momentsOf(r: RunResult, moving: readonly Series[]): number[] {
    const { length } = r.times;
    if (length <= MOMENTS) return r.times.map((_, i) => i);
    const stretches = Math.floor(MOMENTS / 2);
    const kept = new Set<number>([0, length - 1]);
    // By time, so that a minute with many steps gets no more room than a quiet one.
    const span = r.times[length - 1] - r.times[0];
    let from = 0;
    for (let k = 1; k <= stretches; k++) {
        const end = r.times[0] + span * k / stretches;
        let to = from;
        while (to < length && r.times[to] <= end) to++;
        if (to > from) {
            kept.add(from).add(to - 1);
            for (const { values } of moving) {
                let [least, most] = [from, from];
                for (let i = from; i < to; i++) {
                    if (values[i] < values[least]) least = i;
                    if (values[i] > values[most]) most = i;
                }
                if (least !== most) kept.add(least).add(most);
            }
        }
        from = to;
    }
    return [...kept].sort((a, b) => a - b);
}
/** What is measured alike of alike parts shares a pane: the levels of the columns. */
function panesOf(moving: readonly Series[], kept: readonly number[], hours: readonly number[], points: readonly SetPoint[]): Pane[] {
    const groups = new Map<string, Series[]>();
    for (const s of moving) {
        const key = s.name.endsWith('.level') ? 'level' : s.name;
        groups.set(key, [...(groups.get(key) ?? []), s]);
    }
    return [...groups].map(([key, group]) => {
        const [{ unit }] = group;
        const values = group.map(s => kept.map(i => inUnit(s.values[i], unit)));
        const [least, most] = [Math.min(...values.flat().filter(v => v === v)), Math.max(...values.flat().filter(v => v === v))];
        const near = (y: number) => y > least - 0.5 * (most - least) && y < most + 0.5 * (most - least);
        const lines: Line[] = group.map((s, k) => ({ name: s.name, label: group.length > 1 ? s.name.split('.')[0] : `ends at ${show(s.values.at(-1) ?? NaN, unit)}`, x: hours, y: values[k], stroke: k ? 'dashed' : 'solid', ink: k ? 'current' : 'accent' }));
        const levels = points.filter(p => group.some(s => s.name === p.senses) && !p.says.startsWith('resets')).map(p => ({ label: `${p.part} ${p.says} ${show(p.at, unit)}`, y: inUnit(p.at, unit), ink: p.sort === 'trip' ? 'error' as const : undefined }));
        return { y: { name: key === 'level' ? 'levels in the columns' : key, unit }, lines, levels: levels.filter(l => near(l.y)), height: 74 };
    });
}
function rowsOf(r: RunResult, moving: readonly Series[], kept: readonly number[], told: readonly RunResult['events'][number][]): Cell[][] {
    const { starts } = r.scenario;
    const values = (i: number) => moving.map(s => six(inUnit(s.values[i], s.unit)));
    const rows = kept.map(i => ({ t: r.times[i], row: [clockOf(starts, r.times[i]), six(r.times[i]), ...values(i), undefined] as Cell[] }));
    for (const e of told) rows.push({ t: e.t, row: [clockOf(starts, e.t), six(e.t), ...moving.map(() => undefined), happenedText(e)] });
    return rows.sort((a, b) => a.t - b.t).map(x => x.row);
}

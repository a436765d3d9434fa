/** The rig by the clock, on a usual day and through each scenario of the text. */
import type { Workings } from '../../../quantities/workings.js';
import { clockOf, happenedText, heldText, totalsOf, worthTelling } from '../../../reference/run-text.js';
import { heldIn } from '../../../run/expectations.js';
import { CannotRun, run, type RunResult } from '../../../run/run.js';
import { readScenario, usualDay, type Scenario } from '../../../run/scenario.js';
import { duration, show } from '../../../units/format.js';
import { printed } from '../../palette.js';
import { allPlots, figureOf, pictureOf } from '../../plots/index.js';
import { cut, defineSection, heading, list, table, words, type Asked } from '../define.js';
import type { Block } from '../page.js';

const MOST_EVENTS = 24;
const MOST_SCENARIOS = 3;
const byTheClock = allPlots.find(p => p.name === 'run')!;

export default defineSection({
    name: 'day', title: 'By the clock', order: 120, page: 'own', lead: 'What happens when, with nothing broken: on a usual day, switched on at eight and left through a day and a night, and as the description has it.',
    make: a => {
        const { workings } = a;
        const told = workings.livePartsOf('scenario');
        const scenarios: Scenario[] = [usualDay(workings), ...told.slice(0, MOST_SCENARIOS).map(v => readScenario(workings, v))];
        return [...scenarios.flatMap(s => followed(a, s)), ...cut(told, MOST_SCENARIOS, left => `${left} more scenarios of the description were not followed here: rigwright run does.`).rest];
    },
});
function followed(a: Asked, scenario: Scenario): Block[] {
    const { workings } = a;
    const { starts, name, weather, lasts } = scenario;
    const title = heading(`${name ?? 'A usual day'}: from ${clockOf(starts, 0).slice(0, 5)}, ${show(weather(0), '°C')} at the start, ${duration(lasts)}`);
    try {
        const r = run(workings, scenario);
        const shown: RunResult = { ...r, series: r.series.filter(s => !a.hidden.has(s.name.split('.')[0])), events: r.events.filter(e => e.sort === 'hazard' || !e.parts.some(p => a.hidden.has(p))) };
        const figure = figureOf(byTheClock, a.analysis, { run: shown });
        const events = cut(shown.events.filter(worthTelling), MOST_EVENTS, left => `And ${left} more of the kind: rigwright run tells them all.`);
        const totals = totalsOf(r, workings).filter(t => !a.hidden.has(t.name.split('.')[0]));
        return [
            title,
            ...(typeof figure === 'string' ? [] : [{ is: 'picture', svg: pictureOf(byTheClock, figure, printed, `report-run-${name ?? ''}`), told: `${byTheClock.title}. ${figure.says}` } as const]),
            ...(r.ended.early ? [words(`It ends after ${duration(r.ended.t)}: ${r.ended.early}.`, 'strong')] : []),
            ...(events.shown.length ? table(['when', 'what happens'], events.shown.map(e => [clockOf(starts, e.t), `${e.sort === 'hazard' ? 'Hazard: ' : ''}${happenedText(e)}`])) : [words('Nothing happens that is worth a line.')]), ...events.rest,
            ...table([`after ${duration(r.ended.t)}`, 'value'], totals.map(t => [t.name.replaceAll('.', ': ').replaceAll('-', ' '), t.value]), [1]),
            ...expected(workings, r),
        ];
    } catch (e) {
        if (e instanceof CannotRun) return [title, words(`It cannot be run through: ${e.message}`)];
        throw e;
    }
}
function expected(workings: Workings, r: RunResult): Block[] {
    const held = heldIn(workings, r);
    return held.length ? [words('What the description expects of it:', 'strong'), ...list(held.map(h => heldText(h, r.scenario.starts)))] : [];
}

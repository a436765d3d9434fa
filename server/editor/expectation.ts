/** How an `expect` line stands, in a few words. The same weighing makes the finding, so the two never disagree. */
import { clockOf } from '../../language/reference/run-text.js';
import { holdAgainst } from '../../language/run/expectations.js';
import { FAILS_AT, runWithFault } from '../../language/run/faults.js';
import { CannotRun, run } from '../../language/run/run.js';
import { DAY, readScenario, usualDay, usualDayIn } from '../../language/run/scenario.js';
import { weigh } from '../../language/quantities/expectation.js';
import type { Expectation } from '../../language/rig/rig.js';
import { namesOf } from '../../language/quantities/varied.js';
import type { Workings } from '../../language/quantities/workings.js';

export interface Standing {
    readonly is: 'holds' | 'may not hold' | 'does not hold' | 'not known' | 'held against a run';
    /** The value on the left as it is now, with its bounds: '2.05 V ± 0.16 V'. */
    readonly now?: string;
    /** Names that are missing. */
    readonly missing: readonly string[];
}

/** What is about time is held against a run when it is asked for. */
export function standingOf(workings: Workings, e: Expectation): Standing {
    if (e.overTime) return { is: 'held against a run', missing: [] };
    const { holds, now, bounds, missing, troubles } = weigh(workings, e);
    if (holds === undefined || troubles.length) return { is: 'not known', missing };
    const { sure, plusMinus } = bounds!();
    return { is: !holds ? 'does not hold' : sure ? 'holds' : 'may not hold', now: plusMinus ? `${now} ± ${plusMinus}` : now, missing };
}
/** How an expectation over time comes out: its scenario, what it says fails, or a usual day is run through for it. Undefined where nothing can be run. */
export function standingInRun(workings: Workings, e: Expectation): string | undefined {
    try {
        const said = e.when?.text.trim() ?? '';
        const [part, ...way] = said.split(/\s+/);
        const scenario = e.when?.word === 'during' ? workings.partsOf('scenario').find(v => v.name === said) : undefined;
        if (e.when?.word === 'during' && !scenario) return undefined;
        const day = scenario ? readScenario(workings, scenario) : e.when?.word === 'with' ? usualDayIn(workings, namesOf(said)) : usualDay(workings);
        const r = e.when?.word === 'if' ? runWithFault(workings, { part, what: way.join(' ') }, DAY) : run(workings, day);
        const held = workings.unnoted(() => holdAgainst(workings, r, e, e.when?.word === 'if' ? FAILS_AT : 0));
        return `${held.holds === undefined ? 'Not known' : held.holds ? 'Holds' : 'Does not hold'}${held.t === undefined ? '' : ` at ${clockOf(r.scenario.starts, held.t)}`}: ${held.words}.`;
    } catch (error) {
        if (error instanceof CannotRun) return error.message;
        throw error;
    }
}

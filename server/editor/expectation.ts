/** How an `expect` line stands, in a few words. The same weighing makes the finding, so the two never disagree. */
import { weigh } from '../../language/quantities/expectation.js';
import type { Expectation } from '../../language/rig/rig.js';
import type { Workings } from '../../language/quantities/workings.js';

export interface Standing {
    readonly is: 'holds' | 'may not hold' | 'does not hold' | 'not known' | 'not worked out';
    /** The value on the left as it is now, with its bounds: '2.05 V ± 0.16 V'. */
    readonly now?: string;
    /** Names that are missing. */
    readonly missing: readonly string[];
}

/** Expectations over time, in variants and after events are read, and not worked out. */
export function standingOf(workings: Workings, e: Expectation): Standing {
    if (e.overTime || e.when) return { is: 'not worked out', missing: [] };
    const { holds, now, bounds, missing, troubles } = weigh(workings, e);
    if (holds === undefined || troubles.length) return { is: 'not known', missing };
    const { sure, plusMinus } = bounds!();
    return { is: !holds ? 'does not hold' : sure ? 'holds' : 'may not hold', now: plusMinus ? `${now} ± ${plusMinus}` : now, missing };
}

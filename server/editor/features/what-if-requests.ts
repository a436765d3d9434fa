import { resultsOf } from '../../../language/reference/quantities.js';
import { showResult } from '../../../language/reference/values.js';
import { cornersPage, sweepPage } from '../../../language/reference/what-if-pages.js';
import { cornersOf } from '../../../language/what-if/corners.js';
import { CannotTry, inputOf } from '../../../language/what-if/input.js';
import { waysTo, type Sized } from '../../../language/what-if/size.js';
import { sweep } from '../../../language/what-if/sweep.js';
import { toWorkspaceEdit } from '../convert.js';
import type { Feature } from '../feature.js';
import type { House, Position } from '../house.js';
import { spotAt } from '../spot.js';

/** A question that makes no sense is answered with a sentence, not with an error. */
function tried<T>(run: () => T): { readonly answer: T } | { readonly cannot: string } {
    try {
        return { answer: run() };
    } catch (e) {
        if (e instanceof CannotTry) return { cannot: e.message };
        throw e;
    }
}

/** `rigwright/ways`, `rigwright/corners`, `rigwright/sweepable`, `rigwright/sweep`: what could be changed, and what would be if; null if the file is not known. */
const whatIfRequests: Feature = {
    name: 'what-if-requests',
    capabilities: () => ({}),
    register(connection, house) {
        connection.onRequest('rigwright/ways', ({ uri, expectation }: { uri: string; expectation: string }): unknown => waysFor(house, uri, expectation));
        connection.onRequest('rigwright/corners', ({ uri }: { uri: string }) => {
            const analysis = house.analysis(uri);
            return analysis ? { title: 'Corners', markdown: cornersPage(cornersOf(analysis.workings, { today: house.today }), analysis.rig.title || 'This rig') } : null;
        });
        connection.onRequest('rigwright/sweepable', ({ uri, position }: { uri: string; position: Position }) => sweepableAt(house, uri, position));
        connection.onRequest('rigwright/sweep', ({ uri, over, of }: { uri: string; over: readonly string[]; of: readonly string[] }): unknown => {
            const analysis = house.analysis(uri);
            return analysis ? tried(() => ({ title: 'Sweep', markdown: sweepPage(sweep(analysis.workings, over, of), analysis.rig.title || 'This rig') })) : null;
        });
    },
};
export default whatIfRequests;

/** Single numbers that can be changed so that an expectation holds, each with the edit and with what it would then tell. */
export function waysFor(house: House, uri: string, expectation: string) {
    const analysis = house.analysis(uri);
    if (!analysis) return null;
    return tried(() => waysTo(analysis.workings, expectation).map((w: Sized) => ({
        input: w.input.name, text: `${w.side === 'just there' ? '' : `${w.side} `}${w.text}`, now: w.input.say(w.input.now), gives: w.gives,
        raises: w.fix ? [...new Set(house.raisedBy(w.fix, analysis).map(f => f.rule))] : [], edit: w.fix && toWorkspaceEdit(w.fix, house),
    })));
}
/** The number under the cursor with a range to vary it over, and the numbers of the rig that can be looked at; `over` is empty where no number stands. */
export function sweepableAt(house: House, uri: string, position: Position) {
    const sight = house.sight(uri);
    if (!sight) return null;
    const { page, doc, analysis: { workings } } = sight;
    const spot = spotAt(page, doc.lines.offset(position));
    const name = spot.part && spot.entry ? `${spot.part.name}.${spot.entry.key}` : '';
    const input = name ? tried(() => inputOf(workings, name)) : { cannot: '' };
    const over = 'answer' in input ? `${name}: ${input.answer.isArea ? '' : `${input.answer.say(input.answer.low)}..${input.answer.say(input.answer.high)}`}` : '';
    return { over, numbers: resultsOf(workings).filter(r => r.value === r.value).map(r => ({ name: `${r.part.name}.${r.quantity.name}`, now: showResult(r), meaning: r.quantity.meaning })) };
}

import type { CancellationToken } from 'vscode-languageserver';
import { faultsPage, runPage } from '../../../language/reference/run-pages.js';
import { faultRuns } from '../../../language/run/faults.js';
import { CannotRun, run } from '../../../language/run/run.js';
import { readScenario, usualDay } from '../../../language/run/scenario.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';

/** Runs go on for so long without letting the editor's other questions through, ms. */
const AT_A_STRETCH = 12;

/** `rigwright/scenarios`, `rigwright/run`, `rigwright/faults`: the rig over time, and with one thing broken; null if the file is not known. */
const runRequests: Feature = {
    name: 'run-requests',
    capabilities: () => ({}),
    register(connection, house) {
        connection.onRequest('rigwright/scenarios', ({ uri }: { uri: string }): string[] | null => house.analysis(uri)?.workings.partsOf('scenario').map(v => v.name) ?? null);
        connection.onRequest('rigwright/run', ({ uri, scenario }: { uri: string; scenario?: string }): unknown => {
            const told = runFor(house, uri, scenario);
            if (house.client.workspace?.inlayHint?.refreshSupport) void connection.languages.inlayHint.refresh().catch(() => {});
            return told;
        });
        connection.onRequest('rigwright/faults', ({ uri }: { uri: string }, token: CancellationToken): unknown => faultsFor(house, uri, token));
    },
};
export default runRequests;

type Told = { readonly answer: { readonly title: string; readonly markdown: string } } | { readonly cannot: string };
/** What cannot be run is told in a sentence. */
function sentence(e: unknown): Told {
    if (e instanceof CannotRun) return { cannot: e.message };
    throw e;
}
export function runFor(house: House, uri: string, scenario?: string): Told | null {
    const analysis = house.analysis(uri);
    if (!analysis) return null;
    const { workings, rig } = analysis;
    try {
        const view = scenario === undefined ? undefined : workings.partsOf('scenario').find(v => v.name === scenario);
        const r = run(workings, view ? readScenario(workings, view) : usualDay(workings));
        house.lastRun.set(analysis, r);
        return { answer: { title: 'Run', markdown: runPage(r, workings, rig.title || 'This rig') } };
    } catch (e) {
        return sentence(e);
    }
}
/** Faults take some seconds: other questions go first, and an edit ends it, since the numbers are no longer those of the text. */
export async function faultsFor(house: House, uri: string, token: Pick<CancellationToken, 'isCancellationRequested'>): Promise<Told | null> {
    const analysis = house.analysis(uri);
    if (!analysis) return null;
    house.faultsAsked++;
    try {
        const runs = faultRuns(analysis.workings);
        let since = Date.now();
        for (;;) {
            const step = runs.next();
            if (step.done) {
                house.rigsAsked.add(analysis.rig.root);
                house.republish();
                return { answer: { title: 'Faults', markdown: faultsPage(step.value, analysis.workings, analysis.rig.title || 'This rig') } };
            }
            if (Date.now() - since < AT_A_STRETCH) continue;
            await new Promise(resolve => setTimeout(resolve));
            if (token.isCancellationRequested) return { cannot: 'Stopped.' };
            if (!house.isNow(analysis)) return { cannot: 'The text changed meanwhile; ask again.' };
            since = Date.now();
        }
    } catch (e) {
        return sentence(e);
    } finally {
        house.faultsAsked--;
    }
}

import type { WorkDoneProgressReporter, WorkDoneProgressServerReporter } from 'vscode-languageserver';
import type { Analysis } from '../../../language/index.js';
import { reaches } from '../../../language/rig/rig.js';
import { ruleNamed } from '../../../language/rules/index.js';
import { CannotRun } from '../../../language/run/run.js';
import { faultRuns, faultsKept } from '../../../language/run/faults.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';

/** ms without an edit after which one thing is broken after the other. */
const QUIET = 2500;
/** ms at a stretch, and of rest between two: a key that is pressed meanwhile waits no longer than a stretch. */
const STRETCH = 2;
const REST = 1;
/** ms after which it is told that something is being worked out: what is over sooner would only flicker. */
const TELL_AFTER = 500;
const TELL_EACH = 300;
/** Turns of the event loop after a rest, in which what has arrived is answered. */
const TURNS = 4;
/** ms between two looks whether whoever asked is done. */
const LOOK_EACH = 50;

/** Runs with something broken, by themselves, once the typing has stopped: their findings stand beside those of reading. */
const faultFindings: Feature = {
    name: 'fault-findings',
    capabilities: () => ({}),
    register(connection, house) {
        const watch = new FaultWatch(house, async () => (house.client.window?.workDoneProgress ? connection.window.createWorkDoneProgress() : undefined));
        house.told = () => watch.wait();
        connection.onShutdown(() => watch.stop());
    },
};
export default faultFindings;

type Progress = WorkDoneProgressReporter & Partial<Pick<WorkDoneProgressServerReporter, 'token'>>;
const sleep = (ms: number) => new Promise<void>(resolve => setTimeout(resolve, ms));
/** A turn of the event loop. What a client asks takes several of them, from the bytes to the answer; a browser hands each message over in one. */
const turn = () => (typeof setImmediate === 'function' ? new Promise<void>(resolve => void setImmediate(resolve)) : Promise.resolve());
async function rest(ms: number): Promise<void> {
    await sleep(ms);
    for (let i = 0; i < TURNS; i++) await turn();
}

export class FaultWatch {
    private timer: ReturnType<typeof setTimeout> | undefined;
    private running = false;
    private again = false;
    private ended = false;
    /** Taken back by hand, or nothing to run: not begun again for that reading. */
    private readonly leftOut = new WeakSet<Analysis>();

    /** @param progress  a place where it is told how far it is; undefined where there is none */
    constructor(private readonly house: House, private readonly progress: () => Promise<Progress | undefined>, private readonly quiet = QUIET) {}

    /** Something was told: looks for faults once nothing more has been for a while. */
    wait(): void {
        clearTimeout(this.timer);
        if (this.ended) return;
        this.timer = setTimeout(() => void this.begin(), this.quiet);
        // A server with nothing else to do may end; in a browser a timer is a number.
        if (typeof this.timer === 'object') this.timer.unref?.();
    }
    /** Whether something is being run. */
    get busy(): boolean {
        return this.running;
    }
    stop(): void {
        this.ended = true;
        clearTimeout(this.timer);
    }
    /** Whether a rig is due: on screen, of a stage at which its rule speaks, and not yet looked through. */
    private due(analysis: Analysis): boolean {
        const { rig, files, workings } = analysis;
        return this.house.settings.faults && rig.pages[0]?.sort === 'rig' && !rig.isLibrary && reaches(rig.stage, ruleNamed('single-fault-reaches-hazard')!.from)
            && files.some(f => this.house.doc(f)?.open) && !this.leftOut.has(analysis) && !faultsKept(workings)?.whole;
    }
    private async begin(): Promise<void> {
        if (this.running) return void (this.again = true);
        this.running = true;
        try {
            for (const analysis of this.house.allAnalyses()) {
                // Whatever changed meanwhile is told first, and begins it anew.
                if (this.ended || !this.house.isNow(analysis)) break;
                if (this.due(analysis)) await this.follow(analysis);
            }
        } catch (error) {
            this.house.failed(error);
        } finally {
            this.running = false;
            if (this.again) this.wait();
            this.again = false;
        }
    }
    private async follow(analysis: Analysis): Promise<void> {
        const begun = Date.now();
        let toldAt = begun + TELL_AFTER - TELL_EACH;
        let asked = false;
        let over = false;
        let shown: Progress | undefined;
        try {
            const runs = faultRuns(analysis.workings);
            let since = Date.now();
            for (;;) {
                const step = runs.next();
                if (step.done || step.value.found) this.house.republish();
                if (step.done) return;
                if (Date.now() - since < STRETCH) continue;
                const { done, of } = step.value;
                if (Date.now() - toldAt > TELL_EACH) {
                    toldAt = Date.now();
                    if (shown) shown.report(Math.floor(100 * done / Math.max(1, of)), `${done} of ${of}`);
                    else if (!asked) {
                        asked = true;
                        this.progress().then(p => {
                            if (over) return p?.done();
                            p?.begin('Breaking one thing at a time', 0, undefined, true);
                            shown = p;
                        }, () => {});
                    }
                }
                do await rest(this.house.faultsAsked ? LOOK_EACH : REST);
                while (this.house.faultsAsked && !this.ended);
                if (shown?.token?.isCancellationRequested) this.leftOut.add(analysis);
                if (this.ended || this.leftOut.has(analysis) || !this.house.isNow(analysis) || !this.house.settings.faults) return;
                since = Date.now();
            }
        } catch (error) {
            this.leftOut.add(analysis);
            if (!(error instanceof CannotRun)) throw error;
        } finally {
            over = true;
            shown?.done();
        }
    }
}

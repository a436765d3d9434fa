/** The desiccant: what it has taken up, as at rest for each mol of gas that passes. */
import type { View } from '../../quantities/view.js';
import { at, type WatchedOf } from '../states.js';

export class Dryer {
    private constructor(readonly view: View, private readonly each: number, private readonly behindPump: boolean, private readonly most: number) {}
    /** Undefined where none stands on the hydrogen, or what it takes up is not known. */
    static of(stack: View, highLine: readonly string[]): Dryer | undefined {
        const view = stack.all('dryer').find(d => stack.paths.on('hydrogen').includes(d.name));
        const taken = view?.maybeQ('water-taken') ?? NaN;
        const each = taken / stack.q('hydrogen-rate');
        if (!view || !(each > 0)) return undefined;
        return new Dryer(view, each, highLine.includes(view.name), taken * view.maybeQ('hours-to-full'));
    }
    /** @param made  mol/s that the stack makes @param drawn  mol/s that the compressor presses */
    slope(made: number, drawn: number, out: Float64Array): void {
        out[at.dryer] = this.each * (this.behindPump ? drawn : made);
    }
    /** When it has taken up what it should. */
    get full(): WatchedOf | undefined {
        return this.most === this.most ? m => m.x[at.dryer] - this.most : undefined;
    }
}

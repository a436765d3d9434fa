/** Expectations over time, held against runs. */
import { describe, expect, it } from 'vitest';
import { expectationsOf, heldIn, holdAgainst } from '../../language/run/expectations.js';
import { FAILS_AT, runWithFault } from '../../language/run/faults.js';
import { run } from '../../language/run/run.js';
import { readScenario, usualDay, usualDayIn } from '../../language/run/scenario.js';
import { workingsIn } from '../../language/quantities/varied.js';
import { q, storing, workingsOf } from './rigs.js';

const held = (lines: string, scenario?: string) => {
    const w = workingsOf([], `${storing}scenario afternoon { starts: 13:00   lasts: 3 h   events: 13:10 start-button pressed, 15:00 emergency pressed }\n${lines}\n`);
    const fault = /expect if (.*?):/.exec(lines)?.[1];
    const [part, ...way] = fault?.split(' ') ?? [];
    const r = fault ? runWithFault(w, { part, what: way.join(' ') }, 6 * 3600) : run(w, scenario ? readScenario(w, w.partsOf('scenario')[0]) : usualDay(w, 6 * 3600));
    return expectationsOf(w, scenario, fault).map(e => holdAgainst(w, r, e, fault ? FAILS_AT : 0));
};
const of = (line: string, scenario?: string) => held(line, scenario)[0];

describe('an expectation over time', () => {
    it('holds always, or fails at its first moment', () => {
        expect(of('expect always store-bag.volume < 66 L')).toMatchObject({ holds: true });
        const fails = of('expect always store-bag.volume < 40 L');
        expect(fails.holds).toBe(false);
        expect(fails.words).toMatch(/^4\d(?:\.\d)? L$/);
        expect(fails.t!).toBeGreaterThan(1000);
        expect(of('expect never store-bag.pressure > 1 kPa').holds).toBe(true);
        expect(of('expect never stack.temperature > 30 °C').holds).toBe(false);
    });
    it('looks at a time, at the end, and between two times', () => {
        expect(of('expect at 08:00 cylinder.pressure < 1.1 bar').holds).toBe(true);
        expect(of('expect at end cylinder.pressure > 11.9 bar').holds).toBe(true);
        expect(of('expect from 08:30 to 09:30 always stack.current between 17.9 A and 18.1 A').holds).toBe(true);
        expect(of('expect at end compressor.starts < 3').holds).toBe(false);
    });
    it('knows what was on and off, also within so many seconds of a time', () => {
        const lines = 'expect during afternoon: within 2 s of 15:00 power stopped, main stopped\nexpect during afternoon: at 14:00 power running\nexpect during afternoon: at 13:05 power not running\nexpect during afternoon: before 14:30 compressor running\nexpect during afternoon: at end power running';
        expect(held(lines, 'afternoon').map(h => h.holds)).toEqual([true, true, true, true, false]);
        expect(held(lines, 'afternoon').at(-1)!.words).toBe('power is off');
    });
    it('of another scenario, or at rest, is not held against this run', () => {
        expect(held('expect during afternoon: always stack.temperature < 80 °C')).toEqual([]);
        expect(held('expect stack.temperature < 80 °C')).toEqual([]);
    });
    it('after something fails counts from then', () => {
        expect(of('expect if main coil fails: within 1 s power stopped').holds).toBe(true);
        expect(of('expect if main coil fails: after 10 min power stopped').holds).toBe(true);
        expect(of('expect if cut-off sticks made: always cylinder.pressure < 12.5 bar').holds).toBe(false);
        expect(of('expect if cut-off sticks made: always cylinder.pressure < 13.1 bar').holds).toBe(true);
    });
    it('of a variant is held against a usual day of the rig with it laid over, and so does a scenario that names it', () => {
        const w = workingsOf([], `${storing}variant small { stack.cells: 6 }\nvariant hot { with: small   stack.max-temperature: 60 °C }\nscenario dull { with: small   lasts: 3 h }\nexpect with small: at end stack.voltage < 15 V\nexpect with hot: at end stack.voltage < 15 V\nexpect at end stack.voltage < 15 V\nexpect during dull: at end stack.voltage < 15 V\n`);
        const day = usualDay(w, 3 * 3600);
        const plain = run(w, day);
        expect(heldIn(w, plain).map(h => [h.expectation.when?.text.trim(), h.holds])).toEqual([[undefined, false], ['small', true], ['hot', true]]);
        const dull = run(w, readScenario(w, w.partsOf('scenario')[0]));
        expect(heldIn(w, dull).map(h => h.holds)).toEqual([true]);
        // Six cells of twelve on the same current: half the gas, and a little more, since less current goes round them.
        expect(dull.final.made / plain.final.made).toBeGreaterThan(0.5);
        expect(dull.final.made / plain.final.made / (q(workingsIn(w, ['small']), 'stack.hydrogen-rate') / q(w, 'stack.hydrogen-rate'))).toBeCloseTo(1, 1);
        expect(heldIn(w, run(w, usualDayIn(w, ['small'], 3 * 3600)), { variants: ['small'] }).map(h => h.holds)).toEqual([true]);
    });
    it('that is not understood says so', () => {
        expect(of('expect always lye running')).toMatchObject({ holds: undefined, words: 'lye is nothing that a run switches' });
        expect(of('expect always store-bag.volume < 3 bar')).toMatchObject({ holds: undefined, words: expect.stringContaining('cannot be compared') });
    });
});

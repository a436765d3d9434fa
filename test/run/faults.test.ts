/** One thing broken at a time: what comes of it, who catches it, and what each guard is good for. */
import { describe, expect, it } from 'vitest';
import { faultRuns, faultsIn } from '../../language/run/faults.js';
import { q, workingsOf } from './rigs.js';

const HOUR = 3600;

describe('faults', () => {
    const w = workingsOf();
    const found = faultsIn(w, 24 * HOUR);
    const of = (part: string, what: string) => found.faults.find(f => f.part === part && f.what === what)!;
    it('a healthy rig reaches no hazard and trips nothing but what ends its day', () => {
        expect(found.healthy.hazards).toEqual([]);
        expect(found.healthy.tripped).toEqual(['bag-high']);
    });
    it('every followed way of every part is tried, the others are named', () => {
        expect(found.faults.length).toBeGreaterThan(50);
        expect(of('bag-empty', 'sticks made')).toBeDefined();
        expect(found.left).toContain('separator torn');
        const names = [...found.faults.map(f => `${f.part} ${f.what}`), ...found.left];
        expect(new Set(names).size).toBe(names.length);
    });
    it('the worst come first, by the time that is left', () => {
        const outcomes = found.faults.map(f => f.outcome);
        const order = ['hazard', 'escapes', 'caught', 'stops', 'unseen'];
        expect(outcomes).toEqual([...outcomes].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
        const times = found.faults.filter(f => f.outcome === 'hazard').map(f => f.hazard!.t);
        expect(times.length).toBeGreaterThan(1);
        expect(times).toEqual([...times].sort((a, b) => a - b));
    });
    it('tells what catches what', () => {
        expect(of('bag-empty', 'sticks made')).toMatchObject({ outcome: 'caught', caughtBy: { name: 'suction-low' } });
        expect(of('cut-off', 'sticks made')).toMatchObject({ outcome: 'caught', caughtBy: { name: 'high-high' } });
        expect(of('suction-low', 'fails to trip').outcome).toBe('unseen');
        expect(of('high-high', 'wire breaks').outcome).toBe('stops');
        expect(of('store-bag', 'bursts').outcome).not.toBe('unseen');
    });
    it('a frozen oxygen vent has nothing that acts, and says what would help', () => {
        const frozen = of('o2-vent', 'blocked');
        expect(frozen).toMatchObject({ outcome: 'hazard', caughtBy: undefined });
        expect(frozen.hazard!.t).toBeLessThan(60);
        expect(frozen.help).toBeTruthy();
        expect(frozen.story.join()).toContain('the oxygen has no way out');
    });
    it('tells the earliest time that the ± of what is made and delivered leave open', () => {
        const frozen = of('o2-vent', 'blocked');
        const rate = w.quantity(w.rig.parts.get('stack')!, 'hydrogen-rate')!;
        expect(frozen.earliest!).toBeLessThan(frozen.hazard!.t);
        expect(frozen.earliest! / frozen.hazard!.t).toBeCloseTo(rate.value / rate.high, 2);
    });
    it('a guard taken away lets through what it caught; one that is backed says by what', () => {
        const suction = found.guards.find(g => g.name === 'suction-low')!;
        expect(suction.without.filter(x => x.outcome === 'hazard').map(x => x.hazard!.name)).toContain('drawn-empty');
        const second = found.guards.find(g => g.name === 'high-high')!;
        expect(second.without.find(x => x.fault.part === 'cut-off')!.caughtBy).toBe('store-relief');
        expect(found.guards.find(g => g.name === 'store-relief')!.without).toEqual([]);
    });
    it('loses hydrogen in the room only as fast as it is made', () => {
        const lost = found.faults.filter(f => f.outcome === 'escapes');
        for (const f of lost) expect(f.escaped!).toBeLessThan(24 * HOUR * q(w, 'stack.hydrogen-rate') * 1.05 + 40);
        expect(lost.length + found.faults.filter(f => f.hazard?.name === 'room-hydrogen').length).toBeGreaterThan(0);
    });
    it('pauses again and again, and can be left at any time', () => {
        const runs = faultRuns(w, HOUR);
        expect(runs.next()).toMatchObject({ done: false, value: { done: 0 } });
        let step = runs.next();
        while (!step.done && step.value.done < 1) step = runs.next();
        expect(step.value).toEqual({ done: 1, of: found.faults.length });
        runs.return(undefined as never);
        expect(runs.next().done).toBe(true);
    });
});

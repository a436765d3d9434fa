/** The rig over time, and with one thing broken, as pages for the editor. */
import { describe, expect, it } from 'vitest';
import { faultsFor, runFor } from '../../server/editor/features/run-requests.js';
import { hintsIn } from '../../server/editor/features/inlay-hints.js';
import { storing } from '../run/rigs.js';
import { open } from './marked.js';

const never = { isCancellationRequested: false };
describe('runs for the editor', () => {
    it('are pages with what happened and how it stands, with what is left out', () => {
        const { house, uri } = open(storing);
        const told = runFor(house, uri);
        const markdown = told && 'answer' in told ? told.answer.markdown : '';
        expect(markdown).toMatch(/^# A store to run: a usual day\n/);
        expect(markdown).toMatch(/^\| 08:00:00 \| start-button pressed: /m);
        expect(markdown).toContain('## Left out of a run');
        expect(markdown).toContain('Local codes');
    });
    it('leave the times of its switches at the line ends, until the text changes', () => {
        const { house, uri } = open(storing);
        const times = () => hintsIn(house, uri).map(h => String(h.label)).filter(l => / (?:first after|at once)/.test(l));
        expect(times()).toEqual([]);
        runFor(house, uri);
        expect(times()).toEqual(expect.arrayContaining([expect.stringMatching(/^≈ makes first after 3\d min, then every [23]\d min$/), expect.stringMatching(/^≈ pulls in at once$/), expect.stringMatching(/^≈ trips first after 3 h/)]));
        house.change(uri, 2, [{ text: `${storing}\n` }]);
        expect(times()).toEqual([]);
    });
    it('tell in a sentence why there is none', () => {
        const { house, uri } = open('rig "Nothing", idea\n');
        expect(runFor(house, uri)).toMatchObject({ cannot: expect.stringContaining('no stack') });
        expect(runFor(house, 'file:///nobody.rig')).toBeNull();
    });
    it('faults let other questions through, and stop when they are told to or the text changes', async () => {
        const { house, uri } = open(storing);
        let others = 0;
        const count = setInterval(() => others++, 1);
        const told = await faultsFor(house, uri, never);
        clearInterval(count);
        expect(told && 'answer' in told && told.answer.markdown).toMatch(/## A single failure reaches a hazard[^]*## What each guard is good for/);
        expect(others).toBeGreaterThan(5);
        expect(house.faultFindings(house.analysis(uri)!).map(f => f.rule)).toContain('single-fault-reaches-hazard');
        // Nothing that was read has changed: it is known already.
        expect(await faultsFor(house, uri, { isCancellationRequested: true })).toHaveProperty('answer');
        house.change(uri, 2, [{ text: storing.replace('fill: 5 L', 'fill: 5.1 L') }]);
        expect(house.faultFindings(house.analysis(uri)!)).toEqual([]);
        expect(await faultsFor(house, uri, { isCancellationRequested: true })).toEqual({ cannot: 'Stopped.' });
        const asked = faultsFor(house, uri, never);
        house.change(uri, 3, [{ text: storing }]);
        expect(await asked).toMatchObject({ cannot: expect.stringContaining('changed') });
        expect(house.faultFindings(house.analysis(uri)!)).toEqual([]);
    });
});

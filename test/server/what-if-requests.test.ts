/** What the editor asks about changes that are not made: ways to an expectation, corners, sweeps. */
import { describe, expect, it } from 'vitest';
import { actionsAt } from '../../server/editor/features/code-actions.js';
import { sweepableAt, waysFor } from '../../server/editor/features/what-if-requests.js';
import { applyTo, open } from './marked.js';

const rig = `rig "Bench", drawn
supply power { sort: bench   voltage: 40 V   current-limit: 10 A }
lye { solute: KOH   strength: 28 wt% }
stack {
  cells: 10
  wetted: 100 x 120 mm
  gap: 2 mm
  port: 1 of 4 mm, 80 mm long
}
path current: power -> stack
expect stack.hydrogen-rate > 60 NL/h
`;
describe('ways to an expectation', () => {
    it('each make it hold, by one edit', () => {
        const { house, uri, text } = open(rig);
        const found = waysFor(house, uri, 'stack.hydrogen-rate > 60 NL/h');
        const ways = found && 'answer' in found ? found.answer : [];
        expect(ways.map(w => w.input)).toContain('power.current-limit');
        for (const way of ways) {
            const after = open(applyTo(text, way.edit!, uri));
            expect(after.house.analysis(after.uri)!.findings.some(f => f.rule === 'expectation-not-met'), way.input).toBe(false);
        }
    });
    it('are told in a sentence where the question makes no sense', () => {
        const { house, uri } = open(rig);
        expect(waysFor(house, uri, 'stack.hydrogen')).toMatchObject({ cannot: expect.stringContaining('no comparison') });
        expect(waysFor(house, uri, 'bag.fill-time > 1 h')).toMatchObject({ cannot: expect.stringContaining('bag') });
        expect(waysFor(house, 'file:///nobody.rig', 'stack.voltage < 1 V')).toBeNull();
    });
    it('are offered by the bulb on an expectation that fails, to a client that knows the command', () => {
        const { house, uri } = open(rig);
        const line = rig.split('\n').findIndex(l => l.startsWith('expect'));
        const at = { start: { line, character: 12 }, end: { line, character: 12 } };
        const commands = () => actionsAt(house, uri, at).flatMap(a => (a.command?.command === 'rigwright.size' ? [a.command.arguments] : []));
        expect(commands()).toEqual([['stack.hydrogen-rate > 60 NL/h']]);
        house.ownClient = false;
        expect(commands()).toEqual([]);
    });
});
describe('what can be swept', () => {
    it('is the number under the cursor over what is usual for it, and every known number to look at', () => {
        const { house, uri } = open(rig);
        const found = sweepableAt(house, uri, { line: 6, character: 4 })!;
        expect(found.over).toMatch(/^stack\.gap: \d.* mm\.\.\d+ mm$/);
        expect(found.numbers.map(n => n.name)).toContain('stack.volts-per-cell');
        expect(sweepableAt(house, uri, { line: 0, character: 2 })!.over).toBe('');
    });
});

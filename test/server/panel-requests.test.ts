/** The panel beside a text: what it shows where the cursor stands, and what a turned number makes of the rig. */
import { describe, expect, it } from 'vitest';
import { panelFor, panelWrite } from '../../server/editor/features/panel-requests.js';
import { applyTo, open } from './marked.js';

const rig = `rig "Bench & <shelf>", drawn
supply power { sort: bench   voltage: 40 V   current-limit: 10 A   rated-current: 12 A }
lye { solute: KOH   strength: 28 wt% }
stack {
  cells: 10
  wetted: 100 x 120 mm
  gap: 2 mm
  port: 1 of 4 mm, 80 mm long
}
path current: power -> stack
expect stack.hydrogen-rate > 30 NL/h
`;
const at = (line: number, character = 4) => ({ line, character });
const look = (text: string, asked: Partial<Parameters<typeof panelFor>[1]> = {}) => {
    const o = open(text);
    return { ...o, panel: panelFor(o.house, { uri: o.uri, position: at(6), theme: 'light', ...asked })! };
};

describe('the panel', () => {
    it('shows the part under the cursor, the number there first, and the rig', () => {
        const { panel } = look(rig);
        expect(panel.title).toBe('Bench & <shelf>');
        expect(panel.part).toEqual({ name: 'stack', kind: 'stack' });
        expect(panel.turns.map(t => t.name)).toEqual(['stack.gap', 'stack.cells']);
        expect(panel.key.find(n => n.name === 'stack.current')).toMatchObject({ label: 'current', value: '10 A' });
        expect(panel.findings.filter(f => f.sort !== 'there')).toEqual([]);
        const [gap] = panel.turns;
        expect(gap.low).toBeLessThan(gap.now);
        expect(gap.high).toBeGreaterThan(gap.now);
        expect(gap.step).toBeGreaterThan(0);
    });
    it('follows the cursor, and falls back to the stack where no part with numbers is', () => {
        expect(look(rig, { position: at(1, 50) }).panel.turns[0].name).toBe('power.current-limit');
        expect(look(rig, { position: at(9) }).panel.part?.name).toBe('stack');
    });
    it('tells the part that the cursor is on, by its block or by its name elsewhere, for the drawing to mark', () => {
        expect(look(rig, { position: at(6) }).panel.at).toBe('stack');
        expect(look(rig, { position: at(9, rig.split('\n')[9].indexOf('power') + 2) }).panel.at).toBe('power');
        expect(look(rig, { position: at(0) }).panel.at).toBeUndefined();
        expect(look(rig, { position: at(9, 3) }).panel.at).toBeUndefined();
    });
    it('draws on the paper of the page, and on no other text than a colour', () => {
        expect(look(rig, { theme: 'dark', paper: '#123456' }).panel.picture!.svg).toContain('fill="#123456"');
        const { svg } = look(rig, { theme: 'dark', paper: 'url(x)' }).panel.picture!;
        expect(svg!.includes('url(')).toBe(false);
        expect(svg).toContain('fill="#1b2027"');
    });
    it('works the whole rig out for a turned number, and tells what moves, what comes and what goes', () => {
        const { panel, house, uri, text } = look(rig, { turning: { name: 'power.current-limit', to: 4 } });
        expect(panel.turned).toEqual({ name: 'power.current-limit', text: '4 A' });
        expect(panel.key.find(n => n.name === 'stack.current')).toMatchObject({ value: '4 A', was: '10 A' });
        expect(panel.findings.filter(f => f.sort === 'new').map(f => f.rule)).toContain('expectation-not-met');
        // It is what the text would tell if it were written.
        const written = open(applyTo(text, panelWrite(house, uri, { name: 'power.current-limit', to: 4 })!, uri));
        expect(written.text).toContain('current-limit: 4 A');
        const now = panelFor(written.house, { uri: written.uri, position: at(6), theme: 'light' })!;
        expect(now.key.map(n => [n.name, n.value])).toEqual(panel.key.map(n => [n.name, n.value]));
        // The text itself has not changed by looking.
        expect(panelFor(house, { uri, position: at(6), theme: 'light' })!.key.find(n => n.name === 'stack.current')!.value).toBe('10 A');
    });
    it('tells what would be gone', () => {
        const { panel } = look(rig.replace('> 30 NL/h', '> 50 NL/h'), { turning: { name: 'power.current-limit', to: 16 } });
        expect(panel.findings.filter(f => f.sort === 'gone').map(f => f.rule)).toContain('expectation-not-met');
    });
    it('a figure off a plate is looked at, and not written', () => {
        const { panel, house, uri } = look(rig, { position: at(1, 75), turning: { name: 'power.rated-current', to: 20 } });
        expect(panel.turns.find(t => t.name === 'power.rated-current')).toMatchObject({ writes: false, now: 20 });
        expect(panelWrite(house, uri, { name: 'power.rated-current', to: 20 })).toBeNull();
    });
    it('bears what makes no sense: no rig, no stack, a name that is not there, no number', () => {
        const { house, uri } = open('rig "Empty"\n');
        expect(panelFor(house, { uri, position: at(0), theme: 'none' })).toMatchObject({ turns: [], here: [], key: [] });
        expect(panelFor(house, { uri: 'file:///nowhere.rig', position: at(0), theme: 'light' })).toBeNull();
        const other = open(rig);
        for (const turning of [{ name: 'nobody.home', to: 1 }, { name: 'stack.gap', to: NaN }, { name: 'stack.wetted', to: 3 }]) {
            expect(panelFor(other.house, { uri: other.uri, position: at(6), theme: 'light', turning })!.turned).toBeUndefined();
        }
    });
});

/** Runs with something broken, by themselves in the background: when they come, when they go, and that they let others go first. */
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { FaultWatch } from '../../server/editor/features/fault-findings.js';
import { storing } from '../run/rigs.js';
import { connect, plain, sleep, usual, type TestClient } from './client.mjs';
import { open } from './marked.js';

const jeweller = readFileSync(new URL('../../examples/jeweller-torch-store.rig', import.meta.url), 'utf8');
const NAME = 'single-fault-reaches-hazard';
const clients: TestClient[] = [];
afterEach(async () => {
    for (const c of clients.splice(0)) {
        await c.stop();
        expect(c.trouble).toEqual([]);
    }
});
/** A rig on screen with a watch that does not wait; `done` once nothing more is being run. */
function watched(text: string) {
    const { house, uri } = open(text);
    const told = { begun: 0, reports: [] as string[], done: 0 };
    const token = { isCancellationRequested: false };
    const watch = new FaultWatch(house, async () => ({ begin: () => void told.begun++, report: (_: unknown, words?: string) => void told.reports.push(words ?? ''), done: () => void told.done++, token } as never), 1);
    let published = 0;
    house.republish = () => void published++;
    const found = () => house.faultFindings(house.analysis(uri)!).map(f => f.rule);
    const settled = async () => {
        watch.wait();
        await sleep(20);
        while (watch.busy) await sleep(5);
    };
    return { house, uri, watch, told, token, found, settled, published: () => published };
}

describe('faults in the background', () => {
    it('come by themselves for a rig on screen, with how far they are, singles before the rest', async () => {
        const r = watched(storing);
        expect(r.found()).toEqual([]);
        await r.settled();
        expect(r.found()).toContain(NAME);
        expect(r.published()).toBe(2);
        expect(r.told).toMatchObject({ begun: 1, done: 1 });
        expect(r.told.reports.at(-1)).toMatch(/^\d+ of \d+$/);
    });
    it('stay, placed anew, beside an edit of what they did not read, and are not run again', async () => {
        const r = watched(storing);
        await r.settled();
        const before = r.house.faultFindings(r.house.analysis(r.uri)!);
        const longer = storing.replace('\nsite {', '\n# a note\n\nsite {').replace('bubbler h2-bubbler { ', 'bubbler h2-bubbler { price: 12 EUR   ');
        r.house.change(r.uri, 2, [{ text: longer }]);
        const after = r.house.faultFindings(r.house.analysis(r.uri)!);
        expect(after.map(f => f.message)).toEqual(before.map(f => f.message));
        expect(after.map(f => longer.slice(f.span.start, f.span.end))).toEqual(before.map(f => storing.slice(f.span.start, f.span.end)));
        const published = r.published();
        await r.settled();
        expect(r.published()).toBe(published);
    });
    it('go at once with an edit of what they read, and come again', async () => {
        const r = watched(storing);
        await r.settled();
        r.house.change(r.uri, 2, [{ text: storing.replace('level: 270 mm', 'level: 260 mm') }]);
        expect(r.found()).toEqual([]);
        await r.settled();
        expect(r.found()).toContain(NAME);
    });
    it('stop at an edit, and are not begun where the rig is an idea, a page or closed, or the setting is off', async () => {
        const r = watched(storing);
        r.watch.wait();
        while (!r.watch.busy) await sleep(1);
        r.house.change(r.uri, 2, [{ text: storing.replace('fill: 5 L', 'fill: 5.2 L') }]);
        while (r.watch.busy) await sleep(1);
        expect(r.found()).toEqual([]);
        for (const text of [storing.replace('built', 'idea'), storing.replace(/^rig .*$/m, 'page "Some parts"')]) {
            const other = watched(text);
            await other.settled();
            expect(other.published()).toBe(0);
        }
        r.house.setSettings({ today: '2026-06-15', hints: true, faults: false });
        await r.settled();
        expect(r.found()).toEqual([]);
        expect(r.published()).toBe(0);
    });
    it('are left out for the text as it stands once somebody stops them', async () => {
        const r = watched(storing);
        r.token.isCancellationRequested = true;
        await r.settled();
        expect(r.told).toMatchObject({ begun: 1, done: 1 });
        expect(r.published()).toBeLessThan(2);
        const { published } = r;
        const before = published();
        await r.settled();
        expect(published()).toBe(before);
    });
    it('tell nothing of a rig that cannot be run, and ask it once', async () => {
        const r = watched('rig "Nothing to run", drawn\nlye { solute: KOH }\n');
        await r.settled();
        await r.settled();
        expect(r.published()).toBe(0);
    });
    it('heed a permission, and its own mistakes are told with the text', async () => {
        const vent = (text: string) => {
            const r = watched(text);
            return r.settled().then(() => ({ told: r.house.faultFindings(r.house.analysis(r.uri)!).map(f => f.message.split(':')[0]), rules: r.house.analysis(r.uri)!.findings.map(f => f.rule) }));
        };
        expect((await vent(storing)).told).toContain('o2-vent blocked');
        const allowed = await vent(`${storing}allow ${NAME} on o2-vent until 2027-01-01 by Ada because "a second vent is on its way"\n`);
        expect(allowed.told).not.toContain('o2-vent blocked');
        expect(allowed.told.length).toBeGreaterThan(0);
        expect(allowed.rules.filter(n => ['permission-unused', 'permission-incomplete', 'permission-ended'].includes(n))).toEqual([]);
        const bare = await vent(`${storing}allow ${NAME} on o2-vent\n`);
        expect(bare.rules).toContain('permission-incomplete');
    });
    it('come over the protocol with progress, and an edit takes them back', { timeout: 30_000 }, async () => {
        const c = await connect({ capabilities: { ...usual, window: { workDoneProgress: true } } });
        clients.push(c);
        const kinds: string[] = [];
        c.rpc.onRequest('window/workDoneProgress/create', ({ token }: { token: string }) => {
            c.rpc.onProgress({ _: undefined, __: undefined, _pr: undefined } as never, token, ((p: { kind: string; cancellable?: boolean }) => kinds.push(p.cancellable ? `${p.kind}, can be stopped` : p.kind)) as never);
            return null;
        });
        const uri = 'file:///rigs/store.rig';
        await c.open(uri, jeweller);
        const has = async () => plain(await c.findings(uri)).some(f => f.includes(NAME));
        expect(await has()).toBe(false);
        for (let i = 0; i < 400 && !await has(); i++) await sleep(50);
        expect(await has()).toBe(true);
        for (let i = 0; i < 200 && kinds.at(-1) !== 'end'; i++) await sleep(50);
        expect([kinds[0], kinds.at(-1)]).toEqual(['begin, can be stopped', 'end']);
        const at = jeweller.split('\n').findIndex(l => /^ {2}fill: +\d/.test(l));
        const column = jeweller.split('\n')[at].search(/\d/);
        await c.edit(uri, { range: { start: { line: at, character: column }, end: { line: at, character: column } }, text: '1' });
        expect(await has()).toBe(false);
    });
});

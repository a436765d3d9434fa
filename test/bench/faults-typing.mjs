// node test/bench/faults-typing.mjs: what the faults in the background cost whoever types. Two servers on the same rig, one with and one
// without them: a key pressed, and a hover, in the middle of the runs; and typing while what they found is kept. Never a test: figures
// hang on the machine, so compare the columns of one run. Puts its own key into test/bench/results.json.
import { readFileSync } from 'node:fs';
import { connect, sleep } from '../server/client.mjs';
import { keepResults } from './keep-results.mjs';

const SAMPLES = 20;
const quantile = (list, q) => [...list].sort((a, b) => a - b)[Math.min(list.length - 1, Math.floor(q * list.length))];
const round = x => Math.round(x * 100) / 100;
const uri = 'file:///bench/a.rig';
const text = readFileSync(new URL('../../examples/potters-burner.rig', import.meta.url), 'utf8');
const lines = text.split('\n');
const line = lines.findIndex(l => /^ {2}fill: +\d/.test(l));
const end = { line, character: lines[line].search(/\d/) + 1 };
const servers = [];
for (const faults of [false, true]) {
    const client = await connect({ options: { faults } });
    servers.push({ client, key: [], hover: [], typing: [] });
    await client.open(uri, text);
    await client.findings(uri);
}
const timed = async (list, work) => {
    const t = performance.now();
    await work();
    list?.push(performance.now() - t);
};
const edit = async (s, list, change) => timed(list, async () => {
    await s.client.edit(uri, change);
    await s.client.findings(uri);
});
const put = { range: { start: end, end }, text: '1' };
const away = { range: { start: end, end: { ...end, character: end.character + 1 } }, text: '' };
for (let i = 0; i < SAMPLES + 3; i++) {
    // The wait after the last edit, and into the runs.
    await sleep(2500 + 150);
    for (const s of servers) for (let k = 0; k < 3; k++) await timed(i < 3 ? undefined : s.hover, () => s.client.ask('textDocument/hover', s.client.at(uri, line, 4)));
    for (const s of servers) await edit(s, i < 3 ? undefined : s.key, i % 2 ? away : put);
}
await sleep(12_000);
const note = { line: 0, character: lines[0].length };
for (let i = 0; i < 150; i++) {
    for (const s of servers) {
        await edit(s, i < 20 ? undefined : s.typing, { range: { start: note, end: note }, text: ' ' });
        await edit(s, undefined, { range: { start: note, end: { ...note, character: note.character + 1 } }, text: '' });
    }
}
const row = (s, background) => ({ background, lines: lines.length, keyP50: round(quantile(s.key, 0.5)), keyP90: round(quantile(s.key, 0.9)), hoverP50: round(quantile(s.hover, 0.5)), hoverP95: round(quantile(s.hover, 0.95)), typingP50: round(quantile(s.typing, 0.5)), typingP95: round(quantile(s.typing, 0.95)) });
const rows = servers.map((s, i) => row(s, i === 1));
console.table(rows);
keepResults({ faultsTyping: rows });
for (const s of servers) await s.client.stop();

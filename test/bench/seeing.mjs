// node test/bench/seeing.mjs: what pictures and pages of the complete example cost: the drawing, all plots, the panel, the report without and
// with faults, a comparison. "first" is the first time in this process, with a cold engine; "later" the median of some more, each of a rig
// read afresh, whose drawing keeps its layout. Never a test: figures hang on the machine. Puts its own key into test/bench/results.json.
import { mkdirSync, readFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { keepResults } from './keep-results.mjs';

const root = path.resolve(import.meta.dirname, '../..');
const cache = path.join(process.env.XDG_CACHE_HOME ?? path.join(os.homedir(), '.cache'), 'rigwright-bench');
mkdirSync(cache, { recursive: true });
const outfile = path.join(cache, 'seeing.mjs');
const from = {
    'index': 'Analyst', 'seeing/drawing/index': 'drawingOf', 'seeing/drawing/graph': 'graphOf', 'seeing/drawing/layout/index': 'layOut', 'seeing/palette': 'printed', 'seeing/pictures': 'pictures',
    'seeing/panel/model': 'panelOf', 'seeing/report/report': 'reportOf', 'seeing/report/page': 'asHtml', 'seeing/compare/compare': 'compare', 'seeing/compare/page': 'comparisonReport',
};
await build({
    stdin: { contents: Object.entries(from).map(([file, names]) => `export { ${names} } from "./language/${file}.js";`).join('\n'), resolveDir: root, loader: 'ts' },
    bundle: true, platform: 'node', format: 'esm', outfile, logLevel: 'warning', alias: { mathjs: path.join(root, 'node_modules/mathjs/lib/esm/type/unit/Unit.js') },
    banner: { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" },
});
const { Analyst, drawingOf, graphOf, layOut, printed, pictures, panelOf, reportOf, asHtml, compare, comparisonReport } = await import(pathToFileURL(outfile).href);
const file = path.join(root, 'examples/jeweller-torch-store.rig');
const textOf = f => {
    try {
        return readFileSync(f, 'utf8');
    } catch {
        return undefined;
    }
};
const read = () => new Analyst(textOf).analyse(file, { today: '2026-06-15' });
const other = new Analyst(f => textOf(f)?.replace(/(cells: +)(\d+)/, (_, key, n) => `${key}${Number(n) + 1}`)).analyse(file, { today: '2026-06-15' });
const rounded = ms => Math.round(ms * 100) / 100;

const plots = pictures.slice(1);
const works = [
    ['drawing', 20, a => drawingOf(a, printed)],
    ['its layout', 20, a => layOut(graphOf(a.workings))],
    [`all ${plots.length} other pictures`, 5, a => plots.map(p => p.draw(a, printed, 'p'))],
    ['panel', 20, a => panelOf(a, { part: 'stack' })],
    ['report without faults', 5, a => asHtml(reportOf(a, { today: '2026-06-15', textOf, faults: false }))],
    ['report with faults', 3, a => asHtml(reportOf(a, { today: '2026-06-15', textOf }))],
    ['comparison', 5, a => asHtml(comparisonReport(compare(a, other), ['before', 'after']))],
];
const rows = works.map(([what, times, work]) => {
    const all = [];
    for (let i = 0; i <= times; i++) {
        const analysis = read();
        const begun = performance.now();
        work(analysis);
        all.push(performance.now() - begun);
    }
    const [first, ...later] = all;
    return { what, firstMs: rounded(first), laterMs: rounded(later.sort((x, y) => x - y)[later.length >> 1]) };
});
console.table(rows);
keepResults({ seeing: { on: new Date().toISOString().slice(0, 10), node: process.version, rows } });

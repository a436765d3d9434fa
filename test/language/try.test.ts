import { test } from 'vitest';
import { readFileSync, readdirSync } from 'node:fs';
import { Analyst } from '../../language/index.js';
import { show } from '../../language/units/format.js';
import { measures } from '../../language/units/dimension.js';
import { quantityOf } from '../../language/quantities/index.js';
test('x', () => {
  const dir=process.env.DIR ?? '/work/shared/rig-sketches/';
  const a = new Analyst(f => { try { return readFileSync(f,'utf8'); } catch { return undefined; } });
  for (const f of readdirSync(dir).filter(f=>f.endsWith('.rig'))) {
    const r = a.analyse(dir+f, {today:'2026-11-20'});
    const out = r.findings.map(x => { const t = readFileSync(x.span.file,'utf8'); return `  ${x.span.file.split('/').pop()}:${t.slice(0,x.span.start).split('\n').length} ${x.rule}: ${x.message} [${t.slice(x.span.start,x.span.end).slice(0,40)}]`; });
    const t0=performance.now(); for(let i=0;i<20;i++) a.analyse(dir+f, {today:'2026-11-20'}); const ms=(performance.now()-t0)/20;
    const qs: string[] = [];
    for (const v of r.workings.allViews()) for (const q of quantityOf(v.kind).values()) { const x = r.workings.quantity(v.part, q.name)!; qs.push(`${v.name}.${q.name}=${show(x.value, q.unit ?? measures[q.measure].units[0])}${x.value!==x.value?' <'+x.missing.join(',')+'>':''}`); }
    console.log(f, r.rig.parts.size, out.length, ms.toFixed(2)+'ms\n'+out.slice(0,40).join('\n')+'\n'+qs.join(' | '));
  }
});

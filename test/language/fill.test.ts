import { test } from 'vitest';
import { readFileSync, writeFileSync, readdirSync } from 'node:fs';
import { analyseText } from '../../language/index.js';
// fills FILL marks from what the rule says, and prints it to be read
test('fill', () => {
  const dir='language/rules/of/';
  for (const d of readdirSync(dir,{recursive:true,withFileTypes:true})) {
    if (!d.name.endsWith('.md')) continue; const file=(d.parentPath??d.path)+'/'+d.name; let text=readFileSync(file,'utf8'); const name=d.name.replace('.md','');
    if (!text.includes('FILL')) continue;
    text = text.replace(/(## Flagged\n\n```rig\n)([\s\S]*?)```/g, (all, h, rig) => {
      const today=/^# today (\S+)/.exec(rig)?.[1] ?? '2026-06-15';
      const fs = analyseText(rig,{today}).findings.filter(f=>f.rule===name);
      let n=0; const out = rig.replace(/\^ FILL/g, () => { const f=fs[n++]; return f ? `^ ${f.severity}: ${f.message}` : '^ FILL'; });
      console.log(name+': '+fs.map(f=>`${f.severity} [${rig.slice(f.span.start,f.span.end)}] ${f.message}`).join(' || ')+(fs.length? '' : '  NOTHING; others: '+analyseText(rig,{today}).findings.map(f=>f.rule+': '+f.message).slice(0,6).join(' / ')));
      return h+out+'```';
    });
    writeFileSync(file,text);
  }
});

// node test/rules/mutation.mjs [RULE] [--halves]: takes one condition of one rule away at a time (`if (…) return;`, `if (…) continue;`) and
// looks whether anything notices: the rule's own page, the examples, the mistakes, sound rigs, incidents.
// What nobody notices is listed: a test is missing, or the condition is of no use. A condition that only saves work is marked
// `// speed only` behind its line; it is counted and not tried. Takes some minutes. With --halves one side of an `||` goes at a
// time, in the rules that guard life; much of what is listed then only keeps the types apart.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, transformSync } from 'esbuild';

const root = path.resolve(import.meta.dirname, '../..');
const halves = process.argv.includes('--halves');
const wanted = process.argv.slice(2).find(a => !a.startsWith('--'));
const out = path.join(os.tmpdir(), `rigwright-mutation-${process.pid}`);
mkdirSync(out, { recursive: true });
symlinkSync(path.join(root, 'node_modules'), path.join(out, 'node_modules'));
writeFileSync(path.join(out, 'package.json'), '{"type":"module"}');
const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', 'language/*.ts', 'language/**/*.ts', 'test/rules/whole-rigs.ts', 'test/rules/alone.ts', 'test/rules/asked.ts'], { cwd: root, encoding: 'utf8' }).split('\n').filter(f => f && !f.endsWith('.d.ts'));
const generated = ['rules/rules', 'rules/pages', 'quantities/quantities', 'vocabulary/kinds', 'rig/shipped'].map(f => `language/${f}.generated.ts`);
const grammar = readdirSync(path.join(root, 'language/grammar/generated')).map(f => `language/grammar/generated/${f}`);
await build({ entryPoints: [...new Set([...files, ...generated, ...grammar])].filter(f => f.endsWith('.ts')).map(f => path.join(root, f)), outdir: out, outbase: root, bundle: false, format: 'esm', platform: 'node', logLevel: 'error' });
const from = f => import(pathToFileURL(path.join(out, f)).href);
const { Analyst, analyseText, applyFix } = await from('language/index.js');
const { allRules, rulePage } = await from('language/rules/index.js');
const { askedBy } = await from('test/rules/asked.js');
const { wholeRig } = await from('test/rules/whole-rigs.js');

/** All that a rule is seen to say of the texts of its page, of the examples and of some sound rigs. */
const examples = readdirSync(path.join(root, 'examples'), { recursive: true }).filter(f => f.endsWith('.rig')).map(f => path.join(root, 'examples', f));
const { alone } = await from('test/rules/alone.js');
const sound = [...Array.from({ length: 12 }, (_, k) => wholeRig(k + 1).text), ...alone.map(a => a.text)];
const text = f => { try { return readFileSync(f, 'utf8'); } catch { return undefined; } };
const said = (findings, rule) => findings.filter(f => f.rule === rule).map(f => `${f.span.start} ${f.span.end} ${f.severity} ${f.message} ${f.fixes.map(x => x.title).join('|')}`).join('\n');
function seen(rule) {
    const page = rulePage(rule.name) ?? '';
    const lines = [];
    let heading = '';
    for (const m of page.matchAll(/^## (.+)$|^```rig\n([\s\S]*?)^```$/gm)) {
        if (m[1]) {
            heading = m[1];
            continue;
        }
        const day = /^# today (\S+)/.exec(m[2])?.[1] ?? '2026-06-15';
        const today = day === 'unknown' ? undefined : day;
        const { findings } = analyseText(m[2], { today });
        lines.push(said(findings, rule.name));
        if (heading === 'Cannot be checked' || heading === 'Not asked') lines.push(askedBy(rule, m[2], today).join());
        // A fix that raises an error is noticed too.
        for (const f of findings.filter(f => f.rule === rule.name)) for (const fix of f.fixes) lines.push(analyseText(applyFix(m[2], 'rig.rig', fix), { today }).findings.filter(x => x.severity === 'error').map(x => x.rule).join());
    }
    return lines;
}
function seenElsewhere(rule) {
    return [...examples.map(f => said(new Analyst(text).analyse(f, { today: '2026-06-15' }).findings, rule.name)), ...sound.map(t => said(analyseText(t, { today: '2026-06-15' }).findings, rule.name))];
}
const guard = /^([ \t]*)(?:else )?if \((?:[^\n]|\n(?=[ \t]*(?:&&|\|\|)))*?\) (?:return|continue)[^\n;]*;[^\n]*\n/gm;
/** An early return with one side of its `||` gone, for each side; nothing where there is none. */
function* sidesOf(text) {
    const from = text.indexOf('if (') + 4;
    const ends = [];
    let depth = 0;
    let to = from;
    for (; depth >= 0; to++) {
        if ('([{'.includes(text[to])) depth++;
        else if (')]}'.includes(text[to])) depth--;
        else if (!depth && text.startsWith(' || ', to)) ends.push(to);
    }
    const close = to - 1;
    const sides = [...ends, close].map((end, n) => text.slice(n ? ends[n - 1] + 4 : from, end));
    if (sides.length > 1) for (const what of sides) yield { what, left: text.slice(0, from) + sides.filter(x => x !== what).join(' || ') + text.slice(close) };
}
const sources = files.filter(f => /^language\/rules\/of\//.test(f));
let tried = 0;
let noticed = 0;
let forSpeed = 0;
const unnoticed = [];
for (const file of sources) {
    const name = path.basename(file, '.ts');
    const rule = allRules.find(r => r.name === name);
    if (!rule?.check || (wanted && name !== wanted)) continue;
    const source = readFileSync(path.join(root, file), 'utf8');
    const begins = source.indexOf('check(');
    const before = seen(rule);
    const check = rule.check;
    let elsewhere;
    let k = 0;
    for (const m of source.matchAll(guard)) {
        if (m.index < begins) continue;
        if (/\/\/ speed only$/m.test(m[0])) {
            forSpeed++;
            continue;
        }
        for (const { what, left } of halves && rule.guardsLife ? sidesOf(m[0]) : halves ? [] : [{ what: '', left: '' }]) {
            const mutant = source.slice(0, m.index) + left + source.slice(m.index + m[0].length);
            const js = path.join(out, file.replace(/\.ts$/, `.without-${k++}.js`));
            try {
                writeFileSync(js, transformSync(mutant, { loader: 'ts', format: 'esm' }).code);
                rule.check = (await import(pathToFileURL(js).href)).default.check;
            } catch {
                continue;
            }
            tried++;
            let differs = true;
            try {
                differs = seen(rule).join('\0') !== before.join('\0');
                if (!differs) {
                    const mutated = seenElsewhere(rule).join('\0');
                    rule.check = check;
                    elsewhere ??= seenElsewhere(rule).join('\0');
                    differs = mutated !== elsewhere;
                }
            } catch {
                // It fell over: noticed.
            }
            rule.check = check;
            if (differs) noticed++;
            else unnoticed.push(`${name}: ${what && `${what}   of   `}${m[0].trim().slice(0, 140)}`);
        }
    }
}
rmSync(out, { recursive: true });
console.log(unnoticed.join('\n'));
console.log(`${tried} conditions taken away, one at a time: ${noticed} noticed, ${unnoticed.length} not. ${forSpeed} more are marked as saving work only.`);

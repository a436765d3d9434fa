// Makes what is generated: the parser's tables from the grammar, and the lists of files of which each declares one thing
// (kinds, quantities, rules, editor features, commands, papers). Only Node's built-ins, and Langium's own generator as a process.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');
const at = (...p) => path.join(root, ...p);

/** Writes only what has changed, so that watchers and caches stay quiet. */
function write(file, text) {
    if (existsSync(file) && readFileSync(file, 'utf8') === text) return;
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, text);
}
const head = '// Generated from the files of this folder by `npm run generate`; not kept in git.\n';
function filesIn(dir, ext = '.ts') {
    if (!existsSync(dir)) return [];
    return readdirSync(dir, { withFileTypes: true, recursive: true })
        .filter(d => d.isFile() && d.name.endsWith(ext) && !d.name.includes('.generated.') && !d.name.endsWith('.d.ts'))
        .map(d => path.relative(dir, path.join(d.parentPath ?? d.path, d.name)).split(path.sep).join('/'))
        .sort();
}
/** One list of default exports: `allX = [a, b, ...]`. */
function list(dir, out, name, type, from) {
    const files = filesIn(dir);
    const here = path.dirname(out);
    const imports = files.map((f, i) => `import x${i} from './${path.relative(here, path.join(dir, f)).split(path.sep).join('/').replace(/\.ts$/, '.js')}';`);
    write(out, `${head}import type { ${type} } from '${from}';\n${imports.join('\n')}\n\nexport const ${name}: readonly ${type}[] = [${files.map((_, i) => `x${i}`).join(', ')}].flat();\n`);
    return files.length;
}

const grammar = at('language/grammar/rig.langium');
const generated = at('language/grammar/generated/module.ts');
if (!existsSync(generated) || statSync(generated).mtimeMs < statSync(grammar).mtimeMs) {
    execFileSync(process.execPath, ['--import', './language/grammar/polyfill.mjs', at('node_modules/langium-cli/bin/langium.js'), 'generate', '-f', 'language/grammar/langium-config.json'],
        { cwd: root, stdio: ['ignore', 'ignore', 'pipe'] });
}
list(at('language/vocabulary/kinds'), at('language/vocabulary/kinds.generated.ts'), 'allKinds', 'Kind', './define.js');
list(at('language/quantities/of'), at('language/quantities/quantities.generated.ts'), 'allQuantities', 'Quantity', './define.js');
list(at('language/rules/of'), at('language/rules/rules.generated.ts'), 'allRules', 'Rule', './define.js');
list(at('language/seeing/plots/of'), at('language/seeing/plots/plots.generated.ts'), 'everyPlot', 'Plot', './define.js');
list(at('server/editor/features'), at('server/editor/features.generated.ts'), 'allFeatures', 'Feature', './feature.js');
list(at('server/command/commands'), at('server/command/commands.generated.ts'), 'allCommands', 'Command', './command.js');
list(at('language/seeing/papers/of'), at('language/seeing/papers/papers.generated.ts'), 'allPapers', 'Paper', './paper.js');
list(at('language/seeing/report/of'), at('language/seeing/report/sections.generated.ts'), 'everySection', 'SectionOf', './define.js');

// Rule pages and the shipped libraries as text, so that they can be read offline and in a browser.
const texts = (dir, ext, out, name) => {
    const rows = filesIn(dir, ext).map(f => `    ${JSON.stringify(path.basename(f, ext))}: ${JSON.stringify(readFileSync(path.join(dir, f), 'utf8'))},`);
    write(out, `${head}export const ${name}: Readonly<Record<string, string>> = {\n${rows.join('\n')}\n};\n`);
};
texts(at('language/rules/of'), '.md', at('language/rules/pages.generated.ts'), 'rulePages');
texts(at('language/rig/shipped'), '.rig', at('language/rig/shipped.generated.ts'), 'shippedLibraries');

import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { Analyst, type Analysis } from '../../../language/index.js';
import { compare as comparison, comparisonReport } from '../../../language/seeing/compare/compare.js';
import { asHtml, asMarkdown, asText } from '../../../language/seeing/report/page.js';
import { CannotDo, type Command } from '../command.js';
import { dateOf, readText, rigFiles } from '../files.js';
import { version } from '../version.js';

const compare: Command = {
    name: 'compare',
    summary: 'Sets two rigs side by side: what a change does, not which letters it touched.',
    args: 'FILE [FILE]',
    most: 2,
    options: {
        since: { type: 'string', takes: 'REVISION', doc: 'compares the file with itself as it was then in git: HEAD, a tag, a commit' },
        out: { type: 'string', short: 'o', takes: 'FILE', doc: 'where to, .md or .html' },
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'md', 'json'], doc: 'form of the output' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright compare before.rig after.rig', 'rigwright compare shed.rig --since HEAD --format md'],
    async run({ options, args }, around) {
        const since = typeof options.since === 'string' ? options.since : undefined;
        if (args.length !== (since === undefined ? 2 : 1)) throw new CannotDo('compare takes two files, or one with --since REVISION.');
        const today = dateOf(options.on, around.today);
        const files = args.map(a => rigFiles([a], around.cwd)[0]);
        const analysis = (file: string, textOf: (f: string) => string | undefined): Analysis => new Analyst(textOf).analyse(file, { today });
        const after = analysis(files[files.length - 1], readText);
        const before = since === undefined ? analysis(files[0], readText) : analysis(files[0], textAt(since, files[0]));
        const found = comparison(before, after);
        const names: readonly [string, string] = since === undefined ? [args[0], args[1]] : [`${args[0]} at ${since}`, `${args[0]} now`];
        const report = comparisonReport(found, names);
        if (typeof options.out === 'string') {
            const file = path.resolve(around.cwd, options.out);
            const ending = path.extname(file).toLowerCase();
            if (ending !== '.md' && ending !== '.html') throw new CannotDo('A comparison is written as .md or .html.');
            writeFileSync(file, ending === '.md' ? asMarkdown(report) : asHtml(report));
        } else if (options.format === 'json') {
            const finding = (f: (typeof found.come)[number]) => ({ rule: f.rule, severity: f.severity, message: f.message });
            around.out(`${JSON.stringify({ version, ...found, come: found.come.map(finding), gone: found.gone.map(finding), nearer: found.nearer.map(n => ({ rule: n.rule, part: n.part })), moved: found.moved.map(m => ({ ...m, share: m.share === m.share ? Number(m.share.toPrecision(4)) : null })) }, null, 2)}\n`);
        } else around.out(options.format === 'md' ? asMarkdown(report) : asText(report, around.columns));
        return found.come.some(f => f.severity === 'error') ? 1 : 0;
    },
};
export default compare;

/** Texts as they stood at a revision. What the file imports is read of the same revision. */
function textAt(revision: string, file: string): (f: string) => string | undefined {
    if (revision.startsWith('-')) throw new CannotDo(`${revision} is no revision.`);
    const git = (args: readonly string[]) => execFileSync('git', [...args], { cwd: path.dirname(file), encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 64e6 });
    let root: string;
    try {
        root = git(['rev-parse', '--show-toplevel']).trim();
        git(['rev-parse', '--verify', '--quiet', `${revision}^{commit}`]);
    } catch {
        throw new CannotDo(`${path.basename(file)} does not stand in a git repository, or there is no revision ${revision}.`);
    }
    const read = (f: string) => {
        try {
            return git(['show', `${revision}:${path.relative(root, f).split(path.sep).join('/')}`]);
        } catch {
            return undefined;
        }
    };
    if (read(file) === undefined) throw new CannotDo(`${path.basename(file)} was not there at ${revision}.`);
    return read;
}

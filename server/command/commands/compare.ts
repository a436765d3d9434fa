import { execFileSync } from 'node:child_process';
import { existsSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { Analyst, type Analysis } from '../../../language/index.js';
import { variantsOf } from '../../../language/rig/variants.js';
import { compare as comparison } from '../../../language/seeing/compare/compare.js';
import { comparisonJson, sideBySideJson } from '../../../language/seeing/compare/json.js';
import { comparisonReport, newErrors } from '../../../language/seeing/compare/page.js';
import { NoVariants, sideBySide, sideBySideReport } from '../../../language/seeing/compare/side-by-side.js';
import { asHtml, asMarkdown, asText, type Report } from '../../../language/seeing/report/page.js';
import { CannotDo, type Command, type Given, type Surroundings } from '../command.js';
import { dateOf, readText, rigFiles } from '../files.js';
import { one } from '../one-rig.js';
import { version } from '../version.js';

const compare: Command = {
    name: 'compare',
    summary: 'Sets two rigs side by side, or a rig and its variants: what a change does, not which letters it touched.',
    args: 'FILE [FILE | VARIANT ...]',
    options: {
        since: { type: 'string', takes: 'REVISION', doc: 'compares the file with itself as it was then in git: HEAD, a tag, a commit' },
        variants: { type: 'boolean', doc: 'sets the rig beside all of its variants; those named after FILE only, if some are' },
        out: { type: 'string', short: 'o', takes: 'FILE', doc: 'where to, .md, .html or .json' },
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'md', 'html', 'json'], doc: 'form of the output' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright compare before.rig after.rig', 'rigwright compare shed.rig --since HEAD --format md', 'rigwright compare shed.rig --variants', 'rigwright compare shed.rig winter winter+two-stacks'],
    async run(given, around) {
        const { options, args } = given;
        const since = typeof options.since === 'string' ? options.since : undefined;
        if (!args.length) throw new CannotDo('compare takes two files, or one with --since REVISION, --variants or names of its variants.');
        if (since !== undefined && (options.variants || args.length > 1)) throw new CannotDo('--since compares one file with itself; it takes no second file and no variants.');
        return since === undefined && (options.variants || asksForVariants(args, around)) ? variants(given, around) : files(given, since, around);
    },
};
export default compare;

const NAMES = 32;
const COLUMN = 26;
const toFile = (options: Given['options']) => typeof options.out === 'string';

/** More than one name, and the second is no file: variants of the first. */
function asksForVariants(args: readonly string[], around: Surroundings): boolean {
    return args.length > 2 || (args.length === 2 && !existsSync(path.resolve(around.cwd, args[1])));
}
function files({ options, args }: Given, since: string | undefined, around: Surroundings): number {
    const today = dateOf(options.on, around.today);
    if (since === undefined && args.length === 1) {
        const { analysis } = one(args, options.on, around, 'compare');
        const names = variantsOf(analysis.rig).map(v => v.name);
        throw new CannotDo(`compare takes a second file, or --since REVISION${names.length ? `, or --variants: this rig has ${names.join(', ')}` : ''}.`);
    }
    const paths = args.map(a => {
        const found = rigFiles([a], around.cwd);
        if (found.length > 1) throw new CannotDo(`${a} holds ${found.length} rigs; compare takes files.`);
        return found[0];
    });
    const analysis = (file: string, textOf: (f: string) => string | undefined): Analysis => new Analyst(textOf).analyse(file, { today });
    const after = analysis(paths[paths.length - 1], readText);
    const before = since === undefined ? analysis(paths[0], readText) : analysis(paths[0], textAt(since, paths[0]));
    const found = comparison(before, after);
    const names: readonly [string, string] = since === undefined ? [args[0], args[1]] : [`${args[0]} at ${since}`, `${args[0]} now`];
    write(options, around, comparisonReport(found, names), () => ({ version, ...comparisonJson(found, names) }));
    return newErrors(found) ? 1 : 0;
}
function variants({ options, args }: Given, around: Surroundings): number {
    const { analysis, today } = one(args.slice(0, 1), options.on, around, 'compare');
    try {
        const found = sideBySide(analysis, args.slice(1), { today });
        // So many characters take the names of numbers and a column of them.
        const abreast = toFile(options) || options.format !== 'text' ? undefined : Math.max(2, Math.floor(((around.columns ?? 110) - NAMES) / COLUMN));
        write(options, around, sideBySideReport(found, abreast), () => ({ version, ...sideBySideJson(found) }));
        return 0;
    } catch (e) {
        if (!(e instanceof NoVariants)) throw e;
        // One name that is neither: which of both was meant is not known.
        throw new CannotDo(args.length === 2 && !options.variants ? `There is no file ${args[1]}. As a variant: ${e.message}` : e.message);
    }
}
function write(options: Given['options'], around: Surroundings, report: Report, data: () => object): void {
    const json = () => `${JSON.stringify(data(), null, 2)}\n`;
    if (typeof options.out !== 'string') {
        around.out(options.format === 'json' ? json() : options.format === 'html' ? asHtml(report) : options.format === 'md' ? asMarkdown(report) : asText(report, around.columns));
        return;
    }
    const file = path.resolve(around.cwd, options.out);
    switch (path.extname(file).toLowerCase()) {
        case '.md': writeFileSync(file, asMarkdown(report)); break;
        case '.html': writeFileSync(file, asHtml(report)); break;
        case '.json': writeFileSync(file, json()); break;
        default: throw new CannotDo('A comparison is written as .md, .html or .json.');
    }
    around.out(`made ${options.out}\n`);
}

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

import path from 'node:path';
import { CannotDo, type Command } from '../command.js';
import { counts } from '../counts.js';
import { checkFiles, dateOf, rigFiles, shown } from '../files.js';
import { mend } from '../mend.js';
import { formats, reportOf, type Report } from '../report.js';
import { watch } from '../watch.js';
import { many } from '../words.js';

/** A fix may bring another one into reach; a circle of fixes must not go on for ever. */
const MOST_ROUNDS = 5;

const check: Command = {
    name: 'check',
    summary: 'Tells what cannot work or can hurt in rigs: the same findings as in the editor.',
    args: '[FILE|FOLDER ...]',
    options: {
        format: { type: 'string', takes: 'FORM', default: 'text', choices: Object.keys(formats), doc: 'form of the output' },
        on: { type: 'string', takes: 'DATE', doc: 'day that rules about dates compare with, today if left out' },
        'max-warnings': { type: 'string', takes: 'N', doc: 'with more warnings than this the exit code is 1 as well' },
        fix: { type: 'boolean', doc: 'first apply the fixes that keep the meaning of the text' },
        stdin: { type: 'boolean', doc: 'read one text from standard input' },
        'stdin-name': { type: 'string', takes: 'FILE', default: 'stdin.rig', doc: 'name of that text, from which it finds the files it uses' },
        watch: { type: 'boolean', doc: 'check again whenever a file changes' },
    },
    examples: ['rigwright check', 'rigwright check rigs --max-warnings 0', 'rigwright check shed.rig --format sarif > findings.sarif'],
    async run({ options, args }, around) {
        const today = dateOf(options.on, around.today);
        const max = options['max-warnings'];
        if (max !== undefined && !/^\d+$/.test(String(max))) throw new CannotDo('--max-warnings takes a number, 0 or more.');
        if (options.stdin && (options.fix || options.watch)) throw new CannotDo(`--${options.fix ? 'fix' : 'watch'} needs files: it cannot go together with --stdin.`);
        if (options.stdin && args.length) throw new CannotDo('--stdin reads one text and takes no files.');

        const ofFiles = (): Report => reportOf(checkFiles(rigFiles(args, around.cwd), today), around.cwd);
        const ofStdin = async (): Promise<Report> => {
            const file = path.resolve(around.cwd, String(options['stdin-name']));
            return reportOf(checkFiles([file], today, new Map([[file, await around.readStdin()]])), around.cwd);
        };
        const once = async (): Promise<number> => {
            let report = options.stdin ? await ofStdin() : ofFiles();
            for (let round = 0; options.fix && round < MOST_ROUNDS; round++) {
                const { fixes, files, leftAlone } = mend(report.findings);
                for (const file of leftAlone) around.err(`${shown(file, around.cwd)} is no UTF-8 text; it was left as it is.\n`);
                if (!fixes) break;
                around.err(`mended ${many(fixes, 'place')} in ${files.map(f => shown(f, around.cwd)).join(', ')}\n`);
                report = ofFiles();
            }
            around.out(formats[String(options.format)](report, around.colour));
            const { errors, warnings } = counts(report.findings);
            return errors > 0 || (max !== undefined && warnings > Number(max)) ? 1 : 0;
        };
        const status = await once();
        if (!options.watch) return status;
        around.err('Watching for changes; Ctrl+C ends.\n');
        let last = status;
        const again = async () => {
            try {
                last = await once();
            } catch (error) {
                // A file may be away for a moment, or for good: the next change is looked at all the same.
                around.err(`${error instanceof Error ? error.message : String(error)}\n`);
            }
        };
        await watch((args.length ? args : ['.']).map(a => path.resolve(around.cwd, a)), again, around.stop);
        return last;
    },
};
export default check;

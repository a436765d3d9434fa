import { watch, writeFileSync } from 'node:fs';
import path from 'node:path';
import { applyFix, type Finding, type Fix } from '../../../language/index.js';
import { CannotDo, type Command } from '../command.js';
import { checkFiles, dateOf, readText, rigFiles } from '../files.js';
import { counts, formats, reportOf, type Report } from '../findings-text.js';

const check: Command = {
    name: 'check',
    summary: 'Tells what cannot work or can hurt in rigs: the same findings as in the editor.',
    args: '[FILE|FOLDER ...]',
    options: {
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'json', 'sarif', 'github', 'junit'], doc: 'form of the output' },
        on: { type: 'string', takes: 'DATE', doc: 'date that rules about dates compare with (today if left out)' },
        'max-warnings': { type: 'string', takes: 'N', doc: 'more warnings than this count as an error' },
        fix: { type: 'boolean', doc: 'apply the fixes that keep the meaning of the text' },
        stdin: { type: 'boolean', doc: 'read one text from standard input' },
        'stdin-name': { type: 'string', takes: 'FILE', default: 'stdin.rig', doc: 'name of that text, for what it uses' },
        watch: { type: 'boolean', doc: 'check again whenever a file changes' },
    },
    examples: ['rigwright check examples', 'rigwright check shed.rig --format sarif > findings.sarif'],
    async run({ options, args }, around) {
        const today = dateOf(options.on, around.today);
        const max = options['max-warnings'];
        if (max !== undefined && !/^\d+$/.test(String(max))) throw new CannotDo('--max-warnings takes a number.');
        const once = async (): Promise<number> => {
            let report: Report;
            if (options.stdin) {
                const file = path.resolve(around.cwd, String(options['stdin-name']));
                report = reportOf(checkFiles([file], today, new Map([[file, await around.readStdin()]])), around.cwd);
            } else {
                const files = rigFiles(args, around.cwd);
                report = reportOf(checkFiles(files, today), around.cwd);
                if (options.fix && applyKeeping(report.findings)) report = reportOf(checkFiles(files, today), around.cwd);
            }
            around.out(formats[String(options.format)](report, around.colour));
            const c = counts(report.findings);
            return c.errors > 0 || (max !== undefined && c.warnings > Number(max)) ? 1 : 0;
        };
        const status = await once();
        if (!options.watch || options.stdin) return status;
        const folders = new Set(rigFiles(args, around.cwd).map(f => path.dirname(f)));
        around.err('Watching; Ctrl+C ends.\n');
        let timer: NodeJS.Timeout | undefined;
        for (const folder of folders) {
            watch(folder, (_, name) => {
                if (!name?.endsWith('.rig')) return;
                clearTimeout(timer);
                timer = setTimeout(() => void once().catch((e: unknown) => around.err(`${e instanceof Error ? e.message : String(e)}\n`)), 60);
            });
        }
        await new Promise<void>(done => process.once('SIGINT', done));
        return 0;
    },
};
export default check;

/** Writes the fixes that keep the meaning; true if there were any. */
function applyKeeping(findings: readonly Finding[]): boolean {
    const edits: Fix['edits'][number][] = [];
    for (const f of findings) {
        const fix = f.fixes.find(x => x.keepsMeaning);
        if (fix && !fix.edits.some(e => edits.some(o => o.span.file === e.span.file && o.span.start < e.span.end && e.span.start < o.span.end))) edits.push(...fix.edits);
    }
    for (const file of new Set(edits.map(e => e.span.file))) {
        const text = readText(file);
        if (text !== undefined) writeFileSync(file, applyFix(text, file, { title: '', edits }));
    }
    return edits.length > 0;
}

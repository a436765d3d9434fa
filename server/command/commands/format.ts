import { writeFileSync } from 'node:fs';
import { formatText } from '../../../language/rig/format.js';
import { CannotDo, type Command } from '../command.js';
import { isText, readText, rigFiles, shown } from '../files.js';
import { many } from '../words.js';

const format: Command = {
    name: 'format',
    summary: 'Lines rig texts up; never changes what they say, nor a line that cannot be read.',
    args: '[FILE|FOLDER ...]',
    options: {
        write: { type: 'boolean', doc: 'write what changed; this is what it does by itself' },
        check: { type: 'boolean', doc: 'change nothing; exit code 1 if a file would change' },
        stdin: { type: 'boolean', doc: 'read standard input, write standard output' },
    },
    examples: ['rigwright format', 'rigwright format shed.rig --check'],
    async run({ options, args }, around) {
        if (options.check && options.write) throw new CannotDo('--check changes nothing: it cannot go together with --write.');
        if (options.stdin) {
            if (args.length) throw new CannotDo('--stdin reads one text and takes no files.');
            const before = await around.readStdin();
            const after = formatText(before);
            if (!options.check) around.out(after);
            return options.check && after !== before ? 1 : 0;
        }
        let changed = 0;
        let failed = 0;
        const files = rigFiles(args, around.cwd);
        for (const file of files) {
            const before = readText(file);
            if (before === undefined || !isText(file, before)) {
                around.err(`${shown(file, around.cwd)} ${before === undefined ? 'cannot be read' : 'is no UTF-8 text'}; it was left as it is.\n`);
                failed++;
                continue;
            }
            const after = formatText(before);
            if (after === before) continue;
            changed++;
            if (!options.check) writeFileSync(file, after);
            around.out(`${options.check ? 'would change' : 'changed'} ${shown(file, around.cwd)}\n`);
        }
        if (!changed) around.out(`${many(files.length - failed, 'file')}: nothing to change.\n`);
        return failed ? 2 : options.check && changed ? 1 : 0;
    },
};
export default format;

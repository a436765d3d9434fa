import { writeFileSync } from 'node:fs';
import { formatText } from '../../../language/rig/format.js';
import type { Command } from '../command.js';
import { readText, rigFiles, shown } from '../files.js';

const format: Command = {
    name: 'format',
    summary: 'Lines rig texts up; never changes what they say.',
    args: '[FILE|FOLDER ...]',
    options: {
        check: { type: 'boolean', doc: 'change nothing; exit 1 if a file would change' },
        stdin: { type: 'boolean', doc: 'read standard input, write standard output' },
    },
    async run({ options, args }, around) {
        if (options.stdin) {
            around.out(formatText(await around.readStdin()));
            return 0;
        }
        let changed = 0;
        for (const file of rigFiles(args, around.cwd)) {
            const before = readText(file) ?? '';
            const after = formatText(before);
            if (after === before) continue;
            changed++;
            around.out(`${options.check ? 'would change' : 'changed'} ${shown(file, around.cwd)}\n`);
            if (!options.check) writeFileSync(file, after);
        }
        if (!changed) around.out('Nothing to change.\n');
        return options.check && changed ? 1 : 0;
    },
};
export default format;

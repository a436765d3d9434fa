import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { templates } from '../../../language/reference/templates.js';
import { nearest, offering } from '../../../language/values/nearest.js';
import { CannotDo, type Command } from '../command.js';

const create: Command = {
    name: 'new',
    summary: 'Starts a rig from a template; lists the templates if none is named.',
    args: '[TEMPLATE]',
    most: 1,
    options: { output: { type: 'string', short: 'o', takes: 'FILE', doc: 'write it there instead of to the terminal; never over a file that exists' } },
    examples: ['rigwright new', 'rigwright new sketch -o my.rig'],
    async run({ options, args }, around) {
        const names = templates.map(t => t.name);
        if (!args.length && !options.output) {
            const width = Math.max(...names.map(n => n.length)) + 4;
            around.out(`${templates.map(t => `  ${t.name.padEnd(width)}${t.description}`).join('\n')}\n`);
            return 0;
        }
        const name = args[0] ?? names[0];
        const template = templates.find(t => t.name === name);
        if (!template) {
            const near = nearest(name, names);
            throw new CannotDo(offering(`There is no template ${name}`, near, `. There are ${names.join(', ')}.`));
        }
        if (!options.output) {
            around.out(template.text);
            return 0;
        }
        try {
            writeFileSync(path.resolve(around.cwd, String(options.output)), template.text, { flag: 'wx' });
        } catch (error) {
            if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw new CannotDo(`${options.output} exists already; it was left as it is.`);
            throw error;
        }
        around.out(`made ${options.output}\n`);
        return 0;
    },
};
export default create;

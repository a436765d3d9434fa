import { existsSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { templates } from '../../../language/reference/templates.js';
import { nearest } from '../../../language/values/nearest.js';
import { CannotDo, type Command } from '../command.js';

const create: Command = {
    name: 'new',
    summary: `Starts a rig from a template: ${templates.map(t => t.name).join(', ')}.`,
    args: '[TEMPLATE]',
    options: { output: { type: 'string', short: 'o', takes: 'FILE', doc: 'write it there instead of to the terminal' } },
    examples: ['rigwright new sketch -o my.rig'],
    async run({ options, args }, around) {
        if (!args.length && !options.output) {
            around.out(`${templates.map(t => `  ${t.name.padEnd(10)}${t.description}`).join('\n')}\n`);
            return 0;
        }
        const name = args[0] ?? templates[0].name;
        const template = templates.find(t => t.name === name);
        if (!template) {
            const near = nearest(name, templates.map(t => t.name));
            throw new CannotDo(`There is no template ${name}${near ? `; did you mean ${near}?` : `: ${templates.map(t => t.name).join(', ')}.`}`);
        }
        if (!options.output) {
            around.out(template.text);
            return 0;
        }
        const file = path.resolve(around.cwd, String(options.output));
        if (existsSync(file)) throw new CannotDo(`${options.output} exists already.`);
        writeFileSync(file, template.text);
        around.out(`made ${options.output}\n`);
        return 0;
    },
};
export default create;

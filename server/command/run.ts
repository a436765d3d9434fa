/** Command line -> command. Unknown words get a 'did you mean'; what cannot be done is told in one line. */
import { parseArgs } from 'node:util';
import { nearest } from '../../language/values/nearest.js';
import { CannotDo, type Command, type Surroundings } from './command.js';
import { allCommands } from './commands.generated.js';

export const version = '0.1.0';
const caution = 'This is arithmetic on your description. Local codes and licensed practice decide.';

export async function run(argv: readonly string[], around: Surroundings): Promise<number> {
    const [name, ...rest] = argv;
    if (!name || name === '--help' || name === '-h' || name === 'help') {
        const about = rest[0] && allCommands.find(c => c.name === rest[0]);
        around.out(about ? helpOf(about) : help());
        return name ? 0 : 2;
    }
    if (name === '--version' || name === '-v') {
        around.out(`rigwright ${version}\n`);
        return 0;
    }
    const command = allCommands.find(c => c.name === name);
    if (!command) {
        const near = nearest(name, allCommands.map(c => c.name));
        around.err(`There is no command ${name}${near ? `; did you mean ${near}?` : '.'}\n${help()}`);
        return 2;
    }
    let parsed;
    try {
        parsed = parseArgs({
            args: [...rest], allowPositionals: true, strict: true,
            options: { help: { type: 'boolean', short: 'h' }, ...Object.fromEntries(Object.entries(command.options).map(([k, o]) => [k, { type: o.type, ...(o.short ? { short: o.short } : {}) }])) },
        });
    } catch (error) {
        const message = error instanceof Error ? error.message : String(error);
        const option = /'(-[^']*)'/.exec(message)?.[1];
        const near = option && nearest(option.replace(/^-+/, '').split('=')[0], Object.keys(command.options));
        around.err(`${option && /unknown option/i.test(message) ? `${name} has no option ${option}${near ? `; did you mean --${near}?` : '.'}` : message}\n`);
        return 2;
    }
    if (parsed.values.help) {
        around.out(helpOf(command));
        return 0;
    }
    const options: Record<string, string | boolean | undefined> = {};
    for (const [k, o] of Object.entries(command.options)) {
        const value = (parsed.values as Record<string, string | boolean | undefined>)[k] ?? o.default;
        if (o.choices && typeof value === 'string' && !o.choices.includes(value)) {
            const near = nearest(value, o.choices);
            around.err(`--${k} is one of ${o.choices.join(', ')}${near ? `; did you mean ${near}?` : '.'}\n`);
            return 2;
        }
        options[k] = value;
    }
    try {
        return await command.run({ options, args: parsed.positionals }, around);
    } catch (error) {
        if (!(error instanceof CannotDo)) throw error;
        around.err(`${error.message}\n`);
        return 2;
    }
}

function help(): string {
    return `rigwright: a hydrogen rig written as text, worked out and checked.\n\nUse: rigwright COMMAND [options]\n\n${allCommands.map(c => `  ${c.name.padEnd(10)}${c.summary}`).join('\n')}\n\nrigwright COMMAND --help tells more. ${caution}\n`;
}
function helpOf(c: Command): string {
    const options = Object.entries(c.options).map(([k, o]) => {
        const left = `  ${o.short ? `-${o.short}, ` : ''}--${k}${o.takes ? ` ${o.takes}` : ''}`;
        return `${left.padEnd(28)} ${o.doc}${o.choices ? ` (${o.choices.join(', ')})` : ''}${o.default ? ` [${o.default}]` : ''}`;
    });
    return `rigwright ${c.name}${c.args ? ` ${c.args}` : ''}\n\n${c.summary}\n${options.length ? `\n${options.join('\n')}\n` : ''}${c.examples?.length ? `\n${c.examples.map(e => `  ${e}`).join('\n')}\n` : ''}`;
}

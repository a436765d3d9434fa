/** Command line -> command. Unknown words get a 'did you mean'; what cannot be done is told in one line. */
import { parseArgs } from 'node:util';
import { nearest } from '../../language/values/nearest.js';
import { CannotDo, type Command, type Option, type Surroundings } from './command.js';
import { allCommands } from './commands.generated.js';
import { version } from './version.js';
import { caution } from './words.js';

/** Exit code of a command that could not do its work. */
const NOT_DONE = 2;
const OPTION_COLUMN = 28;

/** Runs a command line, without the program's own name. Never throws; the answer is the exit code. */
export async function run(argv: readonly string[], around: Surroundings): Promise<number> {
    try {
        return await dispatch(argv, around);
    } catch (error) {
        around.err(`${told(error)}\n`);
        return NOT_DONE;
    }
}
function told(error: unknown): string {
    if (error instanceof CannotDo) return error.message;
    const { code, path, message, stack } = error as NodeJS.ErrnoException;
    const system: Record<string, string> = { EACCES: 'may not be used by you', EPERM: 'may not be used by you', ENOENT: 'does not exist', EISDIR: 'is a folder', ENOSPC: 'does not fit on the disk', EROFS: 'cannot be written to' };
    if (code && path) return `${path} ${system[code] ?? `cannot be used: ${message}`}.`;
    return `Rigwright itself failed; please report it with these lines.\n${stack ?? String(error)}`;
}
async function dispatch(argv: readonly string[], around: Surroundings): Promise<number> {
    const [name, ...rest] = argv;
    if (!name || name === '--help' || name === '-h' || name === 'help') {
        const about = rest.length ? commandNamed(rest[0]) : undefined;
        around.out(about ? helpOf(about) : help());
        return name ? 0 : NOT_DONE;
    }
    if (name === '--version' || name === '-v') {
        around.out(`rigwright ${version}\n`);
        return 0;
    }
    const command = commandNamed(name);
    const { values, positionals } = read(command, rest);
    if (values.help) {
        around.out(helpOf(command));
        return 0;
    }
    const options: Record<string, string | boolean | undefined> = {};
    for (const [key, option] of Object.entries(command.options)) {
        const value = values[key] ?? option.default;
        if (option.choices && typeof value === 'string' && !option.choices.includes(value)) {
            throw new CannotDo(`--${key} is one of ${option.choices.join(', ')}${meant(value, option.choices)}`);
        }
        options[key] = value;
    }
    const most = command.args === undefined ? 0 : command.most ?? Infinity;
    if (positionals.length > most) throw new CannotDo(`${positionals[most]} is one word too many for ${name}. rigwright ${name} --help tells how it is used.`);
    return command.run({ options, args: positionals }, around);
}
/** '; did you mean check?' or a full stop. */
function meant(word: string, known: readonly string[], lead = ''): string {
    const near = nearest(word, known);
    return near ? `; did you mean ${lead}${near}?` : '.';
}
function commandNamed(name: string): Command {
    const command = allCommands.find(c => c.name === name);
    if (command) return command;
    const names = allCommands.map(c => c.name);
    throw new CannotDo(`There is no command ${name}${meant(name, names)} There are ${names.slice(0, -1).join(', ')} and ${names.at(-1)}.`);
}
function read(command: Command, args: readonly string[]): { values: Record<string, string | boolean | undefined>; positionals: string[] } {
    const options = Object.entries(command.options).map(([key, { type, short }]) => [key, short ? { type, short } : { type }]);
    try {
        return parseArgs({ args: [...args], allowPositionals: true, strict: true, options: { help: { type: 'boolean', short: 'h' }, ...Object.fromEntries(options) } }) as never;
    } catch (error) {
        const { code, message } = error as NodeJS.ErrnoException;
        const option = /'(-[^',\s]*)/.exec(message)?.[1] ?? '';
        const key = option.replace(/^-+/, '').split('=')[0];
        if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') throw new CannotDo(`${command.name} has no option ${option}${meant(key, [...Object.keys(command.options), 'help'], '--')}`);
        const known = command.options[key];
        if (known?.takes) throw new CannotDo(`--${key} needs ${known.takes} behind it: ${known.doc}.`);
        if (known) throw new CannotDo(`--${key} stands by itself and takes nothing.`);
        throw new CannotDo(message);
    }
}

function help(): string {
    const width = Math.max(...allCommands.map(c => c.name.length)) + 4;
    return [
        'rigwright: a hydrogen rig written as text, worked out and checked.', 'Use: rigwright COMMAND [options]',
        allCommands.map(c => `  ${c.name.padEnd(width)}${c.summary}`).join('\n'), 'rigwright COMMAND --help tells more.', caution,
    ].join('\n\n') + '\n';
}
/** The help of a command, made from its declaration. */
function helpOf(command: Command): string {
    const line = ([key, o]: [string, Option]) => {
        const left = `  ${o.short ? `-${o.short}, ` : ''}--${key}${o.takes ? ` ${o.takes}` : ''}`;
        const more = [o.choices && `one of ${o.choices.join(', ')}`, o.default && `${o.default} if left out`].filter(Boolean).join('; ');
        return `${left.padEnd(OPTION_COLUMN)} ${o.doc}${more ? ` (${more})` : ''}`;
    };
    return [
        `rigwright ${command.name}${command.args ? ` ${command.args}` : ''}`, command.summary,
        [...Object.entries(command.options).map(line), line(['help', { type: 'boolean', short: 'h', doc: 'this text' }])].join('\n'),
        command.examples?.length && ['For instance', ...command.examples.map(e => `  ${e}`)].join('\n'),
    ].filter(Boolean).join('\n\n') + '\n';
}

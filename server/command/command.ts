/** How a command is declared: name, options and what it does. One file per command in `commands/`; help is made from it. */
export interface Option {
    readonly type: 'string' | 'boolean';
    readonly short?: string;
    readonly default?: string;
    /** What stands after it in the help: FILE, DATE, N. */
    readonly takes?: string;
    readonly doc: string;
    readonly choices?: readonly string[];
}
/** All that a command has of the world around it, so that a test can stand in for it. */
export interface Surroundings {
    readonly out: (text: string) => void;
    readonly err: (text: string) => void;
    readonly cwd: string;
    readonly colour: boolean;
    /** Characters on a line of the terminal; unknown if left out. */
    readonly columns?: number;
    readonly readStdin: () => Promise<string>;
    /** ISO date of the day. */
    readonly today: string;
    /** Ends what would go on for ever. */
    readonly stop?: AbortSignal;
}
export interface Given {
    readonly options: Readonly<Record<string, string | boolean | undefined>>;
    readonly args: readonly string[];
}
export interface Command {
    readonly name: string;
    readonly summary: string;
    /** Positional arguments, as shown in the help; none are taken if left out. */
    readonly args?: string;
    /** How many there may be. */
    readonly most?: number;
    readonly options: Readonly<Record<string, Option>>;
    readonly examples?: readonly string[];
    /** Exit code: 0 without errors, 1 with, 2 when it could not do its work. */
    readonly run: (given: Given, around: Surroundings) => Promise<number>;
}
/** A reason why a command cannot do its work: told in one line, exit 2. */
export class CannotDo extends Error {}

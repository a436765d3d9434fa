/** Commands that ask about a single rig: its analysis, and what a change of its text would raise. */
import { Trials, type Analysis, type Finding, type Fix } from '../../language/index.js';
import { CannotTry } from '../../language/what-if/input.js';
import { CannotDo, type Given, type Surroundings } from './command.js';
import { checkFiles, dateOf, rigFiles } from './files.js';
import { reportOf, type Report } from './report.js';

export interface OneRig {
    readonly analysis: Analysis;
    readonly today: string;
    readonly raises: (fix: Fix) => Finding[];
    /** Findings of this rig for the forms of a report. */
    readonly report: (findings: readonly Finding[]) => Report;
}
/**
 * @param command  its name, for the message
 * @throws CannotDo where there is not just one file, or no rig in it
 */
export function one(args: readonly string[], on: Given['options'][string], around: Surroundings, command: string): OneRig {
    if (!args.length) throw new CannotDo(`${command} takes a file.`);
    const files = rigFiles(args, around.cwd);
    if (files.length > 1) throw new CannotDo(`${command} takes one file; ${args[0]} holds ${files.length}.`);
    const today = dateOf(on, around.today);
    const checked = checkFiles(files, today);
    const { analyses: [analysis], textOf } = checked;
    const { rig } = analysis;
    if (rig.pages[0].sort !== 'rig') {
        throw new CannotDo(`${args[0]} is no rig of its own: ${rig.isLibrary ? 'it is a library' : 'its first line is not rig "Title"'}.`);
    }
    return { analysis, today, raises: fix => new Trials().raisedBy(fix, analysis, textOf, { today }), report: findings => reportOf({ ...checked, analyses: [{ ...analysis, findings }] }, around.cwd) };
}
/** A question that makes no sense is told in one line. */
export function tryOrSay<T>(run: () => T): T {
    try {
        return run();
    } catch (e) {
        if (e instanceof CannotTry) throw new CannotDo(e.message);
        throw e;
    }
}

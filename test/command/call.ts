/** The command line without a process: what it gives back, prints, and prints as an error. */
import { run } from '../../server/command/run.js';

/** @param cwd  folder that file names count from @param today  ISO date */
export const callIn = (cwd: string, today = '2026-06-15') => async (...argv: string[]): Promise<{ readonly status: number; readonly out: string; readonly err: string }> => {
    let [out, err] = ['', ''];
    const status = await run(argv, { out: t => void (out += t), err: t => void (err += t), cwd, colour: false, readStdin: async () => '', today });
    return { status, out, err };
};

import { existsSync, realpathSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { CannotDo, type Command } from '../command.js';

const serve: Command = {
    name: 'serve',
    summary: 'Runs the language server over standard input and output, for any editor.',
    options: { stdio: { type: 'boolean', doc: 'the one way it talks; may be left out' } },
    async run() {
        // A bundle of its own beside this one, so that the other commands need not load it.
        const here = realpathSync(process.argv[1]);
        const server = path.join(path.dirname(here), 'stdio.cjs');
        if (!existsSync(server)) throw new CannotDo(`The language server is not there: ${server} is made by npm run build.`);
        createRequire(here)(server);
        // It ends the process itself, when the editor says so or is gone.
        return new Promise<number>(() => {});
    },
};
export default serve;

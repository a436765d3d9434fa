import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { CannotDo, type Command } from '../command.js';

const serve: Command = {
    name: 'serve',
    summary: 'Runs the language server over standard input and output, for any editor.',
    options: { stdio: { type: 'boolean', doc: 'the only way it talks; may be left out' } },
    async run() {
        const server = path.join(path.dirname(process.argv[1]), 'stdio.cjs');
        if (!existsSync(server)) throw new CannotDo('The language server is not built: run npm run build.');
        const child = spawn(process.execPath, [server, '--stdio'], { stdio: 'inherit' });
        return new Promise<number>(done => child.on('exit', code => done(code ?? 1)));
    },
};
export default serve;

/** What the README says of git, in a scratch repository, with the command as it is built. */
import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { storing } from '../run/rigs.js';

const root = path.resolve(import.meta.dirname, '../..');
const built = path.join(root, 'server/out/rigwright.cjs');
const readme = readFileSync(path.join(root, 'README.md'), 'utf8');

describe.skipIf(process.platform === 'win32' || !existsSync(built))('in git', () => {
    let folder: string;
    let env: NodeJS.ProcessEnv;
    const git = (...args: string[]) => execFileSync('git', args, { cwd: folder, encoding: 'utf8', env });
    const line = (start: string) => {
        const found = readme.split('\n').find(l => l.startsWith(start));
        if (!found) throw new Error(`README has no line ${start}`);
        return found.replace(/\s+#.*$/, '');
    };
    const shell = (command: string) => spawnSync('sh', ['-c', command], { cwd: folder, encoding: 'utf8', env });
    beforeAll(() => {
        folder = mkdtempSync(path.join(os.tmpdir(), 'rigwright-git-'));
        const bin = path.join(folder, '.bin');
        mkdirSync(bin);
        writeFileSync(path.join(bin, 'rigwright'), `#!/bin/sh\nexec ${JSON.stringify(process.execPath)} ${JSON.stringify(built)} "$@"\n`);
        chmodSync(path.join(bin, 'rigwright'), 0o755);
        env = { ...process.env, PATH: `${bin}:${process.env.PATH}`, GIT_AUTHOR_NAME: 'x', GIT_AUTHOR_EMAIL: 'x@example.org', GIT_COMMITTER_NAME: 'x', GIT_COMMITTER_EMAIL: 'x@example.org', GIT_CONFIG_GLOBAL: '/dev/null', NO_COLOR: '1' };
        git('init', '-q');
        writeFileSync(path.join(folder, '.gitignore'), '.bin\n');
        writeFileSync(path.join(folder, 'shed.rig'), storing.replace('", built', '", idea'));
        git('add', '.');
        git('commit', '-q', '-m', 'first');
    });
    afterAll(() => rmSync(folder, { recursive: true, force: true }));

    it('a diff shows numbers that moved', () => {
        for (const start of ["echo '*.rig diff=rig'", 'git config diff.rig.textconv']) expect(shell(line(start)).status).toBe(0);
        writeFileSync(path.join(folder, 'shed.rig'), storing.replace('", built', '", idea').replace('current-limit: 18 A', 'current-limit: 6 A'));
        const diff = git('diff');
        expect(diff).toMatch(/^- +hydrogen-rate +[\d.]+ +NL\/h/m);
        expect(diff).toMatch(/^\+ +hydrogen-rate +[\d.]+ +NL\/h/m);
    });
    it('a review comment and findings for a host come out of it', () => {
        const comment = shell(line('rigwright compare shed.rig').replace('origin/main', 'HEAD'));
        expect(comment.status).toBe(0);
        expect(readFileSync(path.join(folder, 'comment.md'), 'utf8')).toContain('power.current-limit');
        shell(line('rigwright check . --format sarif'));
        expect(JSON.parse(readFileSync(path.join(folder, 'findings.sarif'), 'utf8')).version).toBe('2.1.0');
    });
    it('a commit with errors is stopped, one without passes', () => {
        expect(shell(line("echo 'exec rigwright check .'")).status).toBe(0);
        expect(shell(line('chmod +x .git/hooks/pre-commit')).status).toBe(0);
        writeFileSync(path.join(folder, 'shed.rig'), 'rig "Small", idea\nstack { cells: 5   plates: 9 }\n');
        expect(shell('git commit -qam wrong').status).not.toBe(0);
        writeFileSync(path.join(folder, 'shed.rig'), 'rig "Small", idea\nstack { cells: 5 }\n');
        expect(shell('git commit -qam right').status).toBe(0);
    });
});

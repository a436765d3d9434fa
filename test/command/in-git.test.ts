/** What the README says of git, in a scratch repository, with the command as it is built. */
import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { load } from 'js-yaml';
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
    describe('the workflow for a host', () => {
        interface Step { name?: string; run?: string; env?: Record<string, string> }
        const steps = (load(readFileSync(path.join(root, 'examples/hosted/rigs.yml'), 'utf8')) as { jobs: { rigs: { steps: Step[] } } }).jobs.rigs.steps.filter(s => s.run);
        /** As a host runs a step: by bash that ends at the first failure; BASE is what its expression stands for. */
        const runStep = (step: Step, repository: string, base: string) => {
            const summary = path.join(repository, '.git/summary.md');
            rmSync(summary, { force: true });
            const done = spawnSync('bash', ['-e', '-c', step.run!], { cwd: repository, encoding: 'utf8', env: { ...env, ...(step.env && Object.fromEntries(Object.keys(step.env).map(k => [k, base]))), GITHUB_STEP_SUMMARY: summary } });
            return { status: done.status, out: done.stdout, err: done.stderr, summary: existsSync(summary) ? readFileSync(summary, 'utf8') : '' };
        };
        const inside = (repository: string, ...args: string[]) => execFileSync('git', args, { cwd: repository, encoding: 'utf8', env }).trim();
        function scratch(): string {
            const repository = mkdtempSync(path.join(os.tmpdir(), 'rigwright-hosted-'));
            mkdirSync(path.join(repository, 'tools'));
            copyFileSync(built, path.join(repository, 'tools/rigwright.cjs'));
            mkdirSync(path.join(repository, 'sheds'));
            writeFileSync(path.join(repository, 'sheds/my shed.rig'), storing.replace('", built', '", idea').replace('\n', '\nuse "shelf.rig"\n'));
            writeFileSync(path.join(repository, 'sheds/shelf.rig'), 'library "Shelf"\ntube thin { size: 6x1 mm }\n');
            writeFileSync(path.join(repository, 'still.rig'), 'rig "Still", idea\nstack { cells: 5 }\n');
            inside(repository, 'init', '-q');
            inside(repository, 'add', '.');
            inside(repository, 'commit', '-q', '-m', 'before');
            return repository;
        }
        it('names its base by the environment, never inside of a script', () => {
            expect(steps.map(s => s.name)).toEqual(['What the change does', 'Findings at their lines; errors fail the check']);
            for (const s of steps) expect(s.run).not.toContain('${{');
            expect(steps[0].env).toEqual({ BASE: '${{ github.event.pull_request.base.sha }}' });
        });
        it('its commands tell what a change does, and fail with errors only', () => {
            const repository = scratch();
            try {
                const base = inside(repository, 'rev-parse', 'HEAD');
                const shed = path.join(repository, 'sheds/my shed.rig');
                writeFileSync(shed, readFileSync(shed, 'utf8').replace('current-limit: 18 A', 'current-limit: 6 A'));
                writeFileSync(path.join(repository, '-new $(touch x).rig'), 'rig "New", idea\n');
                inside(repository, 'add', '.');
                inside(repository, 'commit', '-q', '-m', 'after');
                const told = runStep(steps[0], repository, base);
                expect([told.status, told.out]).toEqual([0, '']);
                expect(told.summary).toContain('| power.current-limit | 18 A | 6 A |');
                expect(told.summary).toMatch(/# Still: what the change does\n[^#]*Nothing that counts differs/);
                expect(told.summary).toContain('-new $(touch x).rig is new, or could not be compared.');
                expect(told.summary).not.toContain('Shelf');
                expect(existsSync(path.join(repository, 'x'))).toBe(false);
                const found = runStep(steps[1], repository, base);
                expect(found.out).toMatch(/^::(?:warning|notice) file=sheds\/my shed\.rig,line=\d+/m);
                const errors = /^::error /m.test(found.out);
                expect(found.status).toBe(errors ? 1 : 0);
                writeFileSync(path.join(repository, 'still.rig'), 'rig "Still", idea\nstack { cells: 5   plates: 9 }\n');
                const wrong = runStep(steps[1], repository, base);
                expect(wrong.status).toBe(1);
                expect(wrong.out).toMatch(/^::error file=still\.rig,line=2/m);
                expect(runStep(steps[0], repository, base).summary).toContain('1 new error: look at these first.');
            } finally {
                rmSync(repository, { recursive: true, force: true });
            }
        });
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

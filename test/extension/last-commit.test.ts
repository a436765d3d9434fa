// The last commit as the editor's git extension gives it. That extension runs in no test here: a stand-in with the same public
// interface (version 1: enabled, getAPI, state, getRepository, status, show) says what it would say.
import { describe, expect, it } from 'vitest';
import { lastCommit, type GitExtension, type Installed } from '../../extension/last-commit.js';

interface Uri { scheme: string; fsPath: string }
const file = (fsPath: string, scheme = 'file'): Uri => ({ scheme, fsPath });
interface Case { active?: boolean; enabled?: boolean; commit?: string; files?: Record<string, string>; late?: boolean; known?: boolean; staleHead?: boolean }
function git({ active = true, enabled = true, commit, files = {}, late, known = true, staleHead }: Case) {
    const shown: string[] = [];
    let head = staleHead ? undefined : commit;
    let told: ((s: string) => unknown) | undefined;
    const exports: GitExtension<Uri> = {
        enabled,
        getAPI: () => {
            if (!enabled) throw new Error('Git model not found');
            return {
                state: late ? 'uninitialized' : 'initialized',
                onDidChangeState: listener => {
                    told = listener;
                    setTimeout(() => told?.('initialized'), 5);
                    return { dispose: () => (told = undefined) };
                },
                getRepository: () => (!known || (late && told) ? null : {
                    state: { get HEAD() { return head === undefined ? {} : { commit: head }; } },
                    status: async () => void (head = commit),
                    show: async (ref: string, path: string) => {
                        shown.push(`${ref}:${path}`);
                        if (!(path in files)) throw new Error(`fatal: path '${path}' does not exist in '${ref}'`);
                        return files[path];
                    },
                }),
            };
        },
    };
    const installed: Installed<Uri> = { isActive: active, exports, activate: async () => exports };
    return { installed, shown };
}
const cannot = async (installed: Installed<Uri> | undefined, uri = file('/rigs/shed.rig')) => {
    const answer = await lastCommit(installed, uri);
    return 'cannot' in answer ? answer.cannot : undefined;
};
const commit = '1a2b3c4d5e6f708192a3b4c5d6e7f80912345678';

describe('the last commit', () => {
    it('gives the text of a file, by its commit and not by a moving name', async () => {
        const { installed, shown } = git({ commit, files: { '/rigs/shed.rig': 'rig "Shed"\n' } });
        const answer = await lastCommit(installed, file('/rigs/shed.rig'));
        if ('cannot' in answer) throw new Error(answer.cannot);
        expect(answer.name).toBe('the last commit, 1a2b3c4d');
        expect(await answer.text(file('/rigs/shed.rig'))).toBe('rig "Shed"\n');
        expect(shown).toEqual([`${commit}:/rigs/shed.rig`]);
    });
    it('has no text of a file that is not in it, nor of one that git cannot know', async () => {
        const { installed, shown } = git({ commit });
        const answer = await lastCommit(installed, file('/rigs/shed.rig'));
        if ('cannot' in answer) throw new Error(answer.cannot);
        expect(await answer.text(file('/rigs/new.rig'))).toBeUndefined();
        expect(await answer.text(file('/x', 'untitled'))).toBeUndefined();
        expect(shown).toHaveLength(1);
    });
    it('is looked for once git has started, has found its repositories, and looked at them again', async () => {
        for (const how of [{ active: false }, { late: true }, { staleHead: true }]) expect(await cannot(git({ commit, ...how }).installed), JSON.stringify(how)).toBeUndefined();
    });
    it('is missed in plain words', async () => {
        expect(await cannot(undefined)).toBe('There is no git in this editor.');
        expect(await cannot(git({ enabled: false }).installed)).toMatch(/switched off/);
        expect(await cannot(git({ known: false }).installed)).toMatch(/not stand in a git repository/);
        expect(await cannot(git({}).installed)).toBe('This repository has no commit yet.');
        expect(await cannot(git({ commit }).installed, file('Untitled-1', 'untitled'))).toMatch(/not saved yet/);
        expect(await cannot(git({ commit }).installed, file('/x', 'vscode-vfs'))).toMatch(/not stand on the disk/);
    });
});

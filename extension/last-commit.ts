// Texts as the last commit has them, by the public interface of the editor's own git extension. Knows no editor by import, so that a
// test can stand in for it.

/** What is used of the git extension's interface, version 1. */
export interface GitRepository {
    readonly state: { readonly HEAD?: { readonly commit?: string } };
    /** Brings `state` up to date. */
    status?(): Promise<void>;
    show(ref: string, path: string): Promise<string>;
}
export interface GitApi<U> {
    readonly state?: 'uninitialized' | 'initialized';
    readonly onDidChangeState?: (told: (state: string) => unknown) => { dispose(): unknown };
    getRepository(uri: U): GitRepository | null;
}
export interface GitExtension<U> {
    readonly enabled: boolean;
    getAPI(version: 1): GitApi<U>;
}
export interface Installed<U> {
    readonly isActive: boolean;
    readonly exports: GitExtension<U>;
    activate(): Thenable<GitExtension<U>>;
}
export interface LastCommit<U> {
    /** 'the last commit, 1a2b3c4d'. */
    readonly name: string;
    /** Text of a file; undefined where the commit has none of that name. */
    text(uri: U): Promise<string | undefined>;
}
/** How long the git extension may look for its repositories, ms. Own choice. */
const PATIENCE = 5000;

/**
 * @param installed  the git extension; undefined where the editor has none, as in a browser
 * @returns the last commit of the repository that a file stands in, or the sentence that says why there is none
 */
export async function lastCommit<U extends { readonly scheme: string; readonly fsPath: string }>(installed: Installed<U> | undefined, uri: U): Promise<LastCommit<U> | { readonly cannot: string }> {
    if (!installed) return { cannot: 'There is no git in this editor.' };
    if (uri.scheme === 'untitled') return { cannot: 'This text is not saved yet, so no commit has it.' };
    if (uri.scheme !== 'file') return { cannot: 'This file does not stand on the disk of this machine, so git cannot be asked about it.' };
    const git = installed.isActive ? installed.exports : await installed.activate();
    if (!git.enabled) return { cannot: 'Git is switched off in this editor, by its setting git.enabled.' };
    const api = git.getAPI(1);
    await ready(api);
    const repository = api.getRepository(uri);
    if (!repository) return { cannot: 'This file does not stand in a git repository that the editor knows.' };
    await repository.status?.();
    const commit = repository.state.HEAD?.commit;
    if (!commit) return { cannot: 'This repository has no commit yet.' };
    return {
        name: `the last commit, ${commit.slice(0, 8)}`,
        text: async file => {
            if (file.scheme !== 'file') return undefined;
            try {
                return await repository.show(commit, file.fsPath);
            } catch {
                // Not in that commit, or outside of the repository: the same for whoever asks.
                return undefined;
            }
        },
    };
}
async function ready<U>(api: GitApi<U>): Promise<void> {
    if (api.state !== 'uninitialized' || !api.onDidChangeState) return;
    await new Promise<void>(resolve => {
        const timer = setTimeout(done, PATIENCE);
        const listening = api.onDidChangeState!(state => state === 'initialized' && done());
        function done() {
            clearTimeout(timer);
            listening?.dispose();
            resolve();
        }
    });
}
/** Texts of a state of long ago are asked for as the server finds out that it needs them; it stops when nothing new is needed. */
export async function gather<T extends object>(ask: (then: readonly { uri: string; text: string | null }[]) => Promise<T | { needs: string[] } | null>, textOf: (uri: string) => Promise<string | undefined>): Promise<T | null> {
    const then = new Map<string, string | null>();
    for (;;) {
        const answer = await ask([...then].map(([uri, text]) => ({ uri, text })));
        if (!answer || !('needs' in answer)) return answer;
        const lacking = answer.needs.filter(uri => !then.has(uri));
        if (!lacking.length) return null;
        for (const uri of lacking) then.set(uri, (await textOf(uri)) ?? null);
    }
}

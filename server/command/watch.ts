/** Calls back when a rig file changes in some folders, until it is stopped. */
import { statSync, watch as watchFolder } from 'node:fs';
import path from 'node:path';

/** Editors write a file in several steps, and the system tells of each: wait until it is quiet, ms. */
const QUIET = 80;

/**
 * @param paths files and folders; of a file its folder is watched, of a folder all below
 * @param stop ends it; it goes on for ever without
 */
export async function watch(paths: readonly string[], changed: () => Promise<unknown>, stop?: AbortSignal): Promise<void> {
    let timer: NodeJS.Timeout | undefined;
    const folders = new Map<string, boolean>();
    for (const p of paths) {
        const isFolder = statSync(p).isDirectory();
        const folder = isFolder ? p : path.dirname(p);
        folders.set(folder, isFolder || folders.get(folder) === true);
    }
    const watchers = [...folders].map(([folder, recursive]) => watchFolder(folder, { recursive }, (_, name) => {
        if (!name?.endsWith('.rig')) return;
        clearTimeout(timer);
        timer = setTimeout(() => void changed(), QUIET);
    }));
    await new Promise<void>(done => {
        process.once('SIGINT', done);
        stop?.addEventListener('abort', () => done(), { once: true });
        if (stop?.aborted) done();
    });
    clearTimeout(timer);
    for (const w of watchers) w.close();
}

import type { Feature } from '../feature.js';
import type { House } from '../house.js';

export interface FolderSummary {
    files: number;
    errors: number;
    warnings: number;
    hints: number;
}
/** `rigwright/checkFolder`: takes the texts of a folder in, tells their findings, and answers with the counts. */
const checkFolderRequest: Feature = {
    name: 'check-folder-request',
    capabilities: () => ({}),
    register(connection, house) {
        connection.onRequest('rigwright/checkFolder', ({ files, on }: { files: { uri: string; text: string }[]; on?: string }) => {
            const summary = checkFolder(house, files, on);
            house.republish();
            return summary;
        });
    },
};
export default checkFolderRequest;

/** Each finding counts once, in whatever rig it is told. Pages and libraries that a rig uses are judged with it. */
export function checkFolder(house: House, files: readonly { uri: string; text: string }[], on?: string): FolderSummary {
    if (on) house.setSettings({ ...house.settings, today: on });
    for (const f of files) house.learn(f.uri, f.text);
    const roots = new Set(files.map(f => house.rootOf(f.uri)));
    const used = new Set<string>();
    for (const root of roots) for (const f of house.analysis(root)?.files ?? []) if (f !== root) used.add(f);
    house.watched = new Set([...roots].filter(r => !used.has(r)));
    const summary: FolderSummary = { files: files.length, errors: 0, warnings: 0, hints: 0 };
    const told = new Set<string>();
    for (const root of house.watched) {
        for (const f of house.analysis(root)?.findings ?? []) {
            const key = `${f.rule} ${f.span.file} ${f.span.start} ${f.message}`;
            if (told.has(key)) continue;
            told.add(key);
            summary[f.severity === 'error' ? 'errors' : f.severity === 'warning' ? 'warnings' : 'hints']++;
        }
    }
    return summary;
}

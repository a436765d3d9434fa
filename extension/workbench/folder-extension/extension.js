// The folder that serve.mjs shows, as a file system of the workbench; also the file and text search that a workbench
// in a browser lacks. Part of the launcher, not of the extension that people install.
const vscode = require('vscode');

const FOLDER = vscode.FileType.Directory;

exports.activate = context => {
    const changed = new vscode.EventEmitter();
    const fileSystem = makeFileSystem(context.extensionUri, changed);
    context.subscriptions.push(changed, vscode.workspace.registerFileSystemProvider('folder', fileSystem, { isCaseSensitive: true }));
    registerSearch(context, fileSystem);
    watchForOtherPrograms(context, fileSystem, changed);
};

function makeFileSystem(extensionUri, changed) {
    const address = (verb, query) => {
        const text = new URLSearchParams(query).toString().replace(/\+/g, '%20');
        return extensionUri.with({ path: `/fs/${verb}`, query: text }).toString(true);
    };
    const ask = async (verb, uri, { method = 'GET', body, more = {} } = {}) => {
        const response = await fetch(address(verb, { p: uri.path, ...more }), { method, body });
        if (response.status === 404) throw vscode.FileSystemError.FileNotFound(uri);
        if (!response.ok) throw vscode.FileSystemError.NoPermissions(uri);
        return response;
    };
    const tell = (type, ...uris) => changed.fire(uris.map(uri => ({ type, uri })));
    const { Changed, Created, Deleted } = vscode.FileChangeType;

    return {
        onDidChangeFile: changed.event,
        watch: () => ({ dispose() {} }),
        stat: async uri => (await ask('stat', uri)).json(),
        readDirectory: async uri => (await ask('list', uri)).json(),
        readFile: async uri => new Uint8Array(await (await ask('file', uri)).arrayBuffer()),
        async writeFile(uri, data) {
            await ask('file', uri, { method: 'PUT', body: data });
            tell(Changed, uri);
        },
        async createDirectory(uri) {
            await ask('folder', uri, { method: 'POST' });
            tell(Created, uri);
        },
        async delete(uri) {
            await ask('file', uri, { method: 'DELETE' });
            tell(Deleted, uri);
        },
        async rename(from, to) {
            await ask('move', from, { method: 'POST', more: { to: to.path } });
            tell(Deleted, from);
            tell(Created, to);
        },
        async changesSince(number) {
            return (await fetch(address('changes', { since: number }))).json();
        },
    };
}

function registerSearch(context, fileSystem) {
    const files = async folder => {
        const entries = await fileSystem.readDirectory(folder);
        const found = entries.map(([name, type]) => {
            const uri = vscode.Uri.joinPath(folder, name);
            return type === FOLDER ? files(uri) : [uri];
        });
        return (await Promise.all(found)).flat();
    };
    const all = () => files(vscode.workspace.workspaceFolders[0].uri);

    try {
        // Proposed interfaces; fine for a part of a launcher that pins its editor.
        context.subscriptions.push(
            vscode.workspace.registerFileSearchProvider('folder', { provideFileSearchResults: all }),
            vscode.workspace.registerTextSearchProvider('folder', {
                async provideTextSearchResults(query, options, progress) {
                    const source = query.isRegExp ? query.pattern : query.pattern.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
                    const pattern = new RegExp(source, query.isCaseSensitive ? 'gu' : 'giu');
                    for (const uri of await all()) {
                        const lines = new TextDecoder().decode(await fileSystem.readFile(uri)).split('\n');
                        lines.forEach((text, line) => report(progress, uri, text, line, pattern));
                    }
                    return { limitHit: false };
                },
            }),
        );
    } catch (error) {
        console.warn('no search in this editor', error.message);
    }
}

function report(progress, uri, text, line, pattern) {
    for (const match of text.matchAll(pattern)) {
        if (match[0] === '') continue;
        const end = match.index + match[0].length;
        progress.report({
            uri,
            ranges: new vscode.Range(line, match.index, line, end),
            preview: { text, matches: new vscode.Range(0, match.index, 0, end) },
        });
    }
}

function watchForOtherPrograms(context, fileSystem, changed) {
    let live = true;
    context.subscriptions.push({ dispose: () => (live = false) });
    const follow = async () => {
        let since = 0;
        while (live) {
            try {
                const news = await fileSystem.changesSince(since);
                since = news.number;
                changed.fire(news.changes.map(({ path, type }) => ({ type, uri: vscode.Uri.from({ scheme: 'folder', path }) })));
            } catch {
                await new Promise(resolve => setTimeout(resolve, 2000));
            }
        }
    };
    void follow();
}

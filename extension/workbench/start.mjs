#!/usr/bin/env node
// npm start [-- [FOLDER] [--browser] [--port N] [--no-open]]: from a fresh clone to an open editor.
//   FOLDER     the folder to open; the examples if left out
//   --browser  the workbench in a browser even if VS Code is installed
//   --port N   the port of the workbench in the browser; a free one if left out
//   --no-open  end after the numbers are printed
// Only Node's built-ins and our own files are used here: it runs before anything is installed.
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { bundles, extensionFolder, isBuilt, isInstalled, npm, root, vsix } from '../scripts/project.mjs';
import { examplesDate, examplesFolder, lineToShow, mainExample } from './examples.mjs';
import { cacheFolder, fetchEditor, hasEditor } from './fetch-editor.mjs';
import { readable } from './settings.mjs';

const extensionId = 'rigwright.rigwright';
/** The oldest VS Code that the extension runs in; see `engines` in extension/package.json. */
const oldestCode = [1, 91];
const windows = process.platform === 'win32';

const started = Date.now();
const options = readArguments(process.argv.slice(2));
const isExamples = path.resolve(options.folder) === examplesFolder;

// The workbench is fetched while the rest is installed and built.
const code = options.open && !options.browser ? findCode() : undefined;
const editor = options.open && !code ? startFetching() : undefined;

prepare();
printExample();
if (!options.open) say('done; without --no-open an editor opens now');
else if (code) openInCode(code);
else await openInBrowser();

function readArguments(args) {
    const result = { folder: examplesFolder, browser: false, open: true, port: 0 };
    for (let i = 0; i < args.length; i++) {
        const arg = args[i];
        if (arg === '--browser') result.browser = true;
        else if (arg === '--no-open') result.open = false;
        else if (arg === '--port') result.port = Number(args[++i]);
        else if (arg.startsWith('-')) complain(`${arg} is not known here. Known: FOLDER, --browser, --port N, --no-open.`);
        else result.folder = path.resolve(arg);
    }
    if (!Number.isInteger(result.port) || result.port < 0 || result.port > 65535) complain('--port needs a number up to 65535.');
    if (!existsSync(result.folder) || !statSync(result.folder).isDirectory()) complain(`${result.folder} is not a folder.`);
    return result;
}

function complain(text) {
    console.error(text);
    process.exit(2);
}

function say(text) {
    console.log(`[${((Date.now() - started) / 1000).toFixed(1).padStart(5)} s] ${text}`);
}

function prepare() {
    if (!isInstalled()) {
        say('installing what the build needs, once ...');
        npm('ci', '--loglevel=error');
    }
    if (!isBuilt() || code) {
        say('building ...');
        const script = path.join(root, 'extension', 'scripts', 'build.mjs');
        try {
            execFileSync(process.execPath, code ? [script, '--package'] : [script], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
        } catch {
            complain('The build did not succeed; the lines above say why.');
        }
    }
}

function printExample() {
    say(`what ${path.join('examples', mainExample)} comes to:`);
    rigwright('show', path.join('examples', mainExample));
    say('what the examples are told:');
    rigwright('check', ...sortedRigs());
    if (existsSync(path.join(examplesFolder, 'mistakes'))) {
        console.log(`${path.join('examples', 'mistakes')} holds small rigs with one mistake each: open one and see what it is told.\n`);
    }
}

/** The rigs that lie flat in the examples folder. */
function sortedRigs() {
    return readdirSync(examplesFolder).filter(name => name.endsWith('.rig')).sort().map(name => path.join('examples', name));
}

/** Exit code 1 says that there are errors among the findings: they were printed, which is what was wanted. */
function rigwright(...args) {
    console.log('');
    const command = [path.join(root, bundles.command.file), ...args, '--on', examplesDate];
    const { status } = spawnSync(process.execPath, command, { cwd: root, stdio: 'inherit' });
    console.log('');
    if (status !== 0 && status !== 1) complain(`rigwright ${args[0]} could not do its work.`);
}

// ---- VS Code on this computer ------------------------------------------

/** The `code` on the PATH, if it is there, answers and is new enough. */
function findCode() {
    const found = onPath(windows ? 'code.cmd' : 'code');
    if (!found) return undefined;
    const { status, stdout } = runCode(found, '--version');
    const version = (stdout ?? '').split(/\r?\n/)[0];
    const [major, minor] = version.split('.').map(Number);
    const newEnough = major > oldestCode[0] || (major === oldestCode[0] && minor >= oldestCode[1]);
    if (status === 0 && newEnough) return { program: found, version };
    const reason = status === 0 ? `is version ${version}; ${oldestCode.join('.')} or newer is needed` : 'does not answer';
    say(`the \`code\` on the PATH ${reason}, so a browser is used instead`);
    return undefined;
}

function runCode(program, ...args) {
    const quote = text => (windows ? `"${text}"` : text);
    return spawnSync(quote(program), args.map(quote), { encoding: 'utf8', shell: windows, timeout: 60_000 });
}

function openInCode({ program, version }) {
    const installed = runCode(program, '--install-extension', vsix, '--force');
    if (installed.status !== 0) complain(`VS Code did not take the extension.\n${installed.stderr ?? ''}`);
    const first = `${path.join(examplesFolder, mainExample)}:${lineToShow()}`;
    runCode(program, ...(isExamples ? [examplesWorkspace(), '--goto', first] : [options.folder]));
    say(`VS Code ${version} opens ${options.folder}`);
    console.log(`\n  To take the extension out again:  code --uninstall-extension ${extensionId}\n`);
}

/** The examples with the date that they are judged on, without a settings file among them. */
function examplesWorkspace() {
    const file = path.join(cacheFolder(), 'examples.code-workspace');
    mkdirSync(cacheFolder(), { recursive: true });
    writeFileSync(file, JSON.stringify({ folders: [{ path: examplesFolder }], settings: { 'rigwright.today': examplesDate } }, null, 4));
    return file;
}

// ---- the workbench in a browser ----------------------------------------

/** A promise that never rejects unheard: what went wrong is told where the workbench is needed. */
function startFetching() {
    if (!hasEditor()) say('getting the workbench (47 MB, once) while the rest is made ready ...');
    return fetchEditor().then(folder => ({ folder }), error => ({ error }));
}

async function openInBrowser() {
    const fetched = await editor;
    if (fetched.error) complain(`The workbench could not be fetched: ${fetched.error.message}`);
    const { serve } = await import('./serve.mjs');
    const first = isExamples ? mainExample : undefined;
    const server = await serve({
        folder: options.folder,
        extensionFolder,
        editor: fetched.folder,
        open: first && existsSync(path.join(options.folder, first)) ? first : undefined,
        line: first && lineToShow(),
        settings: isExamples ? { ...readable, 'rigwright.today': examplesDate } : readable,
        port: options.port,
        onIdle: () => end('stopped: no window has been open for a while'),
    }).catch(error => complain(error.code === 'EADDRINUSE' ? `Port ${options.port} is in use; choose another.` : error.message));

    const end = why => {
        say(why);
        server.stop();
        process.exit(0);
    };
    process.on('SIGINT', () => end('stopped'));
    process.on('SIGTERM', () => end('stopped'));

    say('ready');
    const address = showAddress(server);
    openAddress(address);
    if (process.stdin.isTTY) process.stdin.on('data', () => showAddress(server));
}

function showAddress(server) {
    const address = server.address();
    console.log(`\n  ${address}\n\n  This address opens ${options.folder} on this computer only, and works once.`);
    console.log('  What you change there is saved in that folder as you type.');
    console.log('  Enter: a new address.  Ctrl+C: stop.\n');
    return address;
}

function openAddress(address) {
    const hasScreen = process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
    const opener = windows ? 'explorer.exe' : process.platform === 'darwin' ? 'open' : hasScreen && onPath('xdg-open');
    if (opener) spawn(opener, [address], { stdio: 'ignore', detached: true }).on('error', () => {}).unref();
}

function onPath(name) {
    return (process.env.PATH ?? '').split(path.delimiter).map(folder => path.join(folder, name)).find(file => {
        try {
            accessSync(file, constants.X_OK);
            return statSync(file).isFile();
        } catch {
            return false;
        }
    });
}

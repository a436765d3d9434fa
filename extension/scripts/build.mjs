#!/usr/bin/env node
// npm run build: generates what is generated, then bundles the server, the command and the extension.
// npm run package (build.mjs --package): packs extension/rigwright.vsix as well.
// Nothing is done again while the sources stay as they are.
import { execFileSync } from 'node:child_process';
import { chmodSync, copyFileSync, existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { bundles, copies, extensionFolder, fingerprint, isBuilt, root, stampFile, vsix } from './project.mjs';

/** The Marketplace and slow lines both like a small package. */
const LARGEST_PACKAGE_BYTES = 3_000_000;
const noticesFile = path.join(extensionFolder, 'out', 'third-party-notices.txt');
const packStamp = path.join(extensionFolder, 'out', 'packed.sha256');

const started = Date.now();
const say = text => console.log(`${text} (${((Date.now() - started) / 1000).toFixed(1)} s)`);

if (isBuilt()) {
    say('the build is up to date');
} else {
    run(path.join('extension', 'scripts', 'generate.mjs'));
    await bundleAll();
    say('built');
}
if (process.argv.includes('--package')) pack();

function run(script, ...args) {
    execFileSync(process.execPath, [path.join(root, script), ...args], { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
}

async function bundleAll() {
    const missing = Object.values(bundles).map(bundle => bundle.entry).filter(entry => !existsSync(path.join(root, entry)));
    if (missing.length) {
        console.error(`The build stops: ${missing.join(', ')} ${missing.length === 1 ? 'is' : 'are'} not there.`);
        process.exit(1);
    }
    rmSync(stampFile, { force: true });
    const { build } = await import('esbuild');
    const results = await Promise.all(Object.values(bundles).map(bundle => build(options(bundle))));
    for (const { file } of Object.values(bundles)) narrow(path.join(root, file));
    const { thirdPartyNotices } = await import('./third-party-notices.mjs');
    writeFileSync(noticesFile, thirdPartyNotices(results.flatMap(result => Object.keys(result.metafile.inputs))));
    for (const { from, to } of copies) {
        mkdirSync(path.dirname(path.join(root, to)), { recursive: true });
        copyFileSync(path.join(root, from), path.join(root, to));
    }
    chmodSync(path.join(root, bundles.command.file), 0o755);
    writeFileSync(stampFile, fingerprint());
}

/**
 * Escapes the last signs beyond Latin-1, those in regular expressions: with one of them in it the engine keeps the whole text of a
 * program at two bytes a sign, which is two megabytes of the server.
 */
function narrow(file) {
    writeFileSync(file, readFileSync(file, 'utf8').replace(/[^\0-\xff]/g, sign => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`));
}

function options({ entry, file, kind }) {
    return {
        entryPoints: [path.join(root, entry)],
        outfile: path.join(root, file),
        absWorkingDir: root,
        bundle: true,
        metafile: true,
        minify: true,
        charset: 'ascii',
        // The licences stand together in out/third-party-notices.txt.
        legalComments: 'none',
        logLevel: 'warning',
        platform: kind === 'node' ? 'node' : 'browser',
        format: kind === 'worker' || kind === 'page' ? 'iife' : 'cjs',
        target: kind === 'node' ? 'node20' : 'es2022',
        external: ['vscode'],
        // The package's front door takes over a second to load; the one class we use stands alone in this file.
        alias: { mathjs: path.join(root, 'node_modules', 'mathjs', 'lib', 'esm', 'type', 'unit', 'Unit.js') },
        // esbuild keeps a first line `#!...` of the entry; a second one would be no JavaScript.
        banner: file === bundles.command.file && !startsAsScript(entry) ? { js: '#!/usr/bin/env node' } : {},
    };
}

function startsAsScript(entry) {
    return readFileSync(path.join(root, entry), 'utf8').startsWith('#!');
}

function pack() {
    const stamp = fingerprint();
    if (existsSync(vsix) && existsSync(packStamp) && readFileSync(packStamp, 'utf8') === stamp) {
        say('the package is up to date');
        return;
    }
    rmSync(vsix, { force: true });
    const vsce = path.join(root, 'node_modules', '@vscode', 'vsce', 'vsce');
    execFileSync(process.execPath, [vsce, 'package', '--no-dependencies', '--allow-missing-repository', '--out', vsix], {
        cwd: extensionFolder,
        stdio: ['ignore', 'ignore', 'inherit'],
    });
    const { size } = statSync(vsix);
    if (size > LARGEST_PACKAGE_BYTES) {
        console.error(`The package is ${megabytes(size)}; at most ${megabytes(LARGEST_PACKAGE_BYTES)} is wanted.`);
        process.exit(1);
    }
    writeFileSync(packStamp, stamp);
    say(`packed ${path.relative(root, vsix)}, ${megabytes(size)}`);
}

function megabytes(bytes) {
    return `${(bytes / 1e6).toFixed(2)} MB`;
}

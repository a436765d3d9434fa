// What the manifest promises is there, and what is packed is small, complete and silent.
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '..', '..');
const folder = path.join(root, 'extension');
const read = (...names: string[]) => readFileSync(path.join(folder, ...names), 'utf8');
const manifest = JSON.parse(read('package.json'));
const contributes = manifest.contributes;
const commands: string[] = contributes.commands.map((one: { command: string }) => one.command);

describe('the manifest', () => {
    it('runs in both kinds of editor and in folders that nobody has vouched for', () => {
        expect(manifest).toMatchObject({
            main: './out/desktop.cjs',
            browser: './out/browser.cjs',
            activationEvents: ['onLanguage:rig', 'onFileSystem:rigwright-page'],
            capabilities: { untrustedWorkspaces: { supported: true }, virtualWorkspaces: true },
        });
        expect(manifest.dependencies, 'everything is in the bundles').toBeUndefined();
    });

    it('claims the language, its files and its grammar', () => {
        expect(contributes.languages[0]).toMatchObject({ id: 'rig', extensions: ['.rig'] });
        expect(contributes.grammars[0]).toMatchObject({ language: 'rig', scopeName: JSON.parse(read('syntaxes', 'rig.tmLanguage.json')).scopeName });
    });

    it('registers exactly the commands that it lists', () => {
        const registered = [...read('client.ts').matchAll(/'(rigwright\.\w+)':/g)].map(match => match[1]);
        expect([...registered].sort()).toEqual([...commands].sort());
        for (const one of contributes.commands) expect(one.category).toBe('Rigwright');
    });

    it('names only commands that exist', () => {
        const named = [
            ...Object.values<{ command: string }[]>(contributes.menus).flat().map(one => one.command),
            ...contributes.keybindings.map((one: { command: string }) => one.command),
            ...[...JSON.stringify(contributes).matchAll(/(?:command:|onCommand:)(rigwright\.\w+)/g)].map(match => match[1]),
        ];
        expect(named.length).toBeGreaterThan(10);
        for (const name of named) expect(commands).toContain(name);
    });

    it('has a walkthrough of four steps, each with its page and a way to finish it', () => {
        const [walkthrough] = contributes.walkthroughs;
        expect(walkthrough.steps).toHaveLength(4);
        for (const step of walkthrough.steps) {
            expect(step.completionEvents).not.toHaveLength(0);
            const page = read(step.media.markdown);
            expect(page.length).toBeGreaterThan(100);
            for (const [, picture] of page.matchAll(/(?:src="|!\[[^\]]*\]\()([^")]+)/g)) {
                expect(existsSync(path.join(folder, path.dirname(step.media.markdown), picture)), picture).toBe(true);
            }
        }
    });

    it('has icons of its own that load nothing', () => {
        const { light, dark } = contributes.languages[0].icon;
        for (const icon of [light, dark, 'media/icon.svg']) {
            const svg = read(icon);
            expect(svg).toMatch(/^<svg /);
            expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(/href|https?:|<script|<image|url\(/);
        }
        const png = readFileSync(path.join(folder, manifest.icon));
        expect(png.subarray(1, 4).toString()).toBe('PNG');
        expect(png.readUInt32BE(16)).toBe(png.readUInt32BE(20));
        expect(png.readUInt32BE(16)).toBeGreaterThanOrEqual(128);
    });

    it('has few settings, each described', () => {
        const settings = contributes.configuration.properties;
        expect(Object.keys(settings).sort()).toEqual(['rigwright.faults', 'rigwright.hints', 'rigwright.today', 'rigwright.trace.server']);
        for (const [name, one] of Object.entries<Record<string, string>>(settings)) expect((one.description ?? one.markdownDescription).length, name).toBeGreaterThan(20);
        const date = new RegExp(settings['rigwright.today'].pattern);
        for (const good of ['', '2026-06-15', '2028-02-29']) expect(good).toMatch(date);
        for (const bad of ['15.6.2026', '2026-13-01', '2026-06-32', 'today']) expect(bad).not.toMatch(date);
    });
});

describe('the language configuration', () => {
    const configuration = JSON.parse(read('language-configuration.json'));
    const words = new RegExp(configuration.wordPattern.pattern, `g${configuration.wordPattern.flags}`);

    it('keeps hyphens in words and parts them at dots', () => {
        expect('stack.hydrogen-rate -> h2-bubbler'.match(words)).toEqual(['stack', 'hydrogen-rate', 'h2-bubbler']);
        expect('if-'.match(words)).toEqual(['if-']);
        expect('level: 2.5 mm, -5 °C, 70 µm'.match(words)).toEqual(['level', '2.5', 'mm', '-5', '°C', '70', 'µm']);
    });

    it('indents after a brace that stays open', () => {
        const increase = new RegExp(configuration.indentationRules.increaseIndentPattern.pattern);
        expect('stack {').toMatch(increase);
        expect('column o2-column like h2-column {  # twin').toMatch(increase);
        expect('lye { fill: 6 L }').not.toMatch(increase);
        expect('# a note about {').not.toMatch(increase);
        expect('}').toMatch(new RegExp(configuration.indentationRules.decreaseIndentPattern.pattern));
    });
});

describe('the package', () => {
    const vsix = path.join(folder, 'rigwright.vsix');
    beforeAll(() => {
        execFileSync(process.execPath, [path.join(folder, 'scripts', 'build.mjs'), '--package'], { stdio: 'pipe' });
    }, 120_000);

    it('is smaller than 3 MB', () => {
        expect(statSync(vsix).size).toBeLessThan(3_000_000);
    });

    it('holds what is needed and nothing else', () => {
        const names = entries(readFileSync(vsix)).filter(name => name.startsWith('extension/')).map(name => name.slice('extension/'.length).toLowerCase());
        for (const wanted of ['package.json', 'readme.md', 'changelog.md', 'license.txt', 'media/icon.png', 'out/third-party-notices.txt', 'out/desktop.cjs', 'out/browser.cjs', 'out/stdio.cjs', 'out/worker.js', 'syntaxes/rig.tmlanguage.json', 'language-configuration.json']) {
            expect(names).toContain(wanted);
        }
        for (const name of names) expect(name).not.toMatch(/\.ts$|\.mjs$|\.map$|node_modules|workbench\/|scripts\//);
    });

    it('asks nothing of the network', () => {
        const calls = /\bfetch\(|XMLHttpRequest|new WebSocket|sendBeacon|EventSource|importScripts|require\("(?:node:)?(?:https?|http2|dgram|tls)"\)/g;
        for (const name of readdirSync(path.join(folder, 'out')).filter(one => /\.c?js$/.test(one))) {
            expect([name, ...read('out', name).match(calls) ?? []]).toEqual([name]);
        }
    });

    it('runs no code out of a text', () => {
        for (const name of readdirSync(path.join(folder, 'out')).filter(one => /\.c?js$/.test(one))) {
            expect([name, ...read('out', name).match(/\beval\(|new Function\(/g) ?? []]).toEqual([name]);
        }
    });
});

/** The names in a zip file, out of the list at its end. */
function entries(zip: Buffer): string[] {
    const end = zip.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]));
    const count = zip.readUInt16LE(end + 10);
    const names: string[] = [];
    for (let i = 0, at = zip.readUInt32LE(end + 16); i < count; i++) {
        const length = zip.readUInt16LE(at + 28);
        names.push(zip.subarray(at + 46, at + 46 + length).toString());
        at += 46 + length + zip.readUInt16LE(at + 30) + zip.readUInt16LE(at + 32);
    }
    return names;
}

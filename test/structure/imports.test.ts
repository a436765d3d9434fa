/** Arrows point one way. Walks every import, type-only ones included, and names the offending pair. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const sources = ['language', 'server', 'extension'].flatMap(dir => readdirSync(path.join(root, dir), { recursive: true, withFileTypes: true })
    .filter(d => d.isFile() && /\.ts$/.test(d.name) && !/node_modules|[\\/]out[\\/]?/.test(d.parentPath ?? d.path))
    .map(d => path.relative(root, path.join(d.parentPath ?? d.path, d.name)).split(path.sep).join('/')));

interface Arrow { from: string; to: string }
const arrows: Arrow[] = sources.flatMap(file => [...readFileSync(path.join(root, file), 'utf8').matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/g)].map(m => ({
    from: file, to: m[1].startsWith('.') ? path.posix.join(path.posix.dirname(file), m[1]) : m[1],
})));
/** Folder (or package) of a place: 'language/physics', 'server/editor', 'vscode'. */
const room = (place: string) => /^(language|server|extension)\//.test(place) ? place.split('/').slice(0, 2).join('/') : place;
const offending = (bad: (from: string, to: string, arrow: Arrow) => boolean) => arrows.filter(a => bad(room(a.from), room(a.to), a)).map(a => `${a.from} -> ${a.to}`);

describe('imports', () => {
    it('are found at all', () => {
        expect(sources.length).toBeGreaterThan(50);
        expect(arrows.length).toBeGreaterThan(100);
    });
    it('physics imports nothing of ours but physics', () => {
        expect(offending((from, to) => from === 'language/physics' && to !== 'language/physics')).toEqual([]);
    });
    it('the language knows no server, no extension, no editor and no file system', () => {
        expect(offending((from, to) => from.startsWith('language/') && (/^(server|extension)\//.test(to) || /^(node:|vscode)/.test(to)))).toEqual([]);
    });
    it('units know nothing above them, and only they know the unit library', () => {
        expect(offending((from, to) => from === 'language/units' && to.startsWith('language/') && to !== 'language/units')).toEqual([]);
        expect(offending((from, to) => to === 'mathjs' && from !== 'language/units')).toEqual([]);
    });
    it('only the grammar knows Langium', () => {
        expect(offending((from, to) => /^(langium|chevrotain)/.test(to) && from !== 'language/grammar')).toEqual([]);
    });
    it('the vocabulary knows units only', () => {
        expect(offending((from, to) => from === 'language/vocabulary' && to.startsWith('language/') && !['language/vocabulary', 'language/units'].includes(to))).toEqual([]);
    });
    it('reading does not know quantities or rules, except for the views that controls ask', () => {
        expect(offending((from, to, a) => from === 'language/rig' && ['language/rules', 'language/quantities'].includes(to) && !a.from.endsWith('rig/controls.ts'))).toEqual([]);
    });
    it('quantities do not know rules; rules do not know physics', () => {
        expect(offending((from, to) => from === 'language/quantities' && to === 'language/rules')).toEqual([]);
        expect(offending((from, to) => from === 'language/rules' && to === 'language/physics')).toEqual([]);
    });
    it('runs know quantities, and nothing of what is told about them', () => {
        expect(offending((from, to) => from === 'language/run' && ['language/rules', 'language/reference', 'language/what-if'].includes(to))).toEqual([]);
    });
    it('nothing below pictures and pages knows them', () => {
        expect(offending((from, to) => to === 'language/seeing' && from.startsWith('language/') && from !== 'language/seeing' && from !== 'language/index.ts')).toEqual([]);
    });
    it('editor and command do not know each other', () => {
        expect(offending((from, to) => (from === 'server/editor' && to === 'server/command') || (from === 'server/command' && to === 'server/editor'))).toEqual([]);
    });
    it('the extension knows the server by its protocol only', () => {
        expect(offending((from, to) => from.startsWith('extension/') && /^(server|language)\//.test(to))).toEqual([]);
        expect(offending((from, to) => /^(server|language)\//.test(from) && to.startsWith('extension/'))).toEqual([]);
    });
});

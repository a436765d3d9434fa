import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { references } from '../../language/physics/references.js';

const folder = new URL('../../language/physics/', import.meta.url);
const files = readdirSync(folder).filter(name => name.endsWith('.ts'));
const texts = new Map(files.map(name => [name, readFileSync(new URL(name, folder), 'utf8')]));
// A key is lower case with a hyphen or a digit in it; array indices and units in square brackets are not.
const cited = new Set<string>();
for (const [name, text] of texts) {
    if (name === 'references.ts') continue;
    for (const match of text.matchAll(/\[([a-z][a-z0-9]*(?:-[a-z0-9]+)+|sutherland|sechenov)\]/g)) cited.add(match[1]!);
}

describe('sources', () => {
    it('every key that a doc comment cites has an entry', () => {
        expect([...cited].filter(key => !(key in references))).toEqual([]);
    });
    it('every entry is cited somewhere', () => {
        expect(Object.keys(references).filter(key => !cited.has(key))).toEqual([]);
    });
    it('every entry says what is taken and how it is known', () => {
        for (const [key, entry] of Object.entries(references)) {
            expect(entry.authors.length, key).toBeGreaterThan(2);
            expect(entry.taken.length, key).toBeGreaterThan(5);
            expect(['read', 'second-hand', 'from memory'], key).toContain(entry.known);
        }
    });
    it('entries stand in the order of the alphabet', () => {
        const keys = Object.keys(references);
        expect(keys).toEqual([...keys].sort());
    });
});

describe('files of physics', () => {
    it('import nothing but each other', () => {
        for (const [name, text] of texts) {
            for (const match of text.matchAll(/from '([^']+)'/g)) expect(match[1], name).toMatch(/^\.\/[a-z-]+\.js$/);
        }
    });
    it('every exported function has a doc comment', () => {
        for (const [name, text] of texts) {
            for (const match of text.matchAll(/(\*\/\n)?export function (\w+)/g)) {
                expect(match[1], `${name}: ${match[2]}`).toBe('*/\n');
            }
        }
    });
});
